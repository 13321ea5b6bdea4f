package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import longpoint.field.loads.Force;
import longpoint.field.loads.GirderLoad;
import longpoint.field.loads.Loads;
import longpoint.field.loads.OtherLoad;
import longpoint.field.loads.PointLoad;
import longpoint.field.loads.WallLoad;
import longpoint.plan.Handling;
import longpoint.plan.Plan;
import longpoint.sheets.SheetTable.Kind;

/**
 * Loads to pass on as tables: tributary widths and areas always, forces of the loads that were
 * typed. Loads stand beside each other and are not added up.
 */
public record LoadRows(Plan plan, RoofNames names) {
  private Words words() {
    return names.words();
  }

  private Handling.Loads typed() {
    return plan.handling().loads();
  }

  /** Walls, posts, girders, the rest, and the sum of it all. */
  public List<AidTable> all(Loads loads) {
    List<AidTable> tables = new ArrayList<>();
    if (!loads.bearings().isEmpty()) {
      tables.add(walls(loads));
      tables.add(points(loads));
      tables.add(girders(loads));
      tables.add(hangers(loads));
      tables.add(others(loads));
      tables.add(sums(loads));
    }
    tables.removeIf(t -> t.rows().isEmpty());
    return tables;
  }

  AidTable walls(Loads loads) {
    AidTable.Builder table =
        new AidTable.Builder(words().text("loads.walls"))
            .column(head("no"), Kind.MARK)
            .column(head("wall"), Kind.WORDS)
            .column(head("stretchFrom"), Kind.FIGURE)
            .column(head("stretchTo"), Kind.FIGURE)
            .column(head("marks"), Kind.WORDS)
            .column(head("bearings"), Kind.FIGURE)
            .column(head("tributaryWidth"), Kind.FIGURE)
            .column(head("tributaryArea"), Kind.FIGURE);
    forces(table, "loads.line");
    for (WallLoad w : loads.walls()) {
      List<String> row =
          new ArrayList<>(
              List.of(
                  Cells.count(table.size() + 1),
                  names.wall(w.wall()),
                  words().length(w.from()),
                  words().length(w.to()),
                  String.join(" ", w.marks()),
                  Cells.count(w.bearings()),
                  words().length(w.width()),
                  words().area(w.area())));
      row.addAll(forces(w.line(), words()::lineLoad));
      table.row(w.wall(), row);
    }
    table.note(words().text("loads.bearings"));
    typedNotes().forEach(table::note);
    return table.build();
  }

  AidTable points(Loads loads) {
    AidTable.Builder table =
        new AidTable.Builder(words().text("loads.points"))
            .column(head("girder"), Kind.MARK)
            .column(head("wall"), Kind.WORDS)
            .column(head("onWallAt"), Kind.FIGURE)
            .column(head("hung"), Kind.FIGURE)
            .column(head("tributaryArea"), Kind.FIGURE)
            .column(head("loadedArea"), Kind.FIGURE);
    forces(table, "loads.point");
    for (PointLoad p : loads.points()) {
      List<String> row =
          new ArrayList<>(
              List.of(
                  p.mark(),
                  names.wall(p.wall()),
                  words().length(p.along()),
                  Cells.count(p.carries()),
                  words().area(p.area()),
                  words().area(p.reaction().level())));
      row.addAll(forces(p.force(), words()::force));
      table.row(subject(p.member()), row);
    }
    return table.build();
  }

  AidTable girders(Loads loads) {
    AidTable.Builder table =
        new AidTable.Builder(words().text("loads.girders"))
            .column(head("girder"), Kind.MARK)
            .column(head("length"), Kind.FIGURE)
            .column(head("hung"), Kind.FIGURE)
            .column(head("tributaryArea"), Kind.FIGURE)
            .column(head("loadedArea"), Kind.FIGURE);
    forces(table, "loads.point");
    for (GirderLoad g : loads.girders()) {
      List<String> row =
          new ArrayList<>(
              List.of(
                  g.mark(),
                  words().length(g.length()),
                  Cells.count(g.hangers().size()),
                  words().area(g.area()),
                  words().area(g.reaction().level())));
      row.addAll(forces(g.force(), words()::force));
      table.row(subject(g.member()), row);
    }
    return table.build();
  }

