package longpoint.desktop.solid;

import longpoint.geometry.Point3;

/**
 * Where the house is looked at from, without perspective, so that parallel lines stay parallel and
 * a flat face's depth changes evenly over the screen.
 *
 * @param turn degrees the house is turned counter-clockwise, seen from above
 * @param tilt degrees the eye stands above the horizon, 0 to 90
 * @param scale pixels per plan unit, &gt; 0
 * @param centre what is seen in the middle
 */
public record Stand(double turn, double tilt, double scale, Point3 centre) {
  /** Views that have a name; the front faces the foot of the sheet. */
  public enum Named {
    PLAN(0, 90),
    FRONT(0, 0),
    RIGHT(-90, 0),
    BACK(180, 0),
    LEFT(90, 0),
    CORNER(-32, 28);

    private final double turn;
    private final double tilt;

    Named(double turn, double tilt) {
      this.turn = turn;
      this.tilt = tilt;
    }
  }

  static final Stand START =
      new Stand(Named.CORNER.turn, Named.CORNER.tilt, 1, new Point3(0, 0, 0));

  public Stand {
    turn = Math.IEEEremainder(turn, 360);
    tilt = Math.max(0, Math.min(90, tilt));
  }

  Stand from(Named view) {
    return new Stand(view.turn, view.tilt, scale, centre);
  }

  /**
   * From whichever corner of the house is on one side of it; from the usual one if none is more so.
   *
   * @param x across the sheet, toward that side
   * @param y up the sheet
   */
  Stand fromCornerToward(double x, double y) {
    Stand best = from(Named.CORNER);
    for (int quarter = 1; quarter < 4; quarter++) {
      Stand other = best.turnedTo(Named.CORNER.turn + 90 * quarter);
      if (other.nearness(x, y) > best.nearness(x, y) + 1e-6 * Math.hypot(x, y)) {
        best = other;
      }
    }
    return best;
  }

  private Stand turnedTo(double turn) {
    return new Stand(turn, tilt, scale, centre);
  }

  /** How much nearer the eye one comes by going there. */
  private double nearness(double x, double y) {
    double a = Math.toRadians(turn);
    return -x * Math.sin(a) - y * Math.cos(a);
  }

  Stand turned(double byTurn, double byTilt) {
    return new Stand(turn + byTurn, tilt + byTilt, scale, centre);
  }

  Stand looking(double scale, Point3 centre) {
    return new Stand(turn, tilt, scale, centre);
  }

  /** The house moved over the screen, in pixels to the right and down. */
  Stand panned(double right, double down) {
    double a = Math.toRadians(turn);
    double b = Math.toRadians(tilt);
    double across = -right / scale;
    double up = down / scale;
    // Back through the turn: screen right is (cos, −sin), screen up (sin, cos)·sin tilt and cos
    // tilt.
    return looking(
        scale,
        new Point3(
            centre.x() + across * Math.cos(a) + up * Math.sin(b) * Math.sin(a),
            centre.y() - across * Math.sin(a) + up * Math.sin(b) * Math.cos(a),
            centre.z() + up * Math.cos(b)));
  }

  /**
   * Nearer by a factor, with a place of the screen staying where it is.
   *
   * @param right of the middle, pixels
   * @param down from the middle, pixels
   */
  Stand zoomed(double factor, double right, double down) {
    return looking(scale * factor, centre).panned(right - right * factor, down - down * factor);
  }
}
