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
import longpoint.geometry.Ring;
import longpoint.plan.Part;
import longpoint.units.LengthText;

/**
 * A box waits for the corner across from its first. A typed size lies toward the pointer; a length
 * by itself is the width, and the next one the depth.
 *
 * @param first the corner that stands
 * @param width as typed; empty while it follows the pointer
 * @param pointed where the pointer is
 */
record OppositeCorner(BoxUse use, Point first, Optional<Double> width, Snap pointed)
    implements ToolState {
  OppositeCorner(BoxUse use, Point first, Snap pointed) {
    this(use, first, Optional.empty(), pointed);
  }

  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Moved || event instanceof Event.Dragged) {
      return stretch(snap(((Event.Pointing) event).pointer(), scene), scene);
    }
    if (event instanceof Event.Pressed pressed) {
      return finish(across(snap(pressed.pointer(), scene)), scene);
    }
    if (event instanceof Event.Released released) {
      // Press, drag, release draws a box as well; a plain click has no size yet.
      Snap snap = snap(released.pointer(), scene);
      return flat(across(snap)) ? Step.to(this) : finish(across(snap), scene);
    }
    if (event instanceof Event.Typed typed && typed.entry() instanceof Entry.Size size) {
      Point toward = pointed.at().minus(first);
      double right = Math.copySign(size.width(), toward.x());
      double up = Math.copySign(size.depth(), toward.y());
      return finish(first.plus(new Point(right, up)), scene);
    }
    if (event instanceof Event.Typed typed && typed.entry() instanceof Entry.Length length) {
      return width.isPresent() ? deep(length.length(), scene) : wide(length.length(), scene);
    }
    return Step.to(this);
  }

  private Step wide(double width, Scene scene) {
    return new OppositeCorner(use, first, Optional.of(width), pointed).stretch(pointed, scene);
  }

  private Step deep(double depth, Scene scene) {
    double up = Math.copySign(depth, pointed.at().y() - first.y());
    return finish(new Point(across(pointed).x(), first.y() + up), scene);
  }

  /** The corner that a place of the pointer stands for. */
  private Point across(Snap snap) {
    double toward = snap.at().x() - first.x();
    return width
        .map(w -> new Point(first.x() + Math.copySign(w, toward), snap.at().y()))
        .orElse(snap.at());
  }

  private Snap snap(Pointer pointer, Scene scene) {
    return Snapper.snap(scene.plan(), scene.settings(), Aim.at(pointer).boxFrom(first));
  }

  private Step stretch(Snap snap, Scene scene) {
    ToolState next = new OppositeCorner(use, first, width, snap);
    return part(across(snap), scene)
        .map(p -> Step.preview(next, scene.plan().withPart(p)))
        .orElse(Step.revert(next));
  }

  private Step finish(Point across, Scene scene) {
    if (flat(across)) {
      return Step.refuse(this, Messages.text("box.flat"));
    }
    Optional<Part> part = part(across, scene);
    if (part.isEmpty()) {
      return Step.refuse(this, use.text("outside"));
    }
    String name = use.text("done", part.get().name());
    return Step.commit(new FirstPoint(use), name, scene.plan().withPart(part.get()))
        .selecting(Selection.of(Ref.part(part.get().id())));
  }

  private boolean flat(Point across) {
    return across.x() == first.x() || across.y() == first.y();
  }

  private Optional<Part> part(Point across, Scene scene) {
    if (flat(across)) {
      return Optional.empty();
    }
    double left = Math.min(first.x(), across.x());
    double right = Math.max(first.x(), across.x());
    double low = Math.min(first.y(), across.y());
    double high = Math.max(first.y(), across.y());
    return use.part(scene.plan(), Ring.of(left, low, right, low, right, high, left, high));
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.of(
        width.isPresent()
            ? new OppositeCorner(use, first, pointed)
            : new FirstPoint(use, Optional.of(pointed)));
  }

  @Override
  public Optional<Point> keyed(Scene scene) {
    return Optional.of(pointed.at());
  }

  @Override
  public Overlay overlay(Scene scene) {
    Point to = across(pointed);
    Point beside = new Point(to.x(), first.y());
    Point above = new Point(first.x(), to.y());
    return Overlay.NONE
        .withLines(Rubber.lines(List.of(first, beside, to, above, first)))
        .withDimensions(Rubber.box(first, to, scene.plan().unit()))
        .withSnap(Optional.of(pointed));
  }

  @Override
  public String status(Scene scene) {
    return width
        .map(w -> Messages.text("box.depth", LengthText.of(w, scene.plan().unit())))
        .orElseGet(() -> use.text("second"));
  }

  @Override
  public Set<Entry.Kind> wants() {
    return width.isPresent()
        ? Set.of(Entry.Kind.LENGTH)
        : Set.of(Entry.Kind.SIZE, Entry.Kind.LENGTH);
  }
}
