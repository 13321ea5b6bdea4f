package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.drawing.Anchor;
import longpoint.drawing.DimensionLayout;
import longpoint.drawing.Drawing;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.framing.truss.TrussMark;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;

/** One truss seen square to its face, with its dimensions: shape only, not engineered. */
public final class ProfileFigure {
  /** Rows of dimensions off the truss, and room on each side of a figure, on paper. */
  private static final double ROW_MM = 7;

  private static final double AIR_MM = 1.5;

  /** Places along a chord for its figure, best first. */
  private static final double[] SHARES = {0.5, 0.45, 0.55, 0.4, 0.6, 0.35, 0.65};

  /** Lettering above a chord. */
  private static final double ABOVE_MM = 1.5;

  /** A level chord rises less than this share of its length; no roof is built so flat. */
  private static final double LEVEL = 1e-6;

  /** Two slopes this near print alike in every notation. */
  private static final double SAME_SLOPE = 1e-6;

  private final Plan plan;
  private final Words words;
  private final TrussMark truss;
  private final double unitsPerMm;
  private final List<Mark> marks = new ArrayList<>();
  private final List<String> untold = new ArrayList<>();
  private final Clutter clutter;

  private ProfileFigure(Plan plan, TrussMark truss, double unitsPerMm) {
    this.plan = plan;
    this.words = Words.of(plan);
    this.truss = truss;
    this.unitsPerMm = unitsPerMm;
    this.clutter = new Clutter(unitsPerMm, Math.max(truss.span(), truss.height()));
  }

  /**
   * The outline with its dimensions and caption, in real size; x runs along the truss from the
   * outside of its first bearing.
   *
   * @param unitsPerMm plan units to a millimetre of paper or screen, &gt; 0
   */
  public static Drawing drawing(Plan plan, TrussMark truss, double unitsPerMm) {
    return new Drawing(truss.mark(), of(plan, truss, unitsPerMm).marks());
  }

  static SheetFigure of(Plan plan, TrussMark truss, double unitsPerMm) {
    ProfileFigure figure = new ProfileFigure(plan, truss, unitsPerMm);
    figure.sticks();
    figure.levels();
    figure.plumbs();
    figure.chords();
    return new SheetFigure(truss.mark(), unitsPerMm, figure.marks).captioned(figure.caption());
  }

  private void sticks() {
    truss.shape().webs().forEach(w -> line(w, FrameLayers.WEB));
    truss.shape().chords().forEach(c -> line(c, FrameLayers.TRUSS));
    double span = truss.span();
    heel(0, truss.profile().bottomAt(0), truss.heelLow());
    heel(span, truss.profile().bottomAt(span), truss.heelHigh());
  }

  private void heel(double v, double from, double to) {
    if (to - from > unitsPerMm / 10) {
      line(new Segment(new Point(v, from), new Point(v, to)), FrameLayers.TRUSS);
    }
  }

  private void line(Segment s, Layer layer) {
    if (s.length() > 0) {
      add(Mark.Path.line(s.from(), s.to(), layer, truss.mark()));
    }
  }

  private void add(Mark mark) {
    marks.add(mark);
    clutter.take(clutter.shape(mark));
  }

  /** Span and tails below; tails step down a row where their figures have no room beside it. */
  private void levels() {
    double low = lowest();
    double span = truss.span();
    boolean fits = fits(span);
    dimension(new Point(0, low), new Point(span, low), -ROW_MM, 0, span);
    double row = fits ? -ROW_MM : -2 * ROW_MM;
    if (truss.tailLow() > 0) {
      Point end = new Point(-truss.tailLow(), low);
      dimension(end, new Point(0, low), row, -1, truss.tailLow());
    }
    if (truss.tailHigh() > 0) {
      Point end = new Point(span + truss.tailHigh(), low);
      dimension(new Point(span, low), end, row, 1, truss.tailHigh());
    }
  }

  /** Heels and height. */
  private void plumbs() {
    double left = truss.profile().top().get(0).x();
    double right = Math.max(truss.span(), truss.profile().top().get(lastTop()).x());
    double base = truss.profile().bottomAt(0);
    if (truss.heelLow() - base > plan.unit().fromMillimetres(1)) {
      dimension(
          new Point(Math.min(0, left), base),
          new Point(Math.min(0, left), truss.heelLow()),
          ROW_MM,
          1,
          truss.heelLow() - base);
    }
    Point peak = peak();
    double foot = peak.y() - truss.height();
    double row = -ROW_MM;
    double other = truss.heelHigh() - truss.profile().bottomAt(truss.span());
    boolean differs = Math.abs(other - truss.heelLow()) > plan.unit().fromMillimetres(1);
    if (differs && truss.height() - other > plan.unit().fromMillimetres(1)) {
      double bottom = truss.profile().bottomAt(truss.span());
      dimension(new Point(right, bottom), new Point(right, truss.heelHigh()), row, 1, other);
      row -= ROW_MM;
    }
    if (right - peak.x() > unitsPerMm) {
      add(Mark.Path.line(peak, new Point(right, peak.y()), FrameLayers.TAPE, truss.mark()));
    }
    dimension(new Point(right, foot), new Point(right, peak.y()), row, 1, truss.height());
  }

