package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longpoint.framing.FramingSet;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussKind;
import longpoint.framing.valley.ValleyLine;
import longpoint.framing.valley.ValleySet;
import longpoint.framing.valley.ValleyTruss;
import longpoint.sheets.SheetTable.Column;
import longpoint.sheets.SheetTable.Kind;

/** A valley set as tables: its trusses and the lines to snap. */
final class ValleyTables {
  private final FramingSet framing;
  private final Cells cells;
  private final RoofNames names;

  ValleyTables(FramingSet framing, Cells cells, RoofNames names) {
    this.framing = framing;
    this.cells = cells;
    this.names = names;
  }

  SheetTable valley(ValleySet set) {
    List<List<String>> rows = new ArrayList<>();
    double before = set.last();
    for (ValleyTruss t : set.trusses()) {
      rows.add(
          List.of(
              Cells.count(t.number()),
              mark(set, t),
              cells.length(t.x()),
              cells.length(t.v()),
              cells.length(t.stop()),
              cells.length(t.length()),
              cells.length(t.left()),
              cells.length(t.right()),
              cells.length(t.height()),
              cells.length(t.x() - before)));
      before = t.x();
    }
    return new SheetTable(
        "Valley trusses, from the eave up; left and right as seen looking up the slope",
        List.of(
            new Column("No.", Kind.MARK),
            new Column("Mark", Kind.MARK),
            Cells.figure("In from wall"),
            Cells.figure("Up the deck"),
            Cells.figure("Stop nails"),
            Cells.figure("Chord"),
            Cells.figure("Left"),
            Cells.figure("Right"),
            Cells.figure("Height"),
            Cells.figure("Gap, level")),
        rows);
  }

  /** Of a valley truss; empty where the wing is framed with rafters and none is ordered. */
  String mark(ValleySet set, ValleyTruss truss) {
    String id = valleyId(set, truss);
    return framing.trusses().stream()
        .filter(t -> t.id().equals(id))
        .map(Truss::mark)
        .findFirst()
        .orElse("");
  }

  static String valleyId(ValleySet set, ValleyTruss truss) {
    return set.upper() + ":" + TrussKind.VALLEY.letter() + truss.number();
  }

  /** What stands on what. */
  SheetTable valleyNames(ValleySet set) {
    return new SheetTable(
        "This set",
        List.of(new Column("", Kind.WORDS), Cells.figure("")),
        List.of(
            List.of("Wing", names.run(set.upper())),
            List.of("Stands on plane", names.plane(set.plane())),
            List.of("First gap, level", cells.length(set.firstGap())),
            List.of("Slid down for the deck, level", cells.length(set.shift())),
            List.of("Set lines meet, in from wall", cells.length(set.apex().x())),
            List.of("Set lines meet, up the deck", cells.length(set.apex().v()))));
  }

  /** Both ends of every line to snap on the deck. */
  SheetTable snapped(ValleySet set) {
    List<List<String>> rows = new ArrayList<>();
    set.setLines().forEach(l -> rows.add(snapped("Set line", set, l)));
    set.sheetLines().forEach(l -> rows.add(snapped("Sheet line", set, l)));
    return new SheetTable(
        "Lines to snap: foot and top, each up the deck and out from the centre line",
        Cells.columns("Line", "Side", "Foot up", "Foot out", "Top up", "Top out"),
        rows);
  }

  private List<String> snapped(String name, ValleySet set, ValleyLine line) {
    return List.of(
        name,
        line.side().name().toLowerCase(Locale.ROOT),
        cells.length(set.site().main().v(line.x())),
        cells.length(line.half()),
        cells.length(set.site().main().v(line.apexX())),
        cells.length(line.apexHalf()));
  }
}
