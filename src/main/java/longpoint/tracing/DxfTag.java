package longpoint.tracing;

import longpoint.wording.Phrase;

/**
 * One value of a DXF file.
 *
 * @param code group code: what the value means
 * @param line of the value in the file, from 1
 */
record DxfTag(int code, String value, int line) {
  /** Beyond any site, in any unit; keeps sums of squares finite. */
  private static final double FARTHEST = 1e12;

  boolean is(int code, String value) {
    return this.code == code && this.value.equals(value);
  }

  double number() throws TracingException {
    try {
      double number = Double.parseDouble(value.strip());
      if (Math.abs(number) <= FARTHEST) {
        return number;
      }
      throw TracingException.at(line, Phrase.of("tracing.farAway", value.strip()));
    } catch (NumberFormatException e) {
      throw TracingException.at(line, Phrase.of("tracing.noNumber", shown()));
    }
  }

  int whole() throws TracingException {
    return (int) number();
  }

  private String shown() {
    return value.length() <= 40 ? value : value.substring(0, 40) + "…";
  }
}
