package longpoint.desktop.solid;

import java.util.Optional;
import longpoint.sheets.solid.SolidEdge;
import longpoint.sheets.solid.SolidFace;

/** Finds what is seen at a place of the screen: what stands nearest to the eye there. */
final class SolidPick {
  /** A truss or rafter is a line; the pointer is on it within so many pixels. */
  private static final double REACH = 4;

  private String subject;
  private double near = Double.NEGATIVE_INFINITY;

  private SolidPick() {}

  /** Subject of the nearest face or stick that is shown at a place, if there is any. */
  static Optional<String> at(SolidScene scene, Projection projection, double x, double y) {
    SolidPick pick = new SolidPick();
    for (SolidFace face : scene.house().faces()) {
      if (scene.shows(SolidLayer.of(face.kind()))) {
        FlatShape.of(projection.of(face.rings()))
            .filter(shape -> shape.covers(x, y))
            .ifPresent(shape -> pick.offer(face.subject(), shape.near(x, y)));
      }
    }
    for (SolidEdge edge : scene.house().edges()) {
      if (SolidLayer.of(edge.kind()) == SolidLayer.FRAME && scene.shows(SolidLayer.FRAME)) {
        pick.stick(edge, projection, x, y);
      }
    }
    return Optional.ofNullable(pick.subject);
  }

  private void offer(String subject, double near) {
    if (near > this.near) {
      this.subject = subject;
      this.near = near;
    }
  }

  private void stick(SolidEdge edge, Projection projection, double x, double y) {
    double[] a = projection.of(edge.from());
    double[] b = projection.of(edge.to());
    double dx = b[0] - a[0];
    double dy = b[1] - a[1];
    double square = dx * dx + dy * dy;
    double share =
        square == 0 ? 0 : Math.max(0, Math.min(1, ((x - a[0]) * dx + (y - a[1]) * dy) / square));
    if (Math.hypot(a[0] + dx * share - x, a[1] + dy * share - y) <= REACH) {
      offer(edge.subject(), a[2] + (b[2] - a[2]) * share);
    }
  }
}
