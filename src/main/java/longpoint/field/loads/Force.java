package longpoint.field.loads;

import java.util.Optional;
import longpoint.plan.Handling;
import longpoint.units.LengthUnit;

/**
 * What an amount comes to under the loads that were typed: pounds, or kilonewtons in a metric plan.
 * They are not added up: how loads go together is for the designer and the code.
 */
public record Force(
    Optional<Double> dead, Optional<Double> live, Optional<Double> snow, Optional<Double> ceiling) {

  static Force of(Amount amount, Handling.Loads loads, LengthUnit unit) {
    double square = square(unit);
    double under =
        switch (loads.deadOn()) {
          case LEVEL -> amount.level();
          case SLOPE -> amount.sloped();
        };
    return new Force(
        loads.dead().map(l -> l * under / square),
        loads.live().map(l -> l * amount.level() / square),
        loads.snow().map(l -> l * amount.level() / square),
        loads.ceiling().map(l -> l * amount.ceiling() / square));
  }

  /** Square plan units in what a load is per: a square foot, or a square metre. */
  private static double square(LengthUnit unit) {
    return switch (unit) {
      case INCH -> 144;
      case MILLIMETRE -> 1e6;
    };
  }

  /**
   * The same along a line: per foot, or per metre in a metric plan.
   *
   * @param length in plan units, &gt; 0
   */
  Force along(double length, LengthUnit unit) {
    double lengths = length / Math.sqrt(square(unit));
    return new Force(
        dead.map(f -> f / lengths),
        live.map(f -> f / lengths),
        snow.map(f -> f / lengths),
        ceiling.map(f -> f / lengths));
  }
}
