package longpoint.field.lumber;

import java.util.Locale;
import longpoint.framing.stick.RafterKind;

/** What a piece is called on site. */
public enum Use {
  RIDGE_BLOCK("KB", Role.BLOCKING),
  VALLEY_BLOCK("VB", Role.BLOCKING),
  LOOKOUT("LO", Role.BLOCKING),
  LADDER_BLOCK("LB", Role.BLOCKING),
  GABLE_STUD("GS", Role.BLOCKING),
  FLY_RAFTER("FR", Role.FASCIA),
  FASCIA("FA", Role.FASCIA),
  RAKE_BOARD("RK", Role.RAKE),
  COMMON_RAFTER("R", Role.RAFTER),
  HIP_RAFTER("HR", Role.HIP),
  VALLEY_RAFTER("VR", Role.HIP),
  HIP_JACK_RAFTER("HJR", Role.RAFTER),
  VALLEY_JACK_RAFTER("VJR", Role.RAFTER),
  CRIPPLE_RAFTER("CR", Role.RAFTER),
  RIDGE_BOARD("RB", Role.RIDGE),
  TRIMMER_RAFTER("TR", Role.RAFTER),
  HEADER("HD", Role.RAFTER),
  WALL_STUD("WS", Role.BLOCKING),
  WALL_PLATE("WP", Role.BLOCKING);

  private final String letter;
  private final Role role;

  Use(String letter, Role role) {
    this.letter = letter;
    this.role = role;
  }

  /** Start of its marks. Rafters keep the marks they have on the frame's sheets. */
  public String letter() {
    return letter;
  }

  public Role role() {
    return role;
  }

  /** As it stands in the figures. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  static Use of(RafterKind kind) {
    return switch (kind) {
      case COMMON -> COMMON_RAFTER;
      case HIP -> HIP_RAFTER;
      case VALLEY -> VALLEY_RAFTER;
      case HIP_JACK -> HIP_JACK_RAFTER;
      case VALLEY_JACK -> VALLEY_JACK_RAFTER;
      case CRIPPLE -> CRIPPLE_RAFTER;
      case RIDGE -> RIDGE_BOARD;
      case TRIMMER -> TRIMMER_RAFTER;
      case HEADER -> HEADER;
    };
  }
}
