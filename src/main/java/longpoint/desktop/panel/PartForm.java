package longpoint.desktop.panel;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javax.swing.JComponent;
import longpoint.desktop.Texts;
import longpoint.editor.Command;
import longpoint.editor.PartCommands;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.editor.ToolRunner;
import longpoint.plan.Deck;
import longpoint.plan.Frame;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.units.LengthChange;
import longpoint.units.LengthEntry;

/** Properties of one or more whole parts. */
final class PartForm implements Properties.Subject {
  private final ToolRunner runner;
  private final List<String> ids;
  private final Form form;

  PartForm(ToolRunner runner, List<String> ids, Folds folds) {
    this.runner = runner;
    this.ids = ids;
    this.form = new Form(this::title, folds);
    if (ids.size() == 1) {
      form.entry(
          "name",
          t -> t,
          t -> runner.apply(PartCommands.rename(ids.get(0), t)),
          () -> shared(Part::name),
          () -> ids.get(0));
    }
    form.choice(
        "existing",
        List.of(false, true),
        b -> Texts.of(b ? "existing.yes" : "existing.no"),
        () -> shared(Part::existing),
        b ->
            runner.apply(
                b ? PartCommands.markExisting(plan(), ids) : PartCommands.markNew(plan(), ids)));
    form.entry(
        "plateHeight",
        t -> LengthChange.read(t, plan().unit()),
        c -> runner.apply(PartCommands.plateHeight(plan(), ids, c)),
        () -> shared(Part::plateHeight).map(this::exact),
        () -> Texts.of("field.differs"));
    if (ids.size() > 1) {
      aboveRow();
    }
    EdgeRows.ofParts(form, runner, this::sides);
    frameRows();
    FrameForm.add(form, runner, ids);
    deckRows();
    if (ids.size() == 1) {
      JoinForm.add(form, runner, ids.get(0));
    }
  }

  /** How much higher the plates of the others are than that of the part picked first. */
  private void aboveRow() {
    form.entry(
        "above",
        t -> LengthEntry.read(t, plan().unit(), LengthEntry.Allowed.ANY),
        l -> runner.apply(PartCommands.platesAbove(plan(), ids, l)),
        () -> Shared.value(others(), p -> p.plateHeight() - first()).map(this::exact),
        () -> Texts.of("field.differs"));
  }

  private double first() {
    return plan().part(ids.get(0)).map(Part::plateHeight).orElse(0.0);
  }

  private List<Part> others() {
    return ids.stream().skip(1).flatMap(id -> plan().part(id).stream()).toList();
  }

  private List<Ref.OfSide> sides() {
    return new Selection(ids.stream().map(Ref::part).toList()).sides(plan());
  }

  private void frameRows() {
    form.choice(
        "framing",
        List.of(Frame.Method.values()),
        m -> Texts.of("framing." + m.key()),
        () -> shared(p -> p.frame().method()),
        m -> frame(f -> f.withMethod(m)));
    length(
        "spacing",
        p -> p.frame().spacing(),
        LengthEntry.Allowed.POSITIVE,
        l -> PartCommands.spacing(plan(), ids, l));
    length(
        "thickness",
        p -> p.frame().thickness(),
        LengthEntry.Allowed.POSITIVE,
        l -> PartCommands.frame(plan(), ids, f -> f.withThickness(l)));
    form.entry(
            "hipSetback",
            t -> LengthEntry.read(t, plan().unit(), LengthEntry.Allowed.POSITIVE),
            l -> setback(Optional.of(l)),
            () -> shared(p -> p.frame().hipSetback()).flatMap(s -> s).map(this::exact),
            () ->
                Texts.of(
                    shared(p -> p.frame().hipSetback()).isPresent()
                        ? "field.automatic"
                        : "field.differs"))
        .orEmpty(() -> setback(Optional.empty()));
  }

  private void deckRows() {
    length(
        "deckThickness",
        p -> p.deck().thickness(),
        LengthEntry.Allowed.NOT_NEGATIVE,
        l -> PartCommands.deck(plan(), ids, d -> d.withThickness(l)));
    form.choice(
        "deckStart",
        List.of(Deck.Start.values()),
        s -> Texts.of("deckStart." + s.key()),
        () -> shared(p -> p.deck().start()),
        s -> runner.apply(PartCommands.deck(plan(), ids, d -> d.withStart(s))));
    form.entry(
            "firstCourse",
            t -> LengthEntry.read(t, plan().unit(), LengthEntry.Allowed.POSITIVE),
            l -> firstCourse(Optional.of(l)),
            () -> shared(p -> p.deck().firstCourse()).flatMap(w -> w).map(this::exact),
            () ->
                Texts.of(
                    shared(p -> p.deck().firstCourse()).isPresent()
                        ? "firstCourse.whole"
                        : "field.differs"))
        .orEmpty(() -> firstCourse(Optional.empty()));
    if (plan().joins().stream().anyMatch(j -> ids.contains(j.lower()))) {
      form.entry(
              "walkway",
              t -> LengthEntry.read(t, plan().unit(), LengthEntry.Allowed.NOT_NEGATIVE),
              l -> walkway(Optional.of(l)),
              () -> shared(p -> p.deck().walkway()).flatMap(w -> w).map(this::exact),
              () ->
                  Texts.of(
                      shared(p -> p.deck().walkway()).isPresent()
                          ? "walkway.whole"
                          : "field.differs"))
          .orEmpty(() -> walkway(Optional.empty()));
    }
  }

  private void length(
      String name,
      Function<Part, Double> of,
      LengthEntry.Allowed allowed,
      Function<Double, Command> set) {
    form.entry(
        name,
        t -> LengthEntry.read(t, plan().unit(), allowed),
        l -> runner.apply(set.apply(l)),
        () -> shared(of).map(this::exact),
        () -> Texts.of("field.differs"));
  }

  private void setback(Optional<Double> value) {
    frame(f -> f.withHipSetback(value));
  }

  private void walkway(Optional<Double> width) {
    runner.apply(PartCommands.deck(plan(), ids, d -> d.withWalkway(width)));
  }

  private void firstCourse(Optional<Double> width) {
    runner.apply(PartCommands.deck(plan(), ids, d -> d.withFirstCourse(width)));
  }

  private void frame(UnaryOperator<Frame> change) {
    runner.apply(PartCommands.frame(plan(), ids, change));
  }

  private String exact(double length) {
    return Editable.length(length, plan().unit());
  }

  private Plan plan() {
    return runner.document().plan();
  }

  private <T> Optional<T> shared(Function<Part, T> of) {
    return Shared.value(ids.stream().flatMap(id -> plan().part(id).stream()).toList(), of);
  }

  private String title() {
    return ids.size() == 1
        ? Texts.of("form.part", shared(Part::name).orElse(""))
        : Texts.of("form.parts", ids.size());
  }

  @Override
  public Object key() {
    return ids;
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
