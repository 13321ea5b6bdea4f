package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import longpoint.field.restraint.Restraint;
import longpoint.field.restraint.RestraintRow;
import longpoint.field.restraint.RestraintRun;
import longpoint.sheets.SheetTable.Kind;
import longpoint.units.Rounding;

/** The reminder of temporary restraint as tables. */
public record RestraintRows(RoofNames names) {
  private Words words() {
    return names.words();
  }

  /** What to have ready, the rows of each run, tolerances, and the order of setting. */
  public List<AidTable> all(Restraint restraint) {
    List<AidTable> tables = new ArrayList<>();
    if (!restraint.runs().isEmpty()) {
      tables.add(runs(restraint));
      tables.add(tolerances(restraint));
      tables.add(rows(restraint));
      restraint.runs().forEach(r -> tables.add(steps(r)));
    }
    return tables;
  }

  AidTable runs(Restraint restraint) {
    AidTable.Builder table =
        new AidTable.Builder(words().text("restraint.runs"))
            .column(head("run"), Kind.WORDS)
            .column(head("trusses"), Kind.FIGURE)
            .column(head("span"), Kind.FIGURE)
            .column(head("rowsApart"), Kind.FIGURE)
            .column(head("topRows"), Kind.FIGURE)
            .column(head("bottomRows"), Kind.FIGURE)
            .column(head("groundBraces"), Kind.FIGURE)
            .column(head("diagonalsAt"), Kind.FIGURE)
            .column(head("boards"), Kind.FIGURE)
            .column(head("boardLength"), Kind.FIGURE);
    List<String> notes = new ArrayList<>();
    for (RestraintRun r : restraint.runs()) {
      boolean known = r.from() != RestraintRun.Source.NONE;
      table.row(
          r.run(),
          List.of(
              names.run(r.run()),
              Cells.count(r.trusses()),
              words().length(r.span()),
              known ? words().length(r.apart()) : "?",
              known ? Cells.count(r.groundBraces()) : "?",
              Cells.count(r.rows(RestraintRow.Place.BOTTOM)),
              known ? Cells.count(r.groundBraces()) : "?",
              Cells.count(r.diagonals().size()),
              Cells.count(r.boards().count()),
              words().length(r.boards().length())));
      r.cautions().forEach(c -> notes.add(words().say(c)));
    }
    notes.stream().distinct().forEach(table::note);
    table.note(words().text("restraint.rule"));
    return table.build();
  }

  AidTable tolerances(Restraint restraint) {
    AidTable.Builder table =
        new AidTable.Builder(words().text("restraint.tolerances"))
            .column(head("run"), Kind.WORDS)
            .column(head("outOfPlumb"), Kind.FIGURE)
            .column(head("bow"), Kind.FIGURE)
            .column(head("offMark"), Kind.FIGURE);
    for (RestraintRun r : restraint.runs()) {
      RestraintRun.Tolerances t = r.tolerances();
      table.row(
          r.run(), List.of(names.run(r.run()), small(t.plumb()), small(t.bow()), small(t.place())));
    }
    return table.build();
  }

  AidTable rows(Restraint restraint) {
    AidTable.Builder table =
        new AidTable.Builder(words().text("restraint.rows"))
            .column(head("run"), Kind.WORDS)
            .column(head("no"), Kind.MARK)
            .column(head("place"), Kind.WORDS)
            .column(head("inFromFirst"), Kind.FIGURE)
            .column(head("upChord"), Kind.FIGURE)
            .column(head("crosses"), Kind.FIGURE)
            .column(head("length"), Kind.FIGURE)
            .column(head("boards"), Kind.FIGURE);
    for (RestraintRun r : restraint.runs()) {
      int number = 0;
      for (RestraintRow row : r.rows()) {
        number++;
        table.row(
            r.run(),
            List.of(
                names.run(r.run()),
                "R" + number,
                words().choice("restraint.place", row.place()),
                words().length(row.over()),
                row.place() == RestraintRow.Place.BOTTOM ? "" : words().length(row.up()),
                Cells.count(row.trusses()),
                words().length(row.length()),
                Cells.count(row.boards())));
      }
    }
    return table.build();
  }

  /** A list to tick off. */
  AidTable steps(RestraintRun run) {
    AidTable.Builder table =
        new AidTable.Builder(words().text("restraint.steps", names.run(run.run())))
            .column(head("no"), Kind.MARK)
            .column(head("settingStep"), Kind.WORDS);
    List<String> steps = said(run);
    for (int i = 0; i < steps.size(); i++) {
      table.row(run.run(), List.of(Cells.count(i + 1), steps.get(i)));
    }
    return table.build();
  }

  List<String> said(RestraintRun run) {
    return run.steps().stream().map(words()::say).collect(Collectors.toList());
  }

  private String small(double length) {
    return words().small(length, Rounding.DOWN);
  }

  private String head(String key) {
    return words().text("head." + key);
  }
}
