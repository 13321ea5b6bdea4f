package longpoint.desktop.solid;

import java.util.List;
import java.util.Set;
import longpoint.geometry.Point3;
import longpoint.sheets.solid.RoofSolid;
import longpoint.sheets.solid.SolidEdge;
import longpoint.sheets.solid.SolidFace;

/** Four upright boards of one size around the middle, each facing outward, 100 on a side. */
final class TinyScene {
  static final List<String> BOARDS = List.of("front", "right", "back", "left");

  private TinyScene() {}

  /**
   * @param order in which the boards are painted, as numbers of {@link #BOARDS}
   */
  static SolidScene of(int... order) {
    List<SolidFace> all =
        List.of(
            board("front", -50, -50, 50, -50),
            board("right", 50, -50, 50, 50),
            board("back", 50, 50, -50, 50),
            board("left", -50, 50, -50, -50));
    List<SolidFace> faces = java.util.Arrays.stream(order).mapToObj(all::get).toList();
    return scene(faces, List.of());
  }

  static SolidScene scene(List<SolidFace> faces, List<SolidEdge> edges) {
    return new SolidScene(new RoofSolid(faces, edges), SolidLayer.AT_FIRST, Set.of());
  }

  static SolidFace board(String subject, double x1, double y1, double x2, double y2) {
    return new SolidFace(
        SolidFace.Kind.WALL,
        subject,
        List.of(
            List.of(
                new Point3(x1, y1, 0),
                new Point3(x2, y2, 0),
                new Point3(x2, y2, 100),
                new Point3(x1, y1, 100))));
  }

  /** Looking at the middle of the boards, a pixel to a unit. */
  static Stand from(Stand.Named view) {
    return Stand.START.from(view).looking(1, new Point3(0, 0, 50));
  }
}
