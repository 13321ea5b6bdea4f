package longpoint.editor.tools;

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
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Extras;
import longpoint.plan.Markup;
import longpoint.plan.Plan;
import longpoint.plan.PlanDimension;
import longpoint.plan.PlanDimension.Along;

/**
 * A dimension has both ends and its line follows the pointer. Pulled straight up or down from two
 * ends that do not lie level, it measures across the page; pulled sideways, up the page; else
 * straight from end to end. A typed length is how far the line stands off, to the side pointed to.
 */
record DimensionPlacing(PlanDimension.End from, PlanDimension.End to, Snap pointed)
    implements ToolState {
  /** Where a dimension line lies. */
  record Line(Along along, double offset) {}

  @Override
  public Step on(Event event, Scene scene) {
    if (ends(scene.plan()).isEmpty()) {
      return Step.revert(new FirstPoint(DimensionSpan.BEGINNING));
    }
    if (event instanceof Event.Moved || event instanceof Event.Dragged) {
      DimensionPlacing next = pointing(((Event.Pointing) event).pointer(), scene);
      return Step.preview(next, next.placed(next.line(scene.plan()), scene.plan()));
    }
    if (event instanceof Event.Pressed pressed) {
      DimensionPlacing next = pointing(pressed.pointer(), scene);
      return next.finish(next.line(scene.plan()), scene.plan());
    }
    if (event instanceof Event.Typed typed && typed.entry() instanceof Entry.Length length) {
      Line line = line(scene.plan());
      double off = Math.copySign(length.length(), line.offset());
      return finish(new Line(line.along(), off), scene.plan());
    }
    return Step.to(this);
  }

  private DimensionPlacing pointing(Pointer pointer, Scene scene) {
    Point origin = ends(scene.plan()).orElseThrow().from();
    Snap snap = Snapper.snap(scene.plan(), scene.settings(), Aim.at(pointer).boxFrom(origin));
    return new DimensionPlacing(from, to, snap);
  }

  private Optional<Segment> ends(Plan plan) {
    return from.at(plan)
        .flatMap(a -> to.at(plan).map(b -> new Segment(a, b)))
        .filter(s -> s.length() > 0);
  }

  private Line line(Plan plan) {
    return line(ends(plan).orElseThrow(), pointed.at());
  }

  /** The line that a place of the pointer stands for. */
  static Line line(Segment ends, Point p) {
    Bounds box = Bounds.of(java.util.List.of(ends.from(), ends.to()));
    boolean beside = p.y() >= box.minY() && p.y() <= box.maxY();
    boolean over = p.x() >= box.minX() && p.x() <= box.maxX();
    boolean skew = box.width() > 0 && box.height() > 0;
    Along along = !skew || beside == over ? Along.STRAIGHT : over ? Along.ACROSS : Along.UP;
    return new Line(along, offset(ends, along, p));
  }

  /** How far a place stands off from the first end, to the left of the direction measured in. */
  static double offset(Segment ends, Along along, Point p) {
    return p.minus(ends.from()).dot(PlanDimension.direction(ends, along).left());
  }

  private Plan placed(Line line, Plan plan) {
    Markup markup = plan.markup();
    PlanDimension fresh =
        new PlanDimension(
            markup.freshId("dimension"), from, to, line.along(), line.offset(), Extras.NONE);
    return plan.withMarkup(markup.with(fresh));
  }

  private Step finish(Line line, Plan plan) {
    return Step.commit(
            new FirstPoint(DimensionSpan.BEGINNING, Optional.of(pointed)),
            Messages.text("dimension.done"),
            placed(line, plan))
        .selecting(Selection.of(new Ref.OfDimension(plan.markup().freshId("dimension"))));
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.of(new FirstPoint(DimensionSpan.BEGINNING, Optional.of(pointed)));
  }

  @Override
  public Optional<Point> keyed(Scene scene) {
    return Optional.of(pointed.at());
  }

  @Override
  public Overlay overlay(Scene scene) {
    return Overlay.NONE.withSnap(Optional.of(pointed));
  }

  @Override
  public String status(Scene scene) {
    Along along = ends(scene.plan()).isPresent() ? line(scene.plan()).along() : Along.STRAIGHT;
    return Messages.text("dimension.line", Messages.text("along." + along.key()));
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of(Entry.Kind.LENGTH);
  }
}
