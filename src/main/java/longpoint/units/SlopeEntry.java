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
      throw in.wrong(from, "slope.negative");
    }
    Numeral.Read first = number();
    Slope slope = rest(first, from);
    in.skipSpaces();
    if (!in.atEnd()) {
      throw in.wrong(in.at(), "slope.more");
    }
    return slope;
  }

  private Numeral.Read number() throws EntryException {
    in.skipSpaces();
    if (!Numeral.starts(in)) {
      throw in.wrong(in.at(), "slope.missing");
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
      case "in", "sur", "pour":
        return over(first.value(), number().value());
      case "deg", "degree", "degrees", "degré", "degrés":
        return degrees(first.value(), from);
      case "cm":
        return centimetresInAMetre(first.value(), word);
      case "":
        return bare(first, from);
      default:
        throw in.wrong(word, "slope.unknown", in.text(word, in.at()));
    }
  }

  /** Centimetres of rise in a metre of run, as roofers in metric countries say a percentage. */
  private Slope centimetresInAMetre(Exact rise, int word) throws EntryException {
    in.skipSpaces();
    if (!in.take('/')) {
      int per = in.at();
      String between = in.takeLetters();
      if (!between.equals("par") && !between.equals("per")) {
        throw in.wrong(per, "slope.unknown", in.text(word, in.at()));
      }
    }
    in.skipSpaces();
    int metre = in.at();
    if (!in.takeLetters().matches("m|m[eè]tre")) {
      throw in.wrong(metre, "slope.unknown", in.text(word, in.at()));
    }
    return checked(() -> Slope.percent(rise.toDouble()));
  }

  private Slope riseOverRun(String[] parts) throws EntryException {
    return over(Exact.decimal(parts[0]), Exact.decimal(parts[1]));
  }

  private Slope over(Exact rise, Exact run) throws EntryException {
    if (run.isZero()) {
      throw in.wrong(in.at(), "slope.noRun");
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
      throw in.wrong(from, "slope.upright");
    }
    return Slope.degrees(angle.toDouble());
  }

  private Slope bare(Numeral.Read number, int from) throws EntryException {
    double ratio = number.value().toDouble();
    if (ratio > STEEPEST_BARE_RATIO || number.whole() && ratio != 0) {
      String typed = in.text(from, in.at());
      throw in.wrong(from, "slope.bare", typed, typed + "/12", typed + "deg", typed + ":1");
    }
    return checked(() -> Slope.ratio(ratio));
  }

  private Slope checked(Supplier<Slope> slope) throws EntryException {
    try {
      return slope.get();
    } catch (IllegalArgumentException e) {
      throw in.wrong(0, "slope.tooSteep");
    }
  }
}
