package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.framing.FramingSet;
import longpoint.framing.truss.Truss;
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
  private final Words words;

  ValleyTables(FramingSet framing, Cells cells, RoofNames names) {
    this.framing = framing;
    this.cells = cells;
    this.names = names;
    this.words = cells.words();
  }

  SheetTable valley(ValleySet set) {
    List<List<String>> rows = new ArrayList<>();
    double before = set.last();
    for (ValleyTruss t : set.trusses()) {
      rows.add(
          List.of(
              Cells.count(t.number()),
              placed(set, t).map(Truss::mark).orElse(""),
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
    return cells.table(
        words.text("valley.table"),
        List.of(
            cells.mark("no"),
            cells.mark("mark"),
            cells.figure("inFromWall"),
            cells.figure("upTheDeck"),
            cells.figure("stopNails"),
            cells.figure("chord"),
            cells.figure("left"),
            cells.figure("right"),
            cells.figure("height"),
            cells.figure("gap")),
        rows);
  }

  /** The truss to order for one of a set; empty where the wing is framed with rafters. */
  Optional<Truss> placed(ValleySet set, ValleyTruss truss) {
    return framing.valleyTruss(set, truss);
  }

  /** What stands on what. */
  SheetTable valleyNames(ValleySet set) {
    return cells.table(
        words.text("valley.this"),
        List.of(new Column("", Kind.WORDS), new Column("", Kind.FIGURE)),
        List.of(
            List.of(words.text("valley.wing"), names.run(set.upper())),
            List.of(words.text("valley.plane"), names.plane(set.plane())),
            List.of(words.text("valley.firstGap"), cells.length(set.firstGap())),
            List.of(words.text("valley.shift"), cells.length(set.shift())),
            List.of(words.text("valley.apexIn"), cells.length(set.apex().x())),
            List.of(words.text("valley.apexUp"), cells.length(set.apex().v()))));
  }

  /** Both ends of every line to snap on the deck. */
  SheetTable snapped(ValleySet set) {
    List<List<String>> rows = new ArrayList<>();
    set.setLines().forEach(l -> rows.add(snapped(words.text("valley.setLine"), set, l)));
    set.sheetLines().forEach(l -> rows.add(snapped(words.text("valley.sheetLine"), set, l)));
    return cells.table(
        words.text("valley.lines"),
        cells.columns("line", "side", "footUp", "footOut", "topUp", "topOut"),
        rows);
  }

  private List<String> snapped(String name, ValleySet set, ValleyLine line) {
    return List.of(
        name,
        words.choice("hand", line.side()),
        cells.length(set.site().main().v(line.x())),
        cells.length(line.half()),
        cells.length(set.site().main().v(line.apexX())),
        cells.length(line.apexHalf()));
  }
}
