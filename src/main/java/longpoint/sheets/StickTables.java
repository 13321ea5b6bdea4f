package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.framing.FramingSet;
import longpoint.framing.edge.EdgeBoard;
import longpoint.framing.gable.GableWall;
import longpoint.framing.gable.Ladder;
import longpoint.framing.stick.Rafter;
import longpoint.framing.truss.RidgeBlocks;
import longpoint.units.Rounding;

/** Blocks, ladders, rafters and boards as tables. Cuts are as the saw is set, from square. */
final class StickTables {
  private final FramingSet framing;
  private final Cells cells;
  private final RoofNames names;
  private final Words words;

  StickTables(FramingSet framing, Cells cells, RoofNames names) {
    this.framing = framing;
    this.cells = cells;
    this.names = names;
    this.words = cells.words();
  }

  SheetTable blocks() {
    List<List<String>> rows = new ArrayList<>();
    for (RidgeBlocks b : framing.ridgeBlocks()) {
      rows.add(
          List.of(
              names.run(b.run()),
              words.choice("line", b.place()),
              Cells.count(b.count()),
              cells.length(b.clear()),
              words.small(b.length(), Rounding.DOWN)));
    }
    return cells.table(
        words.text("blocks.table"), cells.columns("run", "row", "number", "clear", "cutTo"), rows);
  }

  SheetTable ladders() {
    List<List<String>> rows = new ArrayList<>();
    for (Ladder l : framing.ladders()) {
      rows.add(
          List.of(
              names.wall(l.side()),
              words.choice("hand", l.rake()),
              cells.length(l.rakeLength()),
              cells.saw(l.plumbCut()),
              Cells.count(l.lookouts().size()),
              cells.length(l.lookoutLength()),
              cells.length(l.backSpan()),
              cells.length(l.overhang()),
              words.small(l.drop(), Rounding.NEAREST)));
    }
    return cells.table(
        words.text("ladders.table"),
        cells.columns(
            "side",
            "rake",
            "flyRafter",
            "plumbCut",
            "lookouts",
            "cutTo",
            "reachIn",
            "reachOut",
            "gableDrop"),
        rows);
  }

  /** Every stud under a gable's rafters, from one end of its wall. */
  SheetTable gableStuds() {
    List<List<String>> rows = new ArrayList<>();
    for (GableWall w : framing.gableWalls()) {
      for (int i = 0; i < w.places().size(); i++) {
        double step = i == 0 ? 0 : w.heights().get(i) - w.heights().get(i - 1);
        rows.add(
            List.of(
                names.wall(w.side()),
                cells.length(w.places().get(i)),
                cells.length(w.heights().get(i)),
                i == 0 ? "" : cells.length(Math.abs(step))));
      }
    }
    return cells.table(
        words.text("studs.table"),
        List.of(
            cells.mark("wall"),
            cells.figure("centre"),
            cells.figure("height"),
            cells.figure("difference")),
        rows);
  }

  SheetTable rafters() {
    List<List<String>> rows = new ArrayList<>();
    for (Rafter r : framing.rafters()) {
      rows.add(
          List.of(
              r.mark(),
              words.choice("rafter", r.kind()),
              Cells.count(r.quantity()),
              cells.length(r.planRun()),
              cells.length(r.rise()),
              cells.length(r.lineLength()),
              cells.length(r.shortenHead()),
              cells.length(r.tail()),
              cells.length(r.length()),
              cells.saw(r.plumbCut()),
              cells.saw(r.sideCutHead()),
              cells.saw(r.sideCutFoot()),
              words.small(r.drop(), Rounding.NEAREST)));
    }
    return cells.table(
        words.text("rafters.table"),
        cells.columns(
            "mark",
            "kind",
            "many",
            "levelRun",
            "rise",
            "lineLength",
            "offHead",
            "tail",
            "cutTo",
            "plumb",
            "head",
            "foot",
            "drop"),
        rows);
  }

  SheetTable boards() {
    List<List<String>> rows = new ArrayList<>();
    for (EdgeBoard b : framing.fascia()) {
      rows.add(
          List.of(
              names.line(b.line()),
              words.choice("line", b.kind()),
              cells.length(b.length()),
              cells.length(b.rise()),
              end(b.from()),
              end(b.to())));
    }
    return cells.table(
        words.text("boards.table"),
        List.of(
            cells.mark("along"),
            cells.mark("kind"),
            cells.figure("length"),
            cells.figure("rise"),
            cells.words("oneEnd"),
            cells.words("otherEnd")),
        rows);
  }

  private String end(EdgeBoard.End end) {
    String joint = words.choice("joint", end.joint());
    return switch (end.joint()) {
      case PLUMB -> joint + " " + cells.saw(end.degrees());
      case OUTSIDE_MITRE, INSIDE_MITRE -> joint + " " + words.angle(end.degrees());
      case BUTT, SQUARE -> joint;
    };
  }
}
