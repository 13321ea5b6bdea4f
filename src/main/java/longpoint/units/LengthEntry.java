package longpoint.units;

import java.util.Objects;
import longpoint.wording.Phrase;

/**
 * Reads a length as a person types it, in any unit, with sums: {@code 24'3-1/2}, {@code 24ft
 * 3.5in}, {@code 7315mm}, {@code 7.315 m}, {@code (24' - 2*3 1/2)/2}. A bare number is in the
 * plan's unit; a bare number after feet is inches.
 *
 * <p>The arithmetic is exact; the one rounding is to the nearest double at the end. Text that two
 * careful people could read as two lengths is refused, with both spelt out: a wrong guess here is
 * cut into lumber. A hyphen between feet and inches joins them when it stands without spaces; with
 * spaces it takes away, and where that could be meant either way the reader asks.
 */
public final class LengthEntry {
  /** Which lengths a place takes. */
  public enum Allowed {
    ANY,
    NOT_NEGATIVE,
    POSITIVE
  }

  private static final Exact INCHES_PER_FOOT = Exact.of(12);

  /**
   * A length or a plain number on the way to the answer.
   *
   * @param amount in the plan's unit
   * @param mark the unit it was typed with; none for a bare number
   * @param looks what it could be part of when run together with others
   */
  private record Quantity(Exact amount, UnitMark mark, Looks looks) {
    Quantity negated() {
      return new Quantity(amount.negated(), mark, Looks.NEITHER);
    }
  }

  /** What a quantity could be besides itself in text like 24-3 1/2. */
  private enum Looks {
    /** Feet, and inches if there are under twelve: digits alone. */
    LIKE_FEET,
    LIKE_FEET_OR_INCHES,
    /** A number under twelve, bare or marked as inches. */
    LIKE_INCHES,
    NEITHER;

    boolean feet() {
      return this == LIKE_FEET || this == LIKE_FEET_OR_INCHES;
    }

    boolean inches() {
      return this == LIKE_INCHES || this == LIKE_FEET_OR_INCHES;
    }
  }

  private final Typed in;
  private final LengthUnit plan;

  private LengthEntry(Typed in, LengthUnit plan) {
    this.in = in;
    this.plan = Objects.requireNonNull(plan);
  }

  /** The length in the plan's unit. */
  public static double read(String typed, LengthUnit plan) throws EntryException {
    return read(typed, plan, Allowed.ANY);
  }

  /** The length in the plan's unit, if the place takes it. */
  public static double read(String typed, LengthUnit plan, Allowed allowed) throws EntryException {
    double length = new LengthEntry(new Typed(typed), plan).whole();
    if (allowed == Allowed.NOT_NEGATIVE && length < 0) {
      throw new EntryException(typed, 0, Phrase.of("units.length.negative"));
    }
    if (allowed == Allowed.POSITIVE && length <= 0) {
      throw new EntryException(typed, 0, Phrase.of("units.length.zero"));
    }
    return length;
  }

  private double whole() throws EntryException {
    in.skipSpaces();
    if (in.atEnd()) {
      throw in.wrong(0, "length.empty");
    }
    Quantity sum = sum();
    in.skipSpaces();
    if (!in.atEnd()) {
      throw trailing();
    }
    double length = sum.amount().toDouble();
    if (!Double.isFinite(length)) {
      throw in.wrong(0, "length.tooLarge");
    }
    return length == 0 ? 0 : length;
  }

  private EntryException trailing() {
    if (Numeral.starts(in)) {
      return in.wrong(in.at(), "length.sideBySide");
    }
    if (in.peek() == ')') {
      return in.wrong(in.at(), "bracket.closes");
    }
    return in.wrong(in.at(), "length.noPlace", in.text(in.at(), in.at() + 1));
  }

  private Quantity sum() throws EntryException {
    int last = in.at();
    Quantity left = product();
    Looks looks = left.looks();
    while (true) {
      boolean spaceBefore = in.skipSpaces();
      int sign = in.at();
      char op = in.peek();
      if (op != '+' && op != '-') {
        return left;
      }
      in.advance(1);
      boolean tight = !in.skipSpaces() && !spaceBefore;
      int next = in.at();
      Quantity right = product();
      if (op == '-' && tight && looks.feet() && right.looks().inches()) {
        throw dashed(last);
      }
      left = add(left, op == '-' ? right.negated() : right, sign);
      looks = right.looks();
      last = next;
    }
  }

  /** Numbers run together with hyphens: feet-inches-sixteenths to some, a subtraction to others. */
  private EntryException dashed(int from) {
    while (in.peek() == '-' && Typed.isDigit(in.peek(1))) {
      in.advance(1);
      in.takeDigits();
    }
    String typed = in.text(from, in.at());
    String[] n = typed.split("[^0-9]+");
    boolean wholeNumbers = typed.matches("[0-9'′’\\-–]+");
    Phrase wrong = Phrase.of("units.twoWays", typed);
    String apart = typed.replaceAll("[-–]", " - ");
    if (wholeNumbers && n.length == 3) {
      String joined = n[0] + "'" + n[1] + " " + n[2] + "/16\"";
      return in.wrong(from, wrong, Phrase.of("units.dash.sixteenths", joined, apart));
    }
    if (wholeNumbers || n.length > 1 && typed.matches("[0-9]+[-–][^-–']+")) {
      String joined = n[0] + "' " + typed.split("[-–]", 2)[1];
      return in.wrong(from, wrong, Phrase.of("units.dash.inches", joined, apart));
    }
    return in.wrong(from, wrong, Phrase.of("units.dash.apart", apart));
  }

