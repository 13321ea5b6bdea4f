package longpoint.editor.tools;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import longpoint.editor.Aim;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Modifier;
import longpoint.editor.Overlay;
import longpoint.editor.Picker;
import longpoint.editor.Pointer;
import longpoint.editor.PointerShape;
import longpoint.editor.Ref;
import longpoint.editor.Scene;
import longpoint.editor.Selection;
import longpoint.editor.Slide;
import longpoint.editor.Snap;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.editor.WallName;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Attached;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Reshape;
import longpoint.units.LengthText;

/**
 * A side follows the pointer, parallel to itself; its neighbours stretch or swing, as is set (Shift
 * turns that over), and additions that stand against it go along. A typed length moves it that far,
 * to the side it was pulled to.
 *
 * @param from where the button went down
 * @param slide how far it has come
 * @param neighbours what the walls beside it do
 */
record DraggingSide(Ref.OfSide side, Point from, Slide slide, Reshape.Neighbours neighbours)
    implements ToolState {
  DraggingSide(Ref.OfSide side, Point from, Reshape.Neighbours neighbours) {
    this(side, from, new Slide(0, Snap.free(from)), neighbours);
  }

  private static Reshape.Neighbours held(Pointer pointer, Scene scene) {
    Reshape.Neighbours set = scene.settings().neighbours();
    return pointer.holds(Modifier.SHIFT) ? set.other() : set;
  }

  @Override
  public Step on(Event event, Scene scene) {
    if (wall(scene.plan()).isEmpty()) {
      return Step.revert(new Selecting());
    }
    if (event instanceof Event.Dragged dragged) {
      return follow(dragged.pointer(), scene);
    }
    if (event instanceof Event.Released released) {
      DraggingSide last = new DraggingSide(side, from, slide, held(released.pointer(), scene));
      return Holding.pulled(from, released.pointer())
          ? last.finish(slide(released.pointer(), scene).outward(), scene)
          : Step.revert(new Selecting());
    }
    if (event instanceof Event.Typed typed
        && typed.entry() instanceof Entry.Length length
        && slide.outward() != 0) {
      return finish(Math.copySign(length.length(), slide.outward()), scene);
    }
    if (event instanceof Event.Moved || event instanceof Event.Pressed) {
      return Step.revert(new Selecting());
    }
    return Step.to(this);
  }

  private Step follow(Pointer pointer, Scene scene) {
    if (!Holding.pulled(from, pointer)) {
      return Step.revert(new DraggingSide(side, from, held(pointer, scene)));
    }
    Slide slide = slide(pointer, scene);
    DraggingSide next = new DraggingSide(side, from, slide, held(pointer, scene));
    return next.moved(slide.outward(), scene)
        .map(part -> Step.preview(next, carried(part, slide.outward(), scene)))
        .orElse(Step.revert(next));
  }

  private Slide slide(Pointer pointer, Scene scene) {
    Part part = part(scene.plan());
    int before = Walls.before(part, side.side());
    int after = Walls.after(part, side.side());
    Segment wall = wall(scene.plan()).orElseThrow();
    Set<Ref> moving = new HashSet<>();
    moving.add(side);
    moving.add(Ref.side(part.id(), before));
    moving.add(Ref.side(part.id(), after));
    moving.add(Ref.corner(part.id(), side.side()));
    moving.add(Ref.corner(part.id(), after));
    Attached.against(scene.plan(), part.id(), wall).forEach(id -> moving.add(Ref.part(id)));
    Aim aim = Aim.at(pointer).leavingOut(moving);
    return Slide.of(scene.plan(), scene.settings(), aim, wall, from);
  }

  private Step finish(double outward, Scene scene) {
    if (outward == 0) {
      return Step.revert(new Selecting());
    }
    Optional<Part> moved = moved(outward, scene);
    if (moved.isEmpty()) {
      return Step.refuse(new Selecting(), Messages.text("refuse.shape"));
    }
    Plan plan = carried(moved.get(), outward, scene);
    Segment wall = wall(scene.plan()).orElseThrow();
    return Step.commit(new Selecting(), name(scene.plan(), side), plan)
        .selecting(again(plan, side.part(), wall, outward));
  }

  /** What undo calls it. */
  static String name(Plan plan, Ref.OfSide side) {
    Part part = plan.part(side.part()).orElseThrow();
    return Messages.text("side.moved", WallName.of(plan, part, side.side()));
  }

  /** The side again, which has another number if a return wall was put in before it. */
  static Selection again(Plan plan, String part, Segment wall, double outward) {
    Point middle = wall.middle().plus(wall.direction().left().times(-outward));
    Plan alone = plan.withParts(List.of(plan.part(part).orElseThrow()));
    return Picker.side(alone, middle, wall.length() / 2)
        .map(s -> Selection.of(s))
        .orElse(Selection.NONE);
  }

  private Optional<Part> moved(double outward, Scene scene) {
    return Reshape.moveSide(part(scene.plan()), side.side(), outward, neighbours);
  }

  /** The plan with the side moved, and whatever stands against it. */
  private Plan carried(Part moved, double outward, Scene scene) {
    Plan plan = scene.plan();
    Segment wall = wall(plan).orElseThrow();
    return Attached.carry(plan, plan.withPart(moved), side.part(), wall, outward);
  }

  private Part part(Plan plan) {
    return plan.part(side.part()).orElseThrow();
  }

  private Optional<Segment> wall(Plan plan) {
    return side.in(plan)
        ? Optional.of(part(plan).side(side.side())).filter(w -> w.length() > 0)
        : Optional.empty();
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.of(new Selecting());
  }

  @Override
  public Overlay overlay(Scene scene) {
    Optional<Segment> wall = wall(scene.plan());
    if (wall.isEmpty()) {
      return Overlay.NONE;
    }
    Optional<Part> moved = moved(slide.outward(), scene);
    Part part = part(scene.plan());
    List<Overlay.Dimension> figures = List.of();
    if (moved.isPresent() && moved.get().sideCount() == part.sideCount()) {
      Segment before = moved.get().side(Walls.before(part, side.side()));
      Segment after = moved.get().side(Walls.after(part, side.side()));
      figures = Rubber.path(List.of(before.from(), before.to(), after.from(), after.to()), scene);
    }
    return Overlay.NONE.withDimensions(figures).withSnap(Optional.of(slide.snap()));
  }

  @Override
  public PointerShape shape(Scene scene) {
    return wall(scene.plan()).map(Pointing::square).orElse(PointerShape.MOVE);
  }

  @Override
  public String status(Scene scene) {
    String far =
        Messages.text(
            slide.outward() < 0 ? "side.in" : "side.out",
            LengthText.of(Math.abs(slide.outward()), scene.plan().unit()));
    return far + " " + Messages.text("side." + neighbours.name().toLowerCase(Locale.ROOT));
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of(Entry.Kind.LENGTH);
  }
}
