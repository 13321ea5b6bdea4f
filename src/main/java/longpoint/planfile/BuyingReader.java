package longpoint.planfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.plan.Buying;
import longpoint.plan.Extras;
import longpoint.plan.SpanRating;
import longpoint.units.LengthUnit;

/** Reads what the user decides about what is bought; what is left out is as usual. */
final class BuyingReader {
  private final Notes notes;
  private final Buying usual;

  BuyingReader(Notes notes, LengthUnit unit) {
    this.notes = notes;
    this.usual = Buying.of(unit);
  }

  /** Takes {@code buying} from the fields of a plan. */
  Buying read(Fields plan) throws PlanFileException {
    Optional<JsonValue> given = plan.take("buying");
    if (given.isEmpty()) {
      return usual;
    }
    Fields f = new Fields(given.get());
    return new Buying(
        f.number("roofingWaste", usual.roofingWaste()),
        f.number("bundlesPerSquare", usual.bundlesPerSquare()),
        f.number("underlayRoll", usual.underlayRoll()),
        new Buying.Nails(
            f.number("nailEdge", usual.nails().edge()),
            f.number("nailField", usual.nails().field())),
        f.choice("rating", usual.rating(), SpanRating.values(), SpanRating::stamp),
        f.choice("vent", usual.vent(), Buying.Vent.values(), Buying.Vent::key),
        boards(f),
        extras(f));
  }

  private Extras extras(Fields f) {
    return f.rest(notes, "plan");
  }

  private Buying.Boards boards(Fields f) throws PlanFileException {
    Buying.Boards b = usual.boards();
    return new Buying.Boards(
        f.number("kerf", b.kerf()),
        lengths(f, b.lengths()),
        f.number("blockingWidth", b.blocking()),
        f.number("rafterWidth", b.rafter()),
        f.number("hipWidth", b.hip()),
        f.number("ridgeWidth", b.ridge()),
        f.number("fasciaWidth", b.fascia()),
        f.number("rakeWidth", b.rake()),
        f.number("rakeThickness", b.rakeThickness()));
  }

  private static List<Double> lengths(Fields f, List<Double> usual) throws PlanFileException {
    Optional<JsonValue> given = f.take("boardLengths");
    if (given.isEmpty()) {
      return usual;
    }
    List<Double> lengths = new ArrayList<>();
    for (JsonValue length : Fields.list(given.get())) {
      lengths.add(Fields.number(length));
    }
    if (lengths.isEmpty() || lengths.size() > MOST_LENGTHS) {
      throw PlanFileException.at(
          given.get(), "Boards are sold in 1 to " + MOST_LENGTHS + " lengths.");
    }
    return lengths;
  }

  /** Nobody stocks more; a longer list is a slip. */
  private static final int MOST_LENGTHS = 50;
}
