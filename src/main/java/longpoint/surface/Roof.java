package longpoint.surface;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.LinearComponentExtracter;

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
    if (roofs.isEmpty()) {
      return new RoofSurface(List.of(), List.of(), problems);
    }
    Ground ground = Ground.of(lines(roofs, grain), grain.place());
    Presence presence = new Presence(ground, roofs, grain);
    List<RunOn> runsOn = RunOn.all(presence);
    List<Standing> standing = Covering.standing(presence, new Roles(roofs, plan.joins()), runsOn);
    List<LineFinder.Stretch> stretches =
        LineMerger.merge(LineFinder.find(ground, standing, roofs, grain), grain);
    Assembly assembly = new Assembly(origin, grain);
    List<RoofPlane> planes = assembly.planes(plan, ground, standing, stretches);
    problems.addAll(OpenSides.check(presence, runsOn, plan.unit(), grain));
    problems.addAll(FasciaLevels.check(plan));
    problems.addAll(RoofCheck.check(ground, standing, stretches, roofs, grain));
    return new RoofSurface(planes, assembly.lines(stretches), problems);
  }

  private static Bounds bounds(Plan plan) {
    Bounds box = Bounds.EMPTY;
    for (Part part : plan.parts()) {
      for (Side side : plan.sides(part)) {
        double reach = Math.max(0, side.reach());
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
    for (Part part : plan.parts().stream().sorted(Comparator.comparing(Part::id)).toList()) {
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

  /** Every line along which the roof over the ground may change. */
  private static List<LineString> lines(List<PartRoof> roofs, Grain grain) {
    List<LineString> lines = new ArrayList<>();
    for (PartRoof roof : roofs) {
      roof.pieces().forEach(p -> lines.addAll(rings(p.ground())));
      lines.addAll(rings(roof.own()));
      if (roofs.size() > 1) {
        lines.addAll(rings(roof.walls()));
      }
    }
    lines.addAll(Crossings.of(roofs, grain));
    return lines;
  }

  private static List<LineString> rings(Geometry geometry) {
    List<LineString> rings = new ArrayList<>();
    geometry.apply(new LinearComponentExtracter(rings));
    return rings;
  }
}
