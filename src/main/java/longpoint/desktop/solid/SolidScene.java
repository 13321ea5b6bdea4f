package longpoint.desktop.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.pipeline.Design;
import longpoint.plan.Part;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;

/**
 * The outside of a design: the visible roof planes on top of the framing, and every wall from the
 * datum up to the roof over it.
 *
 * @param lines ridges, hips, valleys and edges, drawn over the faces
 */
record SolidScene(List<Face> faces, List<RoofLine> lines) {
  /** A wall's top follows the roof in so many steps; a ridge over a gable falls on one of them. */
  private static final int STEPS = 48;

  /** The roof over a wall is read a little inside of it, as a share of the wall's length. */
  private static final double INSIDE = 1e-4;

  SolidScene {
    faces = List.copyOf(faces);
    lines = List.copyOf(lines);
  }

  static SolidScene of(Design design) {
    List<Face> faces = new ArrayList<>();
    for (RoofPlane plane : design.surface().planes()) {
      for (Region region : plane.visible()) {
        faces.add(new Face(lifted(region, plane.plane()), Face.Kind.ROOF));
      }
    }
    for (Part part : design.plan().parts()) {
      List<RoofPlane> over =
          design.surface().planes().stream().filter(p -> p.part().equals(part.id())).toList();
      for (int i = 0; i < part.sideCount(); i++) {
        faces.add(wall(part.side(i), part.plateHeight(), over));
      }
    }
    return new SolidScene(faces, design.surface().lines());
  }

  private static List<List<Point3>> lifted(Region region, Plane plane) {
    return Stream.concat(Stream.of(region.shell()), region.holes().stream())
        .map(Ring::points)
        .map(points -> points.stream().map(plane::lift).toList())
        .toList();
  }

  private static Face wall(Segment wall, double plate, List<RoofPlane> over) {
    List<Point3> edge = new ArrayList<>();
    edge.add(wall.from().at(0));
    edge.add(wall.to().at(0));
    Point inward = wall.to().minus(wall.from()).left().times(INSIDE);
    for (int i = STEPS; i >= 0; i--) {
      Point at = wall.from().toward(wall.to(), i / (double) STEPS);
      // Its two ends stand on the corners, where the planes beside the wall begin.
      double share = Math.max(INSIDE, Math.min(1 - INSIDE, i / (double) STEPS));
      Point under = wall.from().toward(wall.to(), share).plus(inward);
      edge.add(at.at(height(under, over).orElse(plate)));
    }
    return new Face(List.of(edge), Face.Kind.WALL);
  }

  private static Optional<Double> height(Point at, List<RoofPlane> over) {
    return over.stream()
        .filter(
            p ->
                Stream.concat(p.visible().stream(), p.covered().stream())
                    .anyMatch(r -> r.contains(at)))
        .map(p -> p.plane().heightAt(at))
        .findFirst();
  }
}
