package longpoint.trusslist;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longpoint.plan.Extras;
import longpoint.plan.Problem;
import longpoint.plan.Supplied;
import longpoint.units.EntryException;
import longpoint.units.LengthEntry;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import longpoint.units.SlopeEntry;
import longpoint.wording.Language;
import longpoint.wording.Phrase;
import longpoint.wording.Worded;

/** Reads rows under known columns; what cannot be read is told with its line and left out. */
final class Rows {
  /** Digits with a decimal sign, and nothing that says of what. */
  private static final Pattern BARE = Pattern.compile("[0-9]+([.,][0-9]+)?");

  /** Feet, inches and sixteenths run together with hyphens, as trusses are often listed. */
  private static final Pattern SIXTEENTHS =
      Pattern.compile("([0-9]{1,3})-([0-9]{1,2})-([0-9]{1,2})");

  private static final int MOST_OF_ONE = 10_000;

  /** Troubles that are told one by one; then only how many more. */
  private static final int MOST_TOLD = 40;

  private final LengthUnit unit;
  private final Map<Column, Integer> columns;
  private final Map<Column, Heads.Bare> bare;
  private final List<Problem> notes;
  private int told;
  private int unsaid;
  private boolean guessedSlope;
  private final List<Integer> uncounted = new ArrayList<>();

  Rows(
      LengthUnit unit,
      Map<Column, Integer> columns,
      Map<Column, Heads.Bare> bare,
      List<Problem> notes) {
    this.unit = unit;
    this.columns = columns;
    this.bare = bare;
    this.notes = notes;
  }

  private void trouble(int line, Column column, String cell, Worded why) {
    if (told++ < MOST_TOLD) {
      notes.add(
          Problem.warning(
              "plan", Phrase.of("trusslist.cell", line, column.words(), shortened(cell), why)));
    } else {
      unsaid++;
    }
  }

  private static String shortened(String cell) {
    return cell.length() <= 40 ? cell : cell.substring(0, 40) + "…";
  }

  private Optional<String> cell(Cells.Row row, Column column) {
    Integer place = columns.get(column);
    return place == null
        ? Optional.empty()
        : Optional.of(row.cell(place)).filter(c -> !c.isEmpty() && !c.matches("[-–—]+|(?i)n/?a"));
  }

  /** Empty for a row that says nothing of a truss; that is told. */
  Optional<Supplied.Row> row(Cells.Row row) {
    String mark = cell(row, Column.MARK).orElse("");
    Optional<Double> span = length(row, Column.SPAN);
    boolean says = !mark.isEmpty() || span.isPresent();
    if (!says || mark.matches("(?i)(sub)?totals?.*|somme.*")) {
      String said = row.cells().stream().filter(c -> !c.isBlank()).findFirst().orElse("");
      notes.add(
          Problem.warning("plan", Phrase.of("trusslist.nothing", row.line(), shortened(said))));
      return Optional.empty();
    }
    Optional<Integer> quantity = whole(row, Column.QUANTITY);
    if (columns.containsKey(Column.QUANTITY) && cell(row, Column.QUANTITY).isEmpty()) {
      uncounted.add(row.line());
    }
    if (cell(row, Column.QUANTITY).isPresent() && quantity.isEmpty()) {
      return Optional.empty(); // told; a guess would hide that trusses are missing
    }
    Supplied.Figures figures =
        new Supplied.Figures(
            span,
            length(row, Column.HEIGHT),
            slope(row, Column.SLOPE),
            slope(row, Column.OTHER_SLOPE),
            length(row, Column.OVERHANG),
            length(row, Column.OTHER_OVERHANG),
            length(row, Column.HEEL),
            length(row, Column.OTHER_HEEL),
            whole(row, Column.PLIES));
    return Optional.of(
        new Supplied.Row(row.line(), mark, quantity.orElse(1), figures, Extras.NONE));
  }

  private Optional<Double> length(Cells.Row row, Column column) {
    Optional<String> cell = cell(row, column);
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(length(cell.get(), column));
    } catch (EntryException e) {
      trouble(row.line(), column, cell.get(), said(e));
      return Optional.empty();
    }
  }

  private double length(String cell, Column column) throws EntryException {
    Matcher run = SIXTEENTHS.matcher(cell);
    if (run.matches()) {
      int inches = Integer.parseInt(run.group(2));
      int sixteenths = Integer.parseInt(run.group(3));
      if (inches < 12 && sixteenths < 16) {
        cell = run.group(1) + "' " + inches + " " + sixteenths + "/16\"";
      }
    }
    boolean isBare = BARE.matcher(cell).matches();
    String typed = isBare ? cell + bare.getOrDefault(column, Heads.Bare.AS_PLAN).ending() : cell;
    return LengthEntry.read(typed, unit, LengthEntry.Allowed.NOT_NEGATIVE);
  }

  private Optional<Slope> slope(Cells.Row row, Column column) {
    Optional<String> cell = cell(row, column);
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(slopeOf(cell.get(), column));
    } catch (EntryException e) {
      trouble(row.line(), column, cell.get(), said(e));
      return Optional.empty();
    }
  }

  private Slope slopeOf(String cell, Column column) throws EntryException {
    if (!BARE.matcher(cell).matches()) {
      return SlopeEntry.read(cell);
    }
    String ending = bare.getOrDefault(column, Heads.Bare.AS_PLAN).ending();
    if (ending.isEmpty()) {
      guessedSlope = true;
      ending =
          switch (unit) {
            case INCH -> Heads.Bare.IN_TWELVE.ending();
            case MILLIMETRE -> Heads.Bare.DEGREES.ending();
          };
    }
    return SlopeEntry.read(cell + ending);
  }

  private Optional<Integer> whole(Cells.Row row, Column column) {
    Optional<String> cell = cell(row, column);
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    String plain = cell.get().replaceFirst("(?i)\\s*(x|pcs?|ea|ply|plies|plis?)\\.?$", "");
    plain = plain.replaceFirst("[.,]0+$", "");
    if (plain.matches("[0-9]{1,5}")) {
      int number = Integer.parseInt(plain);
      if (number >= 1 && number <= MOST_OF_ONE) {
        return Optional.of(number);
      }
    }
    trouble(row.line(), column, cell.get(), Phrase.of("trusslist.notCount"));
    return Optional.empty();
  }

  private static Worded said(EntryException e) {
    return new Worded() {
      @Override
      public String in(Language language) {
        return e.message(language);
      }
    };
  }

  /** Says what holds for many rows at once. */
  void close() {
    if (unsaid > 0) {
      notes.add(Problem.warning("plan", Phrase.of("trusslist.more", unsaid)));
    }
    if (guessedSlope) {
      notes.add(Problem.note("plan", Phrase.of("trusslist.slope." + unit.symbol())));
    }
    if (!columns.containsKey(Column.QUANTITY)) {
      notes.add(Problem.note("plan", Phrase.of("trusslist.noQuantity")));
    } else if (!uncounted.isEmpty()) {
      String lines =
          String.join(", ", uncounted.stream().limit(MOST_TOLD).map(String::valueOf).toList());
      notes.add(Problem.warning("plan", Phrase.of("trusslist.uncounted", lines)));
    }
  }
}
