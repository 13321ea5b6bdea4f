package longpoint.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.Plan;

/**
 * A wall that a pointer can snap to. Its words are made only when it is the one that holds.
 *
 * @param wall its line; not of zero length
 * @param name e.g. "the north wall of House"
 * @param corner what to say of its first corner
 * @param level what to say in line with that corner
 * @param ends whether the pointer may snap to its first corner
 * @param whole whether the pointer may snap to the wall itself
 */
record Target(
    Segment wall,
    Supplier<String> name,
    Supplier<String> corner,
    Supplier<String> level,
    boolean ends,
    boolean whole) {
  /** Walls of the plan in order, then the sides drawn so far. */
  static List<Target> of(Plan plan, Aim aim) {
    List<Target> targets = new ArrayList<>();
    for (Part part : plan.parts()) {
      if (!aim.leaveOut().contains(Ref.part(part.id()))) {
        addWalls(targets, plan, part, aim);
      }
    }
    addDrawn(targets, aim.drawn());
    return targets;
  }

  private static void addWalls(List<Target> targets, Plan plan, Part part, Aim aim) {
    for (int i = 0; i < part.sideCount(); i++) {
      Segment wall = part.side(i);
      int side = i;
      if (wall.length() > 0) {
        targets.add(
            new Target(
                wall,
                () -> WallName.of(plan, part, side),
                () -> Messages.text("snap.corner", part.name()),
                () -> Messages.text("snap.level.corner", part.name()),
                !aim.leaveOut().contains(Ref.corner(part.id(), i)),
                !aim.leaveOut().contains(Ref.side(part.id(), i))));
      }
    }
  }

  private static void addDrawn(List<Target> targets, List<Point> drawn) {
    for (int i = 0; i + 1 < drawn.size(); i++) {
      if (!drawn.get(i).equals(drawn.get(i + 1))) {
        boolean first = i == 0;
        boolean last = i + 2 == drawn.size();
        targets.add(
            new Target(
                new Segment(drawn.get(i), drawn.get(i + 1)),
                () -> Messages.text(last ? "wall.last" : "wall.drawn"),
                () -> Messages.text(first ? "snap.start" : "snap.drawn"),
                () -> Messages.text(first ? "snap.level.start" : "snap.level.drawn"),
                true,
                true));
      }
    }
  }
}
