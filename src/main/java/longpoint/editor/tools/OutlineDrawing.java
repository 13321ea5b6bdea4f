package longpoint.editor.tools;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.editor.Aim;
import longpoint.editor.ArrowStep;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.NewPart;
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
import longpoint.plan.Plan;
import longpoint.units.LengthText;

/**
 * An outline grows corner by corner. A typed length is laid off in the direction pointed in.
 *
 * @param corners drawn so far, at least one
 * @param pointed where the next one would be
 * @param aimed what has pointed there: after keys Enter puts the corner, else it closes
 */
record OutlineDrawing(List<Point> corners, Snap pointed, Aimed aimed) implements ToolState {
  /** What has pointed to where the next corner would be. */
  enum Aimed {
    BY_POINTER,
    BY_KEYS
  }

  /** How an outline begins. */
  static final Opening BEGINNING =
      new Opening() {
        @Override
        public Step begin(Snap here, Pointer pointer, FirstPoint waiting, Scene scene) {
          return Step.to(new OutlineDrawing(List.of(here.at()), here));
        }

        @Override
        public Optional<Step> begin(Snap here, Scene scene) {
          return Optional.of(Step.to(new OutlineDrawing(List.of(here.at()), here)));
        }

        @Override
        public String invites(Scene scene) {
          return Messages.text("outline.start");
        }
      };

  OutlineDrawing {
    corners = List.copyOf(corners);
  }

