package longpoint.packet;

import java.util.List;
import java.util.Locale;
import longpoint.deck.CutDifference;
import longpoint.deck.DeckPlan;
import longpoint.deck.Piece;
import longpoint.deck.PlaneDeck;
import longpoint.deck.Stock;
import longpoint.field.chalk.ChalkLine;
import longpoint.field.chalk.ChalkSheet;
import longpoint.sheets.RoofNames;
import longpoint.units.FigureText;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;

/** The deck as plain text: sheets to buy, cut differences, and every line to snap. */
final class DeckText {
  private final RoofNames names;
  private final LengthUnit unit;
  private final TextSections out;

  private DeckText(RoofNames names, LengthUnit unit, TextSections out) {
    this.names = names;
    this.unit = unit;
    this.out = out;
  }

  static void write(
      DeckPlan deck, List<ChalkSheet> chalk, RoofNames names, LengthUnit unit, TextSections out) {
    DeckText text = new DeckText(names, unit, out);
    text.stock(deck);
    text.planes(deck);
    text.pieces(deck);
    text.cutDifferences(deck);
    chalk.forEach(text::chalk);
  }

  private void stock(DeckPlan deck) {
    TextTable table = new TextTable("sheet", "buy", "at least", "area laid", "waste");
    for (Stock s : deck.stock()) {
      table.row(
          length(s.panel().width()) + " x " + length(s.panel().length()),
          String.valueOf(s.bought()),
          String.valueOf(s.lowerBound()),
          FigureText.area(s.areaUsed(), unit),
          String.format(Locale.ROOT, "%.1f %%", 100 * s.waste()));
    }
    out.section("Sheets: no cutting of these courses needs fewer than \"at least\"", table);
  }

  private void planes(DeckPlan deck) {
    TextTable table = new TextTable("plane", "area", "courses", "pieces");
    for (PlaneDeck p : deck.planes()) {
      table.rowOf(
          p.plane(),
          names.planes(p.planes()),
          FigureText.area(p.area(), unit),
          String.valueOf(p.courses().size()),
          String.valueOf(p.pieces().size()));
    }
    out.section("Deck", table);
  }

  /** Every piece to cut, in the order it is laid. */
  private void pieces(DeckPlan deck) {
    TextTable table =
        new TextTable("plane", "piece", "cut", "course", "long point", "short point", "width");
    for (PlaneDeck p : deck.planes()) {
      for (Piece piece : p.pieces()) {
        table.rowOf(
            piece.id(),
            names.planes(p.planes()),
            String.valueOf(piece.number()),
            piece.cut(),
            String.valueOf(piece.course()),
            length(piece.longPoint()),
            length(piece.shortPoint()),
            length(piece.width()));
      }
    }
    out.section("Pieces of sheathing on the module; same letters are cut alike", table);
  }

  private void cutDifferences(DeckPlan deck) {
    TextTable table = new TextTable("line", "on plane", "over one sheet's width", "angle");
    for (PlaneDeck p : deck.planes()) {
      for (CutDifference d : p.cutDifferences()) {
        table.rowOf(
            d.line(),
            names.line(d.line()),
            names.plane(p.plane()),
            length(d.per()),
            FigureText.angle(d.angle()));
      }
    }
    out.section("Cuts along hips and valleys, angle from a square cut", table);
  }

  private void chalk(ChalkSheet sheet) {
    TextTable table = new TextTable("snap", "mark", "on", "from", "to", "check");
    int number = 0;
    for (ChalkLine l : sheet.lines()) {
      table.rowOf(
          sheet.lineId(++number),
          l.kind().key(),
          l.label(),
          TextSections.key(l.kind().stage()),
          length(l.from().x()) + " over, " + length(l.from().y()) + " up",
          length(l.to().x()) + " over, " + length(l.to().y()) + " up",
          length(l.diagonal()));
    }
    out.section(
        "Chalk on plane " + names.plane(sheet.plane()) + ", from " + sheet.datum().corner(), table);
  }

  private String length(double length) {
    return LengthText.of(length, unit);
  }
}
