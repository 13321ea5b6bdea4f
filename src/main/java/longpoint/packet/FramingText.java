package longpoint.packet;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import longpoint.framing.FramingSet;
import longpoint.framing.Shop;
import longpoint.framing.edge.EdgeBoard;
import longpoint.framing.gable.GableWall;
import longpoint.framing.gable.HighWall;
import longpoint.framing.gable.Ladder;
import longpoint.framing.stick.Bearing;
import longpoint.framing.stick.Rafter;
import longpoint.framing.stick.RafterTape;
import longpoint.framing.stick.RoofOpening;
import longpoint.framing.truss.Girder;
import longpoint.framing.truss.RidgeBlocks;
import longpoint.framing.truss.TapeMarks;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussMark;
import longpoint.framing.valley.SuppliedSet;
import longpoint.framing.valley.ValleySet;
import longpoint.sheets.RoofNames;
import longpoint.sheets.Words;
import longpoint.units.Rounding;

/** The frame as plain text: what to order, where each piece goes, what to cut. */
final class FramingText {
  private final FramingSet framing;
  private final RoofNames names;
  private final Words words;
  private final TextSections out;

  private FramingText(FramingSet framing, RoofNames names, TextSections out) {
    this.framing = framing;
    this.names = names;
    this.words = names.words().from("packet");
    this.out = out;
  }

  static void write(FramingSet framing, RoofNames names, TextSections out) {
    FramingText text = new FramingText(framing, names, out);
    text.trusses();
    text.tapes();
    text.girders();
    framing.valleySets().forEach(text::valleySet);
    text.ridgeBlocks();
    text.ladders();
    text.gableWalls();
    text.highWalls();
    text.rafters();
    text.boards();
  }

  private void trusses() {
    TextTable table =
        new TextTable(
            words, "mark", "kind", "number", "plies", "span", "height", "heel", "heel", "tail",
            "tail");
    for (TrussMark m : framing.marks()) {
      table.rowOf(
          m.mark(),
          m.mark(),
          choice("truss", m.kind()),
          String.valueOf(m.quantity()),
          String.valueOf(m.plies()),
          length(m.span()),
          length(m.height()),
          length(m.heelLow()),
          length(m.heelHigh()),
          length(m.tailLow()),
          length(m.tailHigh()));
    }
    out.section(words.text("trusses"), table);
  }

  private void tapes() {
    TextTable table = new TextTable(words, "run", "plate", "marks");
    for (TapeMarks t : framing.tapes()) {
      table.rowOf(t.run(), names.run(t.run()), length(t.length()), lengths(t.marks()));
    }
    out.section(words.text("tapes"), table);
    TextTable rafters = new TextTable(words, "side", "plate", "hook", "marks");
    for (RafterTape t : framing.rafterTapes()) {
      rafters.rowOf(
          t.side(),
          names.wall(t.side()),
          length(t.length()),
          choice("hand", t.from()),
          lengths(t.marks()));
    }
    out.section(words.text("rafterTapes"), rafters);
    TextTable openings =
        new TextTable(words, "side", "dormer", "fromLeft", "clear", "lowerHeader", "upperHeader");
    for (RoofOpening o : framing.openings()) {
      openings.rowOf(
          o.side(),
          names.wall(o.side()),
          names.run(o.dormer()),
          length(o.from()),
          length(o.clear()),
          o.lower().map(this::length).orElse(""),
          o.upper().map(this::length).orElse(""));
    }
    out.section(words.text("openings"), openings);
  }

  private void girders() {
    TextTable table = new TextTable(words, "girder", "in", "hangers", "at");
    for (Girder g : framing.girders()) {
      List<Double> along = g.hangers().stream().map(Girder.Hanger::along).toList();
      table.rowOf(
          g.truss(), g.mark(), names.run(runOf(g)), String.valueOf(along.size()), lengths(along));
    }
    out.section(words.text("girders"), table);
    framing.girders().stream().map(Girder::reminder).distinct().map(words::say).forEach(out::line);
  }

