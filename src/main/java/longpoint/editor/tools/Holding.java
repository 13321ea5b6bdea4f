package longpoint.editor.tools;

import java.util.Optional;
import java.util.Set;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Modifier;
import longpoint.editor.Overlay;
import longpoint.editor.Pointer;
import longpoint.editor.PointerShape;
import longpoint.editor.Ref;
import longpoint.editor.Scene;
import longpoint.editor.Selection;
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
          ? dragging(dragged.pointer(), event, scene)
          : Step.to(this);
    }
    if (event instanceof Event.Released released) {
      return pulled(from, released.pointer())
          ? dragging(released.pointer(), event, scene)
          : let(released.pointer(), scene);
    }
    if (event instanceof Event.Moved || event instanceof Event.Pressed) {
      return new Selecting().on(event, scene);
    }
    return Step.to(this);
  }

  /** A click that was no drag; with Shift or Control it adds or takes away. */
  private Step let(Pointer pointer, Scene scene) {
    Step step = Step.to(new Selecting(Optional.of(held), Optional.of(pointer), 0));
    return pointer.holds(Modifier.CONTROL) || pointer.holds(Modifier.SHIFT)
        ? step.selecting(scene.selection().toggled(held))
        : step;
  }

  static boolean pulled(Point from, Pointer pointer) {
    return pointer.at().distance(from) > pointer.reach();
  }

  /** What is dragged is picked, whether or not its press has done so. */
  private Step dragging(Pointer pointer, Event event, Scene scene) {
    Step step = drag(pointer, scene).on(event, scene);
    boolean picked = scene.selection().contains(held) || step.selection().isPresent();
    return picked ? step : step.selecting(Selection.of(held));
  }

  private ToolState drag(Pointer pointer, Scene scene) {
    boolean parts = scene.selection().refs().stream().allMatch(Ref.OfPart.class::isInstance);
    if (scene.selection().refs().size() > 1 && scene.selection().contains(held) && !parts) {
      return DraggingSeveral.from(scene.selection(), from, scene.plan());
    }
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
  public PointerShape shape(Scene scene) {
    return Pointing.over(Optional.of(held), scene.plan());
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
