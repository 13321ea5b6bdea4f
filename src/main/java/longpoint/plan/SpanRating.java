package longpoint.plan;

import longpoint.units.LengthUnit;

/**
 * Span ratings stamped on structural panels: how far apart supports may stand under a roof with and
 * without edge support, in inches. The figures are those of the roof columns of IRC table
 * R503.2.1.1(1), from memory: check the stamp and the code in force.
 */
public enum SpanRating {
  S16_0("16/0", 16, 16),
  S20_0("20/0", 20, 20),
  S24_0("24/0", 24, 20),
  S24_16("24/16", 24, 24),
  S32_16("32/16", 32, 28),
  S40_20("40/20", 40, 32),
  S48_24("48/24", 48, 36);

  private final String stamp;
  private final double withEdgeSupport;
  private final double without;

  SpanRating(String stamp, double withEdgeSupport, double without) {
    this.stamp = stamp;
    this.withEdgeSupport = withEdgeSupport;
    this.without = without;
  }

  /** As stamped. */
  public String stamp() {
    return stamp;
  }

  /** What the rating asks for at the long edges between supports that far apart. */
  public EdgeSupport at(double spacing, LengthUnit unit) {
    double inches = unit.toMillimetres(spacing) / LengthUnit.MM_PER_INCH;
    // 610 mm is 24.016 in and sold as 24.
    double slack = 1.0 / 16;
    if (inches <= without + slack) {
      return EdgeSupport.NOT_NEEDED;
    }
    return inches <= withEdgeSupport + slack ? EdgeSupport.CLIPS : EdgeSupport.TOO_FAR;
  }

  /** What a rating asks for. */
  public enum EdgeSupport {
    NOT_NEEDED,
    /** Clips, blocks or tongue and groove between supports. */
    CLIPS,
    /** Supports are farther apart than the rating allows. */
    TOO_FAR
  }
}
