package longpoint.framing.rafter;

/**
 * The two valley rafters where a narrower roof meets a wider one of the same slope at a square
 * corner: the supporting valley runs to the main ridge, the supported one stops against it at the
 * height of the smaller ridge (US Navy NAVEDTRA 14044 vol. 2, p. 2-28).
 *
 * @param mainSpan of the wider roof, ≥ {@code wingSpan}
 * @param wingSpan of the narrower roof, &gt; 0
 * @param slope rise over run of both, &gt; 0
 */
public record ValleyPair(double mainSpan, double wingSpan, double slope) {
  public ValleyPair {
    if (!(wingSpan > 0) || !(mainSpan >= wingSpan) || !(slope > 0)) {
      throw new IllegalArgumentException("no valleys: " + mainSpan + ", " + wingSpan);
    }
  }

  public Incline supporting() {
    return RoofCorner.square(slope, slope).overCommonRunA(mainSpan / 2);
  }

  public Incline supported() {
    return RoofCorner.square(slope, slope).overCommonRunA(wingSpan / 2);
  }
}
