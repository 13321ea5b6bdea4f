package longpoint.editor.tools;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Modifier;
import longpoint.editor.Overlay;
import longpoint.editor.PartCommands;
import longpoint.editor.Picker;
import longpoint.editor.PlanCommands;
import longpoint.editor.Pointer;
import longpoint.editor.Ref;
import longpoint.editor.Scene;
import longpoint.editor.Selection;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.editor.WallName;
import longpoint.geometry.Point;
import longpoint.plan.Part;
import longpoint.plan.Plan;

/**
 * The pointer is over the plan and nothing is held. Delete takes away what is selected; arrow keys
 * move selected parts by a step of the grid.
 *
 * @param hover what a press would take hold of
 */
record Selecting(Optional<Ref> hover) implements ToolState {
  Selecting() {
    this(Optional.empty());
  }

  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Moved moved) {
      return Step.to(new Selecting(under(moved.pointer(), scene)));
    }
    if (event instanceof Event.Pressed pressed) {
      return press(pressed.pointer(), scene);
    }
    if (event instanceof Event.Pressing pressing) {
      return key(pressing.key(), scene);
    }
    return Step.to(this);
  }

  static Optional<Ref> under(Pointer pointer, Scene scene) {
    // Handles of what is picked come first: they often lie on corners.
    return scene.selection().besides().stream()
        .filter(r -> MarkupGrip.near(r, scene.plan(), pointer.at(), pointer.reach()))
        .findFirst()
        .or(() -> Picker.pick(scene.plan(), pointer.at(), pointer.reach()));
  }

  private static Step press(Pointer pointer, Scene scene) {
    Optional<Ref> hit = under(pointer, scene);
    if (hit.isEmpty()) {
      Step box = Step.to(new Boxing(pointer.at(), pointer.at()));
      return pointer.holds(Modifier.SHIFT) ? box : box.selecting(Selection.NONE);
    }
    Step held = Step.to(new Holding(hit.get(), pointer.at()));
    if (pointer.holds(Modifier.SHIFT)) {
      return held.selecting(scene.selection().toggled(hit.get()));
    }
    // What is selected already stays so with all the rest, to be dragged together.
    return scene.selection().contains(hit.get()) ? held : held.selecting(Selection.of(hit.get()));
  }

  private Step key(Event.Key key, Scene scene) {
    if (key == Event.Key.DELETE || key == Event.Key.BACKSPACE) {
      return new Step(
          this, PlanCommands.delete(scene.selection()).on(scene.plan()), Optional.empty());
    }
    double step = scene.settings().grid() > 0 ? scene.settings().grid() : 1;
    return Compass.arrow(key).map(along -> nudge(along.times(step), scene)).orElse(Step.to(this));
  }

  private Step nudge(Point by, Scene scene) {
    List<String> parts = scene.selection().parts();
    return new Step(
        this, PartCommands.move(scene.plan(), parts, by).on(scene.plan()), Optional.empty());
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.empty();
  }

  @Override
  public Overlay overlay(Scene scene) {
    return Overlay.NONE
        .withHover(hover.filter(h -> h.in(scene.plan())))
        .withHandles(handles(scene));
  }

  /**
   * Corners of everything selected, the middles of its sides, and handles of notes and the like.
   */
  static List<Overlay.Handle> handles(Scene scene) {
    List<Overlay.Handle> handles = new ArrayList<>();
    for (String id : scene.selection().touchedParts()) {
      Optional<Part> part = scene.plan().part(id);
      for (int i = 0; part.isPresent() && i < part.get().sideCount(); i++) {
        Point corner = part.get().side(i).from();
        Point middle = part.get().side(i).middle();
        handles.add(new Overlay.Handle(corner, Optional.of(Ref.corner(id, i))));
        handles.add(new Overlay.Handle(middle, Optional.of(Ref.side(id, i))));
      }
    }
    for (Ref ref : scene.selection().besides()) {
      MarkupGrip.handles(ref, scene.plan())
          .values()
          .forEach(at -> handles.add(new Overlay.Handle(at, Optional.of(ref))));
    }
    return handles;
  }

  @Override
  public String status(Scene scene) {
    return hover
        .filter(h -> h.in(scene.plan()))
        .map(h -> says(h, scene.plan()))
        .orElseGet(() -> Messages.text("select.status"));
  }

  private static String says(Ref ref, Plan plan) {
    if (ref.part().isEmpty()) {
      return Messages.text(
          ref instanceof Ref.OfNote
              ? "select.note"
              : ref instanceof Ref.OfDimension ? "select.dimension" : "select.backdrop");
    }
    Part part = plan.part(ref.part()).orElseThrow();
    if (ref instanceof Ref.OfCorner) {
      return Messages.text("select.corner", part.name());
    }
    return ref instanceof Ref.OfSide side
        ? Messages.text("select.side", WallName.of(plan, part, side.side()))
        : Messages.text("select.part", part.name());
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of();
  }
}
