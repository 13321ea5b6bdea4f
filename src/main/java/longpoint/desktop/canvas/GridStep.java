package longpoint.desktop.canvas;

import java.util.Locale;
import longpoint.units.LengthUnit;

/**
 * How wide the grid's squares are at some zoom. Every step is a whole number of the one before, so
 * lines only come and go while zooming and none ever moves.
 *
 * @param fine between faint lines, in plan units
 * @param strong between strong lines, in plan units; a whole number of fine steps
 */
record GridStep(double fine, double strong) {
  /** Faint lines nearer than this run into a grey. */
  static final double MIN_PIXELS = 11;

  private static final double[] INCHES = {
    1 / 16.0, 1 / 4.0, 1, 3, 12, 48, 192, 960, 4800, 24000, 120000
  };
  private static final double[] MILLIMETRES = {
    1, 5, 10, 50, 100, 500, 1000, 5000, 10_000, 50_000, 100_000, 500_000, 1_000_000, 5_000_000
  };

  static GridStep at(double pixelsPerUnit, LengthUnit unit) {
    double[] steps = unit == LengthUnit.INCH ? INCHES : MILLIMETRES;
    int jump = unit == LengthUnit.INCH ? 1 : 2;
    int i = 0;
    while (i + jump + 1 < steps.length && steps[i] * pixelsPerUnit < MIN_PIXELS) {
      i++;
    }
    return new GridStep(steps[i], steps[i + jump]);
  }

  /**
   * What a ruler says at a strong line: whole feet, inches within a foot, metres or millimetres.
   */
  String label(double at, LengthUnit unit) {
    if (unit == LengthUnit.INCH) {
      long inches = Math.round(at);
      if (strong >= 12 || inches % 12 == 0) {
        return inches / 12 + "'";
      }
      return inches + "\"";
    }
    if (strong >= 1000) {
      return Math.round(at / 1000) + " m";
    }
    return String.format(Locale.ROOT, "%d", Math.round(at));
  }
}
