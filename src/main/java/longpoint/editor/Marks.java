package longpoint.editor;

import longpoint.units.LengthUnit;

/** Figures of cures come to a mark of the tape: a sixteenth of an inch, or a millimetre. */
final class Marks {
  /** A figure this near a mark is on it, in marks; what is left is the rounding of arithmetic. */
  private static final double ON_IT = 1e-6;

  private Marks() {}

  static double of(LengthUnit unit) {
    return unit == LengthUnit.INCH ? 1 / 16.0 : 1;
  }

  static double up(LengthUnit unit, double length) {
    return Math.ceil(length / of(unit) - ON_IT) * of(unit);
  }

  static double down(LengthUnit unit, double length) {
    return Math.floor(length / of(unit) + ON_IT) * of(unit);
  }

  /** The last mark short of a length. */
  static double under(LengthUnit unit, double length) {
    return Math.ceil(length / of(unit) - 1 - ON_IT) * of(unit);
  }
}
