package longpoint.deck;

import longpoint.plan.Deck;

/**
 * The sheets a deck is made of, as a module: nominal sizes that carry the gap between sheets and
 * the width of a saw cut, so pieces are laid and counted on the module and come out scant by the
 * gap.
 *
 * @param thickness square to the face, ≥ 0
 * @param width up the slope, &gt; 0
 * @param length along the eave, &gt; 0
 */
public record Panel(double thickness, double width, double length) {

  /**
   * Rounding of sums of coordinates, as a share of the sheet's width. Doubles carry 16 digits; a
   * plan a mile from its origin still leaves 1e-11 of a sheet.
   */
  private static final double ROUNDING = 1e-9;

  /**
   * The narrowest strip anybody would cut, as a share of the sheet's width: a sixteenth of an inch
   * in four feet, 1.6 mm in 1220. What is narrower goes with its neighbour; the gap between sheets
   * takes it up.
   */
  private static final double SLIVER = 1.0 / 768;

  public Panel {
    if (!(width > 0 && length >= width && thickness >= 0 && Double.isFinite(length))) {
      throw new IllegalArgumentException(
          "not a sheet: " + width + " by " + length + ", " + thickness + " thick");
    }
  }

  public static Panel of(Deck deck) {
    double width = Math.min(deck.sheetWidth(), deck.sheetLength());
    return new Panel(deck.thickness(), width, Math.max(deck.sheetWidth(), deck.sheetLength()));
  }

  public double area() {
    return width * length;
  }

  /** Lengths nearer than this are the same. */
  public double rounding() {
    return width * ROUNDING;
  }

  /** Strips narrower than this are not cut. */
  public double sliver() {
    return width * SLIVER;
  }

  /**
   * End joints of neighbouring courses keep at least this far apart: half the width, 24 in or 610
   * mm, so that the same two supports never carry joints side by side (common practice).
   */
  public double apart() {
    return width / 2;
  }

  /** No piece is narrower than this along the eave if it can be helped (common practice: 24 in). */
  public double shortest() {
    return width / 2;
  }
}
