package longpoint.sheets.solid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import longpoint.deck.DeckPlan;
import longpoint.deck.Piece;
import longpoint.deck.PlaneDeck;
import longpoint.drawing.Ink;
import longpoint.framing.FramingSet;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.plan.EdgeKind;
import longpoint.plan.Plan;
import longpoint.plan.Side;
import longpoint.sheets.Layers;
import longpoint.surface.LineKind;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;
import longpoint.units.LengthUnit;

/**
 * The house from outside, in plan units: the visible roof planes on top of the framing, every wall
 * from the datum up to the roof over it, and the fascias. Roofs have no thickness, and an open side
 * has no wall. What could not be solved is simply not there.
 *
 * @param faces roofs, then walls, then fascias, each in the order of the plan
 * @param edges lines drawn over the faces
 */
public record RoofSolid(List<SolidFace> faces, List<SolidEdge> edges) {
  public static final RoofSolid NONE = new RoofSolid(List.of(), List.of());

  /** Depth of a 2x6, the common fascia (common practice), inches. */
  private static final double FASCIA_IN = 5.5;

  /** The same in millimetres, as it is sold. */
  private static final double FASCIA_MM = 140;

  /**
   * Which side of a step is the lower one is asked this far beside its middle, as a share of its
   * length: far enough to be clear of rounding, near enough to be on the planes that meet there.
   */
  private static final double BESIDE = 1e-4;

  public RoofSolid {
    faces = List.copyOf(faces);
    edges = List.copyOf(edges);
  }

  public static RoofSolid of(Plan plan, RoofSurface surface) {
    List<SolidFace> faces = new ArrayList<>();
    List<SolidEdge> edges = new ArrayList<>();
    planes(surface, faces);
    walls(plan, surface, faces, edges);
    steps(surface, faces);
    fascias(plan.unit(), surface, faces, edges);
    lines(surface, edges);
    return new RoofSolid(faces, edges);
  }

  /** The same house with its trusses and rafters in their places. */
  public RoofSolid with(FramingSet framing, RoofSurface surface) {
    List<SolidEdge> all = new ArrayList<>(edges);
    all.addAll(FrameSolid.of(framing, surface));
    return new RoofSolid(faces, all);
  }

  /** The same house with the joints of its sheathing. */
  public RoofSolid with(DeckPlan deck) {
    List<SolidEdge> all = new ArrayList<>(edges);
    for (PlaneDeck plane : deck.planes()) {
      for (Piece piece : plane.pieces()) {
        List<Point> corners = piece.outline().shell().points();
        for (int i = 0; i < corners.size(); i++) {
          Point3 from = plane.unfold().space(corners.get(i), 0);
          Point3 to = plane.unfold().space(corners.get((i + 1) % corners.size()), 0);
          all.add(new SolidEdge(SolidEdge.Kind.SHEET, piece.id(), Ink.QUIET, from, to));
        }
      }
    }
    return new RoofSolid(faces, all);
  }

  /** This and more of the house. */
  public RoofSolid and(RoofSolid more) {
    return new RoofSolid(
        Stream.concat(faces.stream(), more.faces.stream()).toList(),
        Stream.concat(edges.stream(), more.edges.stream()).toList());
  }

  /** Only what shows certain subjects. */
  public RoofSolid keeping(Predicate<String> subjects) {
    return new RoofSolid(
        faces.stream().filter(f -> subjects.test(f.subject())).toList(),
        edges.stream().filter(e -> subjects.test(e.subject())).toList());
  }

  private static void planes(RoofSurface surface, List<SolidFace> faces) {
    for (RoofPlane plane : surface.planes()) {
      List<Region> roofed =
          Stream.concat(plane.visible().stream(), plane.sheltered().stream()).toList();
      for (Region region : roofed) {
        List<List<Point3>> rings =
            Stream.concat(Stream.of(region.shell()), region.holes().stream())
                .map(ring -> lifted(ring, plane.plane()))
                .toList();
        faces.add(new SolidFace(SolidFace.Kind.ROOF, plane.id(), rings));
      }
    }
  }

  private static List<Point3> lifted(Ring ring, Plane plane) {
    return ring.points().stream().map(plane::lift).toList();
  }

