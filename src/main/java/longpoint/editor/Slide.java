package longpoint.editor;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Plan;

/**
 * How far a wall that is moved parallel to itself goes, and why: until it is in line with a corner
 * or a parallel wall within reach, else in whole steps from where it was.
 *
 * @param outward distance moved, positive away from the inside of its part
 * @param snap the middle of the wall where it comes to stand, with the reason
 */
public record Slide(double outward, Snap snap) {
  /**
   * @param wall where the wall is now
   * @param from where the pointer took hold
   * @param aim leaves out the wall itself and whatever moves with it
   */
  public static Slide of(Plan plan, Settings settings, Aim aim, Segment wall, Point from) {
    Point out = wall.direction().left().times(-1);
    double pulled = aim.pointer().at().minus(from).dot(out);
    Optional<Slide> inLine =
        aim.pointer().holds(Modifier.ALT) || !settings.snaps().contains(Snap.Kind.IN_LINE)
            ? Optional.empty()
            : inLine(Target.of(plan, aim), wall, pulled, aim.pointer().reach());
    return inLine.orElseGet(() -> stepped(plan, settings, aim, wall, pulled));
  }

  private static Optional<Slide> inLine(
      List<Target> targets, Segment wall, double pulled, double reach) {
    return targets.stream()
        .filter(Target::ends)
        .filter(t -> Math.abs(outward(wall, t) - pulled) <= reach)
        .min(Comparator.comparingDouble(t -> Math.abs(outward(wall, t) - pulled)))
        .map(t -> to(wall, t));
  }

  private static double outward(Segment wall, Target target) {
    // Without a minus zero, which would print and compare apart from zero.
    return 0 - wall.offset(target.wall().from());
  }

  private static Slide to(Segment wall, Target target) {
    boolean parallel =
        target.whole() && Guide.parallel(target.wall().direction(), wall.direction());
    String reason =
        parallel ? Messages.text("snap.inline", target.name().get()) : target.level().get();
    Point at = moved(wall, outward(wall, target));
    List<Segment> shown =
        at.equals(target.wall().from())
            ? List.of()
            : List.of(new Segment(target.wall().from(), at));
    return new Slide(outward(wall, target), new Snap(at, Snap.Kind.IN_LINE, reason, shown));
  }

  private static Slide stepped(Plan plan, Settings settings, Aim aim, Segment wall, double pulled) {
    boolean steps =
        settings.grid() > 0
            && !aim.pointer().holds(Modifier.ALT)
            && settings.snaps().contains(Snap.Kind.GRID);
    if (!steps) {
      return new Slide(pulled, Snap.free(moved(wall, pulled)));
    }
    double rounded = 0 + Math.rint(pulled / settings.grid()) * settings.grid();
    String reason = Messages.text("snap.steps", Naming.length(plan, settings.grid()));
    Point at = moved(wall, rounded);
    return new Slide(rounded, new Snap(at, Snap.Kind.GRID, reason, List.of()));
  }

  private static Point moved(Segment wall, double outward) {
    return wall.middle().plus(wall.direction().left().times(-outward));
  }
}
