package longpoint.editor.tools;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.editor.Entry;
import longpoint.editor.Messages;
import longpoint.editor.Overlay;
import longpoint.editor.PointerShape;
import longpoint.editor.Scene;
import longpoint.editor.Snap;
import longpoint.editor.ToolState;
import longpoint.geometry.Point;

/** What is picked follows the pointer, held by one of its corners, which snaps. */
interface Carrying extends ToolState {
  /** The corner that snaps, where it was. */
  Point handle();

  /** Where that corner goes. */
  Snap pointed();

  @Override
  default Optional<ToolState> back() {
    return Optional.of(new Selecting());
  }

  @Override
  default Overlay overlay(Scene scene) {
    return Overlay.NONE
        .withLines(Rubber.lines(List.of(handle(), pointed().at())))
        .withDimensions(Rubber.length(handle(), pointed().at(), scene.plan().unit()))
        .withSnap(Optional.of(pointed()));
  }

  @Override
  default PointerShape shape(Scene scene) {
    return PointerShape.MOVE;
  }

  @Override
  default String status(Scene scene) {
    return Rubber.by(handle(), pointed().at(), scene) + Messages.text("select.dragging");
  }

  @Override
  default Set<Entry.Kind> wants() {
    return Set.of(Entry.Kind.LENGTH, Entry.Kind.POLAR);
  }
}
