package longpoint.framing.stick;

import java.util.Locale;

/** What an end of a rafter comes to. */
public enum Bearing {
  /** The plate of a wall, which it passes over. */
  WALL,
  /** A board fixed along a taller wall. */
  LEDGER,
  /** The side of a ridge board. */
  RIDGE,
  /** The end of a ridge board. */
  RIDGE_END,
  HIP,
  VALLEY,
  /** A girder truss. */
  GIRDER,
  /** The finished deck of the roof below. */
  DECK,
  /** A header across an opening in the roof below. */
  HEADER,
  /** The doubled rafter beside such an opening. */
  TRIMMER,
  /** A post under a peak. */
  POST,
  /** The rafter that comes up from the other side, end to end. */
  OPPOSITE,
  /** The rafters that were set before it at the same peak. */
  SET_BEFORE,
  /** Its neighbours at a peak, all of them mitred to each other. */
  MITRED,
  /** The common rafters at the end of a ridge. */
  COMMONS,
  /** Nothing that the plan knows of: the edge of the roof. */
  NOTHING;

  /** As it stands in the figures. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
