package longpoint.field.lumber;

import java.util.Locale;

/** What a board is bought for; pieces of one role have one width. */
public enum Role {
  /** Ridge blocks, lookouts and ladder blocks, gable studs. */
  BLOCKING,
  /** Common, jack and cripple rafters. */
  RAFTER,
  /** Hip and valley rafters, commonly one size deeper than the others. */
  HIP,
  RIDGE,
  /** Fascia, and the fly rafters that carry on its line up the rakes. */
  FASCIA,
  /** Trim on the outside of the fly rafters. */
  RAKE;

  /** As it stands in a plan file and in the figures. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }
}
