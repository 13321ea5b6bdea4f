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
            "mark", "kind", "number", "span", "height", "heel", "otherHeel", "tail", "otherTail"),
        rows);
  }

  /** What stands on one layout, for a narrow column. */
  SheetTable standing(FrameMarks layout) {
    List<List<String>> rows = new ArrayList<>();
    for (TrussMark m : framing.marks()) {
      long standing = layout.trusses().stream().filter(t -> t.mark().equals(m.mark())).count();
      if (standing > 0) {
        rows.add(
            List.of(
                m.mark(),
                words.choice("truss", m.kind()),
                Cells.count(standing),
                cells.length(m.span())));
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
      List<Double> along = g.hangers().stream().map(Girder.Hanger::along).toList();
      cells.running(rows, g.mark(), names.run(run(g)), along);
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
