package longpoint.framing.rafter;

/**
 * A straight sloping length: a rafter, a tail, or a piece of either.
 *
 * @param run length in plan, ≥ 0, in the plan's unit
 * @param slope rise over that run, ≥ 0; for a hip or valley the slope of the hip itself
 */
public record Incline(double run, double slope) {
  public Incline {
    if (!(run >= 0) || !(slope >= 0) || Double.isInfinite(run) || Double.isInfinite(slope)) {
      throw new IllegalArgumentException("no incline: run " + run + ", slope " + slope);
    }
  }

  public double rise() {
    return run * slope;
  }

  public double length() {
    return Math.hypot(run, rise());
  }

  /** Angle of a level cut against the rafter's edge, degrees; the plumb cut is the rest of 90. */
  public double levelCut() {
    return Math.toDegrees(Math.atan(slope));
  }

  /** Angle of a plumb cut against the rafter's edge, degrees. */
  public double plumbCut() {
    return 90 - levelCut();
  }

  /** This incline with some of its plan run taken off. */
  public Incline shortened(double planRun) {
    return new Incline(Math.max(0, run - planRun), slope);
  }

  /** This incline carried on past its foot or head. */
  public Incline extended(double planRun) {
    return new Incline(run + planRun, slope);
  }

  /**
   * Cheek cut laid out on the top edge, degrees from the length of the rafter. On a square: tan of
   * the plan angle × the run on one leg, the length on the other, marked along the length.
   *
   * @param planAngle between this rafter and what it meets, degrees, more than 0, at most 90
   */
  public double sideCut(double planAngle) {
    return Math.toDegrees(
        Math.atan(Math.tan(Math.toRadians(planAngle)) * Math.cos(Math.atan(slope))));
  }
}
