package longpoint.units;

import java.util.Objects;

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
    /** Rise in a run of a hundred: {@code 66.7%}. */
    PERCENT,
    /** Rise over run as a plain number: {@code 0.6667}. */
    RATIO
  }

  public Slope {
    if (!(ratio >= 0) || Double.isInfinite(ratio)) {
      throw new IllegalArgumentException("a slope is at least 0 and finite, not " + ratio);
    }
    Objects.requireNonNull(notation);
  }

  public static Slope inTwelve(double rise) {
    return new Slope(rise / 12, Notation.IN_TWELVE);
  }

  public static Slope degrees(double angle) {
    // StrictMath: the same plan must give the same bits on every machine.
    return new Slope(StrictMath.tan(StrictMath.toRadians(angle)), Notation.DEGREES);
  }

  public static Slope percent(double rise) {
    return new Slope(rise / 100, Notation.PERCENT);
  }

  public static Slope ratio(double ratio) {
    return new Slope(ratio, Notation.RATIO);
  }

  public double degrees() {
    return StrictMath.toDegrees(StrictMath.atan(ratio));
  }
}
