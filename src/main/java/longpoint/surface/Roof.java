package longpoint.surface;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.wording.Phrase;

/** Front door of this package: from a plan to the planes and lines of its roof. */
public final class Roof {
  private Roof() {}

  /**
   * The roof over a plan. What cannot be solved is left out and named in the problems; what can
   * still be solved is there. Never throws for what a user can draw.
   */
  public static RoofSurface solve(Plan plan) {
    return solve(plan, new RoofMemory());
  }

  /**
   * As {@link #solve(Plan)}, without solving again the parts that have not changed.
   *
   * @param memory of earlier plans; holds results only, so it never changes an answer
   */
  public static RoofSurface solve(Plan plan, RoofMemory memory) {
    if (plan.parts().isEmpty()) {
      return new RoofSurface(List.of(), List.of(), List.of());
    }
    Bounds bounds = bounds(plan);
    Grain grain = Grain.of(bounds);
    Point origin = new Point(Math.floor(bounds.minX()), Math.floor(bounds.minY()));
    List<Problem> problems = new ArrayList<>();
    List<PartRoof> roofs = parts(plan, bounds, origin, memory, problems);
    problems.addAll(FasciaLevels.check(plan));
    if (roofs.isEmpty()) {
      return new RoofSurface(List.of(), List.of(), named(problems, plan));
    }
    Optional<Joining> joined = Joining.join(roofs, plan.joins(), grain);
    if (joined.isEmpty()) {
      problems.add(Problem.error("plan", Phrase.of("surface.notJoined")));
      return new RoofSurface(List.of(), List.of(), named(problems, plan));
    }
    Joining roof = joined.get();
    problems.addAll(OpenSides.check(roof.presence(), roof.runsOn(), plan.unit(), grain));
    problems.addAll(roof.faults());
    Assembly assembly = new Assembly(origin, grain);
    return new RoofSurface(
        assembly.planes(plan, roof.presence().ground(), roof.standing(), roof.lines()),
        assembly.lines(roof.lines()),
        named(problems, plan));
  }

  /** A part's roof is remembered under its shape alone, so its names are put in at the end. */
  private static List<Problem> named(List<Problem> problems, Plan plan) {
    return problems.stream().map(p -> p.in(plan)).toList();
  }

  private static Bounds bounds(Plan plan) {
    Bounds box = Bounds.EMPTY;
    for (Part part : plan.parts()) {
      for (Side side : plan.sides(part)) {
        double reach = Double.isFinite(side.reach()) ? Math.max(0, side.reach()) : 0;
        box = box.with(Bounds.of(List.of(side.wall().from(), side.wall().to())).grown(reach));
      }
    }
    return box;
  }

  /** Every part alone, in the order of their ids so that the order of drawing has no meaning. */
  private static List<PartRoof> parts(
      Plan plan, Bounds bounds, Point origin, RoofMemory memory, List<Problem> problems) {
    double across =
        plan.parts().size() > 1
            ? new Segment(
                    new Point(bounds.minX(), bounds.minY()),
                    new Point(bounds.maxX(), bounds.maxY()))
                .length()
            : 0;
    List<PartRoof> roofs = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Part part : plan.parts().stream().sorted(Comparator.comparing(Part::id)).toList()) {
      if (!seen.add(part.id())) {
        problems.add(Problem.error(part.id(), Phrase.of("surface.sameId", part.id())));
        continue;
      }
      PartSpec spec = PartSpec.of(plan, part, across);
      PartRoof roof = memory.solve(spec);
      problems.addAll(roof.problems());
      if (roof.solved()) {
        Point move = spec.origin().minus(origin);
        roofs.add(roof.moved(move.x(), move.y()));
      }
    }
    return roofs;
  }
}