  /** A truss's id is its run's, a colon, and its own mark. */
  private static String runOf(Girder girder) {
    int colon = girder.truss().lastIndexOf(':');
    return colon < 0 ? girder.truss() : girder.truss().substring(0, colon);
  }

  private void valleySet(ValleySet set) {
    TextTable table =
        new TextTable(words, "no", "inFromWall", "upTheDeck", "stopNails", "chord", "height");
    set.trusses()
        .forEach(
            t ->
                table.rowOf(
                    framing.valleyTruss(set, t).map(Truss::id).orElse(set.upper()),
                    String.valueOf(t.number()),
                    length(t.x()),
                    length(t.v()),
                    length(t.stop()),
                    length(t.length()),
                    length(t.height())));
    out.section(words.text("valleySet", names.run(set.upper()), names.plane(set.plane())), table);
    out.line(words.text("valleySet.first", length(set.firstGap()), length(set.shift())));
    out.line(words.text("valleySet.apex", length(set.apex().x()), length(set.apex().v())));
    if (!set.supplied().isEmpty()) {
      supplied(set);
    }
  }

  /** What a supplier's list makes of each gap, and which of them is off. */
  private void supplied(ValleySet set) {
    TextTable table = new TextTable(words, "no", "chord", "gap", "layout", "look");
    for (SuppliedSet.Placed p : set.supplied()) {
      table.rowOf(
          framing.valleyTruss(set, p.truss()).map(Truss::id).orElse(set.upper()),
          String.valueOf(p.truss().number()),
          length(p.truss().length()),
          length(p.gap()),
          length(p.expected()),
          p.differs() ? words.text("supplied.off") : "");
    }
    out.section(words.text("supplied", names.run(set.upper())), table);
  }

  private void gableWalls() {
    TextTable table = new TextTable(words, "side", "studs", "longest", "difference", "difference");
    for (GableWall w : framing.gableWalls()) {
      table.rowOf(
          w.side(),
          names.wall(w.side()),
          String.valueOf(w.heights().size()),
          length(w.heights().stream().mapToDouble(Double::doubleValue).max().orElse(0)),
          length(w.low().difference()),
          length(w.high().difference()));
    }
    out.section(words.text("studs"), table);
  }

  private void highWalls() {
    TextTable table = new TextTable(words, "side", "wallRise", "studs", "cutTo", "plates");
    for (HighWall w : framing.highWalls()) {
      table.rowOf(
          w.side(),
          names.wall(w.side()),
          length(w.rise()),
          String.valueOf(w.places().size()),
          w.stud() > 0 ? words.small(w.stud(), Rounding.DOWN) : "",
          length(w.length()));
    }
    out.section(words.text("highWalls"), table);
  }

  private void ridgeBlocks() {
    TextTable table = new TextTable(words, "run", "row", "number", "clear", "cutTo");
    for (RidgeBlocks b : framing.ridgeBlocks()) {
      table.rowOf(
          b.run(),
          names.run(b.run()),
          choice("line", b.place()),
          String.valueOf(b.count()),
          length(b.clear()),
          words.small(b.length(), Rounding.DOWN));
    }
    out.section(words.text("blocks"), table);
  }

  private void ladders() {
    TextTable table =
        new TextTable(
            words, "wall", "rake", "flyRafter", "cut", "lookouts", "length", "blocks", "drop");
    for (Ladder l : framing.ladders()) {
      table.rowOf(
          l.side(),
          names.wall(l.side()),
          choice("hand", l.rake()),
          length(l.rakeLength()),
          saw(l.plumbCut()),
          String.valueOf(l.lookouts().size()),
          length(l.lookoutLength()),
          lengths(l.blocks().stream().filter(b -> b >= Shop.of(words.unit()).flat()).toList()),
          words.small(l.drop(), Rounding.NEAREST));
    }
    out.section(words.text("ladders"), table);
    framing.ladders().stream()
        .flatMap(l -> l.review().stream())
        .distinct()
        .map(words::say)
        .forEach(out::line);
  }

