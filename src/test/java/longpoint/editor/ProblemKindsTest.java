package longpoint.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.wording.Phrase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every kind of problem there is: each has a plan that brings it about and a cure that takes it
 * away without an error in its place, or a reason why it has none.
 */
class ProblemKindsTest {
  private static final String BY_DESIGN = "what to draw instead is the designer's to say";
  private static final String NOTHING_WRONG = "told, and nothing need be done";
  private static final String ENGINE =
      "the engine's own doubt of its answer; no plan is known to bring it about for sure";
  private static final String TOLD_FIRST = "the plan's own check tells of it first, and cures it";

  /** Kinds that a plan brings about and no click cures. */
  private static final Map<String, String> NO_CURE =
      Map.ofEntries(
          Map.entry("framing.join.under", BY_DESIGN),
          Map.entry("framing.valley.past", BY_DESIGN),
          Map.entry("framing.valley.oneWay", BY_DESIGN),
          Map.entry("framing.girder.girder", "the supplier designs that connection"),
          Map.entry("framing.valley.small", NOTHING_WRONG),
          Map.entry("framing.stick.short", "a block or a ledger is nailed there on site"),
          Map.entry("deck.noSupports", NOTHING_WRONG),
          Map.entry("deck.taper", "the walls may stand like that; square walls are drawn by hand"),
          Map.entry(
              "deck.unsupported", "here no other start helps; where one does, it is the cure"),
          Map.entry(
              "field.shingles.low", "what is laid there instead is not the program's to say"));

  /** Kinds that no plan of the table brings about. */
  private static final Map<String, String> NO_PLAN =
      Map.ofEntries(
          Map.entry("surface.notJoined", ENGINE),
          Map.entry("surface.notFilled", ENGINE),
          Map.entry("surface.breaksOff", ENGINE),
          Map.entry("surface.part.notFilled", ENGINE),
          Map.entry("surface.noPlane", ENGINE),
          Map.entry("surface.dropsBelow", ENGINE),
          Map.entry("surface.notWorkedOut", ENGINE),
          Map.entry("surface.tangled", ENGINE),
          Map.entry("surface.sweep.counts", ENGINE),
          Map.entry("surface.sweep.crossed", ENGINE),
          Map.entry("surface.sweep.notClosed", ENGINE),
          Map.entry("surface.sameId", TOLD_FIRST),
          Map.entry("surface.overhang", TOLD_FIRST),
          Map.entry("surface.height", TOLD_FIRST),
          Map.entry("surface.clockwise", TOLD_FIRST),
          Map.entry("surface.counterClockwise", TOLD_FIRST),
          Map.entry("surface.crosses", TOLD_FIRST),
          Map.entry("surface.sweep.slope", TOLD_FIRST),
          Map.entry("surface.sweep.noEave", TOLD_FIRST),
          Map.entry("surface.sweep.noLength", TOLD_FIRST),
          Map.entry("surface.sweep.turned", TOLD_FIRST),
          Map.entry("framing.valley.taller", "the roof tells of it first: surface.open.overRidge"));

  /** Kinds that no click decides, by how their keys begin. */
  private static final Map<String, String> BY_HAND =
      Map.of(
          "field.built.", "tapes are read again on site",
          "field.supplied.", "what is delivered is the supplier's to say",
          "plan.lift.", "rigging is set where it is listed",
          "field.lift.", "rigging is set where it is listed",
          "plan.weights.", "figures come from the supplier's documents",
          "plan.loads", "figures come from the designer",
          "plan.restraint", "figures come from the supplier's documents",
          "framing.join.irregular", "an opening in such a roof is for an engineer",
          "framing.cross.", "a join is turned round where it is made");

  private static final Map<String, Plan> FAULTS = Faults.all();

  /** All kinds: keys with a cure of their own beside them, and the notes that need none. */
  private static Set<String> kinds() {
    Set<String> kinds =
        new TreeSet<>(
            Set.of(
                "framing.girder.girder",
                "framing.valley.oneWay",
                "framing.valley.small",
                "deck.noSupports",
                "deck.taper",
                "field.shingles.low",
                "surface.overtaken",
                "surface.fascia.higher",
                "surface.fascia.lower"));
    for (String bundle : List.of("plan", "surface", "framing", "deck", "field")) {
      Set<String> keys = ResourceBundle.getBundle("longpoint." + bundle + ".Messages").keySet();
      keys.stream()
          .filter(k -> k.endsWith(".cure"))
          .map(k -> bundle + "." + k.substring(0, k.length() - ".cure".length()))
          .forEach(kinds::add);
    }
    kinds.removeIf(k -> BY_HAND.keySet().stream().anyMatch(k::startsWith));
    return kinds;
  }

  @Test
  void noKindIsForgotten() {
    Set<String> known = new HashSet<>(FAULTS.keySet());
    known.addAll(NO_PLAN.keySet());
    assertThat(known).containsExactlyInAnyOrderElementsOf(kinds());
    assertThat(FAULTS.keySet()).containsAll(NO_CURE.keySet());
    assertThat(FAULTS.keySet()).doesNotContainAnyElementsOf(NO_PLAN.keySet());
  }

  static Stream<Arguments> faults() {
    return FAULTS.entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("faults")
  void aCureTakesItsProblemAway(String kind, Plan plan) {
    List<Problem> before = Pipeline.solve(plan).problems();
    Problem fault = before.stream().filter(p -> is(p, kind)).findFirst().orElseThrow();
    List<Problem> there = before.stream().filter(p -> p.where().equals(fault.where())).toList();
    List<Outcome.Commit> cures =
        Cures.at(plan, fault.where(), there).stream()
            .map(c -> (Outcome.Commit) c.command().on(plan))
            .toList();
    List<Outcome.Commit> good = cures.stream().filter(c -> cures(c, fault, before)).toList();
    if (NO_CURE.containsKey(kind)) {
      assertThat(good).as(NO_CURE.get(kind)).isEmpty();
    } else {
      assertThat(good).as("of " + cures.size()).isNotEmpty();
      assertThat(good).allMatch(c -> !c.name().isBlank());
    }
  }

  /** Fewer of its kind at its place, and no error more anywhere. */
  private static boolean cures(Outcome.Commit cure, Problem fault, List<Problem> before) {
    List<Problem> after = Pipeline.solve(cure.plan()).problems();
    return count(after, fault) < count(before, fault) && errors(after) <= errors(before);
  }

  private static long count(List<Problem> problems, Problem like) {
    return problems.stream()
        .filter(p -> p.where().equals(like.where()) && is(p, ((Phrase) like.wrong()).key()))
        .count();
  }

  private static long errors(List<Problem> problems) {
    return problems.stream().filter(p -> p.level() == Problem.Level.ERROR).count();
  }

  private static boolean is(Problem problem, String kind) {
    return problem.wrong() instanceof Phrase phrase && phrase.key().equals(kind);
  }
}
