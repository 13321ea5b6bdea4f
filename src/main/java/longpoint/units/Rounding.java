package longpoint.units;

/** Which way a figure goes to the nearest mark on the tape. */
public enum Rounding {
  NEAREST,
  /** Never longer than it is: what must fit between two things. */
  DOWN,
  /** Never shorter than it is: what will be trimmed in place. */
  UP;

  /**
   * Share of a step within which a figure counts as standing on the mark. Figures come out of
   * floating-point geometry some 1e-9 in off; without this a block of 22 7/16 in computed as
   * 22.437499999 would be printed a whole sixteenth short. A hundred-thousandth of a sixteenth is
   * far above that noise and far below anything a saw can do.
   */
  private static final double ON_THE_MARK = 1e-5;

  /**
   * @param steps a figure counted in steps
   * @return a whole number of steps
   */
  double whole(double steps) {
    double nearest = Math.rint(steps);
    if (this == NEAREST || Math.abs(steps - nearest) <= ON_THE_MARK) {
      return steps - Math.floor(steps) == 0.5 ? Math.ceil(steps) : nearest;
    }
    return this == DOWN ? Math.floor(steps) : Math.ceil(steps);
  }
}
