package longpoint.framing.square;

/**
 * Two figures on a framing square that give a side cut: hold both to the edge of the stock and mark
 * along the second (Hodgson, Radford: the length on the blade, and the blade marked).
 *
 * @param run on one leg: the unit run of the rafter, turned by the cut
 * @param length on the other, the unit length of the rafter
 */
public record SquareCut(double run, double length) {
  /** Legs of a square in unit runs of 12 in: 24 and 18 in, as the old handbooks have it. */
  private static final double BLADE = 2;

  private static final double TONGUE = 1.5;

  /**
   * Halved until both lie on the square.
   *
   * @param square run and rise of the rafter
   * @param planAngle between the cut and the rafter in plan, degrees, more than 0, under 90
   * @param unit unit run of a common, 12 in or 250 mm
   */
  public static SquareCut of(SquareFigures square, double planAngle, double unit) {
    double run = square.run() * Math.tan(Math.toRadians(planAngle));
    double length = square.common();
    double scale = 1;
    while (Math.max(run, length) * scale > BLADE * unit
        || Math.min(run, length) * scale > TONGUE * unit) {
      scale /= 2;
    }
    return new SquareCut(run * scale, length * scale);
  }

  /** The angle they give, degrees from the edge. */
  public double degrees() {
    return Math.toDegrees(Math.atan2(run, length));
  }
}
