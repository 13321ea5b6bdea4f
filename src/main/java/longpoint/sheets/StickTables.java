package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import longpoint.framing.FramingSet;
import longpoint.framing.edge.EdgeBoard;
import longpoint.framing.gable.GableWall;
import longpoint.framing.gable.HighWall;
import longpoint.framing.gable.Ladder;
import longpoint.framing.stick.Bearing;
import longpoint.framing.stick.Rafter;
import longpoint.framing.stick.RafterEnd;
import longpoint.framing.stick.RafterTape;
import longpoint.framing.stick.RoofOpening;
import longpoint.framing.stick.Seat;
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

  /** Where the rafters of every wall stand. */
  SheetTable rafterTapes() {
    List<List<String>> rows = new ArrayList<>();
    for (RafterTape t : framing.rafterTapes()) {
      String plate = cells.length(t.length()) + ", " + words.choice("hand", t.from());
      cells.running(rows, names.wall(t.side()), plate, t.marks());
    }
    return cells.running(words.text("rafter.tapes"), "wall", "plate", rows);
  }

  /** Where the openings of dormers are set out. */
  SheetTable openings() {
    List<List<String>> rows = new ArrayList<>();
    for (RoofOpening o : framing.openings()) {
      rows.add(
          List.of(
              names.wall(o.side()),
              names.run(o.dormer()),
              cells.length(o.from()),
              cells.length(o.clear()),
              o.lower().map(cells::length).orElse(""),
              o.upper().map(cells::length).orElse("")));
    }
    return cells.table(
        words.text("openings.table"),
        cells.columns("wall", "dormer", "fromLeft", "clear", "lowerHeader", "upperHeader"),
        rows);
  }

  /** What stands on the plate of a shed's high wall. */
  SheetTable highWalls() {
    List<List<String>> rows = new ArrayList<>();
    for (HighWall w : framing.highWalls()) {
      rows.add(
          List.of(
              names.wall(w.side()),
              cells.length(w.rise()),
              Cells.count(w.places().size()),
              w.stud() > 0 ? words.small(w.stud(), Rounding.DOWN) : "",
              cells.length(w.length())));
    }
    return cells.table(
        words.text("highWalls.table"),
        List.of(
            cells.mark("wall"),
            cells.figure("wallRise"),
            cells.figure("studs"),
            cells.figure("cutTo"),
            cells.figure("plates")),
        rows);
  }

  /** From where to where every rafter is measured. */
  SheetTable rafters() {
    List<List<String>> rows = new ArrayList<>();
    for (Rafter r : framing.rafters()) {
      rows.add(
          List.of(
              r.mark(),
              words.choice("rafter", r.kind()),
              Cells.count(r.quantity()),
              RafterWords.isHanded(r) && r.quantity() > 1 ? Cells.count(r.mirrored()) : "",
              cells.length(r.planRun()),
              cells.length(r.rise()),
              cells.length(r.lineLength()),
              shortening(r.shortenFoot()),
              shortening(r.shortenHead()),
              r.tail() + r.over() > 0 ? cells.length(r.tail() + r.over()) : "",
              cells.length(r.length()),
              r.difference().map(cells::length).orElse("")));
    }
    return cells.table(
        words.text("rafters.table"),
        cells.columns(
            "mark",
            "kind",
            "many",
            "otherHand",
            "levelRun",
            "rise",
            "lineLength",
            "offFoot",
            "offHead",
            "tail",
            "cutTo",
            "step"),
        rows);
  }

  /** What comes off an end; with a plus where a ridge runs on. */
  private String shortening(double off) {
    String shown = words.small(Math.abs(off), Rounding.NEAREST);
    return off == 0 ? "" : off > 0 ? shown : "+" + shown;
  }

  /** How every rafter's ends and seat are cut. */
  SheetTable rafterCuts() {
    List<List<String>> rows = new ArrayList<>();
    RafterWords said = new RafterWords(words);
    for (Rafter r : framing.rafters()) {
      rows.add(
          List.of(
              r.mark(),
              r.head().on() == Bearing.NOTHING ? "" : said.on(r.head()),
              words.small(r.depth(), Rounding.NEAREST),
              cells.saw(r.plumbCut()),
              said.onSquare(r.square().run()) + " / " + said.onSquare(r.square().rise()),
              saw(r.head()),
              cells.saw(r.sideCutHead()),
              saw(r.foot()),
              cells.saw(r.sideCutFoot()),
              r.drop() > 0 ? words.small(r.drop(), Rounding.NEAREST) : "",
              seat(r, Seat::seat),
              seat(r, Seat::plumb),
              seat(r, Seat::height),
              r.seat().map(s -> words.percent(100 * s.share())).orElse("")));
    }
    return cells.table(
        words.text("rafters.cutTable"),
        cells.columns(
            "mark",
            "headOn",
            "depth",
            "plumb",
            "onSquare",
            "headSaw",
            "headEdge",
            "footSaw",
            "footEdge",
            "drop",
            "seat",
            "seatPlumb",
            "abovePlate",
            "notch"),
        rows);
  }

  private String saw(RafterEnd end) {
    return words.angle(end.bevel());
  }

  private String seat(Rafter r, ToDoubleFunction<Seat> figure) {
    return r.seat().map(s -> words.small(figure.applyAsDouble(s), Rounding.NEAREST)).orElse("");
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
