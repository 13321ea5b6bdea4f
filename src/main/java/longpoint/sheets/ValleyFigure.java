package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import longpoint.drawing.Anchor;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.framing.truss.Truss;
import longpoint.framing.valley.ValleyLine;
import longpoint.framing.valley.ValleySet;
import longpoint.framing.valley.ValleyTruss;
import longpoint.geometry.Point;

/**
 * A valley set on the main roof's deck, seen square to the deck in true size: up the page is up the
 * slope from the deck's lower edge, across it the distance from the wing's centre line.
 */
final class ValleyFigure {
  private static final double LEAD_MM = 5;
  private static final double AIR_MM = 1;
  private static final double ABOVE_MM = 1.6;

  /** The deck is shown this much wider and higher than the set. */
  private static final double MORE = 1.12;

  private final ValleySet set;
  private final Words words;
  private final double unitsPerMm;
  private final double wide;
  private final Function<ValleyTruss, Optional<Truss>> placed;
  private final List<Mark> marks = new ArrayList<>();
  private final Clutter clutter;

  private ValleyFigure(
      ValleySet set,
      Words words,
      double unitsPerMm,
      Function<ValleyTruss, Optional<Truss>> placed) {
    this.set = set;
    this.placed = placed;
    this.words = words;
    this.unitsPerMm = unitsPerMm;
    double half = 0;
    for (ValleyLine line : lines()) {
      half = Math.max(half, line.half());
    }
    for (ValleyTruss t : set.trusses()) {
      half = Math.max(half, Math.max(t.left(), t.right()));
    }
    this.wide = half * MORE;
    this.clutter = new Clutter(unitsPerMm, Math.max(2 * wide, v(set.apex().x())));
  }

  /**
   * @param placed the truss to order for each of the set; empty where the wing is framed with
   *     rafters
   */
  static SheetFigure of(
      ValleySet set,
      Words words,
      double unitsPerMm,
      Function<ValleyTruss, Optional<Truss>> placed) {
    ValleyFigure figure = new ValleyFigure(set, words, unitsPerMm, placed);
    figure.deck();
    figure.snapped();
    figure.set.trusses().forEach(figure::truss);
    figure.columns();
    figure.set.trusses().forEach(figure::widths);
    return new SheetFigure("valley set " + set.upper(), unitsPerMm, figure.marks);
  }

  private List<ValleyLine> lines() {
    List<ValleyLine> lines = new ArrayList<>(set.setLines());
    lines.addAll(set.sheetLines());
    return lines;
  }

  private double v(double x) {
    return set.site().main().v(x);
  }

  /** Deck edge, wall face, and the ridge where it is near. */
  private void deck() {
    double top = 0;
    for (ValleyLine line : lines()) {
      top = Math.max(top, v(line.apexX()));
    }
    double ridge = v(set.site().main().ridge());
    level(0, FrameLayers.DECK_EDGE, "0   " + words.text("valley.lowerEdge"));
    level(v(0), FrameLayers.WALL, text(v(0)) + "   " + words.text("valley.wallFace"));
    if (ridge < top * MORE) {
      level(ridge, FrameLayers.DECK_EDGE, text(ridge) + "   " + words.text("line.ridge"));
    }
    add(
        Mark.Path.line(
            new Point(0, 0), new Point(0, Math.min(ridge, top * MORE)), FrameLayers.CENTRE, ""));
  }

  private void level(double v, Layer layer, String words) {
    add(Mark.Path.line(new Point(-wide, v), new Point(wide, v), layer, ""));
    tell(figure(new Point(wide + LEAD_MM * unitsPerMm, v), 1, words));
  }

  private void snapped() {
    set.setLines().forEach(l -> line(l, FrameLayers.SET_LINE));
    set.sheetLines().forEach(l -> line(l, FrameLayers.SHEET_LINE));
  }

  private void line(ValleyLine line, Layer layer) {
    double side = line.side() == ValleyLine.Side.LEFT ? -1 : 1;
    Point foot = new Point(side * line.half(), v(line.x()));
    Point top = new Point(side * line.apexHalf(), v(line.apexX()));
    if (!foot.equals(top)) {
      add(Mark.Path.line(foot, top, layer, set.upper()));
    }
  }

  private void truss(ValleyTruss t) {
    String subject = placed.apply(t).map(Truss::id).orElse(set.upper());
    add(
        Mark.Path.line(
            new Point(-t.left(), t.v()),
            new Point(t.right(), t.v()),
            FrameLayers.BEARING,
            subject));
    add(
        Mark.Path.line(
            new Point(-t.left(), t.stop()),
            new Point(t.right(), t.stop()),
            FrameLayers.STOP,
            subject));
  }

  /** Figures up the deck to the right, stop nails to the left, with their heads above. */
  private void columns() {
    for (ValleyTruss t : set.trusses()) {
      column(
          t.right(),
          1,
          t.v(),
          text(t.v())
              + "   "
              + words.text("valley.no", t.number())
              + "  "
              + placed.apply(t).map(Truss::mark).orElse(""));
      column(t.left(), -1, t.stop(), text(t.stop()));
    }
    double top = v(set.apex().x());
    Point apex = new Point(0, top);
    double end = wide + LEAD_MM * unitsPerMm;
    add(Mark.Path.line(apex, new Point(end, top), FrameLayers.TAPE, ""));
    tell(figure(new Point(end, top), 1, text(top)));
    double head = top + 2 * Lettering.SMALL * unitsPerMm;
    tell(figure(new Point(end, head), 1, words.text("head.upTheDeck")));
    tell(figure(new Point(-end, head), -1, words.text("head.stopNails")));
  }

  private void column(double half, int side, double v, String words) {
    Point end = new Point(side * (wide + LEAD_MM * unitsPerMm), v);
    Point from = new Point(side * (half + AIR_MM * unitsPerMm), v);
    add(Mark.Path.line(from, end, FrameLayers.TAPE, ""));
    tell(figure(end, side, words.strip()));
  }

  private Mark.Text figure(Point end, int side, String words) {
    Point at = end.plus(new Point(side * AIR_MM * unitsPerMm, -Lettering.SMALL / 2 * unitsPerMm));
    Anchor anchor = side > 0 ? Anchor.START : Anchor.END;
    return new Mark.Text(at, words, Lettering.SMALL, 0, anchor, FrameLayers.TAPE, "");
  }

  /** Half-widths above the bearing line on both sides of the centre line, where there is room. */
  private void widths(ValleyTruss t) {
    double up = t.v() + ABOVE_MM * unitsPerMm;
    half(t.left(), -1, up);
    half(t.right(), 1, up);
  }

  private void half(double half, int side, double y) {
    String words = text(half);
    for (double share : new double[] {0.5, 0.4, 0.3, 0.6}) {
      Mark.Text mark =
          new Mark.Text(
              new Point(side * half * share, y),
              words,
              Lettering.SMALL,
              0,
              Anchor.MIDDLE,
              FrameLayers.TAPE,
              "");
      if (!clutter.touches(clutter.shape(mark))) {
        add(mark);
        return;
      }
    }
  }

  private String text(double length) {
    return words.length(length);
  }

  private void tell(Mark.Text text) {
    if (!clutter.covers(clutter.shape(text))) {
      add(text);
    }
  }

  private void add(Mark mark) {
    marks.add(mark);
    clutter.take(clutter.shape(mark));
  }
}
