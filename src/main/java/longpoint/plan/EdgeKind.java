package longpoint.plan;

import java.util.Locale;

/** What the roof does along one side of a wall outline. */
public enum EdgeKind {
  /** The roof slopes down to this side. */
  EAVE,
  /** The wall runs up to the underside of the roof. */
  GABLE,
  /** The roof stops against a taller wall. */
  ABUTMENT,
  /** The roof runs on over this side until it meets another part's roof. */
  OPEN;

  /** As it stands in a plan file. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }
}
