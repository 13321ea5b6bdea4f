package longpoint.editor.tools;

import java.util.Optional;
import java.util.Set;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Overlay;
import longpoint.editor.Pointer;
import longpoint.editor.Ref;
import longpoint.editor.Scene;
import longpoint.editor.Snap;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.geometry.Point;

/**
 * The button is down on something that may be dragged. A drag counts once it leaves reach, so that
 * an unsteady click moves nothing; whoever comes back within reach has moved nothing either.
 *
 * @param held what the button went down on
 * @param from where
 */
record Holding(Ref held, Point from) implements ToolState {
  @Override
  public Step on(Event event, Scene scene) {
    if (!held.in(scene.plan())) {
      return Step.revert(new Selecting());
    }
    if (event instanceof Event.Dragged dragged) {
      return pulled(from, dragged.pointer())
          ? drag(dragged.pointer(), scene).on(event, scene)
          : Step.to(this);
    }
    if (event instanceof Event.Released released) {
      return pulled(from, released.pointer())
          ? drag(released.pointer(), scene).on(event, scene)
          : Step.to(new Selecting(Optional.of(held)));
    }
    if (event instanceof Event.Moved || event instanceof Event.Pressed) {
      return new Selecting().on(event, scene);
    }
    return Step.to(this);
  }

  static boolean pulled(Point from, Pointer pointer) {
    return pointer.at().distance(from) > pointer.reach();
  }

  private ToolState drag(Pointer pointer, Scene scene) {
    if (held.part().isEmpty()) {
      MarkupGrip grip = MarkupGrip.of(held, scene.plan(), from, pointer.reach());
      return new DraggingMarkup(held, grip, from);
    }
    Snap here = Snap.free(from);
    if (held instanceof Ref.OfCorner corner) {
      return new DraggingCorner(corner, from, here);
    }
    return held instanceof Ref.OfSide side
        ? new DraggingSide(side, from, scene.settings().neighbours())
        : DraggingParts.from(held, from, scene);
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.of(new Selecting(Optional.of(held)));
  }

  @Override
  public Overlay overlay(Scene scene) {
    return Overlay.NONE
        .withHover(Optional.of(held).filter(h -> h.in(scene.plan())))
        .withHandles(Selecting.handles(scene));
  }

  @Override
  public String status(Scene scene) {
    return Messages.text("select.holding");
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of();
  }
}
