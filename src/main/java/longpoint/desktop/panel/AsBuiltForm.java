package longpoint.desktop.panel;

import java.util.Optional;
import java.util.function.UnaryOperator;
import longpoint.desktop.Texts;
import longpoint.editor.PlanCommands;
import longpoint.editor.ToolRunner;
import longpoint.field.built.BuiltPlan;
import longpoint.field.built.BuiltWalls;
import longpoint.plan.AsBuilt;
import longpoint.plan.Plan;
import longpoint.units.LengthEntry;
import longpoint.units.LengthText;

/** Rows to type in what was taped on site, and what came of it in a few words. */
final class AsBuiltForm {
  private static final int FIT_WIDTH = 280;

  private final Form form;
  private final ToolRunner runner;
  private TapeRows tapes;

  private AsBuiltForm(Form form, ToolRunner runner) {
    this.form = form;
    this.runner = runner;
  }

  static void add(Form form, ToolRunner runner) {
    AsBuiltForm rows = new AsBuiltForm(form, runner);
    form.fold("asBuilt", rows::rows);
  }

  private void rows() {
    tapes = new TapeRows(runner);
    form.across(tapes);
    form.also(tapes::update);
    form.entry(
            "tapes",
            t -> lists().readTapes(t),
            t -> change(w -> w.withTapes(t)),
            () -> Optional.of(lists().tapes()),
            () -> "1-3 = …")
        .takingLines()
        .orEmpty(() -> change(w -> w.withTapes(java.util.List.of())));
    form.entry(
            "plateReadings",
            t -> lists().readPlates(t),
            p -> change(w -> w.withPlates(p)),
            () -> Optional.of(lists().plates()),
            () -> "1 = …")
        .takingLines()
        .orEmpty(() -> change(w -> w.withPlates(java.util.List.of())));
    form.entry(
            "tapeAccuracy",
            t -> LengthEntry.read(t, plan().unit(), LengthEntry.Allowed.POSITIVE),
            a -> change(w -> w.withAccuracy(Optional.of(a))),
            () -> now().accuracy().map(a -> Editable.length(a, plan().unit())),
            () -> LengthText.exact(AsBuilt.usualAccuracy(plan().unit()), plan().unit()))
        .orEmpty(() -> change(w -> w.withAccuracy(Optional.empty())));
    Words fit = Words.wrapped(Words.Rank.QUIET, fit(), FIT_WIDTH);
    fit.setName("builtFit");
    form.across(fit);
    form.also(() -> fit.setText(Html.wrapped(fit(), FIT_WIDTH)));
    javax.swing.JButton take = new javax.swing.JButton(Texts.of("field.takeWalls"));
    take.setName("takeWalls");
    take.setToolTipText(Texts.of("field.takeWalls.tip"));
    take.addActionListener(e -> takeWalls());
    form.across(take);
    form.also(() -> take.setEnabled(!now().isEmpty()));
    take.setEnabled(!now().isEmpty());
  }

  private String fit() {
    if (now().isEmpty()) {
      return Texts.of("built.none");
    }
    BuiltWalls walls = tapes.walls();
    if (walls.isEmpty() || walls.tapes().isEmpty()) {
      return Texts.of("built.noTapes");
    }
    long left = walls.doubts().size();
    String told = Texts.of("built.told", walls.tapes().size(), walls.spare(), left);
    return walls.next().isEmpty()
        ? told
        : told + " " + Texts.of("built.next", walls.next().get(0).from(), walls.next().get(0).to());
  }

  /** Draws the plan's walls straight where they stand; the readings stay, to be held against it. */
  private void takeWalls() {
    Plan plan = plan();
    BuiltWalls walls = tapes.walls();
    if (!walls.isEmpty()) {
      runner.apply(PlanCommands.builtWalls(BuiltPlan.of(plan, walls, BuiltPlan.Walls.TRUED)));
    }
  }

  private ReadingLists lists() {
    return new ReadingLists(plan());
  }

  private AsBuilt now() {
    return plan().onSite().walls();
  }

  private void change(UnaryOperator<AsBuilt> edit) {
    runner.apply(PlanCommands.onSite(s -> s.withWalls(edit.apply(s.walls()))));
  }

  private Plan plan() {
    return runner.document().plan();
  }
}
