package longpoint.framing.truss;

import java.util.Locale;

/** What a truss is called on site. */
public enum TrussKind {
  COMMON("T"),
  /** Stands on an end wall. */
  GABLE_END("GE"),
  /** Stands on an end wall, its top chord lowered so that lookouts pass over it. */
  DROPPED_GABLE_END("DG"),
  /** Carries other trusses across an opening. */
  GIRDER("G"),
  /** Carries trusses that stop at it; it runs along the ridge. */
  CROSS_GIRDER("XG"),
  /** First of a hip end: carries the jacks. */
  HIP_GIRDER("HG"),
  /** Flat-topped, each taller than the one before it, from the hip girder to the ridge. */
  STEP_DOWN("SD"),
  /** From a hip end's wall to the hip girder. */
  JACK("J"),
  /** From a wall to the hip jack. */
  CORNER_JACK("CJ"),
  /** Along the hip from the corner to the hip girder. */
  HIP_JACK("HJ"),
  /** One slope only. */
  MONO("M"),
  /** Sloping ceiling. */
  SCISSOR("S"),
  /** Stands on another roof. */
  VALLEY("V"),
  /** Lower piece of a truss too tall to haul. */
  BASE("B"),
  /** Upper piece of a truss too tall to haul. */
  CAP("C"),
  /** Lower piece of a gable end too tall to haul. */
  GABLE_BASE("GB"),
  /** Upper piece of a gable end too tall to haul. */
  GABLE_CAP("GC");

  private final String letter;

  TrussKind(String letter) {
    this.letter = letter;
  }

  /** Start of its marks. */
  public String letter() {
    return letter;
  }

  /** Whether it has studs for the wall's covering in place of webs. */
  public boolean hasStuds() {
    return switch (this) {
      case GABLE_END, DROPPED_GABLE_END, GABLE_BASE, GABLE_CAP -> true;
      default -> false;
    };
  }

  /** Whether it stands on another truss. */
  public boolean isCap() {
    return this == CAP || this == GABLE_CAP;
  }

  /** As it stands in the figures. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Whether it stands square to its run's ridge on its run's own walls. */
  public boolean squareToRidge() {
    return switch (this) {
      case JACK, CORNER_JACK, HIP_JACK, VALLEY, CROSS_GIRDER -> false;
      default -> true;
    };
  }
}
