package longpoint.editor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import longpoint.plan.Deck;
import longpoint.plan.Defaults;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Frame;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Placements;
import longpoint.plan.Plan;
import longpoint.plan.RunChoices;
import longpoint.plan.StickChoices;
import longpoint.units.LengthFigure;
import longpoint.wording.Language;
import longpoint.wording.Phrase;

/** Cures of a part's framing and sheathing, with the figures that a problem names. */
final class FrameCures {
  private final Plan plan;
  private final Part part;
  private final List<Cure> cures = new ArrayList<>();

  private FrameCures(Plan plan, Part part) {
    this.plan = plan;
    this.part = part;
  }

  static List<Cure> of(Plan plan, Part part, Phrase wrong) {
    FrameCures all = new FrameCures(plan, part);
    all.way(wrong);
    all.figures(wrong);
    return all.cures;
  }

  /** Another way of framing it. */
  private void way(Phrase wrong) {
    switch (wrong.key()) {
      case "framing.hip.short",
          "framing.join.notSquare",
          "framing.run.crooked",
          "framing.run.courtyard",
          "framing.run.involved",
          "framing.shed.seat" ->
          frame("rafters", f -> f.withMethod(Frame.Method.RAFTER));
      case "framing.run.sideBySide",
          "framing.run.noEave",
          "framing.run.shallow",
          "framing.valley.tallerLeg" ->
          whole();
      case "framing.placed.idle" -> {
        frame("trusses", f -> f.withMethod(Frame.Method.TRUSS));
        frame("places", f -> f.withPlacements(Placements.NONE));
      }
      case "framing.join.cuts", "framing.join.inside" -> layOver();
      default -> {
        // Framed well enough.
      }
    }
  }

  private void figures(Phrase wrong) {
    switch (wrong.key()) {
      case "framing.seat.deep", "framing.seat.short" -> heels(figure(wrong, 3));
      case "framing.seat.none" -> heels(figure(wrong, 2));
      case "framing.post.thin" -> thicken(figure(wrong, 2));
      case "framing.hip.setback" -> frame("setback", f -> f.withHipSetback(Optional.empty()));
      case "framing.ladder.close" -> lookouts();
      case "framing.chords.count", "framing.chords.off", "framing.chords.gap" -> chords(wrong);
      case "plan.ceiling" ->
          frame("ceiling", f -> f.withChoices(f.choices().withCeiling(Optional.empty())));
      case "plan.thick" -> usualSpacing();
      case "plan.deck.negative", "deck.sizes" -> usualDeck();
      case "plan.notPositive" -> usual(((Phrase) wrong.parts().get(0)).key());
      default -> {
        // Nothing that a figure cures.
      }
    }
  }

  private void add(String key, Command command, Object... parts) {
    cures.add(Cures.named(key, command, parts));
  }

  private void frame(String key, UnaryOperator<Frame> change) {
    add(key, PartCommands.frame(plan, List.of(part.id()), change), part.name());
  }

  /** Up to the next mark of a tape. */
  private double figure(Phrase phrase, int at) {
    return Marks.up(plan.unit(), ((LengthFigure) phrase.parts().get(at)).length());
  }

  private String length(double length) {
    return Naming.length(plan, length);
  }

  private void heels(double heel) {
    List<Ref.OfSide> eaves = new ArrayList<>();
    for (int i = 0; i < part.sideCount(); i++) {
      if (part.edges().get(i).kind() == EdgeKind.EAVE) {
        eaves.add(new Ref.OfSide(part.id(), i));
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

  private String name(String id) {
    return plan.part(id).map(Part::name).orElse(id);
  }

  /** A figure of the frame or the sheets that must be above zero goes back to the usual. */
  private void usual(String figure) {
    Frame frame = Frame.of(plan.unit());
    switch (figure) {
      case "plan.figure.spacing" -> usualSpacing();
      case "plan.figure.thickness" -> frame("usual", f -> f.withThickness(frame.thickness()));
      case "plan.figure.hipSetback" -> frame("usual", f -> f.withHipSetback(Optional.empty()));
      case "plan.figure.haul" ->
          frame("usual", f -> f.withChoices(f.choices().withHaul(Optional.empty())));
      case "plan.figure.plateWidth" ->
          frame("usual", f -> sticks(f, s -> s.withPlateWidth(Optional.empty())));
      case "plan.figure.post" -> frame("usual", f -> sticks(f, s -> s.withPost(Optional.empty())));
      case "plan.figure.firstCourse" -> wholeCourses();
      default -> usualDeck();
    }
  }

  private static Frame sticks(Frame frame, UnaryOperator<StickChoices> edit) {
    return frame.withChoices(frame.choices().withSticks(edit.apply(frame.choices().sticks())));
  }

  private void wholeCourses() {
    String label = Messages.text("cure.courses", part.name());
    cures.add(
        new Cure(
            label,
            Command.of(
                label,
                p ->
                    p.part(part.id())
                        .map(
                            now -> {
                              Part whole =
                                  now.withDeck(now.deck().withFirstCourse(Optional.empty()));
                              for (int i = 0; i < whole.sideCount(); i++) {
                                Edge edge = whole.edges().get(i);
                                whole = whole.withEdge(i, edge.withFirstCourse(Optional.empty()));
                              }
                              return p.withPart(whole);
                            })
                        .orElse(p))));
  }

  private void whole() {
    frame(
        "whole",
        f -> {
          var choices = f.choices();
          return f.withMethod(Frame.Method.RAFTER)
              .withChoices(choices.withRuns(choices.runs().withLegs(RunChoices.Legs.WHOLE)));
        });
  }

  private void lookouts() {
    Defaults usual = Defaults.of(plan.unit());
    double spacing = usual.lookoutSpacing();
    Command command =
        PlanCommands.defaults(
            d ->
                new Defaults(
                    d.slope(),
                    d.overhang(),
                    d.heel(),
                    d.fascia(),
                    d.ridgeBlockRelief(),
                    d.lookoutFirst(),
                    spacing,
                    d.extras()));
    add("lookouts", command, length(spacing));
  }

  /** A chord read wrongly off the supplier's list, or the layout's own in place of the list. */
  private void chords(Phrase wrong) {
    for (Join join : plan.joins()) {
      if (join.upper().equals(part.id()) && !join.chords().isEmpty()) {
        if (wrong.key().equals("framing.chords.gap") && wrong.parts().size() == 5) {
          int number = Integer.parseInt(wrong.parts().get(0).in(Language.ENGLISH));
          double laid = ((LengthFigure) wrong.parts().get(4)).length();
          add(
              "chord",
              PartCommands.join(join.withChords(chords(join, number, laid))),
              number,
              length(laid));
        }
        add("chords", PartCommands.join(join.withChords(List.of())), part.name());
      }
    }
  }

  /** With another length for one; they are numbered from the longest. */
  private static List<Double> chords(Join join, int number, double length) {
    List<Double> sorted = new ArrayList<>(join.chords());
    sorted.sort(Comparator.reverseOrder());
    sorted.set(number - 1, length);
    return sorted;
  }

  private void usualSpacing() {
    double usual = Frame.of(plan.unit()).spacing();
    add("spacing", PartCommands.spacing(plan, List.of(part.id()), usual), length(usual));
  }

  private void usualDeck() {
    Deck usual = Deck.of(plan.unit());
    add("deck", PartCommands.deck(plan, List.of(part.id()), d -> usual), length(usual.thickness()));
  }
}
