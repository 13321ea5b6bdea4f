package longpoint.editor.tools;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.editor.Aim;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Overlay;
import longpoint.editor.Pointer;
import longpoint.editor.Ref;
import longpoint.editor.Scene;
import longpoint.editor.Selection;
import longpoint.editor.Snap;
import longpoint.editor.Snapper;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.units.LengthText;

/**
 * An addition is pulled out of a wall: along the wall for its width, away from it for its depth.
 *
 * @param wing as pulled so far
 * @param pointed where the pointer is
 */
record AdditionPull(Wing wing, Snap pointed) implements ToolState {
  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Moved || event instanceof Event.Dragged) {
      return stretch(pulled(((Event.Pointing) event).pointer(), scene), scene);
    }
    if (event instanceof Event.Pressed pressed) {
      return finish(pulled(pressed.pointer(), scene).wing, scene);
    }
    if (event instanceof Event.Released released) {
      AdditionPull pulled = pulled(released.pointer(), scene);
      return pulled.wing.hasSize() ? finish(pulled.wing, scene) : Step.to(this);
    }
    if (event instanceof Event.Typed typed && typed.entry() instanceof Entry.Size size) {
      return finish(sized(size), scene);
    }
    if (event instanceof Event.Typed typed && typed.entry() instanceof Entry.Length depth) {
      return finish(new Wing(wing.house(), wing.start(), wing.width(), depth.length()), scene);
    }
    return Step.to(this);
  }

  private AdditionPull pulled(Pointer pointer, Scene scene) {
    Segment wall = wing.wall(scene.plan());
    Point first = wall.from().plus(wall.direction().times(wing.start()));
    Snap snap = Snapper.snap(scene.plan(), scene.settings(), Aim.at(pointer).boxFrom(first));
    double along = Math.max(0, Math.min(wall.length(), wall.along(snap.at())));
    double out = Math.max(0, -wall.offset(snap.at()));
    return new AdditionPull(new Wing(wing.house(), wing.start(), along - wing.start(), out), snap);
  }

  private static Step stretch(AdditionPull pulled, Scene scene) {
    return pulled
        .wing
        .built(scene.plan())
        .map(plan -> Step.preview(pulled, plan))
        .orElse(Step.revert(pulled));
  }

  /** Toward the pointer; pulled straight out, with the pressed place in its middle. */
  private Wing sized(Entry.Size size) {
    return wing.width() == 0
        ? new Wing(wing.house(), wing.start() - size.width() / 2, size.width(), size.depth())
        : new Wing(
            wing.house(), wing.start(), Math.copySign(size.width(), wing.width()), size.depth());
  }

  private Step finish(Wing wing, Scene scene) {
    if (!wing.hasSize()) {
      return Step.refuse(this, Messages.text("addition.flat"));
    }
    if (!wing.fits(scene.plan())) {
      double length = wing.wall(scene.plan()).length();
      return Step.refuse(
          this, Messages.text("addition.wide", LengthText.of(length, scene.plan().unit())));
    }
    Part part = wing.part(scene.plan()).orElseThrow();
    return Step.commit(
            new AdditionStart(),
            Messages.text("draw.done", part.name()),
            wing.built(scene.plan()).orElseThrow())
        .selecting(Selection.of(Ref.part(part.id())));
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.of(new AdditionStart(Optional.of(wing.house()), Optional.of(pointed)));
  }

  @Override
  public Optional<Point> keyed(Scene scene) {
    return Optional.of(pointed.at());
  }

  @Override
  public Overlay overlay(Scene scene) {
    List<Overlay.Dimension> figures =
        wing.part(scene.plan())
            .map(p -> p.outline())
            .map(o -> Rubber.path(List.of(o.corner(0), o.corner(1), o.corner(2)), scene))
            .orElse(List.of());
    return Overlay.NONE.withDimensions(figures).withSnap(Optional.of(pointed));
  }

  @Override
  public String status(Scene scene) {
    return Messages.text("addition.pull");
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of(Entry.Kind.SIZE, Entry.Kind.LENGTH);
  }
}
