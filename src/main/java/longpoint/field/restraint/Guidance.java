package longpoint.field.restraint;

import java.util.Optional;
import longpoint.units.LengthUnit;

/**
 * General guidance on temporary restraint of plated trusses, in feet and inches, made into plan
 * units. Where it comes from and how sure it is:
 *
 * <ul>
 *   <li>rows on top chords by span: from memory of the trade's safety guide; only that spacing goes
 *       by length was seen
 *   <li>diagonals at both ends and every ten spaces, 20 ft at most, about 45°: second hand; 45°
 *       seen
 *   <li>rows on bottom chords 15 ft at most; boards 2x4 lapped over two trusses: second hand
 *   <li>out of plumb a fiftieth of the depth, bow a two-hundredth of the length, 2 in at most:
 *       values second hand, rules from memory; a quarter inch along the bearing: second hand
 *   <li>60 ft and over: an engineer plans and watches the restraint: seen
 * </ul>
 */
record Guidance(LengthUnit unit) {
  /** Longest span in feet, and farthest from row to row in feet. */
  private static final double[][] BY_SPAN = {{30, 10}, {45, 8}, {60, 6}, {80, 4}};

  private static final int SPACES = 10;
  private static final double DIAGONALS_FT = 20;
  private static final double BOTTOM_FT = 15;
  private static final double BOARD_FT = 16;
  private static final double LONG_FT = 60;

  /** A span this little over a step of the table, in feet, is on it: rounding. */
  private static final double ROUNDING = 1e-6;

  private double feet(double feet) {
    return unit.fromMillimetres(feet * 12 * LengthUnit.MM_PER_INCH);
  }

  private double inches(double inches) {
    return unit.fromMillimetres(inches * LengthUnit.MM_PER_INCH);
  }

  private double inFeet(double length) {
    return unit.toMillimetres(length) / (12 * LengthUnit.MM_PER_INCH);
  }

  /** Empty beyond the table. */
  Optional<Double> rows(double span) {
    for (double[] step : BY_SPAN) {
      if (inFeet(span) <= step[0] + ROUNDING) {
        return Optional.of(feet(step[1]));
      }
    }
    return Optional.empty();
  }

  double bottomRows() {
    return unit == LengthUnit.INCH ? feet(BOTTOM_FT) : 4570;
  }

  double board() {
    return unit == LengthUnit.INCH ? feet(BOARD_FT) : 4800;
  }

  /**
   * @param spacing of the trusses
   */
  double diagonals(double spacing) {
    return Math.min(SPACES * spacing, feet(DIAGONALS_FT));
  }

  boolean isLong(double span) {
    return inFeet(span) >= LONG_FT - ROUNDING;
  }

  RestraintRun.Tolerances tolerances(double height, double length) {
    return new RestraintRun.Tolerances(
        Math.min(height / 50, inches(2)), Math.min(length / 200, inches(2)), inches(0.25));
  }
}
