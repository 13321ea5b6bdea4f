package longpoint.desktop.panel;

import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
import longpoint.units.Rounding;

/** How the panels print lengths. The plan keeps its unit; drawings and packet are not touched. */
public enum LengthDisplay {
  /** Feet, inches and sixteenths, or whole millimetres: as the plan is drawn. */
  OF_PLAN,
  /** Inches without feet; millimetres stay as they are. */
  INCHES_ONLY,
  /** Millimetres for a plan in inches, feet and inches for one in millimetres. */
  OTHER_UNIT;

  /**
   * A length as it is printed.
   *
   * @param unit of the length
   */
  public String of(double length, LengthUnit unit) {
    return switch (this) {
      case OF_PLAN -> LengthText.of(length, unit);
      case INCHES_ONLY -> LengthText.small(length, unit, Rounding.NEAREST);
      case OTHER_UNIT -> {
        LengthUnit other = unit == LengthUnit.INCH ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
        String text = LengthText.of(other.fromMillimetres(unit.toMillimetres(length)), other);
        yield other == LengthUnit.MILLIMETRE ? text + " mm" : text;
      }
    };
  }

  /** The one that comes after it, round and round. */
  public LengthDisplay next() {
    return values()[(ordinal() + 1) % values().length];
  }
}
