package longpoint.field.takeoff;

import java.util.Arrays;
import java.util.List;
import longpoint.deck.Course;
import longpoint.deck.Piece;
import longpoint.deck.PieceEdge;
import longpoint.deck.PlaneDeck;
import longpoint.deck.Support;
import longpoint.geometry.Inside;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Segment;

/**
 * Nails and clips of a plane's deck, counted piece by piece on its supports.
 *
 * <p>A piece takes the edge spacing where its ends stand on a support and along rakes, hips,
 * valleys and sheet lines; the field spacing on every other support under it. Clips go midway
 * between supports on every course line with a sheet above and below; two where supports stand as
 * far apart as a sheet is wide.
 *
 * @param nails by the schedule
 * @param clips one for each bay, whether the panel's rating asks for them or not
 * @param widest bay between neighbouring supports
 * @param plane id of the plane it is on; empty if there is none
 */
public record Fixings(long nails, long clips, double widest, String plane) {

  /** Supports nearer than this share of a sheet's width are plies of one. */
  private static final double PLIES = 1.0 / 12;

  static Fixings of(PlaneDeck deck, NailSchedule schedule) {
    long nails = 0;
    for (Piece piece : deck.pieces()) {
      nails += nails(piece, deck, schedule);
    }
    long clips = 0;
    double widest = 0;
    for (Course course : deck.courses()) {
      if (course.number() > 1) {
        double[] places = places(deck, course.from());
        for (int i = 0; i + 1 < places.length; i++) {
          double bay = places[i + 1] - places[i];
          Point middle = new Point((places[i] + places[i + 1]) / 2, course.from());
          if (bay > deck.panel().width() * PLIES && inside(deck.ground(), middle, deck)) {
            clips += bay >= deck.panel().width() - deck.panel().sliver() ? 2 : 1;
            widest = Math.max(widest, bay);
          }
        }
      }
    }
    return new Fixings(nails, clips, widest, deck.plane());
  }

  private static long nails(Piece piece, PlaneDeck deck, NailSchedule schedule) {
    long nails = 0;
    double near = deck.panel().sliver();
    for (PieceEdge edge : piece.edges()) {
      switch (edge.use()) {
        case JOINT, RAKE, HIP, VALLEY, SHEET_LINE ->
            nails += NailSchedule.row(edge.length(), schedule.edge());
        default -> {}
      }
    }
    for (Support support : deck.supports()) {
      for (Segment inside : Inside.of(piece.outline(), support.line())) {
        boolean atEdge =
            piece.edges().stream()
                .anyMatch(
                    e ->
                        e.line().distance(inside.middle()) <= near + support.thickness() / 2
                            && parallel(e.line(), inside));
        if (!atEdge) {
          nails += NailSchedule.row(inside.length(), schedule.field());
        }
      }
    }
    return nails;
  }

  private static boolean parallel(Segment a, Segment b) {
    return a.length() > 0
        && b.length() > 0
        && Math.abs(a.direction().cross(b.direction())) < SAME_WAY;
  }

  /** Sine under which two lines run the same way: a degree. */
  private static final double SAME_WAY = 0.0175;

  /** Where upright supports cross a level line, in order. */
  private static double[] places(PlaneDeck deck, double v) {
    return deck.supports().stream()
        .map(Support::line)
        .filter(s -> Math.abs(s.from().x() - s.to().x()) < Math.abs(s.from().y() - s.to().y()))
        .filter(s -> Math.min(s.from().y(), s.to().y()) <= v)
        .filter(s -> Math.max(s.from().y(), s.to().y()) >= v)
        .mapToDouble(s -> s.from().toward(s.to(), share(s, v)).x())
        .sorted()
        .distinct()
        .toArray();
  }

  private static double share(Segment line, double v) {
    return (v - line.from().y()) / (line.to().y() - line.from().y());
  }

  /** Whether there is a sheet both below and above a point. */
  private static boolean inside(List<Region> ground, Point p, PlaneDeck deck) {
    double step = deck.panel().sliver();
    return Arrays.stream(new double[] {-step, step})
        .mapToObj(dv -> new Point(p.x(), p.y() + dv))
        .allMatch(q -> ground.stream().anyMatch(r -> Inside.contains(r, q)));
  }

  Fixings plus(Fixings other) {
    Fixings wider = other.widest > widest ? other : this;
    return new Fixings(nails + other.nails, clips + other.clips, wider.widest, wider.plane);
  }
}
