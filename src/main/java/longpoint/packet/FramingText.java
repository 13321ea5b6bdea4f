package longpoint.packet;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import longpoint.framing.FramingSet;
import longpoint.framing.edge.EdgeBoard;
import longpoint.framing.gable.GableWall;
import longpoint.framing.gable.Ladder;
import longpoint.framing.stick.Rafter;
import longpoint.framing.truss.Girder;
import longpoint.framing.truss.RidgeBlocks;
import longpoint.framing.truss.TapeMarks;
import longpoint.framing.truss.TrussMark;
import longpoint.framing.valley.SuppliedSet;
import longpoint.framing.valley.ValleySet;
import longpoint.sheets.RoofNames;
import longpoint.units.FigureText;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
import longpoint.units.Rounding;

/** The frame as plain text: what to order, where each piece goes, what to cut. */
final class FramingText {
  private final FramingSet framing;
  private final RoofNames names;
  private final LengthUnit unit;
  private final TextSections out;

  private FramingText(FramingSet framing, RoofNames names, LengthUnit unit, TextSections out) {
    this.framing = framing;
    this.names = names;
    this.unit = unit;
    this.out = out;
  }

  static void write(FramingSet framing, RoofNames names, LengthUnit unit, TextSections out) {
    FramingText text = new FramingText(framing, names, unit, out);
    text.trusses();
    text.tapes();
    text.girders();
    framing.valleySets().forEach(text::valleySet);
    text.ridgeBlocks();
    text.ladders();
    text.gableWalls();
    text.rafters();
    text.boards();
  }

  private void trusses() {
    TextTable table =
        new TextTable(
            "mark", "kind", "number", "plies", "span", "height", "heel", "heel", "tail", "tail");
    for (TrussMark m : framing.marks()) {
      table.rowOf(
          m.mark(),
          m.mark(),
          m.kind().key(),
          String.valueOf(m.quantity()),
          String.valueOf(m.plies()),
          length(m.span()),
          length(m.height()),
          length(m.heelLow()),
          length(m.heelHigh()),
          length(m.tailLow()),
          length(m.tailHigh()));
    }
    out.section("Trusses, an outline to order by: the supplier's drawings rule", table);
  }

  private void tapes() {
    TextTable table = new TextTable("run", "plate", "marks");
    for (TapeMarks t : framing.tapes()) {
      table.row(names.run(t.run()), length(t.length()), lengths(t.marks()));
    }
    out.section("Tape marks on both plates, truss on the far side of the mark", table);
  }

  private void girders() {
    TextTable table = new TextTable("girder", "in", "hangers", "at");
    for (Girder g : framing.girders()) {
      List<Double> along = g.hangers().stream().map(Girder.Hanger::along).toList();
      table.rowOf(
          g.truss(), g.mark(), names.run(runOf(g)), String.valueOf(along.size()), lengths(along));
    }
    out.section("Girders", table);
    framing.girders().stream().map(Girder::reminder).distinct().forEach(out::line);
  }

  /** A truss's id is its run's, a colon, and its own mark. */
  private static String runOf(Girder girder) {
    int colon = girder.truss().lastIndexOf(':');
    return colon < 0 ? girder.truss() : girder.truss().substring(0, colon);
  }

  private void valleySet(ValleySet set) {
    TextTable table =
        new TextTable("no.", "in from wall", "up the deck", "stop nails", "chord", "height");
    set.trusses()
        .forEach(
            t ->
                table.row(
                    String.valueOf(t.number()),
                    length(t.x()),
                    length(t.v()),
                    length(t.stop()),
                    length(t.length()),
                    length(t.height())));
    out.section(
        "Valley set of " + names.run(set.upper()) + " on plane " + names.plane(set.plane()), table);
    out.line(
        "first gap " + length(set.firstGap()) + ", slid down " + length(set.shift()) + " in plan");
    out.line(
        "set lines meet "
            + length(set.apex().x())
            + " in, "
            + length(set.apex().v())
            + " up the deck");
    if (!set.supplied().isEmpty()) {
      supplied(set);
    }
  }