  private void rafters() {
    TextTable table =
        new TextTable(
            words,
            "mark",
            "kind",
            "number",
            "otherHand",
            "lineLength",
            "offHead",
            "tail",
            "length",
            "plumb",
            "headCut",
            "footCut",
            "headOn");
    for (Rafter r : framing.rafters()) {
      boolean handed = Math.abs(r.head().left().reach() - r.head().right().reach()) > 1e-6;
      table.rowOf(
          r.mark(),
          r.mark(),
          choice("rafter", r.kind()),
          String.valueOf(r.quantity()),
          handed && r.quantity() > 1 ? String.valueOf(r.mirrored()) : "",
          length(r.lineLength()),
          r.shortenHead() == 0 ? "" : words.small(r.shortenHead(), Rounding.NEAREST),
          r.tail() + r.over() > 0 ? length(r.tail() + r.over()) : "",
          length(r.length()),
          saw(r.plumbCut()),
          saw(r.sideCutHead()),
          saw(r.sideCutFoot()),
          headOn(r));
    }
    out.section(words.text("rafters"), table);
    seats();
  }

  private String headOn(Rafter r) {
    if (r.head().on() == Bearing.NOTHING) {
      return "";
    }
    String on =
        words.from("sheets").text("rafter.on." + r.head().on().name().toLowerCase(Locale.ROOT));
    String order = r.head().order() > 0 ? words.text("rafters.order", r.head().order()) : "";
    return r.head().by().map(mark -> on + " " + mark).orElse(on) + order;
  }

  private void seats() {
    TextTable table =
        new TextTable(words, "mark", "seat", "seatPlumb", "abovePlate", "notch", "drop");
    for (Rafter r : framing.rafters()) {
      r.seat()
          .ifPresent(
              s ->
                  table.rowOf(
                      r.mark(),
                      r.mark(),
                      words.small(s.seat(), Rounding.NEAREST),
                      words.small(s.plumb(), Rounding.NEAREST),
                      words.small(s.height(), Rounding.NEAREST),
                      words.from("sheets").percent(100 * s.share()),
                      r.drop() > 0 ? words.small(r.drop(), Rounding.NEAREST) : ""));
    }
    out.section(words.text("rafters.seats"), table);
  }

  private void boards() {
    TextTable table = new TextTable(words, "along", "longPoints", "ends");
    for (EdgeBoard b : framing.fascia()) {
      table.rowOf(
          b.line(), names.line(b.line()), length(b.length()), end(b.from()) + ", " + end(b.to()));
    }
    out.section(words.text("boards"), table);
  }

  private String end(EdgeBoard.End end) {
    String joint = choice("joint", end.joint());
    return switch (end.joint()) {
      case PLUMB -> joint + " " + saw(end.degrees());
      case OUTSIDE_MITRE, INSIDE_MITRE -> joint + " " + words.angle(end.degrees());
      case BUTT, SQUARE -> joint;
    };
  }

  /** What the saw is set to, from square, for a cut measured from the edge of the stock. */
  private String saw(double fromEdge) {
    return words.angle(90 - fromEdge);
  }

  private String length(double length) {
    return words.length(length);
  }

  /** Equal neighbours are told once with their number. */
  private String lengths(List<Double> lengths) {
    List<String> told = lengths.stream().map(this::length).toList();
    return IntStream.range(0, told.size())
        .filter(i -> i == 0 || !told.get(i).equals(told.get(i - 1)))
        .mapToObj(i -> times(told, i))
        .collect(Collectors.joining(", "));
  }

  private static String times(List<String> words, int from) {
    int to = from;
    while (to < words.size() && words.get(to).equals(words.get(from))) {
      to++;
    }
    return to - from == 1 ? words.get(from) : (to - from) + " x " + words.get(from);
  }

  private String choice(String of, Enum<?> choice) {
    return names.words().choice(of, choice);
  }
}
