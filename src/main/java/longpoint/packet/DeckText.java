package longpoint.packet;

import java.util.List;
import longpoint.deck.CutDifference;
import longpoint.deck.DeckPlan;
import longpoint.deck.Piece;
import longpoint.deck.PlaneDeck;
import longpoint.deck.Stock;
import longpoint.field.chalk.ChalkLine;
import longpoint.field.chalk.ChalkSheet;
import longpoint.field.chalk.SquareCheck;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.sheets.RoofNames;
import longpoint.sheets.Words;

/** The deck as plain text: sheets to buy, cut differences, and every line to snap. */
final class DeckText {
  private final RoofNames names;
  private final Words words;
  private final TextSections out;

  private DeckText(RoofNames names, TextSections out) {
    this.names = names;
    this.words = names.words().from("packet");
    this.out = out;
  }

  static void write(DeckPlan deck, List<ChalkSheet> chalk, RoofNames names, TextSections out) {
    DeckText text = new DeckText(names, out);
    text.stock(deck);
    text.planes(deck);
    text.pieces(deck);
    text.cutDifferences(deck);
    chalk.forEach(text::chalk);
  }

  private void stock(DeckPlan deck) {
    TextTable table = new TextTable(words, "sheet", "buy", "atLeast", "areaLaid", "waste");
    for (Stock s : deck.stock()) {
      table.row(
          length(s.panel().width()) + " x " + length(s.panel().length()),
          String.valueOf(s.bought()),
          String.valueOf(s.lowerBound()),
          words.area(s.areaUsed()),
          names.words().percent(100 * s.waste()));
    }
    out.section(words.text("sheets"), table);
  }

  private void planes(DeckPlan deck) {
    TextTable table = new TextTable(words, "plane", "area", "courses", "pieces");
    for (PlaneDeck p : deck.planes()) {
      table.rowOf(
          p.plane(),
          names.planes(p.planes()),
          words.area(p.area()),
          String.valueOf(p.courses().size()),
          String.valueOf(p.pieces().size()));
    }
    out.section(words.text("deck"), table);
  }

  /** Every piece to cut, in the order it is laid. */
  private void pieces(DeckPlan deck) {
    TextTable table =
        new TextTable(words, "plane", "piece", "cut", "course", "longPoint", "shortPoint", "width");
    for (PlaneDeck p : deck.planes()) {
      for (Piece piece : p.pieces()) {
        table.rowOf(
            piece.id(),
            names.planes(p.planes()),
            String.valueOf(piece.number()),
            names.words().cut(piece.cut()),
            String.valueOf(piece.course()),
            length(piece.longPoint()),
            length(piece.shortPoint()),
            length(piece.width()));
      }
    }
    out.section(words.text("pieces"), table);
  }

  private void cutDifferences(DeckPlan deck) {
    TextTable table = new TextTable(words, "line", "onPlane", "overOneSheetsWidth", "angle");
    for (PlaneDeck p : deck.planes()) {
      for (CutDifference d : p.cutDifferences()) {
        table.rowOf(
            d.line(),
            names.line(d.line()),
            names.plane(p.plane()),
            length(d.per()),
            words.angle(d.angle()));
      }
    }
    out.section(words.text("cutDifferences"), table);
  }

  private void chalk(ChalkSheet sheet) {
    TextTable table = new TextTable(words, "snap", "mark", "on", "from", "to", "check");
    int number = 0;
    for (ChalkLine l : sheet.lines()) {
      table.rowOf(
          sheet.lineId(++number),
          words.choice("chalk", l.kind()),
          words.say(l.label()),
          words.choice("stage", l.kind().stage()),
          place(l.from()),
          place(l.to()),
          length(l.diagonal()));
    }
    out.section(words.text("chalk", names.plane(sheet.plane()), sheet.datum().corner()), table);
    sheet.square().forEach(s -> square(sheet.plane(), s));
  }

  private void square(String plane, SquareCheck check) {
    TextTable table = new TextTable(words, "from", "to", "check");
    for (Segment tape : check.tapes()) {
      table.rowOf(plane, place(tape.from()), place(tape.to()), length(tape.length()));
    }
    out.section(words.text("chalk.square", names.plane(plane), check.head().label()), table);
  }

  private String place(Point p) {
    return words.text("chalk.place", length(p.x()), length(p.y()));
  }

  private String length(double length) {
    return words.length(length);
  }
}
