package longpoint.editor;

import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.wording.Language;

/** Walls as people on the site name them, in the language of the user's desktop. */
public final class WallName {
  private WallName() {}

  /** E.g. "the north wall of House", with a number where several face that way. */
  public static String of(Plan plan, Part part, int side) {
    return PlaceName.of(plan, part, side).in(Language.ofDesktop());
  }
}
