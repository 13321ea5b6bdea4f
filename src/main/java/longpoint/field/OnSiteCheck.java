package longpoint.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import longpoint.field.built.AsBuiltCheck;
import longpoint.plan.Plan;
import longpoint.plan.Problem;

/**
 * What came of holding the plan against the site.
 *
 * @param walls as they were taped
 */
public record OnSiteCheck(AsBuiltCheck walls) {
  public static final OnSiteCheck NONE = new OnSiteCheck(AsBuiltCheck.NONE);

  public OnSiteCheck {
    Objects.requireNonNull(walls);
  }

  public List<Problem> problems(Plan plan) {
    return new ArrayList<>(walls.problems(plan));
  }
}
