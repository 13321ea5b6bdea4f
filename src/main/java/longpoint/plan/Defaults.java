package longpoint.plan;

import java.util.Objects;
import java.util.Optional;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;

/**
 * What holds wherever a side says nothing of its own. Lengths in plan units.
 *
 * @param slope of every eave
 * @param overhang of eaves and rakes, ≥ 0
 * @param heel plate to top of framing at the wall face; empty for what the framing asks for, {@link
 *     UsualHeel}
 * @param fascia thickness of the fascia board, ≥ 0
 * @param ridgeBlockRelief how much a ridge block is cut short of its bay, ≥ 0
 * @param lookoutFirst first lookout at least this far up from the tail, ≥ 0
 * @param lookoutSpacing between lookouts up the slope, &gt; 0
 */
public record Defaults(
    Slope slope,
    double overhang,
    Optional<Double> heel,
    double fascia,
    double ridgeBlockRelief,
    double lookoutFirst,
    double lookoutSpacing,
    Extras extras) {
  public Defaults {
    Objects.requireNonNull(slope);
    Objects.requireNonNull(heel);
    Objects.requireNonNull(extras);
  }

  /** The figures a new plan starts from (common practice). */
  public static Defaults of(LengthUnit unit) {
    return switch (unit) {
      case INCH ->
          new Defaults(Slope.inTwelve(8), 16, Optional.empty(), 1.5, 0.0625, 20, 24, Extras.NONE);
      case MILLIMETRE ->
          new Defaults(Slope.degrees(35), 400, Optional.empty(), 38, 2, 500, 610, Extras.NONE);
    };
  }

  public Defaults withSlope(Slope slope) {
    return new Defaults(
        slope, overhang, heel, fascia, ridgeBlockRelief, lookoutFirst, lookoutSpacing, extras);
  }

  public Defaults withOverhang(double overhang) {
    return new Defaults(
        slope, overhang, heel, fascia, ridgeBlockRelief, lookoutFirst, lookoutSpacing, extras);
  }

  public Defaults withHeel(double heel) {
    return withHeel(Optional.of(heel));
  }

  /** What the framing asks for where empty. */
  public Defaults withHeel(Optional<Double> heel) {
    return new Defaults(
        slope, overhang, heel, fascia, ridgeBlockRelief, lookoutFirst, lookoutSpacing, extras);
  }
}
