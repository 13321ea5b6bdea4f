package longpoint.framing.truss;

import java.util.ArrayList;
import java.util.List;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Bound;
import longpoint.framing.run.Run;
import longpoint.geometry.Point;
import longpoint.plan.Side;

/**
 * The section of a run's roof at one station: both faces of the truss on or below the frame planes.
 *
 * @param run the run that is cut
 * @param station centre of the truss, u
 * @param thickness of the truss
 * @param from v of the outside face of the first bearing
 * @param to v of the outside face of the other bearing
 * @param low what stands at {@code from}
 * @param high what stands at {@code to}
 */
record Section(
    Run run, double station, double thickness, double from, double to, Bound low, Bound high) {

  /** Share of the thickness a truss may stand past the corner of a wall: 1/16 in of 1 1/2. */
  private static final double PAST_CORNER = 1.0 / 24;

  /** The section where both faces stand over a stretch whose bearing walls are the same. */
  static Section at(Run run, double station, double thickness) {
    double half = thickness / 2 - thickness * PAST_CORNER;
    double from = 0;
    double to = run.width();
    Bound low = run.low();
    Bound high = run.high();
    for (Run.Extension e : run.extensions()) {
      if (station - half >= e.from() && station + half <= e.to()) {
        if (e.bank() == Bank.LOW) {
          from = -e.depth();
          low = e.bound();
        } else {
          to = run.width() + e.depth();
          high = e.bound();
        }
      }
    }
    return new Section(run, station, thickness, from, to, low, high);
  }

  Point foot() {
    return run.axes().at(station, from);
  }

  Point head() {
    return run.axes().at(station, to);
  }

  /**
   * The profile with a level bottom.
   *
   * @param tailLow level length past the first bearing, ≥ 0
   * @param tailHigh the same past the other
   * @param drop how far the top edge is held below the frame planes, square to each slope
   * @param flatDrop how much further below the planes of the ends, square to their slope
   */
  Profile profile(double tailLow, double tailHigh, double drop, double flatDrop) {
    double span = to - from;
    List<Envelope.Line> lines = new ArrayList<>();
    lines(List.of(low, high)).stream().map(l -> lowered(l, drop, l.slope())).forEach(lines::add);
    for (Bound end : List.of(run.start(), run.end())) {
      for (Envelope.Line l : lines(List.of(end))) {
        double slope = end.side().orElseThrow().slope().ratio();
        lines.add(lowered(lowered(l, drop, l.slope()), flatDrop, slope));
      }
    }
    return Profile.level(span, Envelope.lowest(lines, -tailLow, span + tailHigh));
  }

  /** A line that much lower, square to a slope. */
  private static Envelope.Line lowered(Envelope.Line line, double drop, double slope) {
    return new Envelope.Line(line.at0() - drop * Math.hypot(1, slope), line.slope());
  }

  private List<Envelope.Line> lines(List<Bound> bounds) {
    List<Envelope.Line> lines = new ArrayList<>();
    for (Side eave :
        bounds.stream().filter(Bound::isEave).map(b -> b.side().orElseThrow()).toList()) {
      // A plane that climbs along the run is lowest at one face; across it both are alike.
      double near = at(eave, station - thickness / 2, from);
      double far = at(eave, station + thickness / 2, from);
      double face = near <= far ? station - thickness / 2 : station + thickness / 2;
      double foot = Math.min(near, far);
      lines.add(new Envelope.Line(foot, (at(eave, face, to) - foot) / (to - from)));
    }
    return lines;
  }

  private double at(Side eave, double u, double v) {
    return run.heightOn(eave, u, v) - run.plate();
  }
}
