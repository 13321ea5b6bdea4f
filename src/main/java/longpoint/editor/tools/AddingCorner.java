package longpoint.editor.tools;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.editor.Aim;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Overlay;
import longpoint.editor.Picker;
import longpoint.editor.Pointer;
import longpoint.editor.Ref;
import longpoint.editor.Scene;
import longpoint.editor.Snap;
import longpoint.editor.Snapper;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.editor.WallName;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Reshape;
import longpoint.units.LengthText;

/**
 * A side waits to be split: a click puts a corner on it. A typed length is laid off from the end of
 * the side nearer to the pointer.
 *
 * @param side the side under the pointer
 * @param at the place on it
 */
record AddingCorner(Optional<Ref.OfSide> side, Point at) implements ToolState {
  /**
   * How far off a wall a snapped place may lie, as a share of the wall's length, and still be on
   * it: what a few roundings of a double leave, some ten thousand times over.
   */
  private static final double ON_THE_WALL = 1e-12;

  AddingCorner() {
    this(Optional.empty(), new Point(0, 0));
  }

  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Moved moved) {
      return Step.to(under(moved.pointer(), scene));
    }
    if (event instanceof Event.Pressed pressed) {
      AddingCorner here = under(pressed.pointer(), scene);
      return here.side.isEmpty() ? Step.to(here) : here.split(here.at, scene);
    }
    if (event instanceof Event.Typed typed && typed.entry() instanceof Entry.Length length) {
      AddingCorner here = onSomeSide(scene);
      return here.wall(scene.plan())
          .map(wall -> here.laidOff(wall, length.length(), scene))
          .orElse(Step.to(this));
    }
    return Step.to(this);
  }

  /** Away from every side, the one that is picked, from its start. */
  private AddingCorner onSomeSide(Scene scene) {
    Optional<Ref.OfSide> picked = Chosen.side(scene);
    return side.isPresent() || picked.isEmpty()
        ? this
        : new AddingCorner(
            picked, new AddingCorner(picked, at).wall(scene.plan()).orElseThrow().from());
  }

  private static AddingCorner under(Pointer pointer, Scene scene) {
    Optional<Ref.OfSide> side = Picker.side(scene.plan(), pointer.at(), pointer.reach());
    Optional<Segment> under = new AddingCorner(side, pointer.at()).wall(scene.plan());
    if (under.isEmpty()) {
      return new AddingCorner(Optional.empty(), pointer.at());
    }
    Segment wall = under.get();
    Snap snap = Snapper.snap(scene.plan(), scene.settings(), Aim.at(pointer));
    boolean onIt = wall.distance(snap.at()) <= ON_THE_WALL * wall.length();
    Point at =
        onIt ? snap.at() : wall.from().plus(wall.direction().times(wall.along(pointer.at())));
    return new AddingCorner(side, at);
  }

  private Step laidOff(Segment wall, double length, Scene scene) {
    if (length >= wall.length()) {
      return Step.refuse(
          this, Messages.text("corner.long", LengthText.of(wall.length(), scene.plan().unit())));
    }
    boolean fromStart = wall.along(at) <= wall.length() / 2;
    Point step = wall.direction().times(length);
    return split(fromStart ? wall.from().plus(step) : wall.to().minus(step), scene);
  }

  private Step split(Point corner, Scene scene) {
    Ref.OfSide ref = side.orElseThrow();
    Segment wall = wall(scene.plan()).orElseThrow();
    if (corner.equals(wall.from()) || corner.equals(wall.to())) {
      return Step.refuse(this, Messages.text("corner.there"));
    }
    Plan plan = scene.plan();
    Part part = plan.part(ref.part()).orElseThrow();
    return Reshape.insertCorner(part, ref.side(), corner)
        .map(
            p ->
                Step.commit(
                    new AddingCorner(),
                    Messages.text("corner.done", WallName.of(plan, part, ref.side())),
                    plan.withPart(p)))
        .orElseGet(() -> Step.refuse(this, Messages.text("refuse.shape")));
  }

  private Optional<Segment> wall(Plan plan) {
    return side.filter(s -> s.in(plan))
        .flatMap(s -> plan.part(s.part()).map(p -> p.side(s.side())))
        .filter(w -> w.length() > 0);
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.empty();
  }

  @Override
  public Overlay overlay(Scene scene) {
    if (side.isEmpty() && Chosen.side(scene).isPresent()) {
      return onSomeSide(scene).overlay(scene);
    }
    Optional<Segment> wall = wall(scene.plan());
    if (wall.isEmpty()) {
      return Overlay.NONE;
    }
    return Overlay.NONE
        .withHover(side.map(s -> s))
        .withHandles(List.of(new Overlay.Handle(at, Optional.empty())))
        .withDimensions(Rubber.path(List.of(wall.get().from(), at, wall.get().to()), scene));
  }

  @Override
  public String status(Scene scene) {
    if (wall(scene.plan()).isPresent()) {
      return Messages.text("corner.here");
    }
    return Chosen.side(scene)
        .map(s -> WallName.of(scene.plan(), scene.plan().part(s.part()).orElseThrow(), s.side()))
        .map(name -> Messages.text("corner.picked", name))
        .orElseGet(() -> Messages.text("corner.status"));
  }

  @Override
  public Set<Entry.Kind> wants() {
    return side.isPresent() ? Set.of(Entry.Kind.LENGTH) : Set.of();
  }

  @Override
  public Set<Entry.Kind> wants(Scene scene) {
    return Chosen.side(scene).isPresent() ? Set.of(Entry.Kind.LENGTH) : wants();
  }
}
