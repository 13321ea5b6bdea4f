package longpoint.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.plan.Deck;
import longpoint.plan.EdgeKind;
import longpoint.plan.Join;
import longpoint.plan.OpenSideCheck;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.PlanCheck;
import longpoint.plan.Problem;
import longpoint.plan.Reshape;
import longpoint.plan.Side;
import longpoint.units.LengthChange;
import longpoint.units.LengthFigure;
import longpoint.units.SlopeText;
import longpoint.wording.Language;
import longpoint.wording.Phrase;

/**
 * Cures of problems found further on than in the plan itself: what to do is read off the problem's
 * key, and how much off the figures it names. Each is tried on the plan before it is offered.
 */
final class SaidCures {
  private final Plan plan;
  private final Part part;
  private final Optional<Integer> side;
  private final List<Cure> cures = new ArrayList<>();

  private SaidCures(Plan plan, Part part, Optional<Integer> side) {
    this.plan = plan;
    this.part = part;
    this.side = side;
  }

  /**
   * @param side that the problems are about; empty when it is the whole part
   */
  static List<Cure> of(Plan plan, Part part, Optional<Integer> side, List<Problem> problems) {
    SaidCures all = new SaidCures(plan, part, side);
    for (Problem problem : problems) {
      if (problem.wrong() instanceof Phrase wrong) {
        all.about(wrong);
        side.ifPresent(s -> all.about(wrong, s));
        side.ifPresent(s -> all.mended(problem, s));
        all.cures.addAll(FrameCures.of(plan, part, wrong));
        all.cures.addAll(PlacedCures.of(plan, part, problem));
        all.cures.addAll(OverhangCures.of(plan, part, problem));
      }
    }
    return all.cures;
  }

  /** Of the part as a whole, also where the problem stands at one of its sides. */
  private void about(Phrase wrong) {
    switch (wrong.key()) {
      case "surface.open.overRidge", "framing.valley.taller" ->
          figure(wrong, 1).ifPresent(by -> lower(Marks.up(plan.unit(), by)));
      case "plan.join.circle" -> unjoin();
      case "plan.plateHeight" -> likePlates();
      default -> {
        // About a side, or what others know.
      }
    }
  }

  private void about(Phrase wrong, int at) {
    switch (wrong.key()) {
      case "deck.lastCourse" -> figure(wrong, 2).ifPresent(w -> rip(at, w));
      case "surface.open.cheeks" -> figure(wrong, 1).ifPresent(by -> pull(at, by));
      case "plan.run.slopes", "plan.run.heels" -> level(at);
      case "plan.hole.outside", "plan.hole.inside" ->
          named("courtyard", PlanCommands.delete(Selection.of(Ref.side(part.id(), at))));
      case "framing.run.shallow" ->
          add("gable", SideCommands.kind(plan, List.of(ref(at)), EdgeKind.GABLE));
      case "surface.sweep.stranded" ->
          add("eave", SideCommands.kind(plan, List.of(ref(at)), EdgeKind.EAVE));
      default -> {
        // As above.
      }
    }
  }

  /** What the words of a cure name and those of the problem do not. */
  private void mended(Problem problem, int at) {
    if (!(problem.mend() instanceof Phrase mend)) {
      return;
    }
    switch (mend.key()) {
      case "surface.overtaken.lower", "surface.overtaken.least" -> {
        boolean below = mend.key().endsWith("lower");
        figure(mend, 0)
            .map(h -> below ? Marks.under(plan.unit(), h) : Marks.down(plan.unit(), h))
            .ifPresent(h -> heel(at, h));
        add("gable", SideCommands.kind(plan, List.of(ref(at)), EdgeKind.GABLE));
      }
      case "deck.start.left" -> start(at, Deck.Start.LEFT);
      case "deck.start.right" -> start(at, Deck.Start.RIGHT);
      case "deck.start.centre" -> start(at, Deck.Start.CENTRE);
      case "surface.open.near" -> figure(mend, 1).ifPresent(by -> reach(at, by));
      default -> {
        // Nothing more than the problem's own.
      }
    }
  }

