package longpoint.trusslist;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import longpoint.wording.Phrase;
import longpoint.wording.Worded;

/** What a column of a list may hold. */
public enum Column {
  MARK,
  QUANTITY,
  SPAN,
  HEIGHT,
  SLOPE,
  OTHER_SLOPE,
  OVERHANG,
  OTHER_OVERHANG,
  HEEL,
  OTHER_HEEL,
  PLIES;

  /** As it is named on the command line: {@code other-slope}. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** As people call it. */
  public Worded words() {
    return Phrase.of("trusslist.column." + key());
  }

  public static Optional<Column> of(String key) {
    return Arrays.stream(values()).filter(c -> c.key().equals(key)).findFirst();
  }

  /** The same at the truss's other end, if it has one of its own. */
  Optional<Column> other() {
    return switch (this) {
      case SLOPE -> Optional.of(OTHER_SLOPE);
      case OVERHANG -> Optional.of(OTHER_OVERHANG);
      case HEEL -> Optional.of(OTHER_HEEL);
      default -> Optional.empty();
    };
  }
}
