package longpoint.sheets;

import java.util.List;
import longpoint.drawing.Drawing;
import longpoint.drawing.Mark;
import longpoint.drawing.Placement;
import longpoint.drawing.Strokes;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
import longpoint.stop.CalledOff;
import longpoint.surface.RoofSurface;
import longpoint.units.LengthUnit;

/**
 * A view at the largest standard scale at which it fits a field of paper, lettering and all.
 *
 * <p>A plan with very many walls needs more rows of dimensions the smaller it is drawn, and may fit
 * at no scale. Of the few largest scales at which its lines fit, the first that leaves nothing off
 * and lets strokes run through few figures is taken; else the one with fewest such faults, and the
 * sheet says how much is left off.
 *
 * @param <V> kind of view
 */
record FittedView<V extends FittedView.View>(V view, PaperScale scale) {
  /** What can be drawn at any scale, with lettering for that scale. */
  interface View {
    Drawing drawing();

    double unitsPerMm();

    /** Figures and labels that found no place. */
    int leftOff();

    /** Figures that stand where they are hard to read. */
    int crossed();

    /** How many figures there are that could be hard to read. */
    int figures();
  }

  /** Draws a view with its lettering inside limits, in plan units. */
  @FunctionalInterface
  interface Painter<V> {
    V at(double unitsPerMm, Bounds limit);
  }

  /** Scales tried from the first at which the lines fit; a fifth would be too small to read. */
  private static final int TRIED = 4;

  /** Share of the figures that may have a stroke through them before a smaller scale is tried. */
  private static final double CROSSED = 0.1;

  /** The roof plan in a field of paper, millimetres. */
  static FittedView<PlanView> of(Plan plan, RoofSurface surface, double widthMm, double heightMm) {
    return of(
        plan.unit(),
        PlanView.solid(plan, surface),
        widthMm,
        heightMm,
        (mm, limit) -> PlanView.within(plan, surface, mm, limit));
  }

  /**
   * @param solid box around the lines that do not depend on scale, in plan units
   */
  static <V extends View> FittedView<V> of(
      LengthUnit unit, Bounds solid, double widthMm, double heightMm, Painter<V> painter) {
    if (solid.isEmpty()) {
      return at(PaperScale.usual(unit), unit, solid, widthMm, heightMm, painter);
    }
    FittedView<V> best = null;
    for (PaperScale scale : scales(unit, solid, widthMm, heightMm)) {
      CalledOff.check();
      FittedView<V> view = at(scale, unit, solid, widthMm, heightMm, painter);
      if (best == null || view.faults() < best.faults()) {
        best = view;
      }
      if (best.reads()) {
        break;
      }
    }
    return best;
  }

  /** Nothing left off, and so few figures crossed that a smaller scale would read no better. */
  private boolean reads() {
    return view.leftOff() == 0 && view.crossed() <= CROSSED * view.figures();
  }

  /** What is left off, and what is hard to read. */
  private int faults() {
    return view.leftOff() + view.crossed();
  }

  /** The box around all marks, in plan units. */
  Bounds bounds() {
    return Strokes.of(view.drawing().marks(), view.unitsPerMm()).bounds();
  }

  /** The drawing as a group in the middle of a field. */
  Mark in(Bounds field, String name) {
    double mmPerUnit = 1 / view.unitsPerMm();
    Bounds box = bounds();
    Point middle = box.isEmpty() ? new Point(0, 0) : box.middle();
    Point origin = field.middle().minus(middle.times(mmPerUnit));
    return new Mark.Group(name, new Placement(origin, mmPerUnit, 0), view.drawing().marks());
  }

  private static List<PaperScale> scales(
      LengthUnit unit, Bounds solid, double widthMm, double heightMm) {
    List<PaperScale> fitting =
        PaperScale.of(unit).stream()
            .filter(s -> fits(solid, widthMm, heightMm, s.unitsPerMm(unit)))
            .limit(TRIED)
            .toList();
    double ratio = unit.toMillimetres(Math.max(solid.width() / widthMm, solid.height() / heightMm));
    return fitting.isEmpty() ? List.of(PaperScale.round(ratio)) : fitting;
  }

  /** Lettering may stand in any window of the field's size that holds the lines. */
  private static <V extends View> FittedView<V> at(
      PaperScale scale,
      LengthUnit unit,
      Bounds solid,
      double widthMm,
      double heightMm,
      Painter<V> painter) {
    double unitsPerMm = scale.unitsPerMm(unit);
    double width = widthMm * unitsPerMm;
    double height = heightMm * unitsPerMm;
    Bounds anywhere =
        new Bounds(
            solid.maxX() - width,
            solid.maxY() - height,
            solid.minX() + width,
            solid.minY() + height);
    FittedView<V> fitted = new FittedView<>(painter.at(unitsPerMm, anywhere), scale);
    if (fits(fitted.bounds(), widthMm, heightMm, unitsPerMm)) {
      return fitted;
    }
    double marginX = (width - solid.width()) / 2;
    double marginY = (height - solid.height()) / 2;
    Bounds centred =
        new Bounds(
            solid.minX() - marginX,
            solid.minY() - marginY,
            solid.maxX() + marginX,
            solid.maxY() + marginY);
    return new FittedView<>(painter.at(unitsPerMm, centred), scale);
  }

  private static boolean fits(Bounds box, double widthMm, double heightMm, double unitsPerMm) {
    return box.width() <= widthMm * unitsPerMm && box.height() <= heightMm * unitsPerMm;
  }
}
