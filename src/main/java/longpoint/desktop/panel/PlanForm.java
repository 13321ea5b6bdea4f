package longpoint.desktop.panel;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javax.swing.JComponent;
import longpoint.desktop.Texts;
import longpoint.editor.PlanCommands;
import longpoint.editor.ToolRunner;
import longpoint.plan.Defaults;
import longpoint.plan.Particulars;
import longpoint.plan.Plan;
import longpoint.plan.UsualHeel;
import longpoint.units.AngleEntry;
import longpoint.units.Decimal;
import longpoint.units.LengthEntry;
import longpoint.units.LengthText;
import longpoint.units.SlopeEntry;
import longpoint.wording.Language;

/** Properties of the whole plan: its title and what holds wherever a side says nothing. */
final class PlanForm implements Properties.Subject {
  private final ToolRunner runner;
  private final Form form;

  PlanForm(ToolRunner runner, Folds folds) {
    this.runner = runner;
    this.form = new Form(() -> Texts.of("form.plan"), folds);
    form.entry(
            "title",
            t -> t,
            t -> runner.apply(PlanCommands.title(t)),
            () -> Optional.of(plan().title()),
            () -> Texts.of("app.untitled"))
        .orEmpty(() -> runner.apply(PlanCommands.title("")));
    text("site", p -> p.site(), (p, t) -> p.withSite(t));
    text("drawnBy", p -> p.drawnBy(), (p, t) -> p.withDrawnBy(t));
    text("date", p -> p.date(), (p, t) -> p.withDate(t));
    form.entry(
            "north",
            AngleEntry::read,
            n -> particulars(p -> p.withNorth(Optional.of(n))),
            () ->
                plan()
                    .particulars()
                    .north()
                    .map(n -> Editable.in(Texts.language(), Decimal.json(n))),
            () -> "")
        .orEmpty(() -> particulars(p -> p.withNorth(Optional.empty())));
    form.choice(
        "language",
        List.of(Language.values()),
        l -> Texts.of("language." + l.key()),
        () -> Optional.of(plan().spokenElse(Texts.language()).language()),
        l -> particulars(p -> p.withLanguage(Optional.of(l))));
    form.says("unit", () -> Texts.of("unit." + plan().unit().symbol()));
    form.across(new Words(Words.Rank.QUIET, Texts.of("form.plan.defaults")));
    form.entry(
        "defaultSlope",
        SlopeEntry::read,
        s -> defaults(d -> d.withSlope(s)),
        () -> Optional.of(Editable.slope(plan().defaults().slope())),
        () -> "");
    length("defaultOverhang", d -> d.overhang(), (d, l) -> d.withOverhang(l));
    form.entry(
            "defaultHeel",
            t -> LengthEntry.read(t, plan().unit(), LengthEntry.Allowed.NOT_NEGATIVE),
            l -> defaults(d -> d.withHeel(l)),
            () -> plan().defaults().heel().map(h -> Editable.length(h, plan().unit())),
            this::usualHeel)
        .orEmpty(() -> defaults(d -> d.withHeel(Optional.empty())));
    length(
        "fascia",
        d -> d.fascia(),
        (d, l) ->
            new Defaults(
                d.slope(),
                d.overhang(),
                d.heel(),
                l,
                d.ridgeBlockRelief(),
                d.lookoutFirst(),
                d.lookoutSpacing(),
                d.extras()));
    BuyingForm.add(form, runner);
    AsBuiltForm.add(form, runner);
    HandlingForm.add(form, runner);
  }

  private interface WithText {
    Particulars of(Particulars particulars, String text);
  }

  private interface TextOf {
    String in(Particulars particulars);
  }

  /** A text of the title block, empty if it is not to be printed. */
  private void text(String name, TextOf of, WithText with) {
    form.entry(
            name,
            t -> t,
            t -> particulars(p -> with.of(p, t)),
            () -> Optional.of(of.in(plan().particulars())),
            () -> "")
        .orEmpty(() -> particulars(p -> with.of(p, "")));
  }

  private void particulars(UnaryOperator<Particulars> change) {
    runner.apply(PlanCommands.particulars(change));
  }

  private interface WithLength {
    Defaults of(Defaults defaults, double length);
  }

  private interface LengthOf {
    double in(Defaults defaults);
  }

  private void length(String name, LengthOf of, WithLength with) {
    Supplier<Optional<String>> text =
        () -> Optional.of(Editable.length(of.in(plan().defaults()), plan().unit()));
    form.entry(
        name,
        t -> LengthEntry.read(t, plan().unit(), LengthEntry.Allowed.NOT_NEGATIVE),
        l -> defaults(d -> with.of(d, l)),
        text,
        () -> "");
  }

  /** What the framing of the parts asks for, where they agree. */
  private String usualHeel() {
    List<Double> usual =
        plan().parts().isEmpty()
            ? List.of(UsualHeel.ofTrusses(plan().unit()))
            : plan().parts().stream().map(plan()::usualHeel).distinct().toList();
    return usual.size() == 1
        ? LengthText.of(usual.get(0), plan().unit())
        : Texts.of("field.differs");
  }

  private void defaults(UnaryOperator<Defaults> change) {
    runner.apply(PlanCommands.defaults(change));
  }

  private Plan plan() {
    return runner.document().plan();
  }

  @Override
  public Object key() {
    return "plan";
  }

  @Override
  public JComponent view() {
    return form;
  }

  @Override
  public void update() {
    form.update();
  }
}
