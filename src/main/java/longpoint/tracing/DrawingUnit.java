package longpoint.tracing;

import java.util.Optional;
import java.util.stream.Stream;
import longpoint.units.LengthUnit;

/** Units a CAD drawing may be drawn in, with their numbers in {@code $INSUNITS}. */
public enum DrawingUnit {
  INCH("in", 1, LengthUnit.INCH, 1),
  FOOT("ft", 2, LengthUnit.INCH, 12),
  YARD("yd", 10, LengthUnit.INCH, 36),
  MILLIMETRE("mm", 4, LengthUnit.MILLIMETRE, 1),
  CENTIMETRE("cm", 5, LengthUnit.MILLIMETRE, 10),
  DECIMETRE("dm", 14, LengthUnit.MILLIMETRE, 100),
  METRE("m", 6, LengthUnit.MILLIMETRE, 1000);

  private final String symbol;
  private final int number;
  private final LengthUnit of;
  private final double many;

  DrawingUnit(String symbol, int number, LengthUnit of, double many) {
    this.symbol = symbol;
    this.number = number;
    this.of = of;
    this.many = many;
  }

  public String symbol() {
    return symbol;
  }

  /** The unit a plan of this drawing would be drawn in. */
  public LengthUnit planUnit() {
    return of;
  }

  /** How many of the plan's units one of these is; a whole number wherever it can be. */
  public double in(LengthUnit unit) {
    return unit == of ? many : unit.fromMillimetres(of.toMillimetres(many));
  }

  static Optional<DrawingUnit> ofNumber(int number) {
    return Stream.of(values()).filter(u -> u.number == number).findFirst();
  }
}
