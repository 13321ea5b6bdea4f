package longpoint.editor;

import longpoint.geometry.Point;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.PlanDimension;

/** What the end of a dimension holds on to. */
public final class Ends {
  private Ends() {}

  /** The corner that stands at a place, of the part drawn last; without one the place itself. */
  public static PlanDimension.End at(Plan plan, Point place) {
    PlanDimension.End end = new PlanDimension.Place(place);
    for (Part part : plan.parts()) {
      for (int i = 0; i < part.sideCount(); i++) {
        if (part.side(i).from().equals(place)) {
          end = new PlanDimension.Corner(part.id(), i);
        }
      }
    }
    return end;
  }
}