  /** What a supplier's list makes of each gap, and which of them is off. */
  private void supplied(ValleySet set) {
    TextTable table = new TextTable("no.", "chord", "gap", "layout", "look");
    for (SuppliedSet.Placed p : set.supplied()) {
      table.row(
          String.valueOf(p.truss().number()),
          length(p.truss().length()),
          length(p.gap()),
          length(p.expected()),
          p.differs() ? "off" : "");
    }
    out.section("Supplier's chords of " + set.upper() + ", gaps up the plan", table);
  }

  private void gableWalls() {
    TextTable table = new TextTable("side", "studs", "longest", "difference", "difference");
    for (GableWall w : framing.gableWalls()) {
      table.row(
          w.side(),
          String.valueOf(w.heights().size()),
          length(w.heights().stream().mapToDouble(Double::doubleValue).max().orElse(0)),
          length(w.low().difference()),
          length(w.high().difference()));
    }
    out.section("Gable studs, to the top of the framing; take off the rafter's depth", table);
  }

  private void ridgeBlocks() {
    TextTable table = new TextTable("run", "row", "number", "clear", "cut to");
    for (RidgeBlocks b : framing.ridgeBlocks()) {
      table.row(
          names.run(b.run()),
          key(b.place()),
          String.valueOf(b.count()),
          length(b.clear()),
          LengthText.small(b.length(), unit, Rounding.DOWN));
    }
    out.section("Ridge blocks", table);
  }

  private void ladders() {
    TextTable table =
        new TextTable("wall", "rake", "fly rafter", "cut", "lookouts", "length", "blocks", "drop");
    for (Ladder l : framing.ladders()) {
      table.rowOf(
          l.side(),
          names.wall(l.side()),
          key(l.rake()),
          length(l.rakeLength()),
          saw(l.plumbCut()),
          String.valueOf(l.lookouts().size()),
          length(l.lookoutLength()),
          lengths(l.blocks()),
          LengthText.small(l.drop(), unit, Rounding.NEAREST));
    }
    out.section("Gable ladders, cut as the saw is set from square", table);
    framing.ladders().stream().flatMap(l -> l.review().stream()).distinct().forEach(out::line);
  }

  private void rafters() {
    TextTable table =
        new TextTable("mark", "kind", "number", "length", "tail", "plumb", "head cut", "foot cut");
    for (Rafter r : framing.rafters()) {
      table.rowOf(
          r.mark(),
          r.mark(),
          r.kind().key(),
          String.valueOf(r.quantity()),
          length(r.length()),
          length(r.tail()),
          saw(r.plumbCut()),
          saw(r.sideCutHead()),
          saw(r.sideCutFoot()));
    }
    out.section("Rafters, cuts as the saw is set from square", table);
  }

  private void boards() {
    TextTable table = new TextTable("along", "long points", "ends");
    for (EdgeBoard b : framing.fascia()) {
      table.rowOf(
          b.line(), names.line(b.line()), length(b.length()), end(b.from()) + ", " + end(b.to()));
    }
    out.section("Fascia and rake boards, cuts as the saw is set from square", table);
  }

  private static String end(EdgeBoard.End end) {
    String joint = key(end.joint());
    return switch (end.joint()) {
      case PLUMB -> joint + " " + saw(end.degrees());
      case OUTSIDE_MITRE, INSIDE_MITRE -> joint + " " + FigureText.angle(end.degrees());
      case BUTT, SQUARE -> joint;
    };
  }

  /** What the saw is set to, from square, for a cut measured from the edge of the stock. */
  private static String saw(double fromEdge) {
    return FigureText.angle(90 - fromEdge);
  }

  private String length(double length) {
    return LengthText.of(length, unit);
  }

  /** Equal neighbours are told once with their number. */
  private String lengths(List<Double> lengths) {
    List<String> words = lengths.stream().map(this::length).toList();
    return IntStream.range(0, words.size())
        .filter(i -> i == 0 || !words.get(i).equals(words.get(i - 1)))
        .mapToObj(i -> times(words, i))
        .collect(Collectors.joining(", "));
  }

  private static String times(List<String> words, int from) {
    int to = from;
    while (to < words.size() && words.get(to).equals(words.get(from))) {
      to++;
    }
    return to - from == 1 ? words.get(from) : (to - from) + " x " + words.get(from);
  }

  private static String key(Enum<?> choice) {
    return TextSections.key(choice);
  }
}
