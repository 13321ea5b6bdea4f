package longpoint.desktop.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javax.swing.JComponent;
import longpoint.desktop.Texts;
import longpoint.editor.Command;
import longpoint.editor.ToolRunner;
import longpoint.plan.Deck;
import longpoint.plan.Frame;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.units.LengthEntry;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;

/** Properties of one or more whole parts. */
final class PartForm implements Properties.Subject {
  private final ToolRunner runner;
  private final List<String> ids;
  private final Form form;

  PartForm(ToolRunner runner, List<String> ids) {
    this.runner = runner;
    this.ids = ids;
    this.form = new Form(this::title);
    if (ids.size() == 1) {
      form.entry(
          "name",
          t -> t,
          t -> set("part.name", p -> p.withName(t)),
          () -> shared(Part::name),
          () -> ids.get(0));
    }
    form.choice(
        "existing",
        List.of(false, true),
        b -> Texts.of(b ? "existing.yes" : "existing.no"),
        () -> shared(Part::existing),
        b -> set("part.existing", p -> p.withExisting(b)));
    length(
        "plateHeight", Part::plateHeight, (p, l) -> p.withPlateHeight(l), LengthEntry.Allowed.ANY);
    form.choice(
        "framing",
        List.of(Frame.Method.values()),
        m -> Texts.of("framing." + m.key()),
        () -> shared(p -> p.frame().method()),
        m -> frame(f -> new Frame(m, f.spacing(), f.thickness(), f.hipSetback(), f.extras())));
    length(
        "spacing",
        p -> p.frame().spacing(),
        (p, l) ->
            p.withFrame(
                new Frame(
                    p.frame().method(),
                    l,
                    p.frame().thickness(),
                    p.frame().hipSetback(),
                    p.frame().extras())),
        LengthEntry.Allowed.POSITIVE);
    length(
        "thickness",
        p -> p.frame().thickness(),
        (p, l) ->
            p.withFrame(
                new Frame(
                    p.frame().method(),
                    p.frame().spacing(),
                    l,
                    p.frame().hipSetback(),
                    p.frame().extras())),
        LengthEntry.Allowed.POSITIVE);
    setback();
    length(
        "deckThickness",
        p -> p.deck().thickness(),
        (p, l) -> p.withDeck(with(p.deck(), l, p.deck().start())),
        LengthEntry.Allowed.NOT_NEGATIVE);
    form.choice(
        "deckStart",
        List.of(Deck.Start.values()),
        s -> Texts.of("deckStart." + s.key()),
        () -> shared(p -> p.deck().start()),
        s -> set("part.deck", p -> p.withDeck(with(p.deck(), p.deck().thickness(), s))));
  }

  private interface WithLength {
    Part of(Part part, double length);
  }

  private void length(
      String name, Function<Part, Double> of, WithLength with, LengthEntry.Allowed allowed) {
    form.entry(
        name,
        t -> LengthEntry.read(t, unit(), allowed),
        l -> set("part." + name, p -> with.of(p, l)),
        () -> shared(of).map(l -> LengthText.exact(l, unit())),
        () -> Texts.of("field.differs"));
  }

  private void setback() {
    form.entry(
            "hipSetback",
            t -> LengthEntry.read(t, unit(), LengthEntry.Allowed.POSITIVE),
            l -> setback(Optional.of(l)),
            () ->
                shared(p -> p.frame().hipSetback())
                    .flatMap(s -> s)
                    .map(l -> LengthText.exact(l, unit())),
            () ->
                shared(p -> p.frame().hipSetback()).isPresent()
                    ? Texts.of("field.automatic")
                    : Texts.of("field.differs"))
        .orEmpty(() -> setback(Optional.empty()));
  }

  private void setback(Optional<Double> value) {
    frame(f -> new Frame(f.method(), f.spacing(), f.thickness(), value, f.extras()));
  }

  private static Deck with(Deck d, double thickness, Deck.Start start) {
    return new Deck(thickness, d.sheetWidth(), d.sheetLength(), start, d.extras());
  }

  private void frame(UnaryOperator<Frame> change) {
    set("part.framing", p -> p.withFrame(change.apply(p.frame())));
  }

  private void set(String name, UnaryOperator<Part> change) {
    runner.apply(
        Command.of(
            Texts.of("edit." + name),
            plan -> {
              Plan out = plan;
              for (Part part : parts(plan)) {
                out = out.withPart(change.apply(part));
              }
              return out;
            }));
  }

  private List<Part> parts(Plan plan) {
    List<Part> parts = new ArrayList<>();
    ids.forEach(id -> plan.part(id).ifPresent(parts::add));
    return parts;
  }

  private <T> Optional<T> shared(Function<Part, T> of) {
    return Shared.value(parts(runner.document().plan()), of);
  }

  private LengthUnit unit() {
    return runner.document().plan().unit();
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
