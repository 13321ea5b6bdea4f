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
import longpoint.geometry.Point;
import longpoint.units.FigureText;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;

/** The tables of a chalk sheet: lines to snap, pieces to cut, cut differences. */
final class ChalkTables {
  private ChalkTables() {}

  /** Lines in the order they are snapped; across is from the datum corner, up from the fascia. */
  static SheetTable lines(ChalkSheet sheet, LengthUnit unit) {
    List<List<String>> rows = new ArrayList<>();
    int number = 0;
    for (ChalkLine line : sheet.lines()) {
      rows.add(
          List.of(
              String.valueOf(++number),
              line.label(),
              place(line.from(), unit),
              place(line.to(), unit),
              LengthText.of(line.diagonal(), unit)));
    }
    return new SheetTable(
        "Lines to snap: across from the " + sheet.datum().corner() + " × up from the fascia",
        List.of(
            new SheetTable.Column("No.", SheetTable.Kind.MARK),
            new SheetTable.Column("Line", SheetTable.Kind.WORDS),
            new SheetTable.Column("From", SheetTable.Kind.FIGURE),
            new SheetTable.Column("To", SheetTable.Kind.FIGURE),
            new SheetTable.Column("Tape", SheetTable.Kind.FIGURE)),
        rows);
  }

  private static String place(Point p, LengthUnit unit) {
    return LengthText.of(p.x(), unit) + " × " + LengthText.of(p.y(), unit);
  }

  /** Pieces by letter, with the steepest of their slanted cuts. */
  static SheetTable pieces(PlaneDeck deck, LengthUnit unit) {
    Map<String, List<Piece>> cuts = new LinkedHashMap<>();
    deck.pieces().forEach(p -> cuts.computeIfAbsent(p.cut(), c -> new ArrayList<>()).add(p));
    List<List<String>> rows = new ArrayList<>();
    cuts.forEach(
        (cut, pieces) -> {
          Piece piece = pieces.get(0);
          rows.add(
              List.of(
                  cut,
                  String.valueOf(pieces.size()),
                  LengthText.of(piece.longPoint(), unit),
                  LengthText.of(piece.shortPoint(), unit),
                  LengthText.of(piece.width(), unit),
                  angles(piece),
                  bevel(piece)));
        });
    return new SheetTable(
        "Pieces",
        List.of(
            new SheetTable.Column("Cut", SheetTable.Kind.MARK),
            new SheetTable.Column("Count", SheetTable.Kind.FIGURE),
            new SheetTable.Column("Long point", SheetTable.Kind.FIGURE),
            new SheetTable.Column("Short point", SheetTable.Kind.FIGURE),
            new SheetTable.Column("Width", SheetTable.Kind.FIGURE),
            new SheetTable.Column("Off square", SheetTable.Kind.FIGURE),
            new SheetTable.Column("Bevel", SheetTable.Kind.FIGURE)),
        rows);
  }

  /** Only a sheet line needs one; hips, valleys and ridges are commonly left square. */
  private static String bevel(Piece piece) {
    return piece.edges().stream()
        .filter(e -> e.use() == PieceEdge.Use.SHEET_LINE)
        .map(e -> FigureText.angle(e.bevel()))
        .findFirst()
        .orElse("");
  }

  private static String angles(Piece piece) {
    return piece.edges().stream()
        .mapToDouble(PieceEdge::angle)
        .filter(a -> a > SQUARE && a < 90 - SQUARE)
        .max()
        .stream()
        .mapToObj(FigureText::angle)
        .findFirst()
        .orElse("");
  }

  /** Cuts nearer to square than this many degrees are square. */
  private static final double SQUARE = 0.01;

  /** How far each hip and valley cut runs over from course to course. */
  static SheetTable differences(PlaneDeck deck, LengthUnit unit, RoofNames names) {
    List<List<String>> rows = new ArrayList<>();
    for (CutDifference d : deck.cutDifferences()) {
      rows.add(
          List.of(names.line(d.line()), LengthText.of(d.per(), unit), FigureText.angle(d.angle())));
    }
    return new SheetTable(
        "Cut difference: how far a hip or valley cut runs over from one course to the next",
        List.of(
            new SheetTable.Column("Line", SheetTable.Kind.WORDS),
            new SheetTable.Column("Runs", SheetTable.Kind.FIGURE),
            new SheetTable.Column("Off square", SheetTable.Kind.FIGURE)),
        rows);
  }
}
