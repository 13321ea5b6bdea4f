package longpoint.desktop.solid;

import longpoint.geometry.Point3;

/**
 * Where the house is looked at from, without perspective, so that parallel lines stay parallel.
 *
 * @param turn degrees the house is turned counter-clockwise, seen from above
 * @param tilt degrees the eye stands above the horizon, 0 to 90
 * @param scale pixels per plan unit, &gt; 0
 * @param centre what is seen in the middle
 * @param middleX screen x of the centre
 * @param middleY screen y of the centre
 */
record Stand(
    double turn, double tilt, double scale, Point3 centre, double middleX, double middleY) {
  /**
   * Screen x, screen y, and how near a point is to the eye, in pixels.
   *
   * @param out takes the three figures
   */
  void project(Point3 p, double[] out) {
    double a = Math.toRadians(turn);
    double b = Math.toRadians(tilt);
    double x = p.x() - centre.x();
    double y = p.y() - centre.y();
    double z = p.z() - centre.z();
    double across = x * Math.cos(a) - y * Math.sin(a);
    double away = x * Math.sin(a) + y * Math.cos(a);
    out[0] = middleX + scale * across;
    out[1] = middleY - scale * (z * Math.cos(b) + away * Math.sin(b));
    out[2] = scale * (z * Math.sin(b) - away * Math.cos(b));
  }
}
