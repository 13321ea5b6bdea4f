package longpoint.planfile;

import static longpoint.planfile.PlanWriter.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.plan.Extras;
import longpoint.plan.Handling;
import longpoint.plan.Handling.Loads;
import longpoint.plan.Handling.Restraint;
import longpoint.plan.Handling.Weights;
import longpoint.plan.Lift;

/** Writes what the user knows of weights, loads, restraint and lifts; what is not typed is not. */
final class HandlingWriter {
  private final List<String> known = new ArrayList<>();

  private HandlingWriter() {}

  /** The plan's fields, none for what is as usual. */
  static List<String> fields(Handling handling) {
    List<String> fields = new ArrayList<>();
    add(fields, "weights", weights(handling.weights()));
    add(fields, "loads", loads(handling.loads()));
    add(fields, "restraint", restraint(handling.restraint()));
    return fields;
  }

  private static void add(List<String> fields, String key, List<String> known) {
    if (!known.isEmpty()) {
      fields.add(field(key, PlanWriter.line(known)));
    }
  }

  private static List<String> weights(Weights w) {
    HandlingWriter writer = new HandlingWriter();
    writer.number("lumber", w.lumber());
    writer.number("panel", w.panel());
    if (!w.trusses().isEmpty()) {
      List<String> marks = new ArrayList<>();
      w.trusses().forEach((mark, weight) -> marks.add(field(mark, PlanWriter.number(weight))));
      writer.known.add(field("trusses", PlanWriter.line(marks)));
    }
    return writer.with(w.extras());
  }

  private static List<String> loads(Loads l) {
    HandlingWriter writer = new HandlingWriter();
    writer.number("dead", l.dead());
    if (l.deadOn() != Loads.DeadOn.LEVEL) {
      writer.known.add(field("deadOn", JsonText.quote(l.deadOn().key())));
    }
    writer.number("live", l.live());
    writer.number("snow", l.snow());
    writer.number("ceiling", l.ceiling());
    return writer.with(l.extras());
  }

  private static List<String> restraint(Restraint r) {
    HandlingWriter writer = new HandlingWriter();
    writer.number("rows", r.rows());
    writer.number("bottomRows", r.bottomRows());
    writer.number("board", r.board());
    return writer.with(r.extras());
  }

  static String lift(Lift lift) {
    HandlingWriter writer = new HandlingWriter();
    if (!lift.name().isEmpty()) {
      writer.known.add(field("name", JsonText.quote(lift.name())));
    }
    writer.places("trusses", lift.trusses().stream().map(PlanWriter::point).toList());
    lift.stretch()
        .ifPresent(
            s -> {
              writer.known.add(field("from", PlanWriter.point(s.from())));
              writer.known.add(field("to", PlanWriter.point(s.to())));
            });
    writer.places("with", lift.also().stream().map(a -> JsonText.quote(a.key())).toList());
    lift.rigging().lines().ifPresent(n -> writer.known.add(field("lines", Integer.toString(n))));
    writer.places("hangAt", lift.rigging().hangAt().stream().map(PlanWriter::point).toList());
    writer.number("hook", lift.rigging().hook());
    return PlanWriter.line(writer.with(lift.extras()));
  }

  private void places(String key, List<String> items) {
    if (!items.isEmpty()) {
      known.add(field(key, PlanWriter.row(items)));
    }
  }

  private void number(String key, Optional<Double> value) {
    value.ifPresent(v -> known.add(field(key, PlanWriter.number(v))));
  }

  private List<String> with(Extras extras) {
    return PlanWriter.fields(extras, known.toArray(String[]::new));
  }
}
