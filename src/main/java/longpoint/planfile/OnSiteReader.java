package longpoint.planfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.plan.AsBuilt;
import longpoint.plan.OnSite;
import longpoint.plan.PlanDimension.Corner;
import longpoint.plan.Supplied;
import longpoint.units.Slope;

/** Reads what was measured and delivered: {@code asBuilt} and {@code supplied}. */
final class OnSiteReader {
  /** Far more than anybody tapes; the sums grow with the cube of it. */
  private static final int MOST_READINGS = 400;

  static final int MOST_TRUSSES = 2000;
  private static final int MOST_OF_ONE = 10_000;

  private final Notes notes;

  OnSiteReader(Notes notes) {
    this.notes = notes;
  }

  OnSite read(Fields plan) throws PlanFileException {
    Optional<JsonValue> walls = plan.take("asBuilt");
    Optional<JsonValue> trusses = plan.take("supplied");
    return new OnSite(
        walls.isEmpty() ? AsBuilt.NONE : walls(walls.get()),
        trusses.isEmpty() ? Supplied.NONE : supplied(trusses.get()));
  }

  private AsBuilt walls(JsonValue value) throws PlanFileException {
    Fields f = new Fields(value);
    Optional<JsonValue> accuracy = f.take("accuracy");
    List<AsBuilt.Tape> tapes = new ArrayList<>();
    for (JsonValue tape : some(f, "tapes", MOST_READINGS, "readings")) {
      tapes.add(tape(tape));
    }
    List<AsBuilt.PlateReading> plates = new ArrayList<>();
    for (JsonValue plate : some(f, "plates", MOST_READINGS, "readings")) {
      plates.add(plate(plate));
    }
    return new AsBuilt(
        accuracy.isEmpty()
            ? Optional.empty()
            : Optional.of(MarkupReader.above(accuracy.get(), Double.MAX_VALUE)),
        tapes,
        plates,
        f.rest(notes, "plan"));
  }

  private static List<JsonValue> some(Fields f, String key, int most, String what)
      throws PlanFileException {
    Optional<JsonValue> list = f.take(key);
    return list.isEmpty() ? List.of() : PlanReader.atMost(most, list.get(), what);
  }

  private AsBuilt.Tape tape(JsonValue value) throws PlanFileException {
    Fields f = new Fields(value);
    return new AsBuilt.Tape(
        corner(f.need("from")),
        corner(f.need("to")),
        MarkupReader.above(f.need("reads"), Double.MAX_VALUE),
        use(f),
        f.rest(notes, "plan"));
  }

  private AsBuilt.PlateReading plate(JsonValue value) throws PlanFileException {
    Fields f = new Fields(value);
    return new AsBuilt.PlateReading(
        corner(f.need("at")), f.number("reads"), use(f), f.rest(notes, "plan"));
  }

  private static AsBuilt.Use use(Fields f) throws PlanFileException {
    return f.flag("aside", false) ? AsBuilt.Use.ASIDE : AsBuilt.Use.COUNTS;
  }

  private Corner corner(JsonValue value) throws PlanFileException {
    Fields f = new Fields(value);
    Corner corner =
        new Corner(f.text("part"), MarkupReader.whole(f.need("corner"), 0, Integer.MAX_VALUE));
    f.rest(notes, "plan");
    return corner;
  }

  private Supplied supplied(JsonValue value) throws PlanFileException {
    Fields f = new Fields(value);
    String from = f.text("from", "");
    List<Supplied.Row> rows = new ArrayList<>();
    for (JsonValue row : some(f, "trusses", MOST_TRUSSES, "trusses")) {
      rows.add(row(row));
    }
    return new Supplied(from, rows, f.rest(notes, "plan"));
  }

  private Supplied.Row row(JsonValue value) throws PlanFileException {
    Fields f = new Fields(value);
    Optional<JsonValue> line = f.take("line");
    Optional<JsonValue> quantity = f.take("quantity");
    return new Supplied.Row(
        line.isEmpty() ? 0 : MarkupReader.whole(line.get(), 0, Integer.MAX_VALUE),
        f.text("mark", ""),
        quantity.isEmpty() ? 1 : MarkupReader.whole(quantity.get(), 1, MOST_OF_ONE),
        figures(f),
        f.rest(notes, "plan"));
  }

  private static Supplied.Figures figures(Fields f) throws PlanFileException {
    Optional<JsonValue> plies = f.take("plies");
    return new Supplied.Figures(
        f.optionalNumber("span"),
        f.optionalNumber("height"),
        slope(f, "slope"),
        slope(f, "otherSlope"),
        f.optionalNumber("overhang"),
        f.optionalNumber("otherOverhang"),
        f.optionalNumber("heel"),
        f.optionalNumber("otherHeel"),
        plies.isEmpty()
            ? Optional.empty()
            : Optional.of(MarkupReader.whole(plies.get(), 1, MOST_OF_ONE)));
  }

  private static Optional<Slope> slope(Fields f, String key) throws PlanFileException {
    Optional<JsonValue> slope = f.take(key);
    return slope.isEmpty() ? Optional.empty() : Optional.of(PlanReader.slope(slope.get()));
  }
}
