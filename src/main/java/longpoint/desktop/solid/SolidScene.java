package longpoint.desktop.solid;

import java.util.Set;
import longpoint.sheets.solid.RoofSolid;

/**
 * What there is to paint.
 *
 * @param shown what of the house is shown
 * @param picked subjects that stand out
 */
record SolidScene(RoofSolid house, Set<SolidLayer> shown, Set<String> picked) {
  SolidScene {
    shown = Set.copyOf(shown);
    picked = Set.copyOf(picked);
  }

  boolean shows(SolidLayer layer) {
    return shown.contains(layer);
  }
}
