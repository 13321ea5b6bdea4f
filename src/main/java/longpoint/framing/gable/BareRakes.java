package longpoint.framing.gable;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Segment;
import longpoint.plan.EdgeKind;
import longpoint.plan.Frame;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.surface.LineKind;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofSurface;
import longpoint.wording.Phrase;

/**
 * Overhanging rakes that get no ladder, as those of a bump that steps up over its own roof: no end
 * truss or rafter that could be lowered for lookouts stands under them.
 */
public final class BareRakes {
  /** Directions that differ by no more than this sine are one. */
  private static final double SAME_WAY = 1e-6;

  private BareRakes() {}

  /**
   * A note for each gable side that has a rake out over it and no ladder.
   *
   * @param ladders of the same plan
   * @param near rakes no longer than this are none
   */
  public static List<Problem> check(
      Plan plan, RoofSurface surface, List<Ladder> ladders, double near) {
    List<Problem> problems = new ArrayList<>();
    for (Part part : plan.parts()) {
      if (!part.existing() && part.frame().method() != Frame.Method.NONE) {
        for (Side side : plan.sides(part)) {
          boolean hung = side.kind() == EdgeKind.GABLE && side.overhang() > near;
          if (hung
              && ladders.stream().noneMatch(l -> isInLine(plan, part, l, side, near))
              && surface.lines().stream().anyMatch(l -> isOver(l, side, near))) {
            problems.add(
                Problem.note(
                    side.id(), Phrase.of("framing.ladder.none", PlaceName.wall(side).in(plan))));
          }
        }
      }
    }
    return problems;
  }

  /** A gable wall in several pieces has one ladder for each slope, named by the first of them. */
  private static boolean isInLine(Plan plan, Part part, Ladder ladder, Side side, double near) {
    return plan.sides(part).stream()
        .filter(s -> s.id().equals(ladder.side()))
        .anyMatch(
            s ->
                Math.abs(s.wall().direction().cross(side.wall().direction())) < SAME_WAY
                    && s.wall().direction().dot(side.wall().direction()) > 0
                    && Math.abs(s.wall().offset(side.wall().from())) < near);
  }

  private static boolean isOver(RoofLine line, Side side, double near) {
    if (line.kind() != LineKind.RAKE || line.length() <= near) {
      return false;
    }
    Segment wall = side.wall();
    Segment rake = new Segment(line.from().plan(), line.to().plan());
    boolean along =
        rake.length() > near
            && Math.abs(rake.direction().cross(wall.direction())) < SAME_WAY
            && line.planes().stream().allMatch(p -> p.startsWith(side.part() + "/"));
    double off = -wall.offset(rake.from());
    double from = Math.min(wall.along(rake.from()), wall.along(rake.to()));
    double to = Math.max(wall.along(rake.from()), wall.along(rake.to()));
    return along
        && Math.abs(off - side.overhang()) < near
        && to > near
        && from < wall.length() - near;
  }
}
