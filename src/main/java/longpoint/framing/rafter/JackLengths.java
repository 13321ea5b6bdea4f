package longpoint.framing.rafter;

import java.util.ArrayList;
import java.util.List;

/**
 * Line lengths of a row of jacks.
 *
 * @param first the shortest, ≥ 0
 * @param difference from each to the next, &gt; 0
 * @param count how many, ≥ 0
 */
public record JackLengths(double first, double difference, int count) {
  public JackLengths {
    if (!(first >= 0) || !(difference > 0) || count < 0) {
      throw new IllegalArgumentException("no jacks: " + first + ", " + difference + ", " + count);
    }
  }

  /**
   * Jacks that fill a side from its corner.
   *
   * @param corner the planes that meet; the jacks lie on its plane A
   * @param spacing along the eave, the first jack one spacing from the corner
   * @param run of the common rafter they grow towards; a jack as long as a common is a common
   */
  public static JackLengths fill(RoofCorner corner, double spacing, double run) {
    double step = spacing * Math.tan(Math.toRadians(corner.planAngleA()));
    int count = (int) Math.ceil(run / step) - 1;
    return new JackLengths(
        corner.jackDifferenceA(spacing), corner.jackDifferenceA(spacing), Math.max(0, count));
  }

  /** Shortest first. */
  public List<Double> lengths() {
    List<Double> all = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      all.add(first + i * difference);
    }
    return List.copyOf(all);
  }
}
