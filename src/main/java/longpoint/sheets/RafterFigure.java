package longpoint.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import longpoint.drawing.Anchor;
import longpoint.drawing.DimensionLayout;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.framing.stick.Rafter;
import longpoint.framing.stick.RafterEnd;
import longpoint.framing.stick.Seat;
import longpoint.geometry.Point;

/**
 * One rafter of each pattern, the longest: from the side in true slope with its birdsmouth on the
 * plate, its theoretical line as far as it is measured, and below it its top edge laid flat with
 * the side cuts of head and foot, foot to the left.
 */
final class RafterFigure {
  /** On paper, millimetres. */
  private static final double LEAST_DEPTH_MM = 3;

  private static final double LEAST_EDGE_MM = 4;
  private static final double GAP_MM = 3;
  private static final double ROW_MM = 7;
  private static final double AIR_MM = 1;
  private static final double RIDGE_MM = 80;

  private final Rafter rafter;
  private final Words words;
  private final double mm;
  private final List<Mark> marks = new ArrayList<>();

  private RafterFigure(Rafter rafter, Words words, double unitsPerMm) {
    this.rafter = rafter;
    this.words = words;
    this.mm = unitsPerMm;
  }

  /**
   * One figure for each pattern, in the order first met.
   *
   * @param captionMm how wide the lettering below may be
   */
  static List<SheetFigure> all(
      List<Rafter> rafters, Words words, double captionMm, double unitsPerMm) {
    Map<String, List<Rafter>> patterns = new LinkedHashMap<>();
    rafters.stream()
        .filter(r -> r.length() > 0)
        .forEach(r -> patterns.computeIfAbsent(pattern(r), k -> new ArrayList<>()).add(r));
    List<SheetFigure> figures = new ArrayList<>();
    for (List<Rafter> all : patterns.values()) {
      Rafter longest = all.get(0);
      for (Rafter r : all) {
        longest = r.length() > longest.length() ? r : longest;
      }
      RafterFigure figure = new RafterFigure(longest, words, unitsPerMm);
      figure.side();
      figure.edge();
      figures.add(
          new SheetFigure("rafter " + longest.mark(), unitsPerMm, figure.marks)
              .captioned(figure.caption(all), captionMm));
    }
    return figures;
  }

  /** Rafters of one pattern have the same cuts and differ in length only. */
  private static String pattern(Rafter r) {
    return r.part()
        + r.kind()
        + r.head().order()
        + end(r.foot())
        + end(r.head())
        + String.format(Locale.ROOT, " %.2f %b", r.plumbCut(), r.tail() > 0);
  }

  private static String end(RafterEnd end) {
    double sharp = Math.min(end.left().sideCut(), end.right().sideCut());
    return String.format(Locale.ROOT, " %s %.1f %b", end.on(), sharp, end.isDouble());
  }

  /** A ridge board is the same all along: no more of it is drawn than shows its ends. */
  private double length() {
    return rafter.kind().isLevel() ? Math.min(rafter.length(), RIDGE_MM * mm) : rafter.length();
  }

  private double incline() {
    return Math.toRadians(90 - rafter.plumbCut());
  }

  private double plumbDepth() {
    return Math.max(rafter.depth(), LEAST_DEPTH_MM * mm) / Math.cos(incline());
  }

  private Point up() {
    return new Point(Math.cos(incline()), Math.sin(incline()));
  }

  /** Foot to the left, head to the right, both cut plumb. */
  private void side() {
    Point foot = new Point(0, 0);
    Point head = up().times(length());
    Point deep = new Point(0, -plumbDepth());
    List<Point> outline = new ArrayList<>(List.of(foot, head, head.plus(deep)));
    Point wall = up().times(rafter.tail());
    Point high = up().times(rafter.length() - rafter.over());
    if (rafter.over() > 0) {
      outline.addAll(notch(high, true));
    }
    outline.addAll(notch(wall, rafter.seat().isPresent()));
    outline.add(foot.plus(deep));
    marks.add(new Mark.Path(outline, true, FrameLayers.RAFTER, rafter.mark()));
    if (rafter.tail() > 0) {
      plumbLine(wall);
      dimension(foot, wall, ROW_MM, rafter.tail(), -1);
      dimension(wall, head, ROW_MM, rafter.length() - rafter.tail());
      dimension(foot, head, 2 * ROW_MM, rafter.length());
    } else {
      dimension(foot, head, ROW_MM, rafter.length());
    }
    if (rafter.kind().isLevel()) {
      broken();
    } else {
      theoretical(wall, head);
    }
  }

  /** From the inner end of the seat to the outer corner of the birdsmouth, going down. */
  private List<Point> notch(Point wall, boolean seated) {
    double height = seated ? rafter.seat().map(Seat::height).orElse(0.0) : 0;
    if (!seated || height >= plumbDepth()) {
      return List.of();
    }
    Point corner = wall.minus(new Point(0, height));
    double level = (plumbDepth() - height) / Math.tan(incline());
    plate(corner);
    return List.of(
        corner.plus(new Point(level, 0)), corner, wall.minus(new Point(0, plumbDepth())));
  }

  /** The top of the wall it sits on, as wide as the bearing and no further. */
  private void plate(Point corner) {
    double wide = Math.max(rafter.seat().map(Seat::bearing).orElse(0.0), rafter.thickness());
    Point low = new Point(0, -2 * rafter.thickness());
    Point across = new Point(wide, 0);
    marks.add(
        new Mark.Path(
            List.of(corner, corner.plus(across), corner.plus(across).plus(low), corner.plus(low)),
            true,
            FrameLayers.WALL,
            rafter.mark()));
  }

