package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Drawing;
import longpoint.drawing.Mark;
import longpoint.geometry.Bounds;
import longpoint.plan.Plan;
import longpoint.surface.RoofSurface;

/**
 * The roof with nothing on it but the names of the parts and the letters of the planes: where the
 * sheets that follow belong.
 */
record KeyPlan(Drawing drawing, double unitsPerMm, int leftOff) implements FittedView.View {
  /** In a field of paper, millimetres. */
  static FittedView<KeyPlan> of(Plan plan, RoofSurface surface, double widthMm, double heightMm) {
    return FittedView.of(
        plan.unit(),
        PlanView.solid(plan, surface),
        widthMm,
        heightMm,
        (mm, limit) -> within(plan, surface, mm, limit));
  }

  private static KeyPlan within(Plan plan, RoofSurface surface, double unitsPerMm, Bounds limit) {
    List<Mark> lines = new ArrayList<>(RoofMarks.walls(plan));
    lines.addAll(RoofMarks.lines(surface));
    Bounds solid = PlanView.solid(plan, surface);
    Clutter clutter = new Clutter(unitsPerMm, Math.max(solid.width(), solid.height()));
    clutter.take(clutter.shape(lines.toArray(Mark[]::new)));
    LabelPlaces places =
        new LabelPlaces(unitsPerMm, clutter, limit, PlanView.grounds(plan, surface));
    PlanLabels labels = new PlanLabels(plan, surface, unitsPerMm, places);
    List<Mark> all = new ArrayList<>(RoofMarks.tints(surface));
    all.addAll(lines);
    all.addAll(labels.letters());
    all.addAll(labels.names());
    return new KeyPlan(new Drawing(plan.title(), all), unitsPerMm, labels.leftOff());
  }

  @Override
  public int crossed() {
    return 0;
  }

  @Override
  public int figures() {
    return 0;
  }
}
