package longpoint.surface;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.stop.CalledOff;
import longpoint.wording.Phrase;

/** Front door of this package: from a plan to the planes and lines of its roof. */
public final class Roof {
  private final Plan plan;
  private final RoofMemory memory;
  private final Bounds bounds;
  private final double across;
  private final Point origin;
  private final List<PartSpec> specs = new ArrayList<>();

  private Roof(Plan plan, RoofMemory memory) {
    this.plan = plan;
    this.memory = memory;
    this.bounds = bounds(plan);
    this.across = Math.hypot(bounds.width(), bounds.height());
    // No further off than the plan is wide, and seldom another when a corner is dragged.
    double step = across > 0 ? Math.scalb(1.0, Math.getExponent(across) + 1) : 1;
    this.origin =
        new Point(Math.floor(bounds.minX() / step) * step, Math.floor(bounds.minY() / step) * step);
  }

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
    List<Problem> problems = new ArrayList<>();
    Roof solving = new Roof(plan, memory);
    List<PartRoof> roofs = solving.parts(problems);
    problems.addAll(FasciaLevels.check(plan));
    RoofSurface joined = solving.joined(roofs, problems);
    return new RoofSurface(joined.planes(), joined.lines(), named(problems, plan));
  }

  /** The roofs brought together, cluster by cluster; problems are added to the list. */
  private RoofSurface joined(List<PartRoof> roofs, List<Problem> problems) {
    CalledOff.check();
    Map<String, JoinedRoof.Share> shares = new HashMap<>();
    List<RoofLine> lines = new ArrayList<>();
    List<Problem> faults = new ArrayList<>();
    for (List<Integer> cluster : Clusters.of(roofs, Grain.of(bounds).near())) {
      JoinSpec spec = JoinSpec.of(cluster.stream().map(specs::get).toList(), plan.joins(), origin);
      Optional<JoinedRoof> joined =
          memory.join(spec, () -> cluster.stream().map(roofs::get).toList());
      if (joined.isEmpty()) {
        problems.add(
            Problem.error(
                spec.parts().get(spec.parts().size() - 1).part(), Phrase.of("surface.notJoined")));
        continue;
      }
      JoinedRoof roof = joined.get();
      shares.putAll(roof.shares());
      lines.addAll(roof.lines());
      problems.addAll(OpenSides.check(roof, roofs, plan.unit()));
      faults.addAll(roof.joining().faults());
    }
    problems.addAll(faults);
    lines.sort(Assembly.ORDER);
    return new RoofSurface(planes(shares), lines, List.of());
  }

  /** A part's roof is remembered under its shape alone, so its names are put in at the end. */
  private static List<Problem> named(List<Problem> problems, Plan plan) {
    return problems.stream().map(p -> p.in(plan)).toList();
  }

  /** In the order of parts and sides. */
  private List<RoofPlane> planes(Map<String, JoinedRoof.Share> shares) {
    List<RoofPlane> planes = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Part part : plan.parts().stream().filter(p -> seen.add(p.id())).toList()) {
      for (Side side : plan.sides(part)) {
        JoinedRoof.Share share = shares.get(side.id());
        if (share != null) {
          planes.add(
              new RoofPlane(
                  side.id(),
                  part.id(),
                  side.index(),
                  side.framePlane(),
                  share.visible(),
                  share.covered(),
                  share.sheltered()));
        }
      }
    }
    return planes;
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
  private List<PartRoof> parts(List<Problem> problems) {
    List<PartRoof> roofs = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Part part : plan.parts().stream().sorted(Comparator.comparing(Part::id)).toList()) {
      CalledOff.check();
      if (!seen.add(part.id())) {
        problems.add(Problem.error(part.id(), Phrase.of("surface.sameId", part.id())));
        continue;
      }
      PartSpec spec = PartSpec.of(plan, part, plan.parts().size() > 1 ? across : 0);
      PartRoof roof = memory.solve(spec);
      problems.addAll(roof.problems());
      if (roof.solved()) {
        Point move = spec.origin().minus(origin);
        roofs.add(roof.moved(move.x(), move.y()));
        specs.add(spec);
      }
    }
    return roofs;
  }
}
