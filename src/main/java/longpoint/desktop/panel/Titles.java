package longpoint.desktop.panel;

import longpoint.desktop.Texts;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;

/** Names of things as they begin a line. */
final class Titles {
  private Titles() {}

  /** E.g. "The north wall of House". */
  static String wall(Plan plan, Part part, int side) {
    return PlaceName.of(plan, part, side).sentence(Texts.language());
  }
}
