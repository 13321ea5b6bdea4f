package longpoint.framing.rafter;

/**
 * The notch that seats a rafter on its plate.
 *
 * @param seat level width of the notch, ≥ 0, at most the plate's width
 * @param slope of the rafter, ≥ 0
 * @param depth of the stock, square to its edge, &gt; 0
 */
public record Birdsmouth(double seat, double slope, double depth) {
  public Birdsmouth {
    if (!(seat >= 0) || !(slope >= 0) || !(depth > 0)) {
      throw new IllegalArgumentException("no birdsmouth: " + seat + ", " + slope + ", " + depth);
    }
  }

  /**
   * The notch that leaves a given heel.
   *
   * @param heel plumb from the plate to the top edge, above the outside wall face
   */
  public static Birdsmouth leaving(double heel, double slope, double depth) {
    double plumb = depth * Math.sqrt(1 + slope * slope);
    double cut = Math.max(0, plumb - heel);
    return new Birdsmouth(slope > 0 ? cut / slope : 0, slope, depth);
  }

  /** Depth of the stock along a plumb line. */
  public double plumbDepth() {
    return depth * Math.sqrt(1 + slope * slope);
  }

  /** Height of the plumb cut of the notch. */
  public double plumbCut() {
    return seat * slope;
  }

  /** Plumb height left above the notch at the outside wall face. */
  public double heel() {
    return plumbDepth() - plumbCut();
  }

  /** Depth of the notch square to the rafter's edge. */
  public double notch() {
    return seat * Math.sin(Math.atan(slope));
  }

  /** Share of the depth of the stock that is cut away. */
  public double share() {
    return notch() / depth;
  }
}
