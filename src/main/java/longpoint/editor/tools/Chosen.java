package longpoint.editor.tools;

import java.util.List;
import java.util.Optional;
import longpoint.editor.Picker;
import longpoint.editor.Pointer;
import longpoint.editor.Ref;
import longpoint.editor.Scene;
import longpoint.plan.Part;

/** Says which parts a gesture on whole parts is about. */
final class Chosen {
  private Chosen() {}

  /** The one side that is picked, if just that is. */
  static Optional<Ref.OfSide> side(Scene scene) {
    List<Ref> refs = scene.selection().refs();
    return refs.size() == 1 && refs.get(0) instanceof Ref.OfSide side && line(side, scene) > 0
        ? Optional.of(side)
        : Optional.empty();
  }

  private static double line(Ref.OfSide side, Scene scene) {
    return side.in(scene.plan())
        ? scene.plan().part(side.part()).orElseThrow().side(side.side()).length()
        : 0;
  }

  /**
   * Ids of the selected parts, else of the part under the pointer, else of the only part there is;
   * empty when that cannot be said.
   */
  static List<String> parts(Scene scene, Pointer pointer) {
    List<String> selected = scene.selection().touchedParts();
    if (!selected.isEmpty()) {
      return selected;
    }
    List<String> under =
        Picker.pick(scene.plan(), pointer.at(), pointer.reach()).map(Ref::part).stream()
            .filter(p -> !p.isEmpty())
            .toList();
    if (!under.isEmpty()) {
      return under;
    }
    List<Part> all = scene.plan().parts();
    return all.size() == 1 ? List.of(all.get(0).id()) : List.of();
  }
}
