package longpoint.surface;

import java.util.Locale;

/** What a roof line is called on site. */
public enum LineKind {
  /** Level or sloping top where two planes fall away. */
  RIDGE,
  /** Outward corner where two planes fall away to different sides. */
  HIP,
  /** Inward corner that gathers water. */
  VALLEY,
  /** Lower edge of a plane, at the outside of the fascia. */
  EAVE,
  /** Sloping edge of a plane at a gable. */
  RAKE,
  /** Level line where the slope changes. */
  BREAK,
  /** Where a plane stops against a taller wall. */
  ABUTMENT,
  /** Where a plane stops against, or passes under, a wall that stands up from it; on that plane. */
  STEP;

  /** As it stands in the figures. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }
}
