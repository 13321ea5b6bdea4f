package longpoint.surface.sweep;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;

/** The time at which the sweep arrives at any point, read from the faces of a result. */
final class Heights {
  /** How far outside a face a point may lie by rounding. */
  private static final double NEAR = 1e-6;

  private final double near;

  private final GeometryFactory factory = new GeometryFactory();
  private final STRtree index = new STRtree();
  private final List<double[]> planes = new ArrayList<>();
  private final List<Polygon> shapes = new ArrayList<>();

  Heights(Outline outline, SweepResult.Solved solved) {
    this(outline, solved, 1);
  }

  /**
   * @param factor how many times larger than a house the outline is
   */
  Heights(Outline outline, SweepResult.Solved solved, double factor) {
    near = NEAR * factor;
    for (SweepResult.Face face : solved.faces()) {
      LinearRing ring = ring(solved, face.nodes());
      Coordinate a = ring.getCoordinateN(0);
      Coordinate b = ring.getCoordinateN(1);
      double length = a.distance(b);
      double nx = -(b.y - a.y) / length;
      double ny = (b.x - a.x) / length;
      Polygon shape =
          factory.createPolygon(
              ring, face.holes().stream().map(h -> ring(solved, h)).toArray(LinearRing[]::new));
      var box = shape.getEnvelopeInternal();
      box.expandBy(near);
      index.insert(box, planes.size());
      shapes.add(shape);
      planes.add(new double[] {nx, ny, a.x, a.y, outline.speeds()[face.side()]});
    }
  }

  private LinearRing ring(SweepResult.Solved solved, List<Integer> nodes) {
    List<Coordinate> ring = new ArrayList<>();
    for (int node : nodes) {
      ring.add(new Coordinate(solved.nodes().get(node).x(), solved.nodes().get(node).y()));
    }
    ring.add(ring.get(0));
    return factory.createLinearRing(ring.toArray(new Coordinate[0]));
  }

  /** Not a number where there is no ground. */
  double at(double x, double y) {
    Coordinate p = new Coordinate(x, y);
    double best = Double.NaN;
    double nearest = near;
    for (Object found : index.query(new org.locationtech.jts.geom.Envelope(p))) {
      int i = (Integer) found;
      double distance = shapes.get(i).distance(factory.createPoint(p));
      if (distance < nearest) {
        nearest = distance;
        double[] plane = planes.get(i);
        best = (plane[0] * (x - plane[2]) + plane[1] * (y - plane[3])) / plane[4];
      }
    }
    return best;
  }
}
