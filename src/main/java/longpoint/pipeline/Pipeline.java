package longpoint.pipeline;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longpoint.deck.DeckPlan;
import longpoint.deck.Sheathing;
import longpoint.field.OnSiteCheck;
import longpoint.field.SiteAids;
import longpoint.field.chalk.Chalk;
import longpoint.field.chalk.ChalkSheet;
import longpoint.field.lumber.Lumber;
import longpoint.field.lumber.LumberChoices;
import longpoint.field.takeoff.TakeOff;
import longpoint.field.takeoff.TakeOffChoices;
import longpoint.framing.Framing;
import longpoint.framing.FramingSet;
import longpoint.plan.Plan;
import longpoint.plan.PlanCheck;
import longpoint.plan.Problem;
import longpoint.surface.Roof;
import longpoint.surface.RoofMemory;
import longpoint.surface.RoofSurface;

/** The one way from what the user drew to what the crew needs. */
public final class Pipeline {
  /** What a plan goes through, as people would call it. */
  public enum Stage {
    ROOF,
    FRAME,
    DECK,
    LISTS
  }

  private Pipeline() {}

  /**
   * Works out the whole design. A plan with mistakes gives a design with problems and whatever
   * could still be solved; it never throws for what a user can draw. Interrupting the thread calls
   * it off: then it ends with {@link longpoint.stop.CalledOff} within a few milliseconds.
   */
  public static Design solve(Plan plan) {
    return solve(plan, new RoofMemory());
  }

  /**
   * As {@link #solve(Plan)}, without solving again the roofs of parts that have not changed.
   *
   * @param memory of earlier plans; it never changes an answer
   */
  public static Design solve(Plan plan, RoofMemory memory) {
    return solve(plan, memory, stage -> {});
  }

  /**
   * As {@link #solve(Plan, RoofMemory)}, for those who watch it.
   *
   * @param told each stage as it begins
   * @throws longpoint.stop.CalledOff when the thread has been interrupted
   */
  public static Design solve(Plan plan, RoofMemory memory, Consumer<Stage> told) {
    List<Problem> plain = PlanCheck.check(plan);
    told.accept(Stage.ROOF);
    RoofSurface surface = Roof.solve(plan, memory);
    told.accept(Stage.FRAME);
    FramingSet framing = Framing.solve(plan, surface);
    told.accept(Stage.DECK);
    DeckPlan deck = Sheathing.lay(plan, surface, framing);
    told.accept(Stage.LISTS);
    List<ChalkSheet> chalk = Chalk.sheets(plan, framing, deck);
    TakeOff takeOff = TakeOff.of(plan, surface, deck, TakeOffChoices.of(plan));
    Lumber lumber = Lumber.of(plan, surface, framing, LumberChoices.of(plan));
    OnSiteCheck onSite = SiteChecks.whole(plan, surface, framing);
    SiteAids aids = SiteAids.of(plan, surface, framing);
    return new Design(
        plan,
        surface,
        framing,
        deck,
        chalk,
        takeOff,
        lumber,
        onSite,
        aids,
        worstFirst(
            plan,
            plain,
            List.of(
                surface.problems(),
                framing.problems(),
                deck.problems(),
                takeOff.problems(),
                lumber.problems(),
                onSite.problems(plan),
                aids.problems())));
  }

  /**
   * The roof and its frame alone, for showing while the user is still drawing: the search for the
   * fewest sheets takes longer than a frame on the screen. Deck, chalk lines, take-off and lumber
   * are left empty.
   *
   * @param memory as for {@link #solve(Plan, RoofMemory)}
   */
  public static Design sketch(Plan plan, RoofMemory memory) {
    List<Problem> plain = PlanCheck.check(plan);
    RoofSurface surface = Roof.solve(plan, memory);
    FramingSet framing = Framing.solve(plan, surface);
    OnSiteCheck onSite = SiteChecks.quick(plan, framing);
    return new Design(
        plan,
        surface,
        framing,
        DeckPlan.NONE,
        List.of(),
        TakeOff.NONE,
        Lumber.NONE,
        onSite,
        SiteAids.NONE,
        worstFirst(
            plan, plain, List.of(surface.problems(), framing.problems(), onSite.problems(plan))));
  }

  /** Each with its places named as the plan's user names them, by the plan's north. */
  private static List<Problem> worstFirst(
      Plan plan, List<Problem> checked, List<List<Problem>> solved) {
    Set<String> told =
        checked.stream().filter(Pipeline::isError).map(Pipeline::part).collect(Collectors.toSet());
    // A part the check has found wrong cannot be solved either; why, the user has been told once.
    Stream<Problem> more =
        solved.stream().flatMap(List::stream).filter(p -> !isError(p) || !told.contains(part(p)));
    return Stream.concat(checked.stream(), more)
        .map(p -> p.in(plan))
        .distinct()
        .sorted(Comparator.comparing(Problem::level))
        .toList();
  }

  private static boolean isError(Problem problem) {
    return problem.level() == Problem.Level.ERROR;
  }

  /** The part a problem is about: what stands before the slash of a side. */
  private static String part(Problem problem) {
    int slash = problem.where().lastIndexOf('/');
    return slash < 0 ? problem.where() : problem.where().substring(0, slash);
  }
}
