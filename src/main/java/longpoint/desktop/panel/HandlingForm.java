package longpoint.desktop.panel;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import longpoint.desktop.Texts;
import longpoint.editor.PlanCommands;
import longpoint.editor.ToolRunner;
import longpoint.plan.Handling;
import longpoint.plan.Handling.Loads;
import longpoint.plan.Handling.Restraint;
import longpoint.plan.Handling.Weights;
import longpoint.units.LengthEntry;
import longpoint.units.NumberEntry;

/** Rows about the designer's loads, weights for lifting, and the supplier's restraint. */
final class HandlingForm {
  private final Form form;
  private final ToolRunner runner;

  private HandlingForm(Form form, ToolRunner runner) {
    this.form = form;
    this.runner = runner;
  }

  static void add(Form form, ToolRunner runner) {
    HandlingForm rows = new HandlingForm(form, runner);
    form.fold("loads", rows::loads);
    form.fold("weights", rows::weights);
    form.fold("restraint", rows::restraint);
  }

  private void loads() {
    load("deadLoad", Loads::dead, Loads::withDead);
    form.choice(
        "deadOn",
        List.of(Loads.DeadOn.values()),
        d -> Texts.of("deadOn." + d.key()),
        () -> Optional.of(now().loads().deadOn()),
        d -> change(now().withLoads(now().loads().withDeadOn(d))));
    load("liveLoad", Loads::live, Loads::withLive);
    load("snowLoad", Loads::snow, Loads::withSnow);
    load("ceilingLoad", Loads::ceiling, Loads::withCeiling);
  }

  private void load(
      String name,
      Function<Loads, Optional<Double>> of,
      BiFunction<Loads, Optional<Double>, Loads> with) {
    number(
        name,
        NumberEntry::notNegative,
        () -> of.apply(now().loads()),
        v -> now().withLoads(with.apply(now().loads(), v)),
        "field.load.none");
  }

  private void weights() {
    number(
        "lumberWeight",
        NumberEntry::positive,
        () -> now().weights().lumber(),
        v -> now().withWeights(now().weights().withLumber(v)),
        "field.automatic");
    number(
        "panelWeight",
        NumberEntry::positive,
        () -> now().weights().panel(),
        v -> now().withWeights(now().weights().withPanel(v)),
        "field.automatic");
    form.entry(
            "trussWeights",
            NumberEntry::named,
            w -> change(now().withWeights(WeightList.in(now().weights(), w))),
            () -> Optional.of(WeightList.text(now().weights())),
            () -> Texts.of("field.list.none"))
        .orEmpty(
            () ->
                change(
                    now()
                        .withWeights(
                            new Weights(
                                now().weights().lumber(),
                                now().weights().panel(),
                                Map.of(),
                                now().weights().extras()))));
  }

  private void restraint() {
    length("restraintRows", Restraint::rows, Restraint::withRows);
    length("restraintBottom", Restraint::bottomRows, Restraint::withBottomRows);
    length("restraintBoard", Restraint::board, Restraint::withBoard);
  }

  private void length(
      String name,
      Function<Restraint, Optional<Double>> of,
      BiFunction<Restraint, Optional<Double>, Restraint> with) {
    form.entry(
            name,
            t -> LengthEntry.read(t, runner.document().plan().unit(), LengthEntry.Allowed.POSITIVE),
            l -> change(now().withRestraint(with.apply(now().restraint(), Optional.of(l)))),
            () ->
                of.apply(now().restraint())
                    .map(l -> Editable.length(l, runner.document().plan().unit())),
            () -> Texts.of("field.automatic"))
        .orEmpty(
            () -> change(now().withRestraint(with.apply(now().restraint(), Optional.empty()))));
  }

  private void number(
      String name,
      EntryField.Reading<Double> reading,
      Supplier<Optional<Double>> of,
      Function<Optional<Double>, Handling> with,
      String none) {
    form.entry(
            name,
            reading,
            v -> change(with.apply(Optional.of(v))),
            () -> of.get().map(WeightList::plain),
            () -> Texts.of(none))
        .orEmpty(() -> change(with.apply(Optional.empty())));
  }

  private void change(Handling handling) {
    runner.apply(PlanCommands.handling(handling));
  }

  private Handling now() {
    return runner.document().plan().handling();
  }
}
