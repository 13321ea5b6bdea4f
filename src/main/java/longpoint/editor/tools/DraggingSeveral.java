package longpoint.editor.tools;

import java.util.Comparator;
import java.util.stream.Stream;
import longpoint.editor.Aim;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Pointer;
import longpoint.editor.Scene;
import longpoint.editor.Selection;
import longpoint.editor.Snap;
import longpoint.editor.Snapper;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.geometry.Point;
import longpoint.plan.Part;
import longpoint.plan.Plan;

/**
 * Several picked things follow the pointer together, as {@link Stretch} moves them: one end of a
 * house, say, with all its corners. The picked corner nearest to where they were taken hold of is
 * the one that snaps. A typed length moves them that far in the direction pointed in.
 *
 * @param picked what moves
 * @param from where the button went down
 * @param handle the corner that snaps, where it was
 * @param pointed where that corner goes
 */
record DraggingSeveral(Selection picked, Point from, Point handle, Snap pointed)
    implements Carrying {
  static DraggingSeveral from(Selection picked, Point from, Plan plan) {
    Point handle =
        picked.touchedParts().stream()
            .flatMap(id -> plan.part(id).stream())
            .flatMap(p -> corners(p, picked))
            .min(Comparator.comparingDouble(from::distance))
            .orElse(from);
    return new DraggingSeveral(picked, from, handle, Snap.free(handle));
  }

  private static Stream<Point> corners(Part part, Selection picked) {
    return picked.parts().contains(part.id())
        ? part.outline().points().stream()
        : Stretch.corners(part, picked).stream().map(c -> part.side(c).from());
  }

  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Dragged dragged) {
      return follow(dragged.pointer(), scene);
    }
    if (event instanceof Event.Released released) {
      return Holding.pulled(from, released.pointer())
          ? finish(snap(released.pointer(), scene).at().minus(handle), scene)
          : Step.revert(new Selecting());
    }
    if (event instanceof Event.Typed typed && !pointed.at().equals(handle)) {
      return PartGesture.MOVE
          .typed(typed.entry(), pointed.at().minus(handle))
          .map(pull -> finish(pull.step(), scene))
          .orElse(Step.to(this));
    }
    if (event instanceof Event.Moved || event instanceof Event.Pressed) {
      return Step.revert(new Selecting());
    }
    return Step.to(this);
  }

  private Step follow(Pointer pointer, Scene scene) {
    if (!Holding.pulled(from, pointer)) {
      return Step.revert(new DraggingSeveral(picked, from, handle, Snap.free(handle)));
    }
    Snap snap = snap(pointer, scene);
    ToolState next = new DraggingSeveral(picked, from, handle, snap);
    return Stretch.by(scene.plan(), picked, snap.at().minus(handle))
        .map(plan -> Step.preview(next, plan))
        .orElse(Step.revert(next));
  }

  private Snap snap(Pointer pointer, Scene scene) {
    Point at = handle.plus(pointer.at().minus(from));
    Aim aim =
        Aim.at(new Pointer(at, pointer.reach(), pointer.held()))
            .lineFrom(handle)
            .leavingOut(Stretch.moving(scene.plan(), picked.within(scene.plan())));
    return Snapper.snap(scene.plan(), scene.settings(), aim);
  }

  private Step finish(Point step, Scene scene) {
    if (step.length() == 0) {
      return Step.revert(new Selecting());
    }
    return Stretch.by(scene.plan(), picked, step)
        .map(plan -> Step.commit(new Selecting(), Stretch.name(scene.plan(), picked), plan))
        .orElseGet(() -> Step.refuse(new Selecting(), Messages.text("refuse.shape")));
  }
}