  private void plumbLine(Point wall) {
    Point over = new Point(0, 2 * mm);
    marks.add(
        Mark.Path.line(
            wall.plus(over),
            wall.minus(new Point(0, plumbDepth())).minus(over),
            FrameLayers.CENTRE,
            rafter.mark()));
  }

  /** The line goes on to the middle of what the rafter comes to; measured below. */
  private void theoretical(Point wall, Point head) {
    Point from = rafter.tail() > 0 ? wall : wall.minus(along(rafter.foot().off()));
    Point to = head.plus(along(rafter.head().off()));
    if (rafter.over() > 0 || Math.abs(rafter.head().off()) + Math.abs(rafter.foot().off()) < 1e-6) {
      to = from.plus(up().times(rafter.lineLength()));
    }
    marks.add(Mark.Path.line(head, to, FrameLayers.CENTRE, rafter.mark()));
    Point below = new Point(0, -plumbDepth());
    if (from.distance(to) > 0) {
      dimension(from.plus(below), to.plus(below), -ROW_MM, rafter.lineLength());
    }
  }

  /** Two strokes across a board that is longer than it is drawn. */
  private void broken() {
    for (double off = -1; off <= 1 && length() < rafter.length(); off += 2) {
      Point at = new Point(length() / 2 + off * mm, 0);
      Point lean = new Point(mm, mm);
      marks.add(
          Mark.Path.line(
              at.plus(lean),
              at.minus(new Point(0, plumbDepth())).minus(lean),
              FrameLayers.CENTRE,
              rafter.mark()));
    }
  }

  private Point along(double level) {
    return up().times(level / Math.cos(incline()));
  }

  private void dimension(Point from, Point to, double offset, double length) {
    dimension(from, to, offset, length, 1);
  }

  /**
   * @param past where a figure goes that has no room: 1 beyond the end, −1 before the start
   */
  private void dimension(Point from, Point to, double offset, double length, int past) {
    String shown = words.length(length);
    double room = from.distance(to) / mm;
    double width = Lettering.width(shown, DimensionLayout.TEXT_HEIGHT) + 3;
    double slide = width <= room ? 0 : past * (room + width) / 2;
    marks.add(new Mark.Dimension(from, to, offset, slide, shown, FrameLayers.TAPE, rafter.mark()));
  }

  /** The top edge, seen from above: left of somebody who looks up the rafter is up. */
  private void edge() {
    double half = Math.max(rafter.thickness(), LEAST_EDGE_MM * mm) / 2;
    double bottom = -plumbDepth() - (2 * ROW_MM + GAP_MM) * mm - 2 * half;
    double grown = half / (rafter.thickness() / 2) / Math.cos(incline());
    double length = length();
    Point middle = new Point(0, bottom + half);
    List<Point> outline = new ArrayList<>();
    outline.add(middle.plus(new Point(-reach(rafter.foot().right(), grown), -half)));
    outline.add(middle.plus(new Point(length + reach(rafter.head().right(), grown), -half)));
    outline.add(middle.plus(tip(rafter.head(), grown, half)).plus(new Point(length, 0)));
    outline.add(middle.plus(new Point(length + reach(rafter.head().left(), grown), half)));
    outline.add(middle.plus(new Point(-reach(rafter.foot().left(), grown), half)));
    Point low = tip(rafter.foot(), grown, half);
    outline.add(middle.plus(new Point(-low.x(), low.y())));
    marks.add(new Mark.Path(outline, true, FrameLayers.RAFTER, rafter.mark()));
    double y = bottom - (Lettering.SMALL + AIR_MM) * mm;
    text(new Point(0, y), words.text("rafter.foot"), Anchor.START);
    text(new Point(length, y), words.text("rafter.head"), Anchor.END);
  }

  private double reach(RafterEnd.Cheek cheek, double grown) {
    double most = length() / 3;
    return Math.max(-most, Math.min(most, cheek.reach() * grown));
  }

  /** Where both halves of an end meet: past the middle of the end, and to its left. */
  private Point tip(RafterEnd end, double grown, double half) {
    double own = rafter.thickness() / 2;
    double share = end.isDouble() ? end.point() / own : 0;
    return Math.abs(share) >= 1
        ? new Point(0, 0)
        : new Point(end.pointReach(own) * grown, share * half);
  }

  private void text(Point at, String shown, Anchor anchor) {
    double room = length() / mm;
    String both = words.text("rafter.foot") + "  " + words.text("rafter.head");
    if (Lettering.width(both, Lettering.SMALL) + 2 < room) {
      marks.add(
          new Mark.Text(at, shown, Lettering.SMALL, 0, anchor, FrameLayers.TAPE, rafter.mark()));
    }
  }

  private List<SheetFigure.Line> caption(List<Rafter> all) {
    RafterWords said = new RafterWords(words);
    List<SheetFigure.Line> lines = new ArrayList<>();
    String title = said.title(rafter);
    lines.add(
        SheetFigure.Line.of(
            all.size() == 1 ? title : words.text("rafter.longest", title, all.size())));
    said.lines(rafter).forEach(line -> lines.add(SheetFigure.Line.of(line)));
    return lines;
  }
}
