package longpoint.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;

/** Takes away joins that cannot be meant: of nothing, to itself, twice, or of parts far apart. */
final class JoinCures {
  private JoinCures() {}

  /** Those that name a part as the upper one; for {@code plan} those that name no part. */
  static List<Cure> of(Plan plan, String where) {
    List<Cure> cures = new ArrayList<>();
    for (int i = 0; i < plan.joins().size(); i++) {
      Join join = plan.joins().get(i);
      Optional<Part> upper = plan.part(join.upper());
      Optional<Part> lower = plan.part(join.lower());
      boolean nothing = upper.isEmpty() || lower.isEmpty();
      boolean stray =
          !nothing
              && (join.upper().equals(join.lower())
                  || twice(plan, i)
                  || clear(plan, upper.get(), lower.get()));
      if (where.equals("plan") ? nothing : join.upper().equals(where) && stray) {
        int number = i;
        Command gone = Command.of(Messages.text("do.unjoin"), p -> without(p, number));
        String over = upper.map(Part::name).orElse(join.upper());
        String under = lower.map(Part::name).orElse(join.lower());
        if (!nothing && clear(plan, upper.get(), lower.get())) {
          cures.add(moved(plan, upper.get(), lower.get()));
        }
        cures.add(Cures.named("unjoin", gone, over, under));
      }
    }
    return cures;
  }

  private static boolean twice(Plan plan, int join) {
    Join here = plan.joins().get(join);
    return plan.joins().subList(0, join).stream()
        .anyMatch(j -> j.upper().equals(here.upper()) && j.lower().equals(here.lower()));
  }

  private static boolean clear(Plan plan, Part a, Part b) {
    Bounds one = box(plan, a);
    Bounds two = box(plan, b);
    return one.minX() > two.maxX()
        || two.minX() > one.maxX()
        || one.minY() > two.maxY()
        || two.minY() > one.maxY();
  }

  /** Straight across or up, or both, until the walls of the two touch. */
  private static Cure moved(Plan plan, Part upper, Part lower) {
    Bounds from = upper.outline().bounds();
    Bounds to = lower.outline().bounds();
    Point by =
        new Point(
            step(from.minX(), from.maxX(), to.minX(), to.maxX()),
            step(from.minY(), from.maxY(), to.minY(), to.maxY()));
    Command move = PartCommands.move(plan, List.of(upper.id()), by);
    return Cures.named("moveUp", move, upper.name(), lower.name());
  }

  private static double step(double least, double most, double toLeast, double toMost) {
    return least > toMost ? toMost - least : Math.max(0, toLeast - most);
  }

  private static Bounds box(Plan plan, Part part) {
    double reach = plan.sides(part).stream().mapToDouble(Side::reach).max().orElse(0);
    return part.outline().bounds().grown(Math.max(0, reach));
  }

  private static Plan without(Plan plan, int join) {
    List<Join> rest = new ArrayList<>(plan.joins());
    if (join < rest.size()) {
      rest.remove(join);
    }
    return plan.withJoins(rest);
  }
}
