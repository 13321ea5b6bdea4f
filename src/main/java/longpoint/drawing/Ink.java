package longpoint.drawing;

/**
 * Colour by meaning. Paper colours are from the palette of Okabe and Ito (2008, "Color Universal
 * Design"), chosen to stay apart for colour-blind readers; each output maps them to its own ground.
 */
public enum Ink {
  /** Walls and lettering. */
  MAIN(0x000000),
  /** Secondary lines and small print. */
  QUIET(0x6B6B6B),
  /** Ridges and hips. */
  RIDGE(0xD55E00),
  /** Valleys. */
  VALLEY(0x0072B2),
  /** Eaves and rakes. */
  EDGE(0x1A1A1A),
  /** Dimensions: the palette's green, darkened so that small figures stand out from the paper. */
  MEASURE(0x00664A),
  /** What lies beneath something. */
  HIDDEN(0x8A8A8A),
  /** Tint of a roof plane. */
  TINT(0xF2ECE4),
  /** Something to look at: the palette's purple, darkened for the same reason. */
  ALERT(0xAA3377);

  private final int rgb;

  Ink(int rgb) {
    this.rgb = rgb;
  }

  /** Colour on white paper as 0xRRGGBB. */
  public int rgb() {
    return rgb;
  }
}
