package longpoint.plan;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * What was measured and delivered, to be held against the plan. Nothing here changes the roof as it
 * is drawn.
 *
 * @param walls as they were taped
 * @param trusses as the supplier lists them
 */
public record OnSite(AsBuilt walls, Supplied trusses) {
  public static final OnSite NONE = new OnSite(AsBuilt.NONE, Supplied.NONE);

  public OnSite {
    Objects.requireNonNull(walls);
    Objects.requireNonNull(trusses);
  }

  public OnSite withWalls(AsBuilt walls) {
    return new OnSite(walls, trusses);
  }

  public OnSite withTrusses(Supplied trusses) {
    return new OnSite(walls, trusses);
  }

  /** With every corner changed; a reading goes when one of its corners becomes empty. */
  OnSite withCorners(Function<PlanDimension.Corner, Optional<PlanDimension.Corner>> edit) {
    return withWalls(walls.withCorners(edit));
  }
}
