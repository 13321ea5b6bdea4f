package longpoint.framing.square;

import java.util.List;
import java.util.stream.IntStream;
import longpoint.units.LengthUnit;

/**
 * The lines of the rafter table for one slope and a square corner where both roofs have that slope.
 * On a square marked in inches the unit run is 12; on a metric one it is commonly 250 mm.
 *
 * <p>The side-cut figures are used against the unit run on the other leg; the mark is made along
 * the leg that holds the unit run (US Navy NAVEDTRA 14044 vol. 2, p. 2-33).
 *
 * @param rise unit rise, ≥ 0, in the unit of {@code run}
 * @param run unit run of a common rafter, &gt; 0
 */
public record SquareFigures(double rise, double run) {
  private static final int FIRST_STAMPED = 2;
  private static final int LAST_STAMPED = 18;

  public SquareFigures {
    if (!(rise >= 0) || !(run > 0) || Double.isInfinite(rise) || Double.isInfinite(run)) {
      throw new IllegalArgumentException("no slope: " + rise + " in " + run);
    }
  }

  /** The run of a common rafter that a square of this unit is read at: 12 in or 250 mm. */
  public static double unitRun(LengthUnit unit) {
    return switch (unit) {
      case INCH -> 12;
      case MILLIMETRE -> 250;
    };
  }

  public static SquareFigures inTwelve(double rise) {
    return new SquareFigures(rise, 12);
  }

  /** The rows a square carries: rises 2 to 18 in a run of 12. */
  public static List<SquareFigures> table() {
    return IntStream.rangeClosed(FIRST_STAMPED, LAST_STAMPED)
        .mapToObj(SquareFigures::inTwelve)
        .toList();
  }

  /** Length of a common rafter per unit run. */
  public double common() {
    return Math.hypot(run, rise);
  }

  /** Plan run of the hip or valley per unit run of the common rafter; 16.97 in 12. */
  public double hipRun() {
    return run * Math.sqrt(2);
  }

  /** Length of a hip or valley rafter per unit run of the common rafter. */
  public double hip() {
    return Math.hypot(hipRun(), rise);
  }

  /** Difference in length of neighbouring jacks that stand {@code spacing} apart on the plate. */
  public double jackDifference(double spacing) {
    return spacing * common() / run;
  }

  /** Figure for the side cut of jacks. */
  public double jackSideCut() {
    return run * run / common();
  }

  /** Figure for the side cut of hips and valleys. */
  public double hipSideCut() {
    return run * hipRun() / hip();
  }

  public double degrees() {
    return Math.toDegrees(Math.atan2(rise, run));
  }

  public double hipDegrees() {
    return Math.toDegrees(Math.atan2(rise, hipRun()));
  }

  /** True area over plan area. */
  public double areaFactor() {
    return common() / run;
  }

  /** Length of hip over the run of the common rafter. */
  public double hipFactor() {
    return hip() / run;
  }

  /** Length of hip over its own plan run. */
  public double hipFactorOnHipRun() {
    return hip() / hipRun();
  }

  /**
   * The hip's drop: how far its seat is cut deeper so that its two top corners, not its middle, lie
   * in the roof planes.
   *
   * @param thickness of the hip
   */
  public double hipDrop(double thickness) {
    return thickness / 2 * rise / hipRun();
  }

  /** Backing bevel of the hip, degrees from its square top edge. */
  public double backingDegrees() {
    return Math.toDegrees(Math.atan2(rise, hip()));
  }
}
