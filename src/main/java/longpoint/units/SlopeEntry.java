package longpoint.units;

import java.util.function.Supplier;

/**
 * Reads a slope as a person types it: {@code 8/12}, {@code 8:12}, {@code 8 in 12}, {@code 33.7deg},
 * {@code 33.7°}, {@code 66.7%}, {@code 0.6667}. Rise over any run is taken; over a run of 1 it is
 * kept as a plain ratio, else as rise in twelve. A bare whole number is refused, since 8 is eight
 * in twelve to one person and eight degrees to the next.
 */
public final class SlopeEntry {
  /** Steeper than this a typed bare ratio is more likely a rise in twelve or an angle. */
  private static final double STEEPEST_BARE_RATIO = 2;

  private static final String EXAMPLES = "Type it as 8/12, 33.7deg, 66.7% or 0.6667.";

  private final Typed in;

  private SlopeEntry(Typed in) {
    this.in = in;
  }

  public static Slope read(String typed) throws EntryException {
    return new SlopeEntry(new Typed(typed)).whole();
  }

  private Slope whole() throws EntryException {
    in.skipSpaces();
    int from = in.at();
    if (in.peek() == '-') {
      throw in.wrong(from, "A slope cannot be below zero.", "Type it without the minus.");
    }
    Numeral.Read first = number();
    Slope slope = rest(first, from);
    in.skipSpaces();
    if (!in.atEnd()) {
      throw in.wrong(in.at(), "This is more than one slope.", EXAMPLES);
    }
    return slope;
  }

  private Numeral.Read number() throws EntryException {
    in.skipSpaces();
    if (!Numeral.starts(in)) {
      throw in.wrong(in.at(), "A number is missing here.", EXAMPLES);
    }
    return Numeral.read(in);
  }

  private Slope rest(Numeral.Read first, int from) throws EntryException {
    if (!first.whole() && in.text(from, in.at()).matches("[0-9]+[/⁄÷][0-9]+")) {
      return riseOverRun(in.text(from, in.at()).split("[/⁄÷]"));
    }
    in.skipSpaces();
    if (in.take(':') || in.take('/')) {
      return over(first.value(), number().value());
    }
    if (in.take('%')) {
      return checked(() -> Slope.percent(first.value().toDouble()));
    }
    if (in.take('°')) {
      return degrees(first.value(), from);
    }
    int word = in.at();
    switch (in.takeLetters()) {
      case "in":
        return over(first.value(), number().value());
      case "deg", "degree", "degrees":
        return degrees(first.value(), from);
      case "":
        return bare(first, from);
      default:
        throw in.wrong(word, "“" + in.text(word, in.at()) + "” is not known here.", EXAMPLES);
    }
  }

  private Slope riseOverRun(String[] parts) throws EntryException {
    return over(Exact.decimal(parts[0]), Exact.decimal(parts[1]));
  }

  private Slope over(Exact rise, Exact run) throws EntryException {
    if (run.isZero()) {
      throw in.wrong(in.at(), "The run of a slope cannot be zero.", EXAMPLES);
    }
    if (run.compareTo(Exact.of(12)) == 0) {
      return checked(() -> Slope.inTwelve(rise.toDouble()));
    }
    boolean plain = run.compareTo(Exact.of(1)) == 0;
    Slope.Notation notation = plain ? Slope.Notation.RATIO : Slope.Notation.IN_TWELVE;
    return checked(() -> new Slope(rise.over(run).toDouble(), notation));
  }

  private Slope degrees(Exact angle, int from) throws EntryException {
    if (angle.compareTo(Exact.of(90)) >= 0) {
      throw in.wrong(from, "A roof plane is less than 90 degrees steep.", EXAMPLES);
    }
    return Slope.degrees(angle.toDouble());
  }

  private Slope bare(Numeral.Read number, int from) throws EntryException {
    double ratio = number.value().toDouble();
    if (ratio > STEEPEST_BARE_RATIO || number.whole() && ratio != 0) {
      String typed = in.text(from, in.at());
      throw in.wrong(
          from,
          typed + " alone can be read in more than one way.",
          "Write " + typed + "/12, " + typed + "deg or " + typed + ":1.");
    }
    return checked(() -> Slope.ratio(ratio));
  }

  private Slope checked(Supplier<Slope> slope) throws EntryException {
    try {
      return slope.get();
    } catch (IllegalArgumentException e) {
      throw in.wrong(0, "This slope is too steep.", EXAMPLES);
    }
  }
}
