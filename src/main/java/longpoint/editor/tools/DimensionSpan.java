package longpoint.editor.tools;

import java.util.Optional;
import java.util.Set;
import longpoint.editor.Aim;
import longpoint.editor.Ends;
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

/**
 * A dimension waits for its second end.
 *
 * @param from the first end
 * @param pointed where the pointer is
 */
record DimensionSpan(Point from, Snap pointed) implements ToolState {
  /** How a dimension begins. */
  static final Opening BEGINNING =
      new Opening() {
        @Override
        public Step begin(Snap here, Pointer pointer, FirstPoint waiting, Scene scene) {
          return Step.to(new DimensionSpan(here.at(), here));
        }

        @Override
        public String invites(Scene scene) {
          return Messages.text("dimension.first");
        }
      };

  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Typed typed) {
      return PartGesture.MOVE
          .typed(typed.entry(), pointed.at().minus(from))
          .map(pull -> new DimensionSpan(from, Snap.free(from.plus(pull.step()))))
          .map(next -> Step.to(next.placing(scene)))
          .orElseGet(() -> Step.refuse(this, Messages.text("gesture.direction")));
    }
    if (!(event instanceof Event.Pointing pointing) || event instanceof Event.DoubleClicked) {
      return Step.to(this);
    }
    Pointer pointer = pointing.pointer();
    Snap snap = Snapper.snap(scene.plan(), scene.settings(), Aim.at(pointer).lineFrom(from));
    DimensionSpan next = new DimensionSpan(from, snap);
    boolean ends =
        event instanceof Event.Pressed
            || event instanceof Event.Released && Holding.pulled(from, pointer);
    return ends && !snap.at().equals(from) ? Step.to(next.placing(scene)) : Step.to(next);
  }

  private ToolState placing(Scene scene) {
    return new DimensionPlacing(
        Ends.at(scene.plan(), from), Ends.at(scene.plan(), pointed.at()), pointed);
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.of(new FirstPoint(BEGINNING, Optional.of(pointed)));
  }

  @Override
  public Optional<Point> keyed(Scene scene) {
    return Optional.of(pointed.at());
  }

  @Override
  public Overlay overlay(Scene scene) {
    return Overlay.NONE
        .withLines(Rubber.lines(java.util.List.of(from, pointed.at())))
        .withDimensions(Rubber.length(from, pointed.at(), scene.plan().unit()))
        .withSnap(Optional.of(pointed));
  }

  @Override
  public String status(Scene scene) {
    return Messages.text("dimension.second");
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of(Entry.Kind.LENGTH, Entry.Kind.POLAR);
  }
}
