package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longpoint.framing.FramingSet;
import longpoint.framing.edge.EdgeBoard;
import longpoint.framing.gable.Ladder;
import longpoint.framing.stick.Rafter;
import longpoint.framing.truss.Girder;
import longpoint.framing.truss.RidgeBlocks;
import longpoint.framing.truss.TapeMarks;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussKind;
import longpoint.framing.truss.TrussMark;
import longpoint.framing.valley.ValleyLine;
import longpoint.framing.valley.ValleySet;
import longpoint.framing.valley.ValleyTruss;
import longpoint.sheets.SheetTable.Column;
import longpoint.sheets.SheetTable.Kind;
import longpoint.units.FigureText;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
import longpoint.units.Rounding;

/** The frame's figures as tables. Cuts are as the saw is set, from square. */
final class FrameTables {
  /** Figures to a row of running marks. */
  private static final int RUNNING = 8;

  private final FramingSet framing;
  private final LengthUnit unit;

  FrameTables(FramingSet framing, LengthUnit unit) {
    this.framing = framing;
    this.unit = unit;
  }

  SheetTable schedule() {
    List<List<String>> rows = new ArrayList<>();
    for (TrussMark m : framing.marks()) {
      rows.add(
          List.of(
              m.mark(),
              m.kind().key(),
              count(m.quantity()),
              length(m.span()),
              length(m.height()),
              length(m.heelLow()),
              length(m.heelHigh()),
              length(m.tailLow()),
              length(m.tailHigh())));
    }
    return new SheetTable(
        "Trusses: an outline to order by; the supplier's drawings rule",
        columns(
            "Mark", "Kind", "Number", "Span", "Height", "Heel", "Other heel", "Tail", "Other tail"),
        rows);
  }

  /** What stands on one layout, for a narrow column. */
  SheetTable standing(FrameMarks layout) {
    List<List<String>> rows = new ArrayList<>();
    for (TrussMark m : framing.marks()) {
      long standing = layout.trusses().stream().filter(t -> t.mark().equals(m.mark())).count();
      if (standing > 0) {
        rows.add(List.of(m.mark(), m.kind().key(), count(standing), length(m.span())));
      }
    }
    for (Rafter r : layout.rafters()) {
      rows.add(List.of(r.mark(), r.kind().key(), count(r.places().size()), length(r.length())));
    }
    return new SheetTable("Standing here", columns("Mark", "Kind", "No.", "Span, length"), rows);
  }

  SheetTable tapes() {
    List<List<String>> rows = new ArrayList<>();
    for (TapeMarks t : framing.tapes()) {
      running(rows, t.run(), length(t.length()), t.marks());
    }
    return running(
        "Tape marks on both plates; the truss stands on the far side of its mark",
        "Run",
        "Plate",
        rows);
  }

  SheetTable hangers() {
    List<List<String>> rows = new ArrayList<>();
    for (Girder g : framing.girders()) {
      List<Double> along = g.hangers().stream().map(Girder.Hanger::along).toList();
      running(rows, g.truss(), g.mark(), along);
    }
    return running(
        "Girders: middle of each hanger from the outside of the first bearing",
        "Girder",
        "Mark",
        rows);
  }

  SheetTable valley(ValleySet set) {
    List<List<String>> rows = new ArrayList<>();
    double before = set.last();
    for (ValleyTruss t : set.trusses()) {
      rows.add(
          List.of(
              count(t.number()),
              mark(set, t),
              length(t.x()),
              length(t.v()),
              length(t.stop()),
              length(t.length()),
              length(t.left()),
              length(t.right()),
              length(t.height()),
              length(t.x() - before)));
      before = t.x();
    }
    return new SheetTable(
        "Valley trusses, from the eave up; left and right as seen looking up the slope",
        List.of(
            new Column("No.", Kind.MARK),
            new Column("Mark", Kind.MARK),
            figure("In from wall"),
            figure("Up the deck"),
            figure("Stop nails"),
            figure("Chord"),
            figure("Left"),
            figure("Right"),
            figure("Height"),
            figure("Gap, level")),
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
        List.of(new Column("", Kind.WORDS), figure("")),
        List.of(
            List.of("Wing", set.upper()),
            List.of("Stands on", set.plane()),
            List.of("First gap, level", length(set.firstGap())),
            List.of("Slid down for the deck, level", length(set.shift())),
            List.of("Set lines meet, in from wall", length(set.apex().x())),
            List.of("Set lines meet, up the deck", length(set.apex().v()))));
  }

  /** Both ends of every line to snap on the deck. */
  SheetTable snapped(ValleySet set) {
    List<List<String>> rows = new ArrayList<>();
    set.setLines().forEach(l -> rows.add(snapped("Set line", set, l)));
    set.sheetLines().forEach(l -> rows.add(snapped("Sheet line", set, l)));
    return new SheetTable(
        "Lines to snap: foot and top, each up the deck and out from the centre line",
        columns("Line", "Side", "Foot up", "Foot out", "Top up", "Top out"),
        rows);
  }

