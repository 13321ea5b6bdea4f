package longpoint.surface.sweep;

/**
 * Closed loops of corners with the ground on their left, as they stand at one moment.
 *
 * @param count corners, numbered from 0
 * @param x place of each
 * @param y place of each
 * @param next the corner after each in its loop
 */
record Shape(int count, double[] x, double[] y, int[] next) {

  /** The outline as drawn; its corners have the numbers of the given sides that start there. */
  static Shape of(Sides sides) {
    int[] next = new int[sides.given];
    for (int i = 0; i < sides.given; i++) {
      int side = sides.next[i];
      next[i] = side < sides.given ? side : sides.corner[side];
    }
    return new Shape(sides.given, sides.x, sides.y, next);
  }

  /**
   * A front at a time.
   *
   * @param corners the front's numbers of the corners, as listed by {@link #living}
   */
  static Shape of(Front front, int[] corners, double time) {
    int[] place = new int[front.count];
    double[] x = new double[corners.length];
    double[] y = new double[corners.length];
    for (int i = 0; i < corners.length; i++) {
      place[corners[i]] = i;
      x[i] = front.x(corners[i], time);
      y[i] = front.y(corners[i], time);
    }
    int[] next = new int[corners.length];
    for (int i = 0; i < corners.length; i++) {
      next[i] = place[front.next[corners[i]]];
    }
    return new Shape(corners.length, x, y, next);
  }

  /** The corners of a front that still move. */
  static int[] living(Front front) {
    int[] living = new int[front.living];
    int size = 0;
    for (int v = 0; v < front.count; v++) {
      if (front.alive[v]) {
        living[size++] = v;
      }
    }
    return living;
  }
}
