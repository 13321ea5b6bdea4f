package longpoint.framing.stick;

import java.util.Locale;

/** What a rafter is called on site. */
public enum RafterKind {
  COMMON("R"),
  HIP("HR"),
  VALLEY("VR"),
  /** From a wall up to a hip. */
  HIP_JACK("HJR"),
  /** From a valley up to a ridge. */
  VALLEY_JACK("VJR"),
  /** From a valley up to another valley or a hip. */
  CRIPPLE("CR"),
  RIDGE("RB"),
  /** One of two rafters side by side that carry the headers of an opening. */
  TRIMMER("TR"),
  /** One of two boards across an opening that carry the rafters cut off there. */
  HEADER("HD");

  private final String letter;

  RafterKind(String letter) {
    this.letter = letter;
  }

  /** Whether it lies level and square at both ends; the others climb. */
  public boolean isLevel() {
    return this == RIDGE || this == HEADER;
  }

  /** Start of its marks. */
  public String letter() {
    return letter;
  }

  /** As it stands in the figures. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
