package longpoint.field.takeoff;

import longpoint.units.LengthUnit;

/**
 * How close nails stand in a deck. Windy places need closer ones: ask the local code.
 *
 * @param edge at panel ends and supported edges, plan units, &gt; 0
 * @param field at supports between, plan units, &gt; 0
 */
public record NailSchedule(double edge, double field) {
  public NailSchedule {
    if (!(edge > 0) || !(field > 0)) {
      throw new IllegalArgumentException("nails stand apart: " + edge + ", " + field);
    }
  }

  /** 6 in at edges and 12 in between; 150 and 300 mm (common practice, IRC table R602.3(1)). */
  public static NailSchedule of(LengthUnit unit) {
    return switch (unit) {
      case INCH -> new NailSchedule(6, 12);
      case MILLIMETRE -> new NailSchedule(150, 300);
    };
  }

  /** Nails in a row that long, no two farther apart than {@code spacing}. */
  static long row(double length, double spacing) {
    return length <= 0 ? 0 : (long) Math.ceil(length / spacing - ROUNDING) + 1;
  }

  /** A row a whole number of spacings long, but for rounding, takes no extra nail. */
  private static final double ROUNDING = 1e-6;
}
