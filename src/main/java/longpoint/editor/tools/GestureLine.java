package longpoint.editor.tools;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import longpoint.editor.Aim;
import longpoint.editor.Duplicate;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Outcome;
import longpoint.editor.Overlay;
import longpoint.editor.Pointer;
import longpoint.editor.Ref;
import longpoint.editor.Scene;
import longpoint.editor.Snap;
import longpoint.editor.Snapper;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Attached;

/**
 * A gesture on whole parts follows the pointer from its first point.
 *
 * @param parts ids of the parts it is about
 * @param first the first point
 * @param pointed where the pointer is
 */
record GestureLine(PartGesture gesture, List<String> parts, Point first, Snap pointed)
    implements ToolState {
  GestureLine {
    parts = List.copyOf(parts);
  }

  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Moved || event instanceof Event.Dragged) {
      return follow(snap(((Event.Pointing) event).pointer(), scene), scene);
    }
    if (event instanceof Event.Pressed pressed) {
      Snap snap = snap(pressed.pointer(), scene);
      return snap.at().equals(first)
          ? Step.to(this)
          : finish(PartGesture.Pull.of(snap.at().minus(first)), scene);
    }
    if (event instanceof Event.Released released) {
      Snap snap = snap(released.pointer(), scene);
      boolean pulled = first.distance(released.pointer().at()) > released.pointer().reach();
      return pulled && !snap.at().equals(first)
          ? finish(PartGesture.Pull.of(snap.at().minus(first)), scene)
          : Step.to(this);
    }
    if (event instanceof Event.Typed typed) {
      return gesture
          .typed(typed.entry(), pointed.at().minus(first))
          .map(pull -> finish(pull, scene))
          .orElseGet(() -> Step.refuse(this, Messages.text("gesture.direction")));
    }
    return Step.to(this);
  }

  private Snap snap(Pointer pointer, Scene scene) {
    Set<Ref> moving =
        Attached.with(scene.plan(), parts).stream().map(Ref::part).collect(Collectors.toSet());
    boolean stays = gesture == PartGesture.COPY || gesture == PartGesture.MIRROR;
    Aim aim = Aim.at(pointer).lineFrom(first).leavingOut(stays ? Set.of() : moving);
    return Snapper.snap(scene.plan(), scene.settings(), aim);
  }

  private Step follow(Snap snap, Scene scene) {
    ToolState next = new GestureLine(gesture, parts, first, snap);
    if (snap.at().equals(first)) {
      return Step.revert(next);
    }
    Outcome outcome = outcome(PartGesture.Pull.of(snap.at().minus(first)), scene);
    return outcome instanceof Outcome.Commit commit
        ? Step.preview(next, commit.plan())
        : Step.revert(next);
  }

  private Step finish(PartGesture.Pull pull, Scene scene) {
    Step step = new Step(new FirstPoint(gesture), outcome(pull, scene), Optional.empty());
    return Duplicate.copies(step.plan(), scene.plan()).map(step::selecting).orElse(step);
  }

  private Outcome outcome(PartGesture.Pull pull, Scene scene) {
    return gesture.command(scene.plan(), parts, first, pull).on(scene.plan());
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.of(new FirstPoint(gesture, Optional.of(pointed)));
  }

  @Override
  public Optional<Point> keyed(Scene scene) {
    return Optional.of(pointed.at());
  }

  @Override
  public Overlay overlay(Scene scene) {
    return Overlay.NONE
        .withLines(Rubber.lines(List.of(first, pointed.at())))
        .withDimensions(figure(scene))
        .withSnap(Optional.of(pointed));
  }

  private List<Overlay.Dimension> figure(Scene scene) {
    if (pointed.at().equals(first)) {
      return List.of();
    }
    PartGesture.Pull pull = PartGesture.Pull.of(pointed.at().minus(first));
    Segment line = new Segment(first, pointed.at());
    return List.of(new Overlay.Dimension(line, gesture.figure(pull, scene.plan())));
  }

  @Override
  public String status(Scene scene) {
    boolean moves = gesture == PartGesture.MOVE || gesture == PartGesture.COPY;
    return moves
        ? Rubber.by(first, pointed.at(), scene) + gesture.text("second")
        : gesture.text("second");
  }

  @Override
  public Set<Entry.Kind> wants() {
    return gesture.wants();
  }
}
