package longpoint.deck;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.framing.FramingSet;
import longpoint.framing.stick.Rafter;
import longpoint.framing.stick.RafterKind;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussKind;
import longpoint.geometry.Inside;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;

/**
 * What of the frame carries each plane's sheets: the centre lines of its part's trusses and rafters
 * where they pass under the plane, tails included.
 *
 * <p>A jack's line is carried on up its own plane: past the girder the small frames that lie over
 * the flat tops stand in line with the jacks (common practice). Trusses that run level under a
 * plane, the step-downs under a hip end, carry those frames and not the sheets.
 */
final class Carriers {
  /** Sine of the angle under which a line counts as level in a plane: a degree or two. */
  private static final double LEVEL = 0.03;

  private final Plan plan;
  private final FramingSet framing;

  private Carriers(Plan plan, FramingSet framing) {
    this.plan = plan;
    this.framing = framing;
  }

  /** Supports in plan for every plane, by its id; a plane that nothing carries has none. */
  static Map<String, List<Support>> of(Plan plan, RoofSurface surface, FramingSet framing) {
    Carriers carriers = new Carriers(plan, framing);
    Map<String, List<Support>> supports = new LinkedHashMap<>();
    for (RoofPlane plane : surface.planes()) {
      supports.put(plane.id(), carriers.under(plane));
    }
    return supports;
  }

  private List<Support> under(RoofPlane plane) {
    Optional<Part> part = plan.part(plane.part());
    if (part.isEmpty()) {
      return List.of();
    }
    double thickness = part.get().frame().thickness();
    double reach = reach(part.get());
    List<Support> supports = new ArrayList<>();
    for (Truss truss : framing.trusses()) {
      if (truss.part().equals(plane.part()) && !truss.kind().isCap()) {
        line(truss, plane, reach)
            .ifPresent(l -> add(supports, plane, truss.mark(), kind(truss), l, thickness));
      }
    }
    for (Rafter rafter : framing.rafters()) {
      if (rafter.part().equals(plane.part()) && !rafter.kind().isLevel()) {
        for (Segment place : rafter.places()) {
          double before = rafter.tail() > 0 ? reach : 0;
          // A common rafter's head runs on over a high wall as far as the roof does.
          double after = rafter.kind() == RafterKind.COMMON ? reach : 0;
          Segment line = longer(place, before, after);
          if (climbs(line, plane)) {
            add(supports, plane, rafter.mark(), Support.Kind.RAFTER, line, thickness);
          }
        }
      }
    }
    return supports;
  }

  /** Far enough past a wall face to reach the outside of the widest fascia of the part. */
  private double reach(Part part) {
    return plan.sides(part).stream().mapToDouble(Side::reach).max().orElse(0)
        + part.frame().thickness();
  }

  private static Optional<Segment> line(Truss truss, RoofPlane plane, double reach) {
    Segment own = new Segment(truss.from(), truss.to());
    boolean valley = truss.kind() == TrussKind.VALLEY;
    double before = valley || truss.carriedFrom().isPresent() ? 0 : reach;
    double after = valley || truss.carriedTo().isPresent() ? 0 : reach;
    if (truss.kind() == TrussKind.JACK) {
      Point up = new Point(plane.plane().a(), plane.plane().b());
      boolean rises = own.direction().dot(up) > 0;
      return rises && climbs(own, plane) && alongTheSlope(own, plane)
          ? Optional.of(longer(own, before, far(plane)))
          : Optional.empty();
    }
    return climbs(own, plane) ? Optional.of(longer(own, before, after)) : Optional.empty();
  }

  private static boolean climbs(Segment line, RoofPlane plane) {
    Point up = new Point(plane.plane().a(), plane.plane().b());
    return line.length() > 0 && Math.abs(line.direction().dot(up)) > LEVEL * up.length();
  }

  private static boolean alongTheSlope(Segment line, RoofPlane plane) {
    Point up = new Point(plane.plane().a(), plane.plane().b());
    return Math.abs(line.direction().cross(up)) < LEVEL * up.length();
  }

  private static double far(RoofPlane plane) {
    return Stream.concat(plane.visible().stream(), plane.covered().stream())
        .mapToDouble(r -> r.shell().perimeter())
        .sum();
  }

  private static Segment longer(Segment line, double before, double after) {
    Point along = line.direction();
    return new Segment(line.from().minus(along.times(before)), line.to().plus(along.times(after)));
  }

  private static void add(
      List<Support> supports,
      RoofPlane plane,
      String mark,
      Support.Kind kind,
      Segment line,
      double thickness) {
    List<Region> ground =
        Stream.concat(plane.visible().stream(), plane.covered().stream()).toList();
    for (Region region : ground) {
      for (Segment inside : Inside.of(region, line)) {
        if (inside.length() > thickness) {
          supports.add(new Support(mark, kind, inside, thickness));
        }
      }
    }
  }

  private static Support.Kind kind(Truss truss) {
    return switch (truss.kind()) {
      case COMMON,
          GABLE_END,
          DROPPED_GABLE_END,
          MONO,
          SCISSOR,
          BASE,
          CAP,
          STEP_DOWN,
          GABLE_BASE,
          GABLE_CAP ->
          Support.Kind.TRUSS;
      case GIRDER, HIP_GIRDER, CROSS_GIRDER -> Support.Kind.GIRDER;
      case JACK, CORNER_JACK, HIP_JACK -> Support.Kind.JACK;
      case VALLEY -> Support.Kind.VALLEY_TRUSS;
    };
  }
}
