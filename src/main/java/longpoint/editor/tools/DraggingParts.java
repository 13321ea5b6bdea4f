package longpoint.editor.tools;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import longpoint.editor.Aim;
import longpoint.editor.Command;
import longpoint.editor.Duplicate;
import longpoint.editor.Event;
import longpoint.editor.Modifier;
import longpoint.editor.Outcome;
import longpoint.editor.PartCommands;
import longpoint.editor.Pointer;
import longpoint.editor.Ref;
import longpoint.editor.Scene;
import longpoint.editor.Snap;
import longpoint.editor.Snapper;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.geometry.Point;
import longpoint.plan.Attached;
import longpoint.plan.Motion;

/**
 * Whole parts follow the pointer; with Control, copies of them do. The corner nearest to where they
 * were taken hold of is the one that snaps. A typed length moves them that far in the direction
 * pointed in.
 *
 * @param parts ids of the parts that move
 * @param from where the button went down
 * @param handle the corner that snaps, where it was
 * @param pointed where that corner goes
 */
record DraggingParts(List<String> parts, Point from, Point handle, Snap pointed)
    implements Carrying {
  DraggingParts {
    parts = List.copyOf(parts);
  }

  static DraggingParts from(Ref held, Point from, Scene scene) {
    List<String> parts =
        scene.selection().contains(held) ? scene.selection().parts() : List.of(held.part());
    Point handle =
        parts.stream()
            .flatMap(id -> scene.plan().part(id).stream())
            .flatMap(p -> p.outline().points().stream())
            .min(Comparator.comparingDouble(from::distance))
            .orElse(from);
    return new DraggingParts(parts, from, handle, Snap.free(handle));
  }

  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Dragged dragged) {
      return follow(dragged.pointer(), scene);
    }
    if (event instanceof Event.Released released) {
      return Holding.pulled(from, released.pointer())
          ? finish(snap(released.pointer(), scene).at(), released.pointer(), scene)
          : Step.revert(new Selecting());
    }
    if (event instanceof Event.Typed typed && !pointed.at().equals(handle)) {
      return PartGesture.MOVE
          .typed(typed.entry(), pointed.at().minus(handle))
          .map(pull -> commit(PartCommands.move(scene.plan(), parts, pull.step()), scene))
          .orElse(Step.to(this));
    }
    if (event instanceof Event.Moved || event instanceof Event.Pressed) {
      return Step.revert(new Selecting());
    }
    return Step.to(this);
  }

  private Step follow(Pointer pointer, Scene scene) {
    if (!Holding.pulled(from, pointer)) {
      return Step.revert(new DraggingParts(parts, from, handle, Snap.free(handle)));
    }
    Snap snap = snap(pointer, scene);
    ToolState next = new DraggingParts(parts, from, handle, snap);
    Outcome outcome = command(snap.at(), pointer, scene).on(scene.plan());
    return outcome instanceof Outcome.Commit commit
        ? Step.preview(next, commit.plan())
        : Step.revert(next);
  }

  private Snap snap(Pointer pointer, Scene scene) {
    Set<Ref> moving =
        Attached.with(scene.plan(), parts).stream().map(Ref::part).collect(Collectors.toSet());
    Point at = handle.plus(pointer.at().minus(from));
    Aim aim =
        Aim.at(new Pointer(at, pointer.reach(), pointer.held()))
            .lineFrom(handle)
            .leavingOut(moving);
    return Snapper.snap(scene.plan(), scene.settings(), aim);
  }

  private Command command(Point to, Pointer pointer, Scene scene) {
    Point by = to.minus(handle);
    return pointer.holds(Modifier.CONTROL)
        ? PartCommands.copy(scene.plan(), parts, Motion.shift(by))
        : PartCommands.move(scene.plan(), parts, by);
  }

  private Step finish(Point to, Pointer pointer, Scene scene) {
    return to.equals(handle)
        ? Step.revert(new Selecting())
        : commit(command(to, pointer, scene), scene);
  }

  private static Step commit(Command command, Scene scene) {
    Step step = new Step(new Selecting(), command.on(scene.plan()), Optional.empty());
    return Duplicate.copies(step.plan(), scene.plan()).map(step::selecting).orElse(step);
  }
}
