package longpoint.units;

/** The unit a plan is drawn in, chosen once per plan. */
public enum LengthUnit {
  INCH("in"),
  MILLIMETRE("mm");

  /** Exact by definition of the international inch (1959). */
  public static final double MM_PER_INCH = 25.4;

  private final String symbol;

  LengthUnit(String symbol) {
    this.symbol = symbol;
  }

  /** As it stands in a plan file: {@code in} or {@code mm}. */
  public String symbol() {
    return symbol;
  }

  public double toMillimetres(double length) {
    return this == INCH ? length * MM_PER_INCH : length;
  }

  public double fromMillimetres(double millimetres) {
    return this == INCH ? millimetres / MM_PER_INCH : millimetres;
  }
}
