package longpoint.framing.gable;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the lookouts of a rake go, up the slope from the tail.
 *
 * @param length of the rake
 * @param width of a lookout up the slope
 * @param lookouts lower edge of each, rising
 */
public record Rungs(double length, double width, List<Double> lookouts) {
  /** A sheet holds a whole number of spacings if it is short of it by no more than this share. */
  private static final double WHOLE = 1e-6;

  public Rungs {
    lookouts = List.copyOf(lookouts);
  }

  private static void check(double length, double first, double spacing, double width) {
    if (!(length > 0) || !(first >= 0) || !(width > 0) || !(spacing > width)) {
      throw new IllegalArgumentException(
          "no ladder: " + length + ", " + first + ", " + spacing + ", " + width);
    }
  }

  /**
   * The first at a distance from the tail, the rest on the spacing.
   *
   * @param first tail to the lower edge of the first lookout
   * @param spacing from each lookout to the next, &gt; {@code width}
   */
  public static Rungs spaced(double length, double first, double spacing, double width) {
    check(length, first, spacing, width);
    List<Double> places = new ArrayList<>();
    for (int k = 0; first + k * spacing + width <= length; k++) {
      places.add(first + k * spacing);
    }
    return new Rungs(length, width, places);
  }

  /**
   * The middle of a lookout under every long edge of the sheets, and others between in equal steps
   * no wider than the spacing. Those nearer to the tail than {@code first} are left out.
   *
   * @param first least distance from the tail to the lower edge of the first lookout
   * @param spacing most from each lookout to the next, &gt; {@code width}
   * @param sheet width of a sheet up the slope, &gt; 0
   * @param below how far below the tail the lowest sheet starts, along the slope
   */
  public static Rungs underSheets(
      double length, double first, double spacing, double width, double sheet, double below) {
    check(length, first, spacing, width);
    double steps = Math.max(1, Math.ceil(sheet / spacing - WHOLE));
    double step = Math.max(width, sheet / steps);
    List<Double> places = new ArrayList<>();
    for (int k = 1; k * step - below + width / 2 <= length; k++) {
      double low = k * step - below - width / 2;
      if (low >= first) {
        places.add(low);
      }
    }
    return new Rungs(length, width, places);
  }

  /** Clear lengths: tail to first lookout, between lookouts, last lookout to ridge. */
  public List<Double> blocks() {
    List<Double> blocks = new ArrayList<>();
    double from = 0;
    for (double lookout : lookouts) {
      blocks.add(lookout - from);
      from = lookout + width;
    }
    blocks.add(length - from);
    return List.copyOf(blocks);
  }
}
