package longpoint.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import longpoint.plan.Deck;
import longpoint.plan.EdgeKind;
import longpoint.plan.Frame;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Placements;
import longpoint.plan.Plan;
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
      }
    }
    return all.cures;
  }

  /** Of the part as a whole, also where the problem stands at one of its sides. */
  private void about(Phrase wrong) {
    switch (wrong.key()) {
      case "surface.open.overRidge" -> figure(wrong, 1).ifPresent(this::lower);
      case "framing.seat.deep" -> figure(wrong, 3).ifPresent(this::raiseHeels);
      case "framing.post.thin" -> figure(wrong, 2).ifPresent(this::thicken);
      case "framing.hip.short", "framing.join.notSquare" ->
          frame("rafters", f -> f.withMethod(Frame.Method.RAFTER));
      case "framing.hip.setback" -> frame("setback", f -> f.withHipSetback(Optional.empty()));
      case "framing.placed.idle" -> {
        frame("trusses", f -> f.withMethod(Frame.Method.TRUSS));
        frame("places", f -> f.withPlacements(Placements.NONE));
      }
      case "framing.join.cuts", "framing.join.inside" -> layOver();
      case "plan.ceiling" ->
          frame("ceiling", f -> f.withChoices(f.choices().withCeiling(Optional.empty())));
      case "plan.thick" -> usualSpacing();
      case "plan.deck.negative", "deck.sizes" -> usualDeck();
      case "plan.join.circle" -> unjoin();
      default -> {
        // Nothing that a click could decide.
      }
    }
  }

  private void about(Phrase wrong, int at) {
    switch (wrong.key()) {
      case "deck.lastCourse" -> figure(wrong, 2).ifPresent(w -> rip(at, w));
      case "surface.open.cheeks" -> figure(wrong, 1).ifPresent(by -> pull(at, by));
      case "plan.run.slopes", "plan.run.heels" -> level(at);
      case "plan.hole.outside", "plan.hole.inside" ->
          add("courtyard", PlanCommands.delete(Selection.of(Ref.side(part.id(), at))));
      case "framing.run.shallow" ->
          add("gable", SideCommands.kind(plan, List.of(ref(at)), EdgeKind.GABLE));
      case "surface.sweep.stranded" ->
          add("eave", SideCommands.kind(plan, List.of(ref(at)), EdgeKind.EAVE));
      default -> {
        // As above.
      }
    }
  }

  private void add(String key, Command command, Object... parts) {
    cures.add(Cures.cure(key, command, parts));
  }

  private void frame(String key, UnaryOperator<Frame> change) {
    add(key, PartCommands.frame(plan, List.of(part.id()), change), part.name());
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

  private void raiseHeels(double heel) {
    List<Ref.OfSide> eaves = new ArrayList<>();
    for (int i = 0; i < part.sideCount(); i++) {
      if (part.edges().get(i).kind() == EdgeKind.EAVE) {
        eaves.add(ref(i));
      }
    }
    add("heels", SideCommands.heel(plan, eaves, Optional.of(heel)), part.name(), length(heel));
  }

  private void thicken(double post) {
    frame(
        "post",
        f -> {
          var choices = f.choices();
          return f.withChoices(choices.withSticks(choices.sticks().withPost(Optional.of(post))));
        });
  }

  /** Roofs framed through each other are laid one over the other. */
  private void layOver() {
    for (Join join : plan.joins()) {
      boolean here = join.upper().equals(part.id()) || join.lower().equals(part.id());
      if (here && join.method() == Join.Method.THROUGH) {
        Command over = PartCommands.join(join.withMethod(Join.Method.OVERLAY));
        add("layOver", over, name(join.upper()), name(join.lower()));
      }
    }
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

  private void usualSpacing() {
    double usual = Frame.of(plan.unit()).spacing();
    add("spacing", PartCommands.spacing(plan, List.of(part.id()), usual), length(usual));
  }

  private void usualDeck() {
    Deck usual = Deck.of(plan.unit());
    add("deck", PartCommands.deck(plan, List.of(part.id()), d -> usual), length(usual.thickness()));
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
