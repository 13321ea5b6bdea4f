package longpoint.desktop.panel;

import longpoint.editor.WallName;
import longpoint.plan.Part;

/** Names of things as they begin a line. */
final class Titles {
  private Titles() {}

  /** E.g. "The north wall of House". */
  static String wall(Part part, int side) {
    String name = WallName.of(part, side);
    int first = name.offsetByCodePoints(0, 1);
    return name.substring(0, first).toUpperCase(java.util.Locale.ROOT) + name.substring(first);
  }
}