  private static void walls(
      Plan plan, RoofSurface surface, List<SolidFace> faces, List<SolidEdge> edges) {
    Map<String, List<RoofPlane>> roofs = new HashMap<>();
    for (RoofPlane plane : surface.planes()) {
      roofs.computeIfAbsent(plane.part(), p -> new ArrayList<>()).add(plane);
    }
    plan.parts().stream()
        .flatMap(part -> plan.sides(part).stream())
        .filter(side -> side.kind() != EdgeKind.OPEN && side.wall().length() > 0)
        .forEach(side -> wall(side, roofs.getOrDefault(side.part(), List.of()), faces, edges));
  }

  private static void wall(
      Side side, List<RoofPlane> over, List<SolidFace> faces, List<SolidEdge> edges) {
    List<Point3> top = WallTop.of(side.wall(), side.plateHeight(), over);
    Point3 from = side.wall().from().at(0);
    Point3 to = side.wall().to().at(0);
    List<Point3> ring = new ArrayList<>(List.of(from, to));
    List<Point3> back = new ArrayList<>(top);
    Collections.reverse(back);
    ring.addAll(back);
    faces.add(new SolidFace(SolidFace.Kind.WALL, side.id(), List.of(ring)));
    for (int i = 0; i < ring.size(); i++) {
      // The upright at the far end is the next wall's.
      if (i != 1) {
        edges.add(
            new SolidEdge(
                SolidEdge.Kind.WALL,
                side.id(),
                Ink.QUIET,
                ring.get(i),
                ring.get((i + 1) % ring.size())));
      }
    }
  }

  /** Upright pieces within one part; between two parts the higher one's own wall stands there. */
  private static void steps(RoofSurface surface, List<SolidFace> faces) {
    for (RoofLine line : surface.lines(LineKind.STEP)) {
      RoofPlane a = surface.plane(line.planes().get(0)).orElseThrow();
      RoofPlane b = surface.plane(line.planes().get(1)).orElseThrow();
      if (!a.part().equals(b.part())) {
        continue;
      }
      Point from = line.from().plan();
      Point to = line.to().plan();
      boolean aHigher =
          a.plane().heightAt(from.toward(to, 0.5)) > b.plane().heightAt(from.toward(to, 0.5));
      RoofPlane high = aHigher ? a : b;
      RoofPlane low = aHigher ? b : a;
      // Outside is where the lower plane is.
      Point right = to.minus(from).left().times(-BESIDE);
      boolean lowOnRight =
          low.visible().stream().anyMatch(r -> r.contains(from.toward(to, 0.5).plus(right)));
      faces.add(
          strip(
              high.id(),
              SolidFace.Kind.WALL,
              lowOnRight ? from : to,
              lowOnRight ? to : from,
              low.plane(),
              high.plane()));
    }
  }

  private static SolidFace strip(
      String subject, SolidFace.Kind kind, Point from, Point to, Plane low, Plane high) {
    return new SolidFace(
        kind,
        subject,
        List.of(List.of(low.lift(from), low.lift(to), high.lift(to), high.lift(from))));
  }

  private static void fascias(
      LengthUnit unit, RoofSurface surface, List<SolidFace> faces, List<SolidEdge> edges) {
    double depth =
        switch (unit) {
          case INCH -> FASCIA_IN;
          case MILLIMETRE -> FASCIA_MM;
        };
    for (RoofLine line : surface.lines()) {
      if (line.kind() == LineKind.EAVE || line.kind() == LineKind.RAKE) {
        String plane = line.planes().get(0);
        Point3 a = dropped(line.from(), depth);
        Point3 b = dropped(line.to(), depth);
        faces.add(
            new SolidFace(
                SolidFace.Kind.FASCIA, plane, List.of(List.of(a, b, line.to(), line.from()))));
        edges.add(new SolidEdge(SolidEdge.Kind.FASCIA, plane, Ink.QUIET, a, b));
      }
    }
  }

  private static Point3 dropped(Point3 p, double by) {
    return new Point3(p.x(), p.y(), p.z() - by);
  }

  private static void lines(RoofSurface surface, List<SolidEdge> edges) {
    for (RoofLine line : surface.lines()) {
      Ink ink = Layers.of(line.kind()).ink();
      edges.add(new SolidEdge(SolidEdge.Kind.ROOF, line.id(), ink, line.from(), line.to()));
    }
  }
}