  private void heel(int at, double heel) {
    if (heel >= 0) {
      Command lower = SideCommands.heel(plan, List.of(ref(at)), Optional.of(heel));
      add("likeHeel", lower, WallName.of(plan, part, at), length(heel));
    }
  }

  /** Draws an open side up to the roof that stands before it. */
  private void reach(int at, double by) {
    Command pull = SideCommands.pull(plan, ref(at), by, Reshape.Neighbours.STRETCH);
    if (pull.on(plan) instanceof Outcome.Commit done) {
      Part pulled = done.plan().part(part.id()).orElseThrow();
      boolean stands =
          plan.parts().stream()
              .anyMatch(o -> !o.id().equals(part.id()) && OpenSideCheck.standsAt(pulled, at, o));
      if (stands) {
        add("reach", pull, length(by));
      }
    }
  }

  private void start(int at, Deck.Start start) {
    add(
        "start." + start.key(),
        SideCommands.sheetStart(plan, List.of(ref(at)), Optional.of(start)));
  }

  private void named(String key, Command command) {
    cures.add(Cures.named(key, command));
  }

  private void add(String key, Command command, Object... parts) {
    cures.add(Cures.cure(key, command, parts));
  }

  private Ref.OfSide ref(int at) {
    return new Ref.OfSide(part.id(), at);
  }

  private static Optional<Double> figure(Phrase phrase, int at) {
    return at < phrase.parts().size() && phrase.parts().get(at) instanceof LengthFigure figure
        ? Optional.of(figure.length())
        : Optional.empty();
  }

  private String length(double length) {
    return Naming.length(plan, length);
  }

  private void lower(double by) {
    Command lower =
        PartCommands.plateHeight(
            plan, List.of(part.id()), new LengthChange(LengthChange.Kind.BY, -by));
    add("lower", lower, part.name(), length(by));
  }

  private void unjoin() {
    for (Join join : plan.joins()) {
      if (join.upper().equals(part.id())) {
        Command gone = PartCommands.removeJoin(join);
        add("unjoin", gone, name(join.upper()), name(join.lower()));
      }
    }
  }

  private String name(String id) {
    return plan.part(id).map(Part::name).orElse(id);
  }

  /** The plate of the first other part whose height can be meant. */
  private void likePlates() {
    plan.parts().stream()
        .filter(p -> !p.id().equals(part.id()))
        .filter(
            p ->
                PlanCheck.check(plan).stream()
                    .noneMatch(
                        q ->
                            q.where().equals(p.id())
                                && q.wrong() instanceof Phrase w
                                && w.key().equals("plan.plateHeight")))
        .findFirst()
        .ifPresent(
            p ->
                add(
                    "plate",
                    PartCommands.plateHeight(plan, List.of(part.id()), p.plateHeight()),
                    p.name(),
                    length(p.plateHeight())));
  }

  private void rip(int at, double width) {
    Command rip = SideCommands.firstCourse(plan, List.of(ref(at)), Optional.of(width));
    add("firstCourse", rip, length(width));
  }

  private void pull(int at, double by) {
    Command pull = SideCommands.pull(plan, ref(at), by, Reshape.Neighbours.STRETCH);
    add("cheeks", pull, length(by));
  }

  /** Walls in one line take the figures of one of them. */
  private void level(int at) {
    int next = (at + 1) % part.sideCount();
    Side here = plan.side(part, at);
    Side there = plan.side(part, next);
    if (here.slope().ratio() != there.slope().ratio()) {
      likeSlope(at, there);
      likeSlope(next, here);
    } else {
      likeHeel(at, there);
      likeHeel(next, here);
    }
  }

  private void likeSlope(int at, Side model) {
    add(
        "likeSlope",
        SideCommands.slope(plan, List.of(ref(at)), Optional.of(model.slope())),
        WallName.of(plan, part, at),
        SlopeText.of(model.slope(), Language.ofDesktop()));
  }

  private void likeHeel(int at, Side model) {
    add(
        "likeHeel",
        SideCommands.heel(plan, List.of(ref(at)), Optional.of(model.heel())),
        WallName.of(plan, part, at),
        length(model.heel()));
  }
}
