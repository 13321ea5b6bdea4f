package longpoint.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longpoint.drawing.Anchor;
import longpoint.drawing.DimensionLayout;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.framing.stick.Rafter;
import longpoint.framing.stick.RafterKind;
import longpoint.geometry.Point;
import longpoint.units.Rounding;

/**
 * One rafter of each kind, the longest, with its cuts: from the side in true slope, and below it
 * its top edge laid flat with the side cuts of head and foot. Its depth and width are drawn to be
 * seen, not to scale: the stock is the designer's choice.
 */
final class RafterFigure {
  /** On paper, millimetres. */
  private static final double DEPTH_MM = 5;

  private static final double EDGE_MM = 4;
  private static final double GAP_MM = 9;
  private static final double ROW_MM = 7;
  private static final double AIR_MM = 1;

  /** A side cut this near to square is square, degrees. */
  private static final double SQUARE = 0.05;

  private final Rafter rafter;
  private final Words words;
  private final double mm;
  private final List<Mark> marks = new ArrayList<>();

  private RafterFigure(Rafter rafter, Words words, double unitsPerMm) {
    this.rafter = rafter;
    this.words = words;
    this.mm = unitsPerMm;
  }

  /** One figure for each kind there is, in the order first met. */
  static List<SheetFigure> all(List<Rafter> rafters, Words words, double unitsPerMm) {
    Map<RafterKind, List<Rafter>> kinds = new LinkedHashMap<>();
    rafters.forEach(r -> kinds.computeIfAbsent(r.kind(), k -> new ArrayList<>()).add(r));
    List<SheetFigure> figures = new ArrayList<>();
    kinds.forEach(
        (kind, all) -> {
          Rafter longest =
              all.stream().max(Comparator.comparingDouble(Rafter::length)).orElseThrow();
          if (longest.length() > 0) {
            RafterFigure figure = new RafterFigure(longest, words, unitsPerMm);
            figure.side();
            figure.edge();
            figures.add(
                new SheetFigure("rafter " + longest.mark(), unitsPerMm, figure.marks)
                    .captioned(figure.caption(all.size())));
          }
        });
    return figures;
  }

  private double incline() {
    return Math.toRadians(90 - rafter.plumbCut());
  }

  /** Foot to the left, head to the right, both cut plumb; the wall's face as a plumb line. */
  private void side() {
    Point up = new Point(Math.cos(incline()), Math.sin(incline()));
    Point foot = new Point(0, 0);
    Point head = up.times(rafter.length());
    Point deep = new Point(0, -DEPTH_MM * mm / Math.cos(incline()));
    marks.add(
        new Mark.Path(
            List.of(foot, head, head.plus(deep), foot.plus(deep)),
            true,
            FrameLayers.RAFTER,
            rafter.mark()));
    dimension(foot, head, ROW_MM, rafter.length());
    if (rafter.tail() > 0 && rafter.tail() < rafter.length()) {
      Point wall = up.times(rafter.tail());
      Point over = new Point(0, 2 * mm);
      marks.add(
          Mark.Path.line(
              wall.plus(over), wall.plus(deep).minus(over), FrameLayers.CENTRE, rafter.mark()));
      dimension(foot.plus(deep), wall.plus(deep), -ROW_MM, rafter.tail());
    }
  }

  private void dimension(Point from, Point to, double offset, double length) {
    String shown = words.length(length);
    double room = from.distance(to) / mm;
    double width = Lettering.width(shown, DimensionLayout.TEXT_HEIGHT) + 3;
    double slide = width <= room ? 0 : (room + width) / 2;
    marks.add(new Mark.Dimension(from, to, offset, slide, shown, FrameLayers.TAPE, rafter.mark()));
  }

  /** The top edge below, as long as the rafter, the side cuts drawn at their angles. */
  private void edge() {
    double bottom = -(DEPTH_MM / Math.cos(incline()) + 2 * ROW_MM + GAP_MM) * mm;
    double width = EDGE_MM * mm;
    double length = rafter.length();
    double foot = Math.min(length / 3, lean(rafter.sideCutFoot(), width));
    double head = Math.min(length / 3, lean(rafter.sideCutHead(), width));
    marks.add(
        new Mark.Path(
            List.of(
                new Point(0, bottom),
                new Point(length, bottom),
                new Point(length - head, bottom + width),
                new Point(foot, bottom + width)),
            true,
            FrameLayers.RAFTER,
            rafter.mark()));
    double y = bottom - (Lettering.SMALL + AIR_MM) * mm;
    text(new Point(0, y), words.text("rafter.foot"), Anchor.START);
    text(new Point(length, y), words.text("rafter.head"), Anchor.END);
  }

  /** How far a side cut runs along the rafter over its width. */
  private static double lean(double fromLength, double width) {
    return isSquare(fromLength) ? 0 : width / Math.tan(Math.toRadians(fromLength));
  }

  private static boolean isSquare(double fromLength) {
    return Math.abs(90 - fromLength) < SQUARE || fromLength <= 0;
  }

  private void text(Point at, String shown, Anchor anchor) {
    double room = rafter.length() / mm;
    if (Lettering.width(
                words.text("rafter.foot") + "  " + words.text("rafter.head"), Lettering.SMALL)
            + 2
        < room) {
      marks.add(
          new Mark.Text(at, shown, Lettering.SMALL, 0, anchor, FrameLayers.TAPE, rafter.mark()));
    }
  }

  private List<SheetFigure.Line> caption(int kinds) {
    List<SheetFigure.Line> lines = new ArrayList<>();
    String kind = words.choice("rafter", rafter.kind());
    String more = kinds == 1 ? kind : words.text("rafter.longest", kind, kinds);
    lines.add(SheetFigure.Line.of(rafter.mark() + "   " + more));
    lines.add(
        SheetFigure.Line.of(
            words.text(
                "rafter.cuts",
                words.length(rafter.length()),
                words.angle(90 - rafter.plumbCut()),
                words.angle(90 - rafter.levelCut()))));
    lines.add(
        SheetFigure.Line.of(
            words.text("rafter.sideCut", cut(rafter.sideCutHead()), cut(rafter.sideCutFoot()))));
    if (rafter.drop() > 0) {
      lines.add(
          SheetFigure.Line.of(
              words.text("rafter.drop", words.small(rafter.drop(), Rounding.NEAREST))));
    }
    lines.add(new SheetFigure.Line(words.text("rafter.notToScale"), QUIET));
    return lines;
  }

  private static final Layer QUIET = Layers.SMALL_PRINT;

  private String cut(double fromLength) {
    return isSquare(fromLength) ? words.text("cut.square") : words.angle(90 - fromLength);
  }
}
