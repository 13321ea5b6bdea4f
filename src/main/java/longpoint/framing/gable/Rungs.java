package longpoint.framing.gable;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the lookouts of a rake go. Marks are at the lower edge of each lookout: the first at least
 * {@code first} up from the tail, the rest on the spacing.
 *
 * @param length of the rake
 * @param first least distance from the tail to the first lookout
 * @param spacing from each lookout to the next, &gt; {@code width}
 * @param width of a lookout up the slope
 */
public record Rungs(double length, double first, double spacing, double width) {
  public Rungs {
    if (!(length > 0) || !(first >= 0) || !(width > 0) || !(spacing > width)) {
      throw new IllegalArgumentException(
          "no ladder: " + length + ", " + first + ", " + spacing + ", " + width);
    }
  }

  public List<Double> lookouts() {
    List<Double> places = new ArrayList<>();
    for (int k = 0; first + k * spacing + width <= length; k++) {
      places.add(first + k * spacing);
    }
    return List.copyOf(places);
  }

  /** Clear lengths: tail to first lookout, between lookouts, last lookout to ridge. */
  public List<Double> blocks() {
    List<Double> blocks = new ArrayList<>();
    double from = 0;
    for (double lookout : lookouts()) {
      blocks.add(lookout - from);
      from = lookout + width;
    }
    blocks.add(length - from);
    return List.copyOf(blocks);
  }
}
