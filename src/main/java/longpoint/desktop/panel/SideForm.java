package longpoint.desktop.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.swing.JComponent;
import longpoint.desktop.Texts;
import longpoint.editor.GivesWay;
import longpoint.editor.Ref;
import longpoint.editor.SideCommands;
import longpoint.editor.ToolRunner;
import longpoint.plan.Deck;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.InLine;
import longpoint.plan.Plan;
import longpoint.plan.Reshape;
import longpoint.plan.Side;
import longpoint.units.LengthEntry;
import longpoint.units.LengthUnit;

/** Properties of one or more sides: what the roof does there, and the figures of it. */
final class SideForm implements Properties.Subject {
  private final ToolRunner runner;
  private final List<Ref.OfSide> refs;
  private final Form form;

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
    EdgeRows.ofSides(form, runner, refs);
    if (edges().stream().allMatch(e -> e.kind() == EdgeKind.EAVE)) {
      startRow();
      form.choice(
          "hipEnd",
          List.of(Edge.HipEnd.values()),
          h -> Texts.of("hipEnd." + h.key()),
          () -> shared(e -> e.hip().orElse(Edge.HipEnd.STEPDOWN)),
          h -> runner.apply(SideCommands.hip(plan(), refs, h)));
      inLineRow();
    }
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

  /** Every way to start, and first the part's own, which is what an unset side follows. */
  private void startRow() {
    List<String> ways = new ArrayList<>(List.of(AS_PART));
    Stream.of(Deck.Start.values()).map(Deck.Start::key).forEach(ways::add);
    form.choice(
        "sheetStart",
        ways,
        way -> Texts.of("deckStart." + way),
        () -> shared(Edge::start).map(s -> s.map(Deck.Start::key).orElse(AS_PART)),
        way -> runner.apply(SideCommands.sheetStart(plan(), refs, start(way))));
    form.entry(
            "firstCourse",
            t -> LengthEntry.read(t, unit(), LengthEntry.Allowed.POSITIVE),
            l -> runner.apply(SideCommands.firstCourse(plan(), refs, Optional.of(l))),
            () -> shared(Edge::firstCourse).flatMap(w -> w).map(this::exact),
            () ->
                Texts.of(
                    shared(Edge::firstCourse).isPresent() ? "firstCourse.part" : "field.differs"))
        .orEmpty(() -> runner.apply(SideCommands.firstCourse(plan(), refs, Optional.empty())));
  }

  /** The longer wall line decides unless it is said otherwise. */
  private void inLineRow() {
    List<String> ways = new ArrayList<>(List.of(BY_LENGTH));
    Stream.of(InLine.values()).map(InLine::key).forEach(ways::add);
    form.choice(
        "inLine",
        ways,
        way -> Texts.of("inLine." + way),
        () -> shared(Edge::inLine).map(i -> i.map(InLine::key).orElse(BY_LENGTH)),
        way -> runner.apply(SideCommands.inLine(plan(), refs, inLine(way))));
  }

  private static final String BY_LENGTH = "by-length";

  private static Optional<InLine> inLine(String way) {
    return Stream.of(InLine.values()).filter(i -> i.key().equals(way)).findFirst();
  }

  private static final String AS_PART = "part";

  private static Optional<Deck.Start> start(String way) {
    return Stream.of(Deck.Start.values()).filter(s -> s.key().equals(way)).findFirst();
  }

  private void lengthRows(Ref.OfSide ref) {
    form.entry(
        "length",
        t -> LengthEntry.read(t, unit(), LengthEntry.Allowed.POSITIVE),
        l -> runner.apply(SideCommands.length(plan(), ref, l, runner.settings().givesWay())),
        () -> side(ref).map(s -> exact(s.wall().length())),
        () -> "");
    form.choice(
        "givesWay",
        List.of(GivesWay.values()),
        e -> endName(ref, e),
        () -> Optional.of(runner.settings().givesWay()),
        e -> runner.use(runner.settings().withGivesWay(e)));
    form.entry(
        "moveOut",
        t -> LengthEntry.read(t, unit(), LengthEntry.Allowed.ANY),
        l -> runner.apply(SideCommands.pull(plan(), ref, l, runner.settings().neighbours())),
        () -> Optional.of(""),
        () -> Texts.of("field.moveOut.none"));
    form.choice(
        "neighbours",
        List.of(Reshape.Neighbours.values()),
        n -> Texts.of("neighbours." + n.name().toLowerCase(Locale.ROOT)),
        () -> Optional.of(runner.settings().neighbours()),
        n -> runner.use(runner.settings().withNeighbours(n)));
  }

  private String endName(Ref.OfSide ref, GivesWay end) {
    return side(ref).map(s -> Texts.of(end.key(s.wall()))).orElse("");
  }

  private String title() {
    if (refs.size() != 1) {
      return Texts.of("form.sides", refs.size());
    }
    Ref.OfSide ref = refs.get(0);
    return ref.in(plan())
        ? Titles.wall(plan(), plan().part(ref.part()).orElseThrow(), ref.side())
        : "";
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
    return Editable.length(length, unit());
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
