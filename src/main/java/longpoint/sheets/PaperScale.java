package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.units.LengthUnit;

/**
 * A standard scale of building drawings.
 *
 * @param ratio how many times smaller than the building, &gt; 0: 48 for 1:48
 * @param title as it stands in the title block
 */
public record PaperScale(double ratio, String title) {
  /**
   * Paper inches to a foot, largest first: the edges of an architect's scale, then an engineer's.
   */
  private static final String[] ARCHITECT = {
    "3:4",
    "1 1/2:8",
    "1:12",
    "3/4:16",
    "1/2:24",
    "3/8:32",
    "1/4:48",
    "3/16:64",
    "1/8:96",
    "3/32:128",
    "1/16:192"
  };

  private static final int[] ENGINEER = {20, 30, 40, 50, 60, 100, 200, 500, 1000};

  /** ISO 5455 with 1:25, 1:75 and 1:250 as building drawings use them (from memory). */
  private static final int[] METRIC = {5, 10, 20, 25, 50, 75, 100, 200, 250, 500, 1000, 2000, 5000};

  /** Scales of the unit's trade, largest first. */
  public static List<PaperScale> of(LengthUnit unit) {
    List<PaperScale> scales = new ArrayList<>();
    if (unit == LengthUnit.MILLIMETRE) {
      for (int ratio : METRIC) {
        scales.add(new PaperScale(ratio, "1:" + ratio));
      }
      return scales;
    }
    for (String edge : ARCHITECT) {
      String[] parts = edge.split(":");
      scales.add(
          new PaperScale(
              Double.parseDouble(parts[1]), parts[0] + "\" = 1'-0\"  (1:" + parts[1] + ")"));
    }
    for (int feet : ENGINEER) {
      scales.add(new PaperScale(feet * 12.0, "1\" = " + feet + "'  (1:" + feet * 12 + ")"));
    }
    return scales;
  }

  /** What house plans are drawn at: a quarter inch to the foot, or 1:50 (common practice). */
  static PaperScale usual(LengthUnit unit) {
    double ratio = unit == LengthUnit.INCH ? 48 : 50;
    return of(unit).stream().filter(s -> s.ratio() == ratio).findFirst().orElseThrow();
  }

  /** For what no standard scale can hold: a round ratio above all of them. */
  static PaperScale round(double atLeast) {
    double ratio = Math.pow(10, Math.ceil(Math.log10(atLeast)));
    return new PaperScale(ratio, "1:" + (long) ratio);
  }

  /** Plan units to a millimetre of paper. */
  public double unitsPerMm(LengthUnit unit) {
    return unit.fromMillimetres(ratio);
  }
}
