package longpoint.units;

/**
 * How steep a roof plane is, and how its user likes that said.
 *
 * @param ratio rise over run, at least 0 and finite; 10 in 12 is 0.8333…
 * @param notation how it is written back
 */
public record Slope(double ratio, Notation notation) {
  /** Ways to write one slope. */
  public enum Notation {
    /** Rise in a run of twelve: {@code 8/12}. */
    IN_TWELVE,
    /** Angle from level: {@code 33.7deg}. */
    DEGREES,
    /** Rise over run as a plain number: {@code 0.6667}. */
    RATIO
  }

  public Slope {
    if (!(ratio >= 0) || Double.isInfinite(ratio)) {
      throw new IllegalArgumentException("a slope is at least 0 and finite, not " + ratio);
    }
  }

  public static Slope inTwelve(double rise) {
    return new Slope(rise / 12, Notation.IN_TWELVE);
  }

  public static Slope degrees(double angle) {
    return new Slope(Math.tan(Math.toRadians(angle)), Notation.DEGREES);
  }

  public static Slope ratio(double ratio) {
    return new Slope(ratio, Notation.RATIO);
  }

  public double degrees() {
    return Math.toDegrees(Math.atan(ratio));
  }
}
