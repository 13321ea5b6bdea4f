package longpoint.editor.tools;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import longpoint.editor.Command;
import longpoint.editor.Entry;
import longpoint.editor.Messages;
import longpoint.editor.PartCommands;
import longpoint.editor.Pointer;
import longpoint.editor.Scene;
import longpoint.editor.Snap;
import longpoint.editor.Step;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Motion;
import longpoint.plan.Plan;
import longpoint.units.LengthText;

/** What a line from a first point does to whole parts. */
enum PartGesture implements Opening {
  /** Along the line. */
  MOVE(Set.of(Entry.Kind.LENGTH, Entry.Kind.POLAR)) {
    @Override
    Command command(Plan plan, List<String> parts, Point first, Pull pull) {
      return PartCommands.move(plan, parts, pull.step());
    }
  },
  /** Along the line, the parts themselves staying where they are. */
  COPY(Set.of(Entry.Kind.LENGTH, Entry.Kind.POLAR)) {
    @Override
    Command command(Plan plan, List<String> parts, Point first, Pull pull) {
      return PartCommands.copy(plan, parts, Motion.shift(pull.step()));
    }
  },
  /** About the first point, by the line's angle from straight right. */
  TURN(Set.of(Entry.Kind.ANGLE)) {
    @Override
    Command command(Plan plan, List<String> parts, Point first, Pull pull) {
      return PartCommands.turn(plan, parts, first, pull.degrees());
    }
  },
  /** Turned over in the line. */
  MIRROR(Set.of(Entry.Kind.ANGLE)) {
    @Override
    Command command(Plan plan, List<String> parts, Point first, Pull pull) {
      return PartCommands.mirror(plan, parts, new Segment(first, first.plus(pull.step())));
    }
  };

  /**
   * A line pulled from the first point.
   *
   * @param step not of zero length
   * @param degrees its angle, kept beside it so that a typed angle stays exact
   */
  record Pull(Point step, double degrees) {
    static Pull of(Point step) {
      return new Pull(step, Compass.degrees(new Point(0, 0), step));
    }

    static Pull of(double length, double degrees) {
      return new Pull(Compass.step(length, degrees), degrees);
    }
  }

  /** Half a turn in degrees; a mirror line runs both ways. */
  private static final double HALF = 180;

  private final Set<Entry.Kind> wants;

  PartGesture(Set<Entry.Kind> wants) {
    this.wants = wants;
  }

  @Override
  public Step begin(Snap here, Pointer pointer, FirstPoint waiting, Scene scene) {
    List<String> parts = Chosen.parts(scene, pointer);
    return parts.isEmpty()
        ? Step.refuse(waiting, Messages.text("gesture.nothing"))
        : Step.to(new GestureLine(this, parts, here.at(), here));
  }

  @Override
  public String invites(Scene scene) {
    return text("first");
  }

  abstract Command command(Plan plan, List<String> parts, Point first, Pull pull);

  Set<Entry.Kind> wants() {
    return wants;
  }

  /** The line that typed figures stand for; empty when a direction is still to be pointed in. */
  Optional<Pull> typed(Entry entry, Point pointed) {
    if (entry instanceof Entry.Length length && pointed.length() > 0) {
      return Optional.of(Pull.of(pointed.unit().times(length.length())));
    }
    if (entry instanceof Entry.Polar polar) {
      return Optional.of(Pull.of(polar.length(), polar.degrees()));
    }
    if (entry instanceof Entry.Angle angle) {
      return Optional.of(Pull.of(1, angle.degrees()));
    }
    return Optional.empty();
  }

  /** From the right by less than half a turn either way, to the left above zero. */
  private static double turned(double degrees) {
    return degrees > HALF ? degrees - 2 * HALF : degrees;
  }

  /** What is said of it in words. */
  String text(String what, Object... parts) {
    return Messages.text(name().toLowerCase(Locale.ROOT) + "." + what, parts);
  }

  /** The figure that the gesture is about, as the pointer stands. */
  String figure(Pull pull, Plan plan) {
    return wants.contains(Entry.Kind.ANGLE)
        ? Rubber.degrees(this == TURN ? turned(pull.degrees()) : pull.degrees() % HALF)
        : LengthText.of(pull.step().length(), plan.unit());
  }
}