  private int lastTop() {
    return truss.profile().top().size() - 1;
  }

  private Point peak() {
    Point high = truss.profile().top().get(0);
    for (Point p : truss.profile().top()) {
      high = p.y() >= high.y() ? p : high;
    }
    return high;
  }

  private double lowest() {
    double low = 0;
    for (Point p : truss.profile().top()) {
      low = Math.min(low, p.y());
    }
    return low;
  }

  private boolean fits(double length) {
    return (widthOf(length) + 2 * AIR_MM) * unitsPerMm <= length;
  }

  private double widthOf(double length) {
    return Lettering.width(text(length), DimensionLayout.TEXT_HEIGHT);
  }

  /**
   * @param past which end the figure stands past if it has no room between them; 0 the last
   */
  private void dimension(Point from, Point to, double offset, int past, double length) {
    double slide = 0;
    if (!fits(length)) {
      slide = from.distance(to) / unitsPerMm / 2 + widthOf(length) / 2 + AIR_MM;
      slide *= past < 0 ? -1 : 1;
    }
    add(new Mark.Dimension(from, to, offset, slide, text(length), FrameLayers.TAPE, truss.mark()));
  }

  /** Length and slope above each piece of the top edge; what has no room goes to the caption. */
  private void chords() {
    List<Point> top = truss.profile().top();
    for (int i = 0; i + 1 < top.size(); i++) {
      Segment chord = new Segment(top.get(i), top.get(i + 1));
      String shown = text(chord.length()) + slope(chord);
      Point along = chord.direction();
      double degrees = DimensionLayout.readable(Math.toDegrees(Math.atan2(along.y(), along.x())));
      if (!told(chord, shown, degrees)) {
        untold.add(shown);
      }
    }
  }

  /** Writes above a chord at the first place where there is room. */
  private boolean told(Segment chord, String shown, double degrees) {
    double half = Lettering.width(shown, Lettering.SMALL) / 2 * unitsPerMm / chord.length();
    Point up = chord.direction().left().times(ABOVE_MM * unitsPerMm);
    for (double share : SHARES) {
      if (share - half >= 0 && share + half <= 1) {
        Point at = chord.from().toward(chord.to(), share).plus(up);
        Mark.Text text =
            new Mark.Text(
                at, shown, Lettering.SMALL, degrees, Anchor.MIDDLE, FrameLayers.TAPE, truss.mark());
        if (!clutter.touches(clutter.shape(text))) {
          add(text);
          return true;
        }
      }
    }
    return false;
  }

  private String slope(Segment chord) {
    double rise = Math.abs(chord.to().y() - chord.from().y());
    double run = Math.abs(chord.to().x() - chord.from().x());
    if (run == 0 || rise <= LEVEL * run) {
      return "";
    }
    return "   " + words.slope(asGiven(rise / run));
  }

  /** In the notation of a side with this slope, else in the unit's usual one. */
  private Slope asGiven(double ratio) {
    for (Part part : plan.parts()) {
      for (Side side : plan.sides(part)) {
        if (Math.abs(side.slope().ratio() - ratio) < SAME_SLOPE) {
          return side.slope();
        }
      }
    }
    return plan.unit() == LengthUnit.INCH
        ? Slope.inTwelve(12 * ratio)
        : new Slope(ratio, Slope.Notation.DEGREES);
  }

  private Optional<String> ceiling() {
    List<Point> bottom = truss.profile().bottom();
    Point a = bottom.get(0);
    Point b = bottom.get(1);
    double slope = Math.abs(b.y() - a.y()) / (b.x() - a.x());
    return slope > LEVEL
        ? Optional.of(words.text("truss.ceiling", words.slope(asGiven(slope))))
        : Optional.empty();
  }

  private String weight() {
    String unit = plan.unit() == LengthUnit.INCH ? "truss.pounds" : "truss.kilograms";
    return words.text("truss.weight", words.text(unit, words.decimal(truss.weight(), 0)));
  }

  private List<SheetFigure.Line> caption() {
    List<SheetFigure.Line> lines = new ArrayList<>();
    String number = words.counted("truss.pieces", truss.quantity());
    String kind = words.choice("truss", truss.kind());
    String plies = truss.plies() == 1 ? "" : ", " + words.text("truss.plies", truss.plies());
    lines.add(SheetFigure.Line.of(truss.mark() + "   " + kind + ", " + number + plies));
    if (!untold.isEmpty()) {
      lines.add(SheetFigure.Line.of(words.text("truss.topEdge", String.join(", ", untold))));
    }
    if (truss.bottomChords().size() > 1) {
      List<String> chords = truss.bottomChords().stream().map(this::text).toList();
      lines.add(SheetFigure.Line.of(words.text("truss.bottomEdge", String.join(", ", chords))));
    }
    ceiling().ifPresent(c -> lines.add(SheetFigure.Line.of(c)));
    lines.add(SheetFigure.Line.of(weight()));
    lines.add(new SheetFigure.Line(words.text("truss.shapeOnly"), Layers.SMALL_PRINT));
    return lines;
  }

  private String text(double length) {
    return words.length(length);
  }
}