  OutlineDrawing(List<Point> corners, Snap pointed) {
    this(corners, pointed, Aimed.BY_POINTER);
  }

  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Moved moved) {
      return new OutlineDrawing(corners, snap(moved.pointer(), scene)).shown(scene);
    }
    if (event instanceof Event.Dragged dragged) {
      return new OutlineDrawing(corners, snap(dragged.pointer(), scene)).shown(scene);
    }
    if (event instanceof Event.Pressed pressed) {
      return press(pressed.pointer(), scene);
    }
    if (event instanceof Event.DoubleClicked) {
      return corners.size() >= 3 ? close(scene) : Step.to(this);
    }
    if (event instanceof Event.Typed typed) {
      return typed(typed.entry(), scene);
    }
    if (event instanceof Event.Pressing pressing) {
      return key(pressing, scene);
    }
    return Step.to(this);
  }

  private Step key(Event.Pressing pressing, Scene scene) {
    double step = ArrowStep.of(pressing, scene).length();
    return switch (pressing.key()) {
      case ENTER -> arrowed() ? add(pointed.at(), scene) : close(scene);
      case BACKSPACE ->
          shorter() instanceof OutlineDrawing less ? less.shown(scene) : Step.revert(shorter());
      default ->
          Compass.arrow(pressing.key())
              .map(along -> arrow(along, step, scene))
              .orElse(Step.to(this));
    };
  }

  /** The answer that shows what closing the outline here would make, where it could stand. */
  private Step shown(Scene scene) {
    List<Point> closed = new ArrayList<>(corners);
    if (!pointed.at().equals(last()) && !pointed.at().equals(corners.get(0))) {
      closed.add(pointed.at());
    }
    return Loop.wrong(closed).isEmpty()
        ? Step.preview(this, scene.plan().withPart(part(closed, scene.plan())))
        : Step.revert(this);
  }

  /**
   * Points in the direction of an arrow key, for a length to be typed. Keys go on from where keys
   * have come to: the same arrow draws the side longer, its opposite shorter.
   */
  private Step arrow(Point along, double step, Scene scene) {
    Point so = pointed.at().minus(last());
    boolean onLine = arrowed() && so.cross(along) == 0;
    double now = onLine ? so.dot(along) : 0;
    Point at = last().plus(along.times(now + step));
    String reason = Messages.text(along.y() == 0 ? "snap.page.parallel" : "snap.page.square");
    Snap snap =
        at.equals(last()) ? Snap.free(at) : new Snap(at, Snap.Kind.SQUARE, reason, List.of());
    return new OutlineDrawing(corners, snap, Aimed.BY_KEYS).shown(scene);
  }

  /** Whether keys have pointed to where it is, and so Enter puts a corner there. */
  private boolean arrowed() {
    return aimed == Aimed.BY_KEYS && !pointed.at().equals(last());
  }

  private Snap snap(Pointer pointer, Scene scene) {
    Aim aim = Aim.at(pointer).lineFrom(last()).afterDrawing(corners);
    return Snapper.snap(scene.plan(), scene.settings(), aim);
  }

  private Step press(Pointer pointer, Scene scene) {
    Snap snap = snap(pointer, scene);
    if (corners.size() >= 3 && snap.at().equals(corners.get(0))) {
      return close(scene);
    }
    return add(snap.at(), snap, scene);
  }

  private Step typed(Entry entry, Scene scene) {
    if (entry instanceof Entry.Length length) {
      if (pointed.at().equals(last())) {
        return Step.refuse(this, Messages.text("outline.direction"));
      }
      Point along = pointed.at().minus(last()).unit();
      return add(last().plus(along.times(length.length())), scene);
    }
    if (entry instanceof Entry.Polar polar) {
      return add(last().plus(Compass.step(polar.length(), polar.degrees())), scene);
    }
    return Step.to(this);
  }

  private Step add(Point corner, Scene scene) {
    return add(corner, Snap.free(corner), scene);
  }

  private Step add(Point corner, Snap snap, Scene scene) {
    if (corner.equals(last())) {
      return Step.to(this);
    }
    if (corners.size() >= 3 && corner.equals(corners.get(0))) {
      return close(scene);
    }
    List<Point> more = new ArrayList<>(corners);
    more.add(corner);
    return new OutlineDrawing(more, snap).shown(scene);
  }

  private Step close(Scene scene) {
    Optional<String> wrong = Loop.wrong(corners);
    if (wrong.isPresent()) {
      return Step.refuse(this, wrong.get());
    }
    Plan plan = scene.plan();
    Part part = part(corners, plan);
    return Step.commit(
            new FirstPoint(BEGINNING), Messages.text("draw.done", part.name()), plan.withPart(part))
        .selecting(Selection.of(Ref.part(part.id())));
  }

  private static Part part(List<Point> corners, Plan plan) {
    Ring drawn = new Ring(corners);
    return NewPart.hipped(
        plan, NewPart.stem(plan), drawn.counterClockwise() ? drawn : drawn.reversed());
  }

  private Point last() {
    return corners.get(corners.size() - 1);
  }

  private ToolState shorter() {
    return corners.size() == 1
        ? new FirstPoint(BEGINNING, Optional.of(pointed))
        : new OutlineDrawing(corners.subList(0, corners.size() - 1), pointed);
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.of(shorter());
  }

  @Override
  public boolean keeps() {
    return corners.size() > 1;
  }

  @Override
  public Step again(Scene scene) {
    return shown(scene);
  }

  @Override
  public Overlay overlay(Scene scene) {
    List<Point> line = new ArrayList<>(corners);
    line.add(pointed.at());
    return Overlay.NONE
        .withLines(Rubber.lines(line))
        .withDimensions(Rubber.path(line, scene))
        .withHandles(List.of(new Overlay.Handle(corners.get(0), Optional.empty())))
        .withSnap(Optional.of(pointed));
  }

  @Override
  public String status(Scene scene) {
    String figures =
        Messages.text(
            corners.size() > 1 ? "outline.figures" : "outline.figures.first",
            LengthText.of(last().distance(pointed.at()), scene.plan().unit()),
            Rubber.degrees(angle()));
    boolean closes = corners.size() >= 3 && pointed.at().equals(corners.get(0));
    return figures + " " + Messages.text(closes ? "outline.closes" : next());
  }

  private String next() {
    if (arrowed()) {
      return "outline.arrowed";
    }
    return corners.size() < 3 ? "outline.next" : "outline.more";
  }

  /** Between the last side and the one being drawn; of the first side, from straight right. */
  private double angle() {
    if (pointed.at().equals(last())) {
      return 0;
    }
    return corners.size() > 1
        ? Rubber.angle(last(), corners.get(corners.size() - 2), pointed.at())
        : Compass.degrees(last(), pointed.at());
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of(Entry.Kind.LENGTH, Entry.Kind.POLAR);
  }
}
