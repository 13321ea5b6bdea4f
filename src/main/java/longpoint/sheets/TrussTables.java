package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.framing.FramingSet;
import longpoint.framing.stick.Rafter;
import longpoint.framing.truss.Girder;
import longpoint.framing.truss.TapeMarks;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussMark;

/** Trusses, tape marks and girders as tables. */
final class TrussTables {
  private final FramingSet framing;
  private final Cells cells;
  private final RoofNames names;
  private final Words words;

  TrussTables(FramingSet framing, Cells cells, RoofNames names) {
    this.framing = framing;
    this.cells = cells;
    this.names = names;
    this.words = cells.words();
  }

  SheetTable schedule() {
    List<List<String>> rows = new ArrayList<>();
    for (TrussMark m : framing.marks()) {
      rows.add(
          List.of(
              m.mark(),
              words.choice("truss", m.kind()),
              Cells.count(m.quantity()),
              Cells.count(m.plies()),
              cells.length(m.span()),
              cells.length(m.height()),
              cells.length(m.heelLow()),
              cells.length(m.heelHigh()),
              cells.length(m.tailLow()),
              cells.length(m.tailHigh())));
    }
    return cells.table(
        words.text("truss.table"),
        cells.columns(
            "mark",
            "kind",
            "number",
            "plies",
            "span",
            "height",
            "heel",
            "otherHeel",
            "tail",
            "otherTail"),
        rows);
  }

  /** What stands on one layout, for a narrow column. */
  SheetTable standing(FrameMarks layout) {
    List<List<String>> rows = new ArrayList<>();
    for (TrussMark m : framing.marks()) {
      long standing = layout.trusses().stream().filter(t -> t.mark().equals(m.mark())).count();
      if (standing > 0) {
        rows.add(List.of(m.mark(), kind(m), Cells.count(standing), cells.length(m.span())));
      }
    }
    for (Rafter r : layout.rafters()) {
      rows.add(
          List.of(
              r.mark(),
              words.choice("rafter", r.kind()),
              Cells.count(r.places().size()),
              cells.length(r.length())));
    }
    return cells.table(
        words.text("layout.standing"),
        List.of(
            cells.mark("mark"),
            cells.words("kind"),
            cells.figure("many"),
            cells.figure("spanLength")),
        rows);
  }

  /** What it is, and of how many plies if it is more than one. */
  private String kind(TrussMark m) {
    String kind = words.choice("truss", m.kind());
    return m.plies() == 1 ? kind : kind + ", " + words.text("truss.plies", m.plies());
  }

  SheetTable tapes() {
    List<List<String>> rows = new ArrayList<>();
    for (TapeMarks t : framing.tapes()) {
      cells.running(rows, names.run(t.run()), cells.length(t.length()), t.marks());
    }
    return cells.running(words.text("truss.tapes"), "run", "plate", rows);
  }

  SheetTable hangers() {
    List<List<String>> rows = new ArrayList<>();
    for (Girder g : framing.girders()) {
      for (Girder.Face face : Girder.Face.values()) {
        List<Girder.Hanger> hangers = g.hangers().stream().filter(h -> h.face() == face).toList();
        if (!hangers.isEmpty()) {
          List<Double> along = hangers.stream().map(Girder.Hanger::along).toList();
          String many = words.text("truss.hangersOn", hangers.size(), words.choice("face", face));
          cells.running(rows, g.mark(), names.run(run(g)) + ", " + many, along);
        }
      }
    }
    return cells.running(words.text("truss.hangers"), "girder", "of", rows);
  }

  private String run(Girder girder) {
    return framing.trusses().stream()
        .filter(t -> t.id().equals(girder.truss()))
        .map(Truss::run)
        .findFirst()
        .orElse("");
  }
}
