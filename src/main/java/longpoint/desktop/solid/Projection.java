package longpoint.desktop.solid;

import java.util.List;
import longpoint.geometry.Point3;

/** From the plan's space to the screen of one stand. */
final class Projection {
  private final double scale;
  private final Point3 centre;
  private final double middleX;
  private final double middleY;
  private final double sinTurn;
  private final double cosTurn;
  private final double sinTilt;
  private final double cosTilt;

  /**
   * @param fine pixels of the target to a pixel of the stand, &gt; 0
   * @param width of the target in its own pixels
   */
  Projection(Stand stand, double fine, double width, double height) {
    scale = stand.scale() * fine;
    centre = stand.centre();
    middleX = width / 2;
    middleY = height / 2;
    sinTurn = Math.sin(Math.toRadians(stand.turn()));
    cosTurn = Math.cos(Math.toRadians(stand.turn()));
    sinTilt = Math.sin(Math.toRadians(stand.tilt()));
    cosTilt = Math.cos(Math.toRadians(stand.tilt()));
  }

  /** Screen x, screen y downward, and how near a point is to the eye, all in pixels. */
  double[] of(Point3 p) {
    double x = p.x() - centre.x();
    double y = p.y() - centre.y();
    double z = p.z() - centre.z();
    double across = x * cosTurn - y * sinTurn;
    double away = x * sinTurn + y * cosTurn;
    return new double[] {
      middleX + scale * across,
      middleY - scale * (z * cosTilt + away * sinTilt),
      scale * (z * sinTilt - away * cosTilt)
    };
  }

  double[][][] of(List<List<Point3>> rings) {
    double[][][] out = new double[rings.size()][][];
    for (int i = 0; i < out.length; i++) {
      out[i] = rings.get(i).stream().map(this::of).toArray(double[][]::new);
    }
    return out;
  }

  /**
   * A direction of the plan's space as the screen has it: right, up, toward the eye.
   *
   * @param d any length
   */
  double[] direction(Point3 d) {
    double across = d.x() * cosTurn - d.y() * sinTurn;
    double away = d.x() * sinTurn + d.y() * cosTurn;
    return new double[] {
      across, d.z() * cosTilt + away * sinTilt, d.z() * sinTilt - away * cosTilt
    };
  }

  /** The way back of {@link #direction}. */
  Point3 back(double right, double up, double near) {
    double away = up * sinTilt - near * cosTilt;
    return new Point3(
        right * cosTurn + away * sinTurn,
        -right * sinTurn + away * cosTurn,
        up * cosTilt + near * sinTilt);
  }
}
