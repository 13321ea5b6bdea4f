package longpoint.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import longpoint.drawing.Drawing;
import longpoint.framing.FramingSet;
import longpoint.plan.Plan;
import longpoint.surface.RoofSurface;

/**
 * The roof plan in real size for a CAD program, lettered for a scale at which nothing is left off.
 * A CAD drawing has no edge of paper, so where the sheet's scale is too small for all dimensions
 * and labels, the lettering is made for a larger one.
 *
 * @param scale the lettering is made for
 * @param leftOff dimensions and labels that had no place even so
 */
public record ModelDrawing(Drawing drawing, PaperScale scale, int leftOff) {
  /**
   * @param sheet scale of the sheet, which is kept if it can be
   */
  public static ModelDrawing of(Plan plan, RoofSurface surface, PaperScale sheet) {
    ModelDrawing best = null;
    for (PaperScale scale : upFrom(sheet, plan)) {
      PlanView view = PlanView.of(plan, surface, scale.unitsPerMm(plan.unit()));
      if (best == null || view.leftOff() < best.leftOff()) {
        best = new ModelDrawing(view.drawing(), scale, view.leftOff());
      }
      if (best.leftOff() == 0) {
        break;
      }
    }
    return best;
  }

  /**
   * The frame in real size, by the same rule.
   *
   * @param sheet scale of the sheet, which is kept if it can be
   */
  public static ModelDrawing ofFrame(
      Plan plan, RoofSurface surface, FramingSet framing, PaperScale sheet) {
    ModelDrawing best = null;
    for (PaperScale scale : upFrom(sheet, plan)) {
      FrameView view = FrameView.of(plan, surface, framing, scale.unitsPerMm(plan.unit()));
      if (best == null || view.leftOff() < best.leftOff()) {
        best = new ModelDrawing(view.drawing(), scale, view.leftOff());
      }
      if (best.leftOff() == 0) {
        break;
      }
    }
    return best;
  }

  static List<PaperScale> upFrom(PaperScale sheet, Plan plan) {
    List<PaperScale> scales = new ArrayList<>(List.of(sheet));
    PaperScale.of(plan.unit()).stream()
        .filter(s -> s.ratio() < sheet.ratio())
        .sorted(Comparator.comparingDouble(PaperScale::ratio).reversed())
        .forEach(scales::add);
    return scales;
  }
}
