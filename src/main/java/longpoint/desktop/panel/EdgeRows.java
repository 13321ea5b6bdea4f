package longpoint.desktop.panel;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import longpoint.desktop.Texts;
import longpoint.editor.Ref;
import longpoint.editor.SideCommands;
import longpoint.editor.ToolRunner;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Plan;
import longpoint.units.LengthEntry;
import longpoint.units.LengthText;
import longpoint.units.SlopeEntry;
import longpoint.units.SlopeText;

/** Rows for slope, overhang and heel of some sides, set together; empty follows the plan. */
final class EdgeRows {
  private final ToolRunner runner;
  private final Supplier<List<Ref.OfSide>> sides;
  private final Set<EdgeKind> sloped;
  private final Set<EdgeKind> hung;

  private EdgeRows(
      ToolRunner runner,
      Supplier<List<Ref.OfSide>> sides,
      Set<EdgeKind> sloped,
      Set<EdgeKind> hung) {
    this.runner = runner;
    this.sides = sides;
    this.sloped = sloped;
    this.hung = hung;
  }

  /** Of sides picked themselves, whatever they are. */
  static void ofSides(Form form, ToolRunner runner, List<Ref.OfSide> sides) {
    Set<EdgeKind> any = Set.of(EdgeKind.values());
    new EdgeRows(runner, () -> sides, any, any).add(form);
  }

  /** Of whole parts: only sides that have such a figure. */
  static void ofParts(Form form, ToolRunner runner, Supplier<List<Ref.OfSide>> sides) {
    new EdgeRows(runner, sides, Set.of(EdgeKind.EAVE), Set.of(EdgeKind.EAVE, EdgeKind.GABLE))
        .add(form);
  }

  private void add(Form form) {
    form.entry(
            "slope",
            SlopeEntry::read,
            s -> runner.apply(SideCommands.slope(plan(), of(sloped), Optional.of(s))),
            () -> own(sloped, Edge::slope).map(SlopeText::exact),
            () ->
                grey(
                    sloped, Edge::slope, SlopeText.of(plan().defaults().slope(), Texts.language())))
        .orEmpty(() -> runner.apply(SideCommands.slope(plan(), of(sloped), Optional.empty())));
    form.entry(
            "overhang",
            t -> LengthEntry.read(t, plan().unit(), LengthEntry.Allowed.NOT_NEGATIVE),
            l -> runner.apply(SideCommands.overhang(plan(), of(hung), Optional.of(l))),
            () -> own(hung, Edge::overhang).map(this::exact),
            () -> grey(hung, Edge::overhang, length(plan().defaults().overhang())))
        .orEmpty(() -> runner.apply(SideCommands.overhang(plan(), of(hung), Optional.empty())));
    form.entry(
            "heel",
            t -> LengthEntry.read(t, plan().unit(), LengthEntry.Allowed.NOT_NEGATIVE),
            l -> runner.apply(SideCommands.heel(plan(), of(sloped), Optional.of(l))),
            () -> own(sloped, Edge::heel).map(this::exact),
            this::greyHeel)
        .orEmpty(() -> runner.apply(SideCommands.heel(plan(), of(sloped), Optional.empty())));
  }

  private List<Ref.OfSide> of(Set<EdgeKind> kinds) {
    return sides.get().stream()
        .filter(r -> r.in(plan()) && kinds.contains(edge(r).kind()))
        .toList();
  }

  private Edge edge(Ref.OfSide ref) {
    return plan().part(ref.part()).orElseThrow().edges().get(ref.side());
  }

  private <T> Optional<T> own(Set<EdgeKind> kinds, Function<Edge, Optional<T>> figure) {
    return Shared.value(edges(kinds), figure).flatMap(v -> v);
  }

  private <T> String grey(Set<EdgeKind> kinds, Function<Edge, Optional<T>> figure, String usual) {
    return edges(kinds).isEmpty() || Shared.value(edges(kinds), figure).isPresent()
        ? usual
        : Texts.of("field.differs");
  }

  /** Parts framed differently have different usual heels. */
  private String greyHeel() {
    List<Double> usual =
        of(sloped).stream()
            .map(r -> plan().usualHeel(plan().part(r.part()).orElseThrow()))
            .distinct()
            .toList();
    return usual.size() == 1
        ? grey(sloped, Edge::heel, length(usual.get(0)))
        : usual.isEmpty() ? "" : Texts.of("field.differs");
  }

  private List<Edge> edges(Set<EdgeKind> kinds) {
    return of(kinds).stream().map(this::edge).toList();
  }

  private Plan plan() {
    return runner.document().plan();
  }

  private String exact(double length) {
    return Editable.length(length, plan().unit());
  }

  private String length(double length) {
    return LengthText.of(length, plan().unit());
  }
}
