package longpoint.plan;

import java.util.Objects;
import longpoint.geometry.Point;
import longpoint.units.Slope;

/**
 * A stretch of a run with a ceiling of its own: trusses from the station of one point to that of
 * another.
 *
 * @param from plan point at one end
 * @param to plan point at the other, in the same run
 * @param slope of the bottom chords; 0 for a level ceiling
 */
public record CeilingStretch(Point from, Point to, Slope slope, Extras extras) {
  public CeilingStretch {
    Objects.requireNonNull(from);
    Objects.requireNonNull(to);
    Objects.requireNonNull(slope);
    Objects.requireNonNull(extras);
  }

  CeilingStretch moved(Motion motion) {
    return new CeilingStretch(motion.on(from), motion.on(to), slope, extras);
  }
}
