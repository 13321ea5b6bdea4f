package longpoint.field.restraint;

import longpoint.geometry.Segment;

/**
 * One row of boards across the trusses of a run.
 *
 * @param over from the outside of the first bearing, level
 * @param up the top chord from that bearing, along the slope; 0 for a row on the bottom chords
 * @param line in plan, from the first truss it crosses to the last
 * @param trusses how many it crosses
 * @param boards how many it takes, lapped over two trusses
 */
public record RestraintRow(
    Place place, double over, double up, Segment line, int trusses, int boards) {
  /** Where a row runs. */
  public enum Place {
    /** Along the top chords. */
    TOP,
    /** At a peak or a break of the top chords. */
    PEAK,
    /** Along the bottom chords. */
    BOTTOM
  }

  public double length() {
    return line.length();
  }
}
