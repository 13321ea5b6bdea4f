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

  TrussTables(FramingSet framing, Cells cells, RoofNames names) {
    this.framing = framing;
    this.cells = cells;
    this.names = names;
  }

  SheetTable schedule() {
    List<List<String>> rows = new ArrayList<>();
    for (TrussMark m : framing.marks()) {
      rows.add(
          List.of(
              m.mark(),
              m.kind().key(),
              Cells.count(m.quantity()),
              cells.length(m.span()),
              cells.length(m.height()),
              cells.length(m.heelLow()),
              cells.length(m.heelHigh()),
              cells.length(m.tailLow()),
              cells.length(m.tailHigh())));
    }
    return new SheetTable(
        "Trusses: an outline to order by; the supplier's drawings rule",
        Cells.columns(
            "Mark", "Kind", "Number", "Span", "Height", "Heel", "Other heel", "Tail", "Other tail"),
        rows);
  }

  /** What stands on one layout, for a narrow column. */
  SheetTable standing(FrameMarks layout) {
    List<List<String>> rows = new ArrayList<>();
    for (TrussMark m : framing.marks()) {
      long standing = layout.trusses().stream().filter(t -> t.mark().equals(m.mark())).count();
      if (standing > 0) {
        rows.add(List.of(m.mark(), m.kind().key(), Cells.count(standing), cells.length(m.span())));
      }
    }
    for (Rafter r : layout.rafters()) {
      rows.add(
          List.of(
              r.mark(), r.kind().key(), Cells.count(r.places().size()), cells.length(r.length())));
    }
    return new SheetTable(
        "Standing here",
        List.of(
            new SheetTable.Column("Mark", SheetTable.Kind.MARK),
            new SheetTable.Column("Kind", SheetTable.Kind.WORDS),
            Cells.figure("No."),
            Cells.figure("Span, length")),
        rows);
  }

  SheetTable tapes() {
    List<List<String>> rows = new ArrayList<>();
    for (TapeMarks t : framing.tapes()) {
      cells.running(rows, names.run(t.run()), cells.length(t.length()), t.marks());
    }
    return Cells.running(
        "Tape marks on both plates; the truss stands on the far side of its mark",
        "Run",
        "Plate",
        rows);
  }

  SheetTable hangers() {
    List<List<String>> rows = new ArrayList<>();
    for (Girder g : framing.girders()) {
      List<Double> along = g.hangers().stream().map(Girder.Hanger::along).toList();
      cells.running(rows, g.mark(), names.run(run(g)), along);
    }
    return Cells.running(
        "Girders: middle of each hanger from the outside of the first bearing",
        "Girder",
        "Of",
        rows);
  }

  private String run(Girder girder) {
    return framing.trusses().stream()
        .filter(t -> t.id().equals(girder.truss()))
        .map(Truss::run)
        .findFirst()
        .orElse("");
  }
}
