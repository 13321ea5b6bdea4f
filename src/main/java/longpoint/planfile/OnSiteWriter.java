package longpoint.planfile;

import static longpoint.planfile.PlanWriter.block;
import static longpoint.planfile.PlanWriter.field;
import static longpoint.planfile.PlanWriter.line;
import static longpoint.planfile.PlanWriter.list;
import static longpoint.planfile.PlanWriter.number;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.plan.AsBuilt;
import longpoint.plan.OnSite;
import longpoint.plan.Supplied;
import longpoint.units.Slope;

/** Writes what was measured and delivered; a plan without it has no such keys. */
final class OnSiteWriter {
  private OnSiteWriter() {}

  static List<String> fields(OnSite onSite) {
    List<String> known = new ArrayList<>();
    if (!onSite.walls().equals(AsBuilt.NONE)) {
      known.add(field("asBuilt", walls(onSite.walls())));
    }
    if (!onSite.trusses().equals(Supplied.NONE)) {
      known.add(field("supplied", supplied(onSite.trusses())));
    }
    return known;
  }

  private static String walls(AsBuilt walls) {
    List<String> known = new ArrayList<>();
    walls.accuracy().ifPresent(a -> known.add(field("accuracy", number(a))));
    known.add(
        field("tapes", list(walls.tapes().stream().map(OnSiteWriter::tape).toList(), "    ")));
    known.add(
        field("plates", list(walls.plates().stream().map(OnSiteWriter::plate).toList(), "    ")));
    return block(PlanWriter.fields(walls.extras(), known.toArray(String[]::new)), "  ");
  }

  private static String tape(AsBuilt.Tape tape) {
    List<String> known = new ArrayList<>();
    known.add(field("from", MarkupWriter.end(tape.from())));
    known.add(field("to", MarkupWriter.end(tape.to())));
    known.add(field("reads", number(tape.reads())));
    aside(known, tape.use());
    return line(PlanWriter.fields(tape.extras(), known.toArray(String[]::new)));
  }

  private static String plate(AsBuilt.PlateReading plate) {
    List<String> known = new ArrayList<>();
    known.add(field("at", MarkupWriter.end(plate.at())));
    known.add(field("reads", number(plate.reads())));
    aside(known, plate.use());
    return line(PlanWriter.fields(plate.extras(), known.toArray(String[]::new)));
  }

  private static void aside(List<String> known, AsBuilt.Use use) {
    if (use == AsBuilt.Use.ASIDE) {
      known.add(field("aside", "true"));
    }
  }

  private static String supplied(Supplied supplied) {
    List<String> rows = supplied.trusses().stream().map(OnSiteWriter::row).toList();
    return block(
        PlanWriter.fields(
            supplied.extras(),
            field("from", JsonText.quote(supplied.from())),
            field("trusses", list(rows, "    "))),
        "  ");
  }

  private static String row(Supplied.Row row) {
    Supplied.Figures f = row.figures();
    List<String> known = new ArrayList<>();
    if (row.line() > 0) {
      known.add(field("line", Integer.toString(row.line())));
    }
    known.add(field("mark", JsonText.quote(row.mark())));
    known.add(field("quantity", Integer.toString(row.quantity())));
    length(known, "span", f.span());
    length(known, "height", f.height());
    slope(known, "slope", f.slope());
    slope(known, "otherSlope", f.otherSlope());
    length(known, "overhang", f.overhang());
    length(known, "otherOverhang", f.otherOverhang());
    length(known, "heel", f.heel());
    length(known, "otherHeel", f.otherHeel());
    f.plies().ifPresent(p -> known.add(field("plies", Integer.toString(p))));
    return line(PlanWriter.fields(row.extras(), known.toArray(String[]::new)));
  }

  private static void length(List<String> known, String key, Optional<Double> length) {
    length.ifPresent(l -> known.add(field(key, number(l))));
  }

  private static void slope(List<String> known, String key, Optional<Slope> slope) {
    slope.ifPresent(s -> known.add(field(key, PlanWriter.slope(s))));
  }
}
