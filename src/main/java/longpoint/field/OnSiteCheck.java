package longpoint.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import longpoint.field.built.AsBuiltCheck;
import longpoint.field.supplied.SupplierCheck;
import longpoint.plan.Plan;
import longpoint.plan.Problem;

/**
 * What came of holding the plan against the site.
 *
 * @param walls as they were taped
 * @param trusses as the supplier lists them
 */
public record OnSiteCheck(AsBuiltCheck walls, SupplierCheck trusses) {
  public static final OnSiteCheck NONE = new OnSiteCheck(AsBuiltCheck.NONE, SupplierCheck.NONE);

  public OnSiteCheck {
    Objects.requireNonNull(walls);
    Objects.requireNonNull(trusses);
  }

  public List<Problem> problems(Plan plan) {
    List<Problem> problems = new ArrayList<>(walls.problems(plan));
    problems.addAll(trusses.problems());
    return problems;
  }
}
