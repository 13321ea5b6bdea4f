package longpoint.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longpoint.field.lift.HangPoint;
import longpoint.field.lift.LiftPiece;
import longpoint.field.lift.LiftSection;
import longpoint.field.lift.Lifts;
import longpoint.sheets.SheetTable.Kind;

/**
 * Sections to be hoisted as tables: what goes up and what it weighs, and what each line carries.
 */
public record LiftRows(RoofNames names) {
  private Words words() {
    return names.words();
  }

  /** For every section two tables. */
  public List<AidTable> all(Lifts lifts) {
    List<AidTable> tables = new ArrayList<>();
    for (LiftSection section : lifts.sections()) {
      tables.add(pieces(section));
      tables.add(lines(section));
    }
    return tables;
  }

  /** Every truss, and the rest kind by kind. */
  AidTable pieces(LiftSection section) {
    AidTable.Builder table =
        new AidTable.Builder(words().text("lift.pieces", name(section)))
            .column(head("piece"), Kind.WORDS)
            .column(head("mark"), Kind.MARK)
            .column(head("number"), Kind.FIGURE)
            .column(head("weight"), Kind.FIGURE)
            .column(head("whose"), Kind.WORDS);
    Map<String, List<LiftPiece>> groups = new LinkedHashMap<>();
    for (LiftPiece p : section.pieces()) {
      groups.computeIfAbsent(p.kind() + p.name() + p.from(), k -> new ArrayList<>()).add(p);
    }
    for (List<LiftPiece> group : groups.values()) {
      LiftPiece first = group.get(0);
      double weight = group.stream().mapToDouble(LiftPiece::weight).sum();
      boolean sheets = first.kind() == LiftPiece.Kind.DECK;
      table.row(
          first.subject(),
          List.of(
              words().choice("lift.piece", first.kind()),
              first.name(),
              sheets ? "" : Cells.count(group.size()),
              words().weight(weight),
              words().choice("lift.from", first.from())));
    }
    table.row(
        "", List.of(words().text("lift.together"), "", "", words().weight(section.weight()), ""));
    table.note(balance(section));
    return table.build();
  }

  /** Where the section balances, from its marked edges. */
  String balance(LiftSection section) {
    LiftSection.Balance b = section.balance();
    return words()
        .text(
            "lift.balance",
            words().length(b.over()),
            words().length(b.across()),
            words().length(b.up()));
  }

  AidTable lines(LiftSection section) {
    AidTable.Builder table =
        new AidTable.Builder(words().text("lift.lines", name(section)))
            .column(head("no"), Kind.MARK)
            .column(head("alongTruss"), Kind.FIGURE)
            .column(head("acrossTrusses"), Kind.FIGURE)
            .column(head("slingLength"), Kind.FIGURE)
            .column(head("fromLevel"), Kind.FIGURE)
            .column(head("pull"), Kind.FIGURE);
    boolean hangs = section.lines() != LiftSection.Lines.CANNOT;
    for (HangPoint p : section.points()) {
      table.row(
          section.part(),
          List.of(
              Cells.count(p.number()),
              words().length(p.over()),
              words().length(p.along()),
              words().length(p.line()),
              words().angle(p.angle()),
              hangs ? words().weight(p.tension()) : "?"));
    }
    double up =
        section.hook().z() - section.points().stream().mapToDouble(p -> p.at().z()).max().orElse(0);
    table.note(words().text("lift.hook", words().length(up)));
    section.cautions().forEach(c -> table.note(words().say(c)));
    return table.build();
  }

  /** What a section is called. */
  String name(LiftSection section) {
    return section.name();
  }

  private String head(String key) {
    return words().text("head." + key);
  }
}
