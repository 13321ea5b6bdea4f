package longpoint.editor.tools;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Modifier;
import longpoint.editor.Outcome;
import longpoint.editor.Overlay;
import longpoint.editor.Picker;
import longpoint.editor.PlanCommands;
import longpoint.editor.Pointer;
import longpoint.editor.PointerShape;
import longpoint.editor.Ref;
import longpoint.editor.Scene;
import longpoint.editor.Selection;
import longpoint.editor.SideCommands;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.editor.WallName;
import longpoint.geometry.Point;
import longpoint.plan.Part;
import longpoint.plan.Plan;

/**
 * The pointer is over the plan and nothing is held. Delete takes away what is selected, arrow keys
 * move it; Tab goes down through what lies under the pointer, Page Down and Page Up from thing to
 * thing, Enter into a part. A length typed with one side picked is that side's.
 *
 * @param hover what a press would take hold of
 * @param at where the pointer was last
 * @param deep how often Tab has gone down there
 */
record Selecting(Optional<Ref> hover, Optional<Pointer> at, int deep) implements ToolState {
  Selecting() {
    this(Optional.empty());
  }

  Selecting(Optional<Ref> hover) {
    this(hover, Optional.empty(), 0);
  }

  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Moved moved) {
      return Step.to(
          chosen(moved.pointer())
              ? this
              : new Selecting(under(moved.pointer(), scene), Optional.of(moved.pointer()), 0));
    }
    if (event instanceof Event.Typed typed && typed.entry() instanceof Entry.Length length) {
      return Chosen.side(scene).map(s -> length(s, length.length(), scene)).orElse(Step.to(this));
    }
    if (event instanceof Event.Pressed pressed) {
      return press(pressed.pointer(), scene);
    }
    if (event instanceof Event.Pressing pressing) {
      return key(pressing, scene);
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

  /** Whether Tab has chosen something here that a still hand keeps. */
  private boolean chosen(Pointer pointer) {
    return deep > 0
        && at.filter(a -> a.at().distance(pointer.at()) <= pointer.reach() / 2).isPresent();
  }

  private Step length(Ref.OfSide side, double length, Scene scene) {
    Outcome outcome =
        SideCommands.length(scene.plan(), side, length, scene.settings().givesWay())
            .on(scene.plan());
    return new Step(this, outcome, Optional.empty());
  }

  private Step press(Pointer pointer, Scene scene) {
    Optional<Ref> hit = chosen(pointer) ? hover : under(pointer, scene);
    if (hit.isEmpty()) {
      Step box = Step.to(new Boxing(pointer.at(), pointer.at()));
      return pointer.holds(Modifier.SHIFT) ? box : box.selecting(Selection.NONE);
    }
    Step held = Step.to(new Holding(hit.get(), pointer.at()));
    // What is selected already stays so with all the rest, to be dragged together; with Shift or
    // Control it is not known yet whether it is to be dragged or to be added.
    if (pointer.holds(Modifier.CONTROL) || pointer.holds(Modifier.SHIFT)) {
      return held;
    }
    return scene.selection().contains(hit.get()) ? held : held.selecting(Selection.of(hit.get()));
  }

  private Step key(Event.Pressing pressing, Scene scene) {
    return switch (pressing.key()) {
      case DELETE, BACKSPACE ->
          new Step(this, PlanCommands.delete(scene.selection()).on(scene.plan()), Optional.empty());
      case UP, DOWN, LEFT, RIGHT -> Nudge.by(pressing, this, scene);
      case TAB -> Step.to(deeper(scene.plan(), pressing.holds(Modifier.SHIFT) ? -1 : 1));
      case NEXT -> picking(Walking.on(scene.plan(), scene.selection(), 1));
      case PREVIOUS -> picking(Walking.on(scene.plan(), scene.selection(), -1));
      case ENTER -> picking(Walking.into(scene.plan(), scene.selection()));
      case ESCAPE -> Step.to(this);
    };
  }

  private Step picking(Optional<Ref> ref) {
    Step step = Step.to(this);
    return ref.map(r -> step.selecting(Selection.of(r))).orElse(step);
  }

  /** On to the next of all that lies under the pointer. */
  private Selecting deeper(Plan plan, int by) {
    List<Ref> all = at.map(a -> Picker.all(plan, a.at(), a.reach())).orElse(List.of());
    int now = hover.map(all::indexOf).orElse(-1);
    if (all.size() < 2) {
      return this;
    }
    int next = Math.floorMod(now + by, all.size());
    return new Selecting(Optional.of(all.get(next)), at, deep + 1);
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
    Plan plan = scene.plan();
    Optional<Ref> there = hover.filter(h -> h.in(plan));
    boolean onIt = Chosen.side(scene).map(s -> (Ref) s).equals(there);
    if (there.isPresent() && !onIt) {
      boolean more =
          at.filter(a -> Picker.all(plan, a.at(), a.reach()).size() > 1).isPresent()
              && !(there.get() instanceof Ref.OfPart);
      String says = says(there.get(), plan);
      return more ? says + " " + Messages.text("select.tab") : says;
    }
    if (Chosen.side(scene).isPresent()) {
      Part part = plan.part(Chosen.side(scene).get().part()).orElseThrow();
      int side = Chosen.side(scene).get().side();
      return Messages.text(
          "select.length",
          WallName.of(plan, part, side),
          scene.settings().givesWay().name(part.side(side)));
    }
    if (!scene.selection().isEmpty()) {
      return Messages.text("select.picked");
    }
    return Messages.text(plan.parts().isEmpty() ? "select.nothing" : "select.status");
  }

  @Override
  public PointerShape shape(Scene scene) {
    return Pointing.over(hover, scene.plan());
  }

  private static boolean leader(Ref.OfNote note, Plan plan) {
    return plan.markup().note(note.note()).filter(n -> n.pointsAt().isPresent()).isPresent();
  }

  private static String says(Ref ref, Plan plan) {
    if (ref.part().isEmpty()) {
      return Messages.text(
          ref instanceof Ref.OfNote note
              ? leader(note, plan) ? "select.note" : "select.note.plain"
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

  @Override
  public Set<Entry.Kind> wants(Scene scene) {
    return Chosen.side(scene).isPresent() ? Set.of(Entry.Kind.LENGTH) : Set.of();
  }
}
