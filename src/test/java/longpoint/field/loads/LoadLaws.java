package longpoint.field.loads;

import java.util.ArrayList;
import java.util.List;
import longpoint.framing.Framing;
import longpoint.geometry.Patch;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.plan.Plan;
import longpoint.surface.Roof;
import longpoint.surface.RoofMemory;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;

/** What holds of the loads of any plan. */
final class LoadLaws {
  /** Sums of some thousand pieces of a roof, as a share of the whole. */
  static final double ROUNDING = 1e-7;

  /** What the laws compare. */
  record Sums(double roof, double tiles, double reactions, Point roofCentre, Point reactionCentre) {
    double off() {
      return roofCentre.distance(reactionCentre);
    }
  }

  private LoadLaws() {}

  static Loads loads(Plan plan) {
    RoofSurface surface = Roof.solve(plan, new RoofMemory());
    return Loads.of(plan, surface, Framing.solve(plan, surface));
  }

  static Sums sums(Plan plan) {
    RoofSurface surface = Roof.solve(plan, new RoofMemory());
    Loads loads = Loads.of(plan, surface, Framing.solve(plan, surface));
    double area = 0;
    Point moment = new Point(0, 0);
    Point about = surface.planes().isEmpty() ? new Point(0, 0) : corner(surface);
    for (RoofPlane plane : surface.planes()) {
      List<Region> ground = new ArrayList<>(plane.visible());
      ground.addAll(plane.sheltered());
      if (plane.planArea() > 0) {
        area += plane.planArea();
        Point centre = Patch.of(ground).centre().minus(about);
        moment = moment.plus(centre.times(plane.planArea()));
      }
    }
    double tiles = 0;
    double reactions = 0;
    Point pressed = new Point(0, 0);
    for (BearingLoad b : loads.bearings()) {
      tiles += b.area();
      reactions += b.reaction().level();
      pressed = pressed.plus(b.at().minus(about).times(b.reaction().level()));
    }
    return new Sums(
        area,
        tiles,
        reactions,
        area == 0 ? about : moment.times(1 / area),
        reactions == 0 ? about : pressed.times(1 / reactions));
  }

  private static Point corner(RoofSurface surface) {
    return surface.planes().stream()
        .flatMap(p -> p.visible().stream())
        .findFirst()
        .map(r -> r.shell().corner(0))
        .orElse(new Point(0, 0));
  }

  /** What is broken, in words; empty when all is well. */
  static List<String> broken(Plan plan) {
    Sums s = sums(plan);
    List<String> broken = new ArrayList<>();
    double near = ROUNDING * Math.max(1, s.roof());
    if (Math.abs(s.tiles() - s.roof()) > near) {
      broken.add("tiles " + s.tiles() + " of a roof of " + s.roof());
    }
    if (Math.abs(s.reactions() - s.roof()) > near) {
      broken.add("reactions " + s.reactions() + " of a roof of " + s.roof());
    }
    return broken;
  }
}
