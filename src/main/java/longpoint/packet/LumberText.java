package longpoint.packet;

import java.util.Locale;
import java.util.stream.Collectors;
import longpoint.field.lumber.BoardStock;
import longpoint.field.lumber.Cut;
import longpoint.field.lumber.EndCut;
import longpoint.field.lumber.Lumber;
import longpoint.field.lumber.Section;
import longpoint.field.lumber.Use;
import longpoint.sheets.RoofNames;
import longpoint.units.FigureText;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
import longpoint.units.Rounding;

/** The cut list and the boards to buy, as plain text. */
final class LumberText {
  private final RoofNames names;
  private final LengthUnit unit;
  private final TextSections out;

  private LumberText(RoofNames names, LengthUnit unit, TextSections out) {
    this.names = names;
    this.unit = unit;
    this.out = out;
  }

  static void write(Lumber lumber, RoofNames names, LengthUnit unit, TextSections out) {
    LumberText text = new LumberText(names, unit, out);
    text.cuts(lumber);
    text.stock(lumber);
    lumber.stock().forEach(text::patterns);
  }

  private void cuts(Lumber lumber) {
    TextTable table =
        new TextTable("mark", "piece", "board", "number", "cut to", "ends", "", "for");
    for (Cut c : lumber.cuts()) {
      table.row(
          c.mark(),
          c.use().key() + joint(c),
          section(c.section()),
          String.valueOf(c.count()),
          LengthText.of(c.length(), unit, rounding(c.use())),
          end(c.from()),
          end(c.to()),
          c.at().stream().map(names::place).collect(Collectors.joining(", ")));
    }
    out.section("Cut list, ends as the saw is set from square; trusses come made", table);
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

  private void stock(Lumber lumber) {
    TextTable table = new TextTable("board", "buy", "together", "at least", "waste");
    for (BoardStock s : lumber.stock()) {
      table.row(
          section(s.section()),
          s.boards().stream()
              .map(b -> b.count() + " of " + length(b.length()))
              .collect(Collectors.joining(", ")),
          length(s.total()),
          length(s.lowerBound()),
          String.format(Locale.ROOT, "%.1f %%", 100 * s.waste()));
    }
    out.section(
        "Boards to buy: no cutting of these pieces from these lengths takes less than \"at least\"",
        table);
    if (!lumber.stock().isEmpty()) {
      out.line("Sizes are to count by; span tables, the local code or an engineer decide them.");
    }
  }

  private void patterns(BoardStock stock) {
    TextTable table = new TextTable("boards", "of", "cut into", "left");
    for (BoardStock.Pattern p : stock.patterns()) {
      table.row(
          String.valueOf(p.times()),
          length(p.board()),
          p.pieces().stream()
              .map(c -> c.count() + " x " + c.cut())
              .collect(Collectors.joining(", ")),
          length(p.left()));
    }
    out.section("Cutting " + section(stock.section()), table);
  }

  private String section(Section section) {
    return LengthText.small(section.thickness(), unit, Rounding.NEAREST)
        + " x "
        + LengthText.small(section.width(), unit, Rounding.NEAREST);
  }

  private String length(double length) {
    return LengthText.of(length, unit);
  }
}
