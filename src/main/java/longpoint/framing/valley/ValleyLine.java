package longpoint.framing.valley;

/**
 * One side of a line that a wing's roof draws on the main deck, from its foot to the apex.
 *
 * @param side which side, looking up the main slope
 * @param x plan distance of the foot from the main wall face
 * @param half foot to the centre line, square to it
 * @param apexX plan distance of the top end, which lies on the centre line unless the main ridge
 *     comes first
 * @param apexHalf top end to the centre line
 */
public record ValleyLine(Side side, double x, double half, double apexX, double apexHalf) {
  /** Looking up the main slope. */
  public enum Side {
    LEFT,
    RIGHT
  }
}
