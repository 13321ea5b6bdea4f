package longpoint.field.lumber;

/**
 * The end of a board.
 *
 * @param thickness the lesser side, plan units, &gt; 0
 * @param width the greater side, plan units, &gt; 0
 */
public record Section(double thickness, double width) {
  public Section {
    if (!(thickness > 0) || !(width > 0)) {
      throw new IllegalArgumentException("no board: " + thickness + " x " + width);
    }
  }
}
