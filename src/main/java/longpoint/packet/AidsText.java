package longpoint.packet;

import java.util.ArrayList;
import java.util.List;
import longpoint.field.SiteAids;
import longpoint.plan.Plan;
import longpoint.sheets.AidTable;
import longpoint.sheets.LiftRows;
import longpoint.sheets.LoadRows;
import longpoint.sheets.RestraintRows;
import longpoint.sheets.RoofNames;

/** Lifting, temporary restraint and loads to pass on, as plain text. */
final class AidsText {
  private AidsText() {}

  static void write(SiteAids aids, Plan plan, RoofNames names, TextSections out) {
    List<AidTable> tables = new ArrayList<>(new RestraintRows(names).all(aids.restraint()));
    tables.addAll(new LiftRows(names).all(aids.lifts()));
    tables.addAll(new LoadRows(plan, names).all(aids.loads()));
    for (AidTable aid : tables) {
      TextTable table = new TextTable(aid.heads());
      for (int i = 0; i < aid.rows().size(); i++) {
        table.rowOf(aid.subjects().get(i), aid.rows().get(i).toArray(String[]::new));
      }
      out.section(aid.title(), table);
      aid.notes().forEach(out::line);
    }
  }
}