  private List<String> snapped(String name, ValleySet set, ValleyLine line) {
    return List.of(
        name,
        line.side().name().toLowerCase(Locale.ROOT),
        length(set.site().main().v(line.x())),
        length(line.half()),
        length(set.site().main().v(line.apexX())),
        length(line.apexHalf()));
  }

  SheetTable blocks() {
    List<List<String>> rows = new ArrayList<>();
    for (RidgeBlocks b : framing.ridgeBlocks()) {
      rows.add(
          List.of(
              b.run(),
              b.place().name().toLowerCase(Locale.ROOT),
              count(b.count()),
              length(b.clear()),
              LengthText.small(b.length(), unit, Rounding.DOWN)));
    }
    return new SheetTable(
        "Ridge blocks, cut down to the mark so that they never push the trusses",
        columns("Run", "Row", "Number", "Clear", "Cut to"),
        rows);
  }

  SheetTable ladders() {
    List<List<String>> rows = new ArrayList<>();
    for (Ladder l : framing.ladders()) {
      rows.add(
          List.of(
              l.side(),
              l.rake().name().toLowerCase(Locale.ROOT),
              length(l.rakeLength()),
              saw(l.plumbCut()),
              count(l.lookouts().size()),
              length(l.lookoutLength()),
              length(l.backSpan()),
              length(l.overhang()),
              LengthText.small(l.drop(), unit, Rounding.NEAREST)));
    }
    return new SheetTable(
        "Gable ladders; left and right as seen from outside, facing the wall",
        columns(
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

  SheetTable rafters() {
    List<List<String>> rows = new ArrayList<>();
    for (Rafter r : framing.rafters()) {
      rows.add(
          List.of(
              r.mark(),
              r.kind().key(),
              count(r.quantity()),
              length(r.planRun()),
              length(r.rise()),
              length(r.lineLength()),
              length(r.shortenHead()),
              length(r.tail()),
              length(r.length()),
              saw(r.plumbCut()),
              saw(r.sideCutHead()),
              saw(r.sideCutFoot()),
              LengthText.small(r.drop(), unit, Rounding.NEAREST)));
    }
    return new SheetTable(
        "Rafters; cuts as the saw is set from square",
        columns(
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
              b.line(),
              b.kind().key(),
              length(b.length()),
              length(b.rise()),
              end(b.from()),
              end(b.to())));
    }
    return new SheetTable(
        "Fascia and rake boards, long point to long point; cuts as the saw is set from square",
        List.of(
            new Column("Along", Kind.MARK),
            new Column("Kind", Kind.MARK),
            figure("Length"),
            figure("Rise"),
            new Column("  One end", Kind.WORDS),
            new Column("  Other end", Kind.WORDS)),
        rows);
  }

  private static String end(EdgeBoard.End end) {
    String joint = "  " + end.joint().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    return switch (end.joint()) {
      case PLUMB -> joint + " " + saw(end.degrees());
      case OUTSIDE_MITRE, INSIDE_MITRE -> joint + " " + FigureText.angle(end.degrees());
      case BUTT, SQUARE -> joint;
    };
  }

  /** What the saw is set to, from square, for a cut measured from the edge of the stock. */
  static String saw(double fromEdge) {
    return FigureText.angle(90 - fromEdge);
  }

  /** Breaks a row of running figures over as many lines as it needs. */
  private void running(List<List<String>> rows, String name, String second, List<Double> figures) {
    for (int i = 0; i < figures.size(); i += RUNNING) {
      List<String> row = new ArrayList<>(List.of(i == 0 ? name : "", i == 0 ? second : ""));
      for (int j = i; j < i + RUNNING; j++) {
        row.add(j < figures.size() ? length(figures.get(j)) : "");
      }
      rows.add(row);
    }
  }

  private static SheetTable running(
      String title, String first, String second, List<List<String>> rows) {
    List<Column> columns = new ArrayList<>();
    columns.add(new Column(first, Kind.MARK));
    columns.add(new Column(second, Kind.MARK));
    for (int i = 0; i < RUNNING; i++) {
      columns.add(figure(""));
    }
    return new SheetTable(title, columns, rows);
  }

  /** Two columns that name the thing, then figures. */
  private static List<Column> columns(String mark, String kind, String... figures) {
    List<Column> columns = new ArrayList<>();
    columns.add(new Column(mark, Kind.MARK));
    columns.add(new Column(kind, Kind.MARK));
    for (String head : figures) {
      columns.add(figure(head));
    }
    return columns;
  }

  private static Column figure(String head) {
    return new Column(head, Kind.FIGURE);
  }

  /** A length that could not be worked out is a question mark: no figure is better than a wrong. */
  private String length(double length) {
    return !Double.isFinite(length) ? "?" : LengthText.of(length, unit);
  }

  private static String count(long count) {
    return String.format(Locale.ROOT, "%d", count);
  }
}
