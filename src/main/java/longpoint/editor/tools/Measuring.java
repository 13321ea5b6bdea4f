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
import longpoint.editor.Scene;
import longpoint.editor.Snap;
import longpoint.editor.Snapper;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;

/**
 * A tape from a point to a point. It never touches the plan.
 *
 * @param from where the tape is hooked; empty before the first click
 * @param to where it was read; empty while it follows the pointer
 * @param pointed where the pointer is
 */
record Measuring(Optional<Point> from, Optional<Point> to, Optional<Snap> pointed)
    implements ToolState {
  Measuring() {
    this(Optional.empty(), Optional.empty(), Optional.empty());
  }

  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Moved || event instanceof Event.Dragged) {
      Snap snap = snap(((Event.Pointing) event).pointer(), scene);
      return Step.to(new Measuring(from, to, Optional.of(snap)));
    }
    if (event instanceof Event.Pressed pressed) {
      Snap snap = snap(pressed.pointer(), scene);
      return Step.to(
          following()
              ? new Measuring(from, Optional.of(snap.at()), Optional.of(snap))
              : new Measuring(Optional.of(snap.at()), Optional.empty(), Optional.of(snap)));
    }
    if (event instanceof Event.Released released && following()) {
      Snap snap = snap(released.pointer(), scene);
      boolean pulled = from.get().distance(snap.at()) > released.pointer().reach();
      return pulled
          ? Step.to(new Measuring(from, Optional.of(snap.at()), Optional.of(snap)))
          : Step.to(this);
    }
    return Step.to(this);
  }

  private boolean following() {
    return from.isPresent() && to.isEmpty();
  }

  private Snap snap(Pointer pointer, Scene scene) {
    Aim aim = following() ? Aim.at(pointer).lineFrom(from.get()) : Aim.at(pointer);
    return Snapper.snap(scene.plan(), scene.settings(), aim);
  }

  @Override
  public boolean underWay() {
    return false; // a tape that lies there has done nothing
  }

  @Override
  public Optional<ToolState> back() {
    if (to.isPresent()) {
      return Optional.of(new Measuring(from, Optional.empty(), pointed));
    }
    return from.map(f -> new Measuring(Optional.empty(), Optional.empty(), pointed));
  }

  @Override
  public Optional<Point> keyed(Scene scene) {
    return Optional.of(pointed.map(Snap::at).orElse(new Point(0, 0)));
  }

  @Override
  public Overlay overlay(Scene scene) {
    Overlay over = Overlay.NONE;
    if (tape().isPresent()) {
      Segment tape = tape().get();
      over =
          over.withLines(List.of(new Overlay.Line(tape, Overlay.Style.TAPE)))
              .withDimensions(Rubber.length(tape.from(), tape.to(), scene.plan().unit()));
    }
    return over.withSnap(pointed);
  }

  private Optional<Segment> tape() {
    return from.flatMap(a -> to.or(() -> pointed.map(Snap::at)).map(b -> new Segment(a, b)));
  }

  @Override
  public String status(Scene scene) {
    if (tape().isEmpty()) {
      return Messages.text("measure.first");
    }
    Point a = tape().get().from();
    Point b = tape().get().to();
    LengthUnit unit = scene.plan().unit();
    return Messages.text(
        "measure.reads",
        LengthText.of(a.distance(b), unit),
        LengthText.of(Math.abs(b.x() - a.x()), unit),
        LengthText.of(Math.abs(b.y() - a.y()), unit),
        Rubber.degrees(a.equals(b) ? 0 : Compass.degrees(a, b)));
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of();
  }
}
