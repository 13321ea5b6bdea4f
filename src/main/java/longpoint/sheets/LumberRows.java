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
import longpoint.units.FigureText;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
import longpoint.units.Rounding;

/**
 * The cells of the cut list and of the boards to buy, the same on sheets and in lists.
 *
 * @param unit of the plan
 */
public record LumberRows(LengthUnit unit, RoofNames names) {
  /** Heads of {@link #cuts}. */
  public static final List<String> CUT_HEADS =
      List.of("mark", "piece", "board", "number", "cut to", "one end", "other end", "for");

  /** Heads of {@link #stock}. */
  public static final List<String> STOCK_HEADS =
      List.of("board", "buy", "together", "at least", "waste");

  /** Heads of {@link #patterns}. */
  public static final List<String> PATTERN_HEADS = List.of("boards", "of", "cut into", "left");

  /** A row for every cut, its ends as the saw is set from square. */
  public List<List<String>> cuts(Lumber lumber) {
    return lumber.cuts().stream()
        .map(
            c ->
                List.of(
                    c.mark(),
                    c.use().key() + joint(c),
                    section(c.section()),
                    count(c.count()),
                    LengthText.of(c.length(), unit, rounding(c.use())),
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
                  .map(b -> b.count() + " of " + length(b.length()))
                  .collect(Collectors.joining(", ")),
              length(s.total()),
              length(s.lowerBound()),
              String.format(Locale.ROOT, "%.1f %%", 100 * s.waste())));
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
    return LengthText.small(section.thickness(), unit, Rounding.NEAREST)
        + " × "
        + LengthText.small(section.width(), unit, Rounding.NEAREST);
  }

  private static String joint(Cut cut) {
    return switch (cut.spliced()) {
      case WHOLE -> "";
      case SPLICED -> ", jointed";
      case TOO_LONG -> ", longer than a board";
    };
  }

  /** Blocks that go between two things are never told longer than they are. */
  private static Rounding rounding(Use use) {
    return switch (use) {
      case RIDGE_BLOCK, VALLEY_BLOCK, LADDER_BLOCK, GABLE_STUD -> Rounding.DOWN;
      default -> Rounding.NEAREST;
    };
  }

  private static String end(EndCut cut) {
    if (cut.face() == 0 && cut.edge() == 0) {
      return "square";
    }
    String face = cut.face() == 0 ? "" : FigureText.angle(cut.face());
    String edge = cut.edge() == 0 ? "" : "edge " + FigureText.angle(cut.edge());
    return (face + " " + edge).strip();
  }

  private String length(double length) {
    return LengthText.of(length, unit);
  }

  private static String count(long count) {
    return String.format(Locale.ROOT, "%d", count);
  }
}
