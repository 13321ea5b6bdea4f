package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import longpoint.field.lumber.BoardStock;
import longpoint.field.lumber.Cut;
import longpoint.field.lumber.EndCut;
import longpoint.field.lumber.Lumber;
import longpoint.field.lumber.Section;
import longpoint.field.lumber.Use;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
import longpoint.units.Rounding;

/**
 * The heads and cells of the cut list and of the boards to buy, the same on sheets and in lists.
 */
public record LumberRows(RoofNames names) {
  /** Heads of {@link #cuts}, by their keys. */
  static final List<String> CUT_HEADS =
      List.of("mark", "piece", "board", "number", "cutTo", "oneEnd", "otherEnd", "for");

  /** Heads of {@link #stock}, by their keys. */
  static final List<String> STOCK_HEADS = List.of("board", "buy", "together", "atLeast", "waste");

  /** Heads of {@link #patterns}, by their keys. */
  static final List<String> PATTERN_HEADS = List.of("boards", "of", "cutInto", "leftOver");

  /** Over the rows of {@link #cuts}. */
  public List<String> cutHeads() {
    return heads(CUT_HEADS);
  }

  /** Over the rows of {@link #stock}. */
  public List<String> stockHeads() {
    return heads(STOCK_HEADS);
  }

  /** Over the rows of {@link #patterns}. */
  public List<String> patternHeads() {
    return heads(PATTERN_HEADS);
  }

  private List<String> heads(List<String> keys) {
    return keys.stream().map(k -> lower(words().text("head." + k))).toList();
  }

  private static String lower(String head) {
    return head.substring(0, 1).toLowerCase(Locale.ROOT) + head.substring(1);
  }

  private Words words() {
    return names.words();
  }

  private LengthUnit unit() {
    return words().unit();
  }

  /** A row for every cut, its ends as the saw is set from square. */
  public List<List<String>> cuts(Lumber lumber) {
    return lumber.cuts().stream()
        .map(
            c ->
                List.of(
                    c.mark(),
                    words().text(joint(c), words().choice("use", c.use())),
                    section(c.section()),
                    count(c.count()),
                    LengthText.of(c.length(), unit(), rounding(c.use())),
                    end(c.from()),
                    end(c.to()),
                    c.at().stream().map(names::place).collect(Collectors.joining(", "))))
        .toList();
  }

  /** A row for every section of boards. */
  public List<List<String>> stock(Lumber lumber) {
    List<List<String>> rows = new ArrayList<>();
    for (BoardStock s : lumber.stock()) {
      rows.add(
          List.of(
              section(s.section()),
              s.boards().stream()
                  .map(b -> words().text("lumber.buy", b.count(), length(b.length())))
                  .collect(Collectors.joining(", ")),
              length(s.total()),
              length(s.lowerBound()),
              words().percent(100 * s.waste())));
    }
    return rows;
  }

  /** A row for every way a board of a section is cut. */
  public List<List<String>> patterns(BoardStock stock) {
    List<List<String>> rows = new ArrayList<>();
    for (BoardStock.Pattern p : stock.patterns()) {
      rows.add(
          List.of(
              count(p.times()),
              length(p.board()),
              p.pieces().stream()
                  .map(c -> c.count() + " × " + c.cut())
                  .collect(Collectors.joining(", ")),
              length(p.left())));
    }
    return rows;
  }

  /** Thickness by width. */
  public String section(Section section) {
    return LengthText.small(section.thickness(), unit(), Rounding.NEAREST)
        + " × "
        + LengthText.small(section.width(), unit(), Rounding.NEAREST);
  }

  private static String joint(Cut cut) {
    return switch (cut.spliced()) {
      case WHOLE -> "lumber.whole";
      case SPLICED -> "lumber.spliced";
      case TOO_LONG -> "lumber.tooLong";
    };
  }

  /** Blocks that go between two things are never told longer than they are. */
  private static Rounding rounding(Use use) {
    return switch (use) {
      case RIDGE_BLOCK, VALLEY_BLOCK, LADDER_BLOCK, GABLE_STUD, WALL_STUD -> Rounding.DOWN;
      default -> Rounding.NEAREST;
    };
  }

  private String end(EndCut cut) {
    if (cut.face() == 0 && cut.edge() == 0) {
      return words().text("cut.square");
    }
    String face = cut.face() == 0 ? "" : words().angle(cut.face());
    String edge = cut.edge() == 0 ? "" : words().text("cut.edge", words().angle(cut.edge()));
    return (face + " " + edge).strip();
  }

  private String length(double length) {
    return words().length(length);
  }

  private static String count(long count) {
    return String.format(Locale.ROOT, "%d", count);
  }
}
