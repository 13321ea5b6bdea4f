package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longpoint.framing.FramingSet;
import longpoint.framing.edge.EdgeBoard;
import longpoint.framing.gable.GableWall;
import longpoint.framing.gable.Ladder;
import longpoint.framing.stick.Rafter;
import longpoint.framing.truss.RidgeBlocks;
import longpoint.sheets.SheetTable.Column;
import longpoint.sheets.SheetTable.Kind;
import longpoint.units.FigureText;
import longpoint.units.LengthText;
import longpoint.units.Rounding;

/** Blocks, ladders, rafters and boards as tables. Cuts are as the saw is set, from square. */
final class StickTables {
  private final FramingSet framing;
  private final Cells cells;
  private final RoofNames names;

  StickTables(FramingSet framing, Cells cells, RoofNames names) {
    this.framing = framing;
    this.cells = cells;
    this.names = names;
  }

  SheetTable blocks() {
    List<List<String>> rows = new ArrayList<>();
    for (RidgeBlocks b : framing.ridgeBlocks()) {
      rows.add(
          List.of(
              names.run(b.run()),
              b.place().name().toLowerCase(Locale.ROOT),
              Cells.count(b.count()),
              cells.length(b.clear()),
              LengthText.small(b.length(), cells.unit(), Rounding.DOWN)));
    }
    return new SheetTable(
        "Ridge blocks, cut down to the mark so that they never push the trusses",
        Cells.columns("Run", "Row", "Number", "Clear", "Cut to"),
        rows);
  }

  SheetTable ladders() {
    List<List<String>> rows = new ArrayList<>();
    for (Ladder l : framing.ladders()) {
      rows.add(
          List.of(
              names.wall(l.side()),
              l.rake().name().toLowerCase(Locale.ROOT),
              cells.length(l.rakeLength()),
              Cells.saw(l.plumbCut()),
              Cells.count(l.lookouts().size()),
              cells.length(l.lookoutLength()),
              cells.length(l.backSpan()),
              cells.length(l.overhang()),
              LengthText.small(l.drop(), cells.unit(), Rounding.NEAREST)));
    }
    return new SheetTable(
        "Gable ladders; left and right as seen from outside, facing the wall",
        Cells.columns(
            "Side",
            "Rake",
            "Fly rafter",
            "Plumb cut",
            "Lookouts",
            "Cut to",
            "Reach in",
            "Reach out",
            "Gable drop"),
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
    return new SheetTable(
        "Gable studs; centre from the low wall's outside face, top of plate to the frame plane",
        List.of(
            new Column("Wall", Kind.MARK),
            Cells.figure("Centre"),
            Cells.figure("Height"),
            Cells.figure("Difference")),
        rows);
  }

  SheetTable rafters() {
    List<List<String>> rows = new ArrayList<>();
    for (Rafter r : framing.rafters()) {
      rows.add(
          List.of(
              r.mark(),
              r.kind().key(),
              Cells.count(r.quantity()),
              cells.length(r.planRun()),
              cells.length(r.rise()),
              cells.length(r.lineLength()),
              cells.length(r.shortenHead()),
              cells.length(r.tail()),
              cells.length(r.length()),
              Cells.saw(r.plumbCut()),
              Cells.saw(r.sideCutHead()),
              Cells.saw(r.sideCutFoot()),
              LengthText.small(r.drop(), cells.unit(), Rounding.NEAREST)));
    }
    return new SheetTable(
        "Rafters; cuts as the saw is set from square",
        Cells.columns(
            "Mark",
            "Kind",
            "No.",
            "Run",
            "Rise",
            "Line length",
            "Off the head",
            "Tail",
            "Cut to",
            "Plumb",
            "Head",
            "Foot",
            "Drop"),
        rows);
  }

  SheetTable boards() {
    List<List<String>> rows = new ArrayList<>();
    for (EdgeBoard b : framing.fascia()) {
      rows.add(
          List.of(
              names.line(b.line()),
              b.kind().key(),
              cells.length(b.length()),
              cells.length(b.rise()),
              end(b.from()),
              end(b.to())));
    }
    return new SheetTable(
        "Fascia and rake boards, long point to long point; cuts as the saw is set from square",
        List.of(
            new Column("Along", Kind.MARK),
            new Column("Kind", Kind.MARK),
            Cells.figure("Length"),
            Cells.figure("Rise"),
            new Column("  One end", Kind.WORDS),
            new Column("  Other end", Kind.WORDS)),
        rows);
  }

  private static String end(EdgeBoard.End end) {
    String joint = "  " + end.joint().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    return switch (end.joint()) {
      case PLUMB -> joint + " " + Cells.saw(end.degrees());
      case OUTSIDE_MITRE, INSIDE_MITRE -> joint + " " + FigureText.angle(end.degrees());
      case BUTT, SQUARE -> joint;
    };
  }
}
