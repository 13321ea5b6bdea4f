package longpoint.export;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Point3;
import longpoint.units.LengthUnit;

/**
 * A body cut into triangles, in metres with y up and z toward the viewer, as glTF asks for and as
 * most programs read OBJ: x stays, height becomes y, north becomes −z. That is a turn, so nothing
 * is mirrored.
 *
 * @param vertices of the triangles, three after one another for each
 * @param normals one for each vertex, of unit length
 * @param ends of the lines, two after one another for each
 */
record SolidMesh(List<Point3> vertices, List<Point3> normals, List<Point3> ends) {
  private static final double MM_PER_METRE = 1000;

  static SolidMesh of(Solid.Body body, LengthUnit unit) {
    double metres = unit.toMillimetres(1) / MM_PER_METRE;
    SolidMesh mesh = new SolidMesh(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    for (Solid.Face face : body.faces()) {
      FlatFace flat = FlatFace.of(face);
      for (FlatFace.Triangle triangle : flat.triangles()) {
        for (Point3 corner : triangle.corners()) {
          mesh.vertices.add(turned(corner, metres));
          mesh.normals.add(turned(flat.normal(), 1));
        }
      }
    }
    for (Solid.Line line : body.lines()) {
      mesh.ends.add(turned(line.from(), metres));
      mesh.ends.add(turned(line.to(), metres));
    }
    return mesh;
  }

  private static Point3 turned(Point3 p, double metres) {
    return new Point3(p.x() * metres, p.z() * metres, -p.y() * metres);
  }
}
