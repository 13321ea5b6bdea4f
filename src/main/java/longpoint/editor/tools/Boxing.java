package longpoint.editor.tools;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Overlay;
import longpoint.editor.Picker;
import longpoint.editor.Ref;
import longpoint.editor.Scene;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;

/**
 * A selection box is pulled: what lies wholly inside is added to the selection; pulled from right
 * to left, whatever it touches.
 *
 * @param from where the button went down
 * @param to where the pointer is
 */
record Boxing(Point from, Point to) implements ToolState {
  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Dragged dragged) {
      return Step.to(new Boxing(from, dragged.pointer().at()));
    }
    if (event instanceof Event.Released released) {
      Bounds box = Bounds.of(List.of(from, released.pointer().at()));
      boolean touching = released.pointer().at().x() < from.x();
      List<Ref> found =
          touching ? Picker.touched(scene.plan(), box) : Picker.inside(scene.plan(), box);
      return Step.to(new Selecting()).selecting(scene.selection().with(found));
    }
    if (event instanceof Event.Moved || event instanceof Event.Pressed) {
      // The button came up out of sight.
      return new Selecting().on(event, scene);
    }
    return Step.to(this);
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.of(new Selecting());
  }

  @Override
  public Overlay overlay(Scene scene) {
    return Overlay.NONE.withBox(Bounds.of(List.of(from, to)));
  }

  @Override
  public String status(Scene scene) {
    return Messages.text(to.x() < from.x() ? "select.box.touching" : "select.box");
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of();
  }
}