  private Quantity product() throws EntryException {
    Quantity left = factor();
    while (true) {
      int back = in.at();
      in.skipSpaces();
      int sign = in.at();
      if (in.take('*')) {
        left = multiply(left, factor(), sign);
      } else if (in.take('/')) {
        left = divide(left, factor(), sign);
      } else {
        in.backTo(back);
        return left;
      }
    }
  }

  private Quantity add(Quantity a, Quantity b, int sign) throws EntryException {
    boolean bare = a.mark() == UnitMark.NONE || b.mark() == UnitMark.NONE;
    if (bare && (a.mark().foreignTo(plan) || b.mark().foreignTo(plan))) {
      throw in.wrong(sign, "length.oneUnit");
    }
    UnitMark mark = a.mark() == UnitMark.NONE ? b.mark() : a.mark();
    return new Quantity(a.amount().plus(b.amount()), mark, Looks.NEITHER);
  }

  private Quantity multiply(Quantity a, Quantity b, int sign) throws EntryException {
    if (a.mark() != UnitMark.NONE && b.mark() != UnitMark.NONE) {
      throw in.wrong(sign, "length.area");
    }
    UnitMark mark = a.mark() == UnitMark.NONE ? b.mark() : a.mark();
    return new Quantity(a.amount().times(b.amount()), mark, Looks.NEITHER);
  }

  private Quantity divide(Quantity a, Quantity b, int sign) throws EntryException {
    if (b.mark() != UnitMark.NONE) {
      throw in.wrong(sign, "length.byLength");
    }
    if (b.amount().isZero()) {
      throw in.wrong(sign, "length.byZero");
    }
    return new Quantity(a.amount().over(b.amount()), a.mark(), Looks.NEITHER);
  }

  private Quantity factor() throws EntryException {
    in.skipSpaces();
    if (in.take('-')) {
      return factor().negated();
    }
    if (in.take('+')) {
      return factor();
    }
    int open = in.at();
    if (in.take('(')) {
      in.skipSpaces();
      Quantity inside = sum();
      in.skipSpaces();
      if (!in.take(')')) {
        if (in.atEnd()) {
          throw in.wrong(open, "bracket.opens");
        }
        throw trailing();
      }
      return new Quantity(inside.amount(), inside.mark(), Looks.NEITHER);
    }
    if (!Numeral.starts(in)) {
      throw in.wrong(in.at(), "length.missing");
    }
    return quantity();
  }

  private Quantity quantity() throws EntryException {
    int from = in.at();
    Numeral.Read number = Numeral.read(in);
    UnitMark mark = UnitMark.take(in);
    if (mark == UnitMark.NONE) {
      return new Quantity(number.value(), mark, looks(number, mark));
    }
    Exact amount = number.value().times(mark.in(plan));
    if (mark == UnitMark.FOOT) {
      amount = amount.plus(inchesAfterFeet(from).times(UnitMark.INCH.in(plan)));
    }
    return new Quantity(amount, mark, looks(number, mark));
  }

  private static Looks looks(Numeral.Read number, UnitMark mark) {
    boolean feet = mark == UnitMark.NONE && number.whole();
    boolean inches =
        (mark == UnitMark.NONE || mark == UnitMark.INCH)
            && number.value().compareTo(INCHES_PER_FOOT) < 0;
    if (feet) {
      return inches ? Looks.LIKE_FEET_OR_INCHES : Looks.LIKE_FEET;
    }
    return inches ? Looks.LIKE_INCHES : Looks.NEITHER;
  }

  /** The inches that belong to the feet just read; zero, finger unmoved, if there are none. */
  private Exact inchesAfterFeet(int from) throws EntryException {
    int back = in.at();
    boolean spaceBefore = in.skipSpaces();
    boolean dash = in.take('-');
    boolean spaceAfter = dash && in.skipSpaces();
    if (!Numeral.starts(in)) {
      in.backTo(back);
      return Exact.ZERO;
    }
    int number = in.at();
    Exact inches = Numeral.read(in).value();
    if (in.peek() == '-' && Typed.isDigit(in.peek(1))) {
      throw dashed(from);
    }
    UnitMark mark = UnitMark.take(in);
    boolean inchLike = mark == UnitMark.NONE || mark == UnitMark.INCH;
    if (!dash) {
      if (inchLike) {
        return inches;
      }
      throw in.wrong(
          number, "length.afterFeet", in.text(from, back) + " + " + in.text(number, in.at()));
    }
    boolean underAFoot = inches.compareTo(INCHES_PER_FOOT) < 0;
    boolean tight = !spaceBefore && !spaceAfter;
    if (tight && inchLike && underAFoot) {
      return inches;
    }
    int end = in.at();
    in.skipSpaces();
    boolean ofAProduct = in.peek() == '*' || in.peek() == '/';
    if (inchLike && (tight || underAFoot && !ofAProduct)) {
      String feet = in.text(from, back);
      String rest = in.text(number, end);
      throw in.wrong(
          back,
          Phrase.of("units.twoWays", in.text(from, end)),
          Phrase.of("units.dash.bracket", feet + " " + rest, "(" + feet + ") - " + rest));
    }
    in.backTo(back);
    return Exact.ZERO;
  }
}
