package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.field.supplied.Difference;
import longpoint.field.supplied.SuppliedTruss;
import longpoint.field.supplied.SupplierCheck;
import longpoint.units.LengthText;
import longpoint.units.Rounding;
import longpoint.units.Slope;

/** Heads and cells of the supplier's list against the layout, the same on sheets and in lists. */
public final class SupplierRows {
  private final Words words;
  private final SupplierCheck check;

  private SupplierRows(Words words, SupplierCheck check) {
    this.words = words;
    this.check = check;
  }

  /** Tables that have rows: what differs first, what it was taken for last. */
  public static List<RowTable> tables(Words words, SupplierCheck check) {
    SupplierRows rows = new SupplierRows(words, check);
    return List.of(rows.differences(), rows.missing(), rows.surplus(), rows.matches()).stream()
        .filter(t -> !t.rows().isEmpty())
        .toList();
  }

  private static String line(int line) {
    return line == 0 ? "" : String.valueOf(line);
  }

  private RowTable differences() {
    List<List<String>> rows = new ArrayList<>();
    List<String> subjects = new ArrayList<>();
    for (SuppliedTruss t : check.trusses()) {
      for (Difference d : t.differences()) {
        if (d.differs()) {
          rows.add(
              List.of(
                  line(t.line()),
                  t.suppliedMark(),
                  t.mark(),
                  Cells.count(t.count()),
                  words.choice("supplied.figure", d.figure()),
                  figure(d.figure(), d.planned()),
                  figure(d.figure(), d.supplied()),
                  off(d)));
          subjects.add(t.mark());
        }
      }
    }
    return new RowTable(
        words,
        words.text("supplied.differences"),
        List.of(
            "'listLine",
            "'theirMark",
            "'mark",
            "number",
            "'figure",
            "layout",
            "theirList",
            "difference"),
        rows,
        subjects);
  }

  private String figure(Difference.Figure figure, double value) {
    return switch (figure) {
      case SLOPE, OTHER_SLOPE -> words.slope(Slope.inTwelve(value * 12));
      case PLIES -> Cells.count(Math.round(value));
      default -> words.length(value);
    };
  }

  private String off(Difference d) {
    return switch (d.figure()) {
      case PLIES -> sign(d) + Cells.count(Math.round(d.off()));
      case SLOPE, OTHER_SLOPE ->
          words.text("supplied.overHalf", words.small(d.off(), Rounding.NEAREST));
      default -> sign(d) + words.small(d.off(), Rounding.NEAREST);
    };
  }

  private static String sign(Difference d) {
    return d.supplied() > d.planned() ? "+" : "−";
  }

  private RowTable missing() {
    List<List<String>> rows = new ArrayList<>();
    List<String> subjects = new ArrayList<>();
    for (SupplierCheck.Missing m : check.missing()) {
      rows.add(List.of(m.mark(), Cells.count(m.count())));
      subjects.add(m.mark());
    }
    return new RowTable(
        words, words.text("supplied.missing"), List.of("'mark", "number"), rows, subjects);
  }

  private RowTable surplus() {
    List<List<String>> rows = new ArrayList<>();
    List<String> subjects = new ArrayList<>();
    for (SupplierCheck.Surplus s : check.surplus()) {
      rows.add(List.of(line(s.line()), s.suppliedMark(), Cells.count(s.count())));
      subjects.add("");
    }
    return new RowTable(
        words,
        words.text("supplied.surplus"),
        List.of("'listLine", "'theirMark", "number"),
        rows,
        subjects);
  }

  private RowTable matches() {
    List<List<String>> rows = new ArrayList<>();
    List<String> subjects = new ArrayList<>();
    for (SuppliedTruss t : check.trusses()) {
      long off = t.differences().stream().filter(Difference::differs).count();
      String result =
          t.differences().isEmpty()
              ? words.text("supplied.byMark")
              : off == 0 ? words.text("supplied.agrees") : words.counted("supplied.off", off);
      String also =
          t.couldBe().isEmpty()
              ? ""
              : words.text("supplied.couldBe", String.join(", ", t.couldBe()));
      rows.add(
          List.of(
              line(t.line()), t.suppliedMark(), t.mark(), Cells.count(t.count()), result, also));
      subjects.add(t.mark());
    }
    return new RowTable(
        words,
        words.text("supplied.matches", LengthText.small(notice(), words.unit(), Rounding.NEAREST)),
        List.of("'listLine", "'theirMark", "'takenFor", "number", "'result", "\"remark"),
        rows,
        subjects);
  }

  private double notice() {
    return switch (words.unit()) {
      case INCH -> 0.125;
      case MILLIMETRE -> 3;
    };
  }
}
