package longpoint.desktop.panel;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JComponent;
import longpoint.desktop.Texts;
import longpoint.editor.Ref;
import longpoint.editor.SideCommands;
import longpoint.editor.ToolRunner;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Plan;
import longpoint.plan.Reshape;
import longpoint.plan.Side;
import longpoint.units.LengthEntry;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import longpoint.units.SlopeEntry;
import longpoint.units.SlopeText;

/** Properties of one or more sides: what the roof does there, and the figures of it. */
final class SideForm implements Properties.Subject {
  private final ToolRunner runner;
  private final List<Ref.OfSide> refs;
  private final Form form;
  private Reshape.End givesWay = Reshape.End.FINISH;

  SideForm(ToolRunner runner, List<Ref.OfSide> refs) {
    this.runner = runner;
    this.refs = refs;
    this.form = new Form(this::title);
    form.choice(
        "kind",
        List.of(EdgeKind.values()),
        k -> Texts.of("kind." + k.key()),
        () -> shared(Edge::kind),
        k -> runner.apply(SideCommands.kind(plan(), refs, k)));
    form.entry(
            "slope",
            SlopeEntry::read,
            s -> slope(Optional.of(s)),
            () -> own(Edge::slope).map(SlopeText::exact),
            () -> grey(Edge::slope, SlopeText.of(plan().defaults().slope(), Texts.language())))
        .orEmpty(() -> slope(Optional.empty()));
    form.entry(
            "overhang",
            t -> LengthEntry.read(t, unit(), LengthEntry.Allowed.NOT_NEGATIVE),
            l -> overhang(Optional.of(l)),
            () -> own(Edge::overhang).map(this::exact),
            () -> grey(Edge::overhang, length(plan().defaults().overhang())))
        .orEmpty(() -> overhang(Optional.empty()));
    form.entry(
            "heel",
            t -> LengthEntry.read(t, unit(), LengthEntry.Allowed.NOT_NEGATIVE),
            l -> heel(Optional.of(l)),
            () -> own(Edge::heel).map(this::exact),
            () -> grey(Edge::heel, length(plan().defaults().heel())))
        .orEmpty(() -> heel(Optional.empty()));
    if (refs.size() == 1) {
      lengthRows(refs.get(0));
    } else if (refs.size() == 2) {
      levelRow(refs.get(1), refs.get(0));
    }
  }

  /** Brings the fascia of the side picked last level with that of the one picked first. */
  private void levelRow(Ref.OfSide side, Ref.OfSide like) {
    form.choice(
        "level",
        List.of(SideCommands.LevelBy.values()),
        by -> Texts.of("level." + by.name().toLowerCase(Locale.ROOT)),
        Optional::empty,
        by -> runner.apply(SideCommands.levelFascia(plan(), side, like, by)));
  }

  private void slope(Optional<Slope> slope) {
    runner.apply(SideCommands.slope(plan(), refs, slope));
  }

  private void overhang(Optional<Double> overhang) {
    runner.apply(SideCommands.overhang(plan(), refs, overhang));
  }

  private void heel(Optional<Double> heel) {
    runner.apply(SideCommands.heel(plan(), refs, heel));
  }

  private void lengthRows(Ref.OfSide ref) {
    form.entry(
        "length",
        t -> LengthEntry.read(t, unit(), LengthEntry.Allowed.POSITIVE),
        l -> runner.apply(SideCommands.length(plan(), ref, l, givesWay)),
        () -> side(ref).map(s -> exact(s.wall().length())),
        () -> "");
    form.choice(
        "givesWay",
        List.of(Reshape.End.values()),
        e -> endName(ref, e),
        () -> Optional.of(givesWay),
        e -> givesWay = e);
  }

  /** Ends are told apart the way they lie on the sheet, which is how one looks at them. */
  private String endName(Ref.OfSide ref, Reshape.End end) {
    return side(ref)
        .map(
            s -> {
              longpoint.geometry.Point step = s.wall().to().minus(s.wall().from());
              boolean finish = end == Reshape.End.FINISH;
              if (Math.abs(step.x()) >= Math.abs(step.y())) {
                return Texts.of(step.x() > 0 == finish ? "end.right" : "end.left");
              }
              return Texts.of(step.y() > 0 == finish ? "end.upper" : "end.lower");
            })
        .orElse("");
  }

  private String title() {
    if (refs.size() != 1) {
      return Texts.of("form.sides", refs.size());
    }
    Ref.OfSide ref = refs.get(0);
    return ref.in(plan()) ? Titles.wall(plan().part(ref.part()).orElseThrow(), ref.side()) : "";
  }

  private List<Edge> edges() {
    return refs.stream()
        .filter(r -> r.in(plan()))
        .map(r -> plan().part(r.part()).orElseThrow().edges().get(r.side()))
        .toList();
  }

  private <T> Optional<T> shared(Function<Edge, T> of) {
    return Shared.value(edges(), of);
  }

  private <T> Optional<T> own(Function<Edge, Optional<T>> of) {
    return Shared.value(edges(), of).flatMap(v -> v);
  }

  private <T> String grey(Function<Edge, Optional<T>> of, String usual) {
    return Shared.value(edges(), of).isPresent() ? usual : Texts.of("field.differs");
  }

  private Optional<Side> side(Ref.OfSide ref) {
    return ref.in(plan())
        ? plan().part(ref.part()).map(p -> plan().side(p, ref.side()))
        : Optional.empty();
  }

  private Plan plan() {
    return runner.document().plan();
  }

  private LengthUnit unit() {
    return plan().unit();
  }

  private String exact(double length) {
    return LengthText.exact(length, unit());
  }

  private String length(double length) {
    return LengthText.of(length, unit());
  }

  @Override
  public Object key() {
    return refs;
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
