package longpoint.units;

/** A unit as it stands behind a number, and what it is worth. */
enum UnitMark {
  NONE(null, 1),
  FOOT(LengthUnit.INCH, 12),
  INCH(LengthUnit.INCH, 1),
  MILLIMETRE(LengthUnit.MILLIMETRE, 1),
  CENTIMETRE(LengthUnit.MILLIMETRE, 10),
  METRE(LengthUnit.MILLIMETRE, 1000);

  private static final Exact MM_PER_INCH = Exact.decimal("25.4");

  private final LengthUnit base;
  private final Exact size;

  UnitMark(LengthUnit base, long size) {
    this.base = base;
    this.size = Exact.of(size);
  }

  /** One of these in the plan's unit. Not for {@link #NONE}. */
  Exact in(LengthUnit plan) {
    if (base == plan) {
      return size;
    }
    return base == LengthUnit.INCH ? size.times(MM_PER_INCH) : size.over(MM_PER_INCH);
  }

  /** Whether a bare number beside this mark would be taken in the other system. */
  boolean foreignTo(LengthUnit plan) {
    return base != null && base != plan;
  }

  /** The mark at the finger, spaces before it allowed; {@link #NONE}, finger unmoved, if none. */
  static UnitMark take(Typed in) throws EntryException {
    int back = in.at();
    in.skipSpaces();
    int start = in.at();
    if (in.take('\'')) {
      return in.take('\'') ? INCH : FOOT;
    }
    if (in.take('"')) {
      return INCH;
    }
    String word = in.takeLetters();
    if (word.isEmpty()) {
      in.backTo(back);
      return NONE;
    }
    UnitMark mark =
        switch (word) {
          case "ft", "foot", "feet", "pi", "pied", "pieds" -> FOOT;
          case "in", "inch", "inches", "po", "pouce", "pouces" -> INCH;
          case "mm", "millimetre", "millimetres", "millimètre", "millimètres" -> MILLIMETRE;
          case "cm", "centimetre", "centimetres", "centimètre", "centimètres" -> CENTIMETRE;
          case "m", "metre", "metres", "mètre", "mètres" -> METRE;
          default -> throw in.wrong(start, "unit.unknown", in.text(start, in.at()));
        };
    if (in.peek() == '.' && !Typed.isDigit(in.peek(1))) {
      in.advance(1);
    }
    return mark;
  }
}
