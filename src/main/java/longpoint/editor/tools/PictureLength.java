package longpoint.editor.tools;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Overlay;
import longpoint.editor.Scene;
import longpoint.editor.Snap;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.geometry.Point;
import longpoint.units.LengthText;

/** Two points of the picture wait for the true length between them. */
record PictureLength(Point first, Point second) implements ToolState {
  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Typed typed
        && typed.entry() instanceof Entry.Length length
        && scene.plan().markup().backdrop().isPresent()) {
      double factor = length.length() / first.distance(second);
      return PictureTools.commit(scene, b -> b.scaled(first, factor));
    }
    boolean enters = event instanceof Event.Pressing pressing && pressing.key() == Event.Key.ENTER;
    return enters || event instanceof Event.Pressed
        ? Step.refuse(this, status(scene))
        : Step.to(this);
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.of(new PictureLine(PictureTools.SCALE, first, Snap.free(second)));
  }

  @Override
  public Overlay overlay(Scene scene) {
    return Overlay.NONE
        .withLines(Rubber.lines(List.of(first, second)))
        .withDimensions(Rubber.length(first, second, scene.plan().unit()))
        .withHandles(
            List.of(
                new Overlay.Handle(first, Optional.empty()),
                new Overlay.Handle(second, Optional.empty())));
  }

  @Override
  public String status(Scene scene) {
    return Messages.text(
        "picture.length", LengthText.of(first.distance(second), scene.plan().unit()));
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of(Entry.Kind.LENGTH);
  }
}
