package longpoint.editor.tools;

import java.util.Optional;
import java.util.Set;
import longpoint.editor.Aim;
import longpoint.editor.Entry;
import longpoint.editor.Pointer;
import longpoint.editor.Scene;
import longpoint.editor.Snap;
import longpoint.editor.Snapper;
import longpoint.editor.Step;

/** What a tool makes of its first point. */
interface Opening {
  /**
   * The button went down.
   *
   * @param here where the pointer is held
   * @param waiting the state it went down in, to go on waiting
   */
  Step begin(Snap here, Pointer pointer, FirstPoint waiting, Scene scene);

  /** Where the pointer is held while the tool waits. */
  default Snap hold(Pointer pointer, Scene scene) {
    return Snapper.snap(scene.plan(), scene.settings(), Aim.at(pointer));
  }

  /** Enter without a button: the gesture begins where the pointer is; empty where it cannot. */
  default Optional<Step> begin(Snap here, Scene scene) {
    return Optional.empty();
  }

  /** Figures typed before there is a first point; asked only when some are wanted. */
  default Step typed(Entry entry, Snap here, Scene scene) {
    return Step.to(new FirstPoint(this));
  }

  default Set<Entry.Kind> wantsFirst() {
    return Set.of();
  }

  /** What the pointer will do. */
  String invites(Scene scene);
}
