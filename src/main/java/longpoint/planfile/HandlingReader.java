package longpoint.planfile;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import longpoint.plan.Extras;
import longpoint.plan.Handling;
import longpoint.plan.Handling.Loads;
import longpoint.plan.Handling.Restraint;
import longpoint.plan.Handling.Weights;

/** Reads what the user knows of weights, loads and restraint. */
final class HandlingReader {
  /** More marks than a job has. */
  private static final int MOST_MARKS = 1000;

  private final Notes notes;

  HandlingReader(Notes notes) {
    this.notes = notes;
  }

  /** Takes {@code weights}, {@code loads} and {@code restraint} from the fields of a plan. */
  Handling read(Fields plan) throws PlanFileException {
    Optional<JsonValue> weights = plan.take("weights");
    Optional<JsonValue> loads = plan.take("loads");
    Optional<JsonValue> restraint = plan.take("restraint");
    return new Handling(
        weights.isEmpty() ? Weights.USUAL : weights(new Fields(weights.get())),
        loads.isEmpty() ? Loads.NONE : loads(new Fields(loads.get())),
        restraint.isEmpty() ? Restraint.USUAL : restraint(new Fields(restraint.get())));
  }

  private Weights weights(Fields f) throws PlanFileException {
    Map<String, Double> trusses = new TreeMap<>();
    Optional<JsonValue> given = f.take("trusses");
    if (given.isPresent()) {
      if (!(given.get().value() instanceof Map<?, ?> marks)) {
        throw Fields.expected(given.get(), Fields.said("kind.object"));
      }
      if (marks.size() > MOST_MARKS) {
        throw PlanFileException.at(
            given.get(), Fields.said("many", MOST_MARKS, Fields.said("things.places")));
      }
      for (Map.Entry<?, ?> mark : marks.entrySet()) {
        trusses.put((String) mark.getKey(), Fields.number((JsonValue) mark.getValue()));
      }
    }
    return new Weights(f.optionalNumber("lumber"), f.optionalNumber("panel"), trusses, extras(f));
  }

  private Loads loads(Fields f) throws PlanFileException {
    return new Loads(
        f.optionalNumber("dead"),
        f.choice("deadOn", Loads.DeadOn.LEVEL, Loads.DeadOn.values(), Loads.DeadOn::key),
        f.optionalNumber("live"),
        f.optionalNumber("snow"),
        f.optionalNumber("ceiling"),
        extras(f));
  }

  private Restraint restraint(Fields f) throws PlanFileException {
    return new Restraint(
        f.optionalNumber("rows"),
        f.optionalNumber("bottomRows"),
        f.optionalNumber("board"),
        extras(f));
  }

  private Extras extras(Fields f) {
    return f.rest(notes, "plan");
  }
}
