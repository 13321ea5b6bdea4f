package longpoint.sheets;

import java.util.List;
import longpoint.drawing.Strokes;
import longpoint.geometry.Bounds;
import longpoint.plan.Plan;
import longpoint.surface.RoofSurface;

/**
 * A view at the largest standard scale at which it fits a field of paper, lettering and all.
 *
 * <p>A plan with very many walls needs more rows of dimensions the smaller it is drawn, and may fit
 * at no scale. Of the few largest scales at which walls and roof fit, the first that leaves nothing
 * off and lets strokes run through few figures is taken; else the one with fewest such faults, and
 * the sheet says how much is left off.
 */
record FittedView(PlanView view, PaperScale scale) {
  /**
   * Scales tried from the first at which walls and roof fit; a fifth would be too small to read.
   */
  private static final int TRIED = 4;

  /**
   * Share of the dimensions that may have a stroke through them before a smaller scale is tried.
   */
  private static final double CROSSED = 0.1;

  /**
   * @param widthMm of the field
   * @param heightMm of the field
   */
  static FittedView of(Plan plan, RoofSurface surface, double widthMm, double heightMm) {
    Bounds solid = PlanView.solid(plan, surface);
    if (solid.isEmpty()) {
      return at(PaperScale.usual(plan.unit()), plan, surface, widthMm, heightMm);
    }
    FittedView best = null;
    for (PaperScale scale : scales(plan, solid, widthMm, heightMm)) {
      FittedView view = at(scale, plan, surface, widthMm, heightMm);
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
    return view.leftOff() == 0 && view.crossed() <= CROSSED * view.dimensions().size();
  }

  /** What is left off, and what is hard to read. */
  private int faults() {
    return view.leftOff() + view.crossed();
  }

  /** The box around all marks, in plan units. */
  Bounds bounds() {
    return Strokes.of(view.drawing().marks(), view.unitsPerMm()).bounds();
  }

  private static List<PaperScale> scales(Plan plan, Bounds solid, double widthMm, double heightMm) {
    List<PaperScale> fitting =
        PaperScale.of(plan.unit()).stream()
            .filter(s -> fits(solid, widthMm, heightMm, s.unitsPerMm(plan.unit())))
            .limit(TRIED)
            .toList();
    double ratio =
        plan.unit().toMillimetres(Math.max(solid.width() / widthMm, solid.height() / heightMm));
    return fitting.isEmpty() ? List.of(PaperScale.round(ratio)) : fitting;
  }

  /** Lettering may stand in any window of the field's size that holds walls and roof. */
  private static FittedView at(
      PaperScale scale, Plan plan, RoofSurface surface, double widthMm, double heightMm) {
    double unitsPerMm = scale.unitsPerMm(plan.unit());
    Bounds solid = PlanView.solid(plan, surface);
    double width = widthMm * unitsPerMm;
    double height = heightMm * unitsPerMm;
    Bounds anywhere =
        new Bounds(
            solid.maxX() - width,
            solid.maxY() - height,
            solid.minX() + width,
            solid.minY() + height);
    PlanView free = PlanView.within(plan, surface, unitsPerMm, anywhere);
    FittedView fitted = new FittedView(free, scale);
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
    return new FittedView(PlanView.within(plan, surface, unitsPerMm, centred), scale);
  }

  private static boolean fits(Bounds box, double widthMm, double heightMm, double unitsPerMm) {
    return box.width() <= widthMm * unitsPerMm && box.height() <= heightMm * unitsPerMm;
  }
}
