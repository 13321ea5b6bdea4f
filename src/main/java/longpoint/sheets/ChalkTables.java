package longpoint.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longpoint.deck.CutDifference;
import longpoint.deck.Piece;
import longpoint.deck.PieceEdge;
import longpoint.deck.PlaneDeck;
import longpoint.field.chalk.ChalkLine;
import longpoint.field.chalk.ChalkSheet;
import longpoint.field.chalk.SquareCheck;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/** The tables of a chalk sheet: lines to snap, pieces to cut, cut differences. */
final class ChalkTables {
  private ChalkTables() {}

  /** Lines in the order they are snapped; across is from the datum corner, up from the fascia. */
  static SheetTable lines(ChalkSheet sheet, Words words) {
    Cells cells = new Cells(words);
    List<List<String>> rows = new ArrayList<>();
    int number = 0;
    for (ChalkLine line : sheet.lines()) {
      rows.add(
          List.of(
              String.valueOf(++number),
              words.say(line.label()),
              place(line.from(), words),
              place(line.to(), words),
              words.length(line.diagonal())));
    }
    return cells.table(
        words.text("chalk.lines", sheet.datum().corner()),
        List.of(
            cells.mark("no"),
            cells.words("line"),
            cells.figure("from"),
            cells.figure("to"),
            cells.figure("tape")),
        rows);
  }

  /** Two tapes across the whole layout, before the first sheet is nailed. */
  static SheetTable square(SquareCheck check, Words words) {
    Cells cells = new Cells(words);
    List<List<String>> rows = new ArrayList<>();
    for (Segment tape : check.tapes()) {
      rows.add(
          List.of(place(tape.from(), words), place(tape.to(), words), words.length(tape.length())));
    }
    return cells.table(
        words.text("chalk.square", check.head().label()),
        List.of(cells.figure("from"), cells.figure("to"), cells.figure("tape")),
        rows);
  }

  private static String place(Point p, Words words) {
    return words.length(p.x()) + " × " + words.length(p.y());
  }

  /** Pieces by letter, with the steepest of their slanted cuts. */
  static SheetTable pieces(PlaneDeck deck, Words words) {
    Cells cells = new Cells(words);
    Map<String, List<Piece>> cuts = new LinkedHashMap<>();
    deck.pieces().forEach(p -> cuts.computeIfAbsent(p.cut(), c -> new ArrayList<>()).add(p));
    List<List<String>> rows = new ArrayList<>();
    cuts.forEach(
        (cut, pieces) -> {
          Piece piece = pieces.get(0);
          rows.add(
              List.of(
                  words.cut(cut),
                  String.valueOf(pieces.size()),
                  words.length(piece.longPoint()),
                  words.length(piece.shortPoint()),
                  words.length(piece.width()),
                  angles(piece, words),
                  bevel(piece, words)));
        });
    return cells.table(
        words.text("chalk.pieces"),
        List.of(
            cells.mark("cut"),
            cells.figure("count"),
            cells.figure("longPoint"),
            cells.figure("shortPoint"),
            cells.figure("width"),
            cells.figure("offSquare"),
            cells.figure("bevel")),
        rows);
  }

  /** Only a sheet line needs one; hips, valleys and ridges are commonly left square. */
  private static String bevel(Piece piece, Words words) {
    return piece.edges().stream()
        .filter(e -> e.use() == PieceEdge.Use.SHEET_LINE)
        .map(e -> words.angle(e.bevel()))
        .findFirst()
        .orElse("");
  }

  private static String angles(Piece piece, Words words) {
    return piece.edges().stream()
        .mapToDouble(PieceEdge::angle)
        .filter(a -> a > SQUARE && a < 90 - SQUARE)
        .max()
        .stream()
        .mapToObj(words::angle)
        .findFirst()
        .orElse("");
  }

  /** Cuts nearer to square than this many degrees are square. */
  private static final double SQUARE = 0.01;

  /** How far each hip and valley cut runs over from course to course. */
  static SheetTable differences(PlaneDeck deck, RoofNames names) {
    Words words = names.words();
    Cells cells = new Cells(words);
    List<List<String>> rows = new ArrayList<>();
    for (CutDifference d : deck.cutDifferences()) {
      rows.add(List.of(names.line(d.line()), words.length(d.per()), words.angle(d.angle())));
    }
    return cells.table(
        words.text("chalk.differences"),
        List.of(cells.words("line"), cells.figure("runs"), cells.figure("offSquare")),
        rows);
  }
}
