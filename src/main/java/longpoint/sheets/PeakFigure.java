package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Anchor;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.framing.stick.Bearing;
import longpoint.framing.stick.Rafter;
import longpoint.framing.stick.RafterEnd;
import longpoint.framing.stick.RafterKind;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/**
 * Where hips come together, from above: every piece with its thickness, cut as it is listed, its
 * mark, and the order they are set in.
 */
final class PeakFigure {
  /** How far down each rafter is shown, in its thicknesses. */
  private static final double SHOWN = 9;

  private static final double NEAR = 1e-3;
  private static final double AIR_MM = 2;
  private static final double CAPTION_MM = 96;

  private final Words words;
  private final double mm;
  private final Point at;
  private final double shown;
  private final List<Mark> marks = new ArrayList<>();

  private PeakFigure(Words words, double unitsPerMm, Point at, double thickness) {
    this.words = words;
    this.mm = unitsPerMm;
    this.at = at;
    this.shown = SHOWN * thickness;
  }

  /** One for each point where three rafters or more, or two and a ridge, come together. */
  static List<SheetFigure> all(List<Rafter> rafters, Words words, double unitsPerMm) {
    List<SheetFigure> figures = new ArrayList<>();
    List<String> seen = new ArrayList<>();
    for (Rafter hip : rafters) {
      if (hip.kind() == RafterKind.HIP && isMet(hip.head().on())) {
        for (Segment place : hip.places()) {
          PeakFigure figure = new PeakFigure(words, unitsPerMm, place.to(), hip.thickness());
          List<Rafter> here = rafters.stream().filter(figure::comesHere).toList();
          String like = here.stream().map(r -> r.mark() + " ").sorted().toList().toString();
          if (!seen.contains(like)) {
            seen.add(like);
            here.forEach(figure::draw);
            figures.add(
                new SheetFigure("peak " + hip.mark(), unitsPerMm, figure.marks)
                    .captioned(figure.caption(here), CAPTION_MM));
          }
        }
      }
    }
    return figures;
  }

  private static boolean isMet(Bearing on) {
    return switch (on) {
      case RIDGE, OPPOSITE, SET_BEFORE, MITRED, COMMONS, POST, GIRDER -> true;
      case WALL, LEDGER, RIDGE_END, HIP, VALLEY, DECK, HEADER, TRIMMER, NOTHING -> false;
    };
  }

  private boolean comesHere(Rafter r) {
    return switch (r.kind()) {
      case COMMON, TRIMMER, HIP -> r.places().stream().anyMatch(p -> p.to().distance(at) < NEAR);
      case RIDGE ->
          r.places().stream()
              .anyMatch(p -> p.to().distance(at) < NEAR || p.from().distance(at) < NEAR);
      case VALLEY, HIP_JACK, VALLEY_JACK, CRIPPLE, HEADER -> false;
    };
  }

  private void draw(Rafter r) {
    for (int i = 0; i < r.places().size(); i++) {
      Segment place = r.places().get(i);
      if (place.to().distance(at) < NEAR) {
        piece(r, place.to(), place.from(), r.headAt(i));
      } else if (r.kind() == RafterKind.RIDGE && place.from().distance(at) < NEAR) {
        piece(r, place.from(), place.to(), r.footAt(i).turned());
      }
    }
  }

  /** Its end at the peak, broken off some way down. */
  private void piece(Rafter r, Point head, Point foot, RafterEnd end) {
    Point up = head.minus(foot).unit();
    Point left = up.left();
    double own = r.thickness() / 2;
    Point middle = head.minus(up.times(end.off()));
    Point broken = head.minus(up.times(Math.min(shown, head.distance(foot))));
    List<Point> ring = new ArrayList<>();
    ring.add(broken.minus(left.times(own)));
    ring.add(middle.minus(left.times(own)).plus(up.times(end.right().reach())));
    if (end.isDouble() && Math.abs(end.point()) < own) {
      ring.add(middle.plus(left.times(end.point())).plus(up.times(end.pointReach(own))));
    }
    ring.add(middle.plus(left.times(own)).plus(up.times(end.left().reach())));
    ring.add(broken.plus(left.times(own)));
    marks.add(
        new Mark.Path(
            ring.stream().map(p -> p.minus(at)).toList(), true, FrameLayers.RAFTER, r.mark()));
    String name = name(r, end);
    double half =
        Math.abs(up.x()) * Lettering.width(name, Lettering.SMALL) / 2
            + Math.abs(up.y()) * Lettering.SMALL / 2;
    Point label = broken.minus(up.times((half + AIR_MM) * mm)).minus(at);
    marks.add(
        new Mark.Text(
            label.minus(new Point(0, Lettering.SMALL / 2 * mm)),
            name,
            Lettering.SMALL,
            0,
            Anchor.MIDDLE,
            FrameLayers.MARK,
            r.mark()));
  }

  private String name(Rafter r, RafterEnd end) {
    return end.order() > 0 ? words.text("peak.place", end.order(), r.mark()) : r.mark();
  }

  private long pieces(List<Rafter> here) {
    return here.stream()
        .flatMap(r -> r.places().stream())
        .filter(p -> p.to().distance(at) < NEAR || p.from().distance(at) < NEAR)
        .count();
  }

  private List<SheetFigure.Line> caption(List<Rafter> here) {
    List<SheetFigure.Line> lines = new ArrayList<>();
    lines.add(SheetFigure.Line.of(words.text("peak.title", pieces(here))));
    here.stream()
        .filter(r -> r.kind() != RafterKind.RIDGE)
        .map(r -> r.mark() + ": " + new RafterWords(words).headWords(r))
        .forEach(t -> lines.add(SheetFigure.Line.of(t)));
    return lines;
  }
}
