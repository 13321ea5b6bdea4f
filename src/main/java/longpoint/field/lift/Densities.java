package longpoint.field.lift;

import longpoint.plan.Handling;
import longpoint.units.LengthUnit;

/**
 * What lumber and panels weigh, per plan unit.
 *
 * @param lumber lb/in³ or kg/mm³
 * @param panel lb/in² or kg/mm² of true area
 */
record Densities(double lumber, double panel) {
  /** Southern pine about 34.4 lb/ft³ (trade table, second hand); 35 is on the safe side. */
  private static final double LUMBER_PCF = 35;

  private static final double LUMBER_KG = 560;

  private static final double CUBIC_FOOT = 1728;
  private static final double SQUARE_FOOT = 144;

  /** Pounds on a square foot in kilograms on a square metre: 0.45359237 / 0.3048². */
  private static final double KG_M2 = 0.45359237 / (0.3048 * 0.3048);

  /**
   * Thickness in inches, pounds to the square foot of oriented strand board, the heavier of the two
   * usual panels: 7/16, 15/32, 1/2 and 19/32 as the panel association's table is quoted (second
   * hand); 5/8, 23/32 and 3/4 from memory of it.
   */
  private static final double[][] PANEL_PSF = {
    {7 / 16.0, 1.4},
    {15 / 32.0, 1.5},
    {1 / 2.0, 1.7},
    {19 / 32.0, 2.0},
    {5 / 8.0, 2.1},
    {23 / 32.0, 2.4},
    {3 / 4.0, 2.5}
  };

  /**
   * @param thickness of the panels, plan units
   */
  static Densities of(Handling.Weights given, double thickness, LengthUnit unit) {
    double psf = psf(unit.toMillimetres(thickness) / LengthUnit.MM_PER_INCH);
    return switch (unit) {
      case INCH ->
          new Densities(
              sound(given.lumber().orElse(LUMBER_PCF), LUMBER_PCF) / CUBIC_FOOT,
              sound(given.panel().orElse(psf), psf) / SQUARE_FOOT);
      case MILLIMETRE ->
          new Densities(
              sound(given.lumber().orElse(LUMBER_KG), LUMBER_KG) * 1e-9,
              sound(given.panel().orElse(psf * KG_M2), psf * KG_M2) * 1e-6);
    };
  }

  private static double sound(double given, double usual) {
    return given > 0 ? given : usual;
  }

  /** Between the table's thicknesses in proportion; beyond its ends as its nearest weighs. */
  static double psf(double inches) {
    double[] first = PANEL_PSF[0];
    if (inches <= first[0]) {
      return first[1] * inches / first[0];
    }
    for (int i = 1; i < PANEL_PSF.length; i++) {
      double[] a = PANEL_PSF[i - 1];
      double[] b = PANEL_PSF[i];
      if (inches <= b[0]) {
        return a[1] + (b[1] - a[1]) * (inches - a[0]) / (b[0] - a[0]);
      }
    }
    double[] last = PANEL_PSF[PANEL_PSF.length - 1];
    return last[1] * inches / last[0];
  }
}