  AidTable hangers(Loads loads) {
    AidTable.Builder table =
        new AidTable.Builder(words().text("loads.hangers"))
            .column(head("girder"), Kind.MARK)
            .column(head("onGirderAt"), Kind.FIGURE)
            .column(head("carries"), Kind.MARK)
            .column(head("loadedArea"), Kind.FIGURE);
    forces(table, "loads.point");
    for (GirderLoad g : loads.girders()) {
      for (GirderLoad.HangerLoad h : g.hangers()) {
        List<String> row =
            new ArrayList<>(
                List.of(
                    g.mark(),
                    words().length(h.along()),
                    h.mark(),
                    words().area(h.reaction().level())));
        row.addAll(forces(h.force(), words()::force));
        table.row(subject(h.carries()), row);
      }
    }
    return table.build();
  }

  AidTable others(Loads loads) {
    AidTable.Builder table =
        new AidTable.Builder(words().text("loads.others"))
            .column(head("comesTo"), Kind.WORDS)
            .column(head("of"), Kind.WORDS)
            .column(head("bearings"), Kind.FIGURE)
            .column(head("tributaryArea"), Kind.FIGURE)
            .column(head("loadedArea"), Kind.FIGURE);
    forces(table, "loads.point");
    for (OtherLoad o : loads.others()) {
      List<String> row =
          new ArrayList<>(
              List.of(
                  words().choice("loads.on", o.on()),
                  names.run(o.subject()),
                  Cells.count(o.bearings()),
                  words().area(o.area()),
                  words().area(o.reaction().level())));
      row.addAll(forces(o.force(), words()::force));
      table.row(o.subject(), row);
    }
    return table.build();
  }

  AidTable sums(Loads loads) {
    AidTable.Builder table =
        new AidTable.Builder(words().text("loads.sums"))
            .column(head("roofLevel"), Kind.FIGURE)
            .column(head("roofTrue"), Kind.FIGURE)
            .column(head("ceilingArea"), Kind.FIGURE);
    forces(table, "loads.point");
    List<String> row =
        new ArrayList<>(
            List.of(
                words().area(loads.roof().level()),
                words().area(loads.roof().sloped()),
                words().area(loads.roof().ceiling())));
    row.addAll(forces(loads.force(), words()::force));
    table.row("", row);
    table.note(words().text("loads.never"));
    return table.build();
  }

  /** A truss by its id, a rafter by the mark all of its kind share. */
  static String subject(String member) {
    int slash = member.lastIndexOf('/');
    return member.indexOf(':') >= 0 || slash < 0 ? member : member.substring(0, slash);
  }

  /** The loads that were typed, or that none was. */
  private List<String> typedNotes() {
    List<String> notes = new ArrayList<>();
    note(
        notes,
        typed().dead(),
        typed().deadOn() == Handling.Loads.DeadOn.SLOPE ? "deadSlope" : "dead");
    note(notes, typed().live(), "live");
    note(notes, typed().snow(), "snow");
    note(notes, typed().ceiling(), "ceiling");
    if (notes.isEmpty()) {
      notes.add(words().text("loads.none"));
    }
    return notes;
  }

  private void note(List<String> notes, Optional<Double> load, String key) {
    load.ifPresent(l -> notes.add(words().text("loads.typed." + key, words().areaLoad(l))));
  }

  private void forces(AidTable.Builder table, String of) {
    column(table, typed().dead(), of + ".dead");
    column(table, typed().live(), of + ".live");
    column(table, typed().snow(), of + ".snow");
    column(table, typed().ceiling(), of + ".ceiling");
  }

  private void column(AidTable.Builder table, Optional<Double> load, String key) {
    if (load.isPresent()) {
      table.column(words().text(key), Kind.FIGURE);
    }
  }

  private static List<String> forces(Force force, DoubleFunction<String> written) {
    List<String> cells = new ArrayList<>();
    for (Optional<Double> f : List.of(force.dead(), force.live(), force.snow(), force.ceiling())) {
      f.ifPresent(v -> cells.add(written.apply(v)));
    }
    return cells;
  }

  private String head(String key) {
    return words().text("head." + key);
  }
}
