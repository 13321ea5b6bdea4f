package longpoint.framing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longpoint.framing.edge.EdgeBoards;
import longpoint.framing.edge.LevelFascia;
import longpoint.framing.gable.BareRakes;
import longpoint.framing.gable.GableWall;
import longpoint.framing.gable.HighWall;
import longpoint.framing.gable.Ladder;
import longpoint.framing.gable.Ladders;
import longpoint.framing.run.FoundRuns;
import longpoint.framing.run.Mouth;
import longpoint.framing.run.Run;
import longpoint.framing.run.RunFinder;
import longpoint.framing.run.ShedSeats;
import longpoint.framing.stick.HeldBy;
import longpoint.framing.stick.Laid;
import longpoint.framing.stick.Rafter;
import longpoint.framing.stick.RafterTape;
import longpoint.framing.stick.RoofOpening;
import longpoint.framing.stick.StickChecks;
import longpoint.framing.stick.Sticks;
import longpoint.framing.truss.Girder;
import longpoint.framing.truss.Marks;
import longpoint.framing.truss.OwnPlaces;
import longpoint.framing.truss.Placed;
import longpoint.framing.truss.RidgeBlocks;
import longpoint.framing.truss.Row;
import longpoint.framing.truss.RunLayout;
import longpoint.framing.truss.TapeMarks;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.ValleyTrusses;
import longpoint.framing.valley.ValleySet;
import longpoint.framing.valley.ValleySets;
import longpoint.plan.Frame;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.PlanCheck;
import longpoint.plan.Problem;
import longpoint.stop.CalledOff;
import longpoint.surface.RoofSurface;
import longpoint.wording.Phrase;

/** Front door of this package: from a plan and its roof surface to every stick of the frame. */
public final class Framing {
  private Framing() {}

  /**
   * The frame of a plan. What cannot be framed is left out and named in the problems; what can
   * still be framed is there. Never throws for what a user can draw.
   *
   * <p>Parts that already exist are not framed again; new runs still meet them.
   *
   * @param drawn what the user drew
   * @param surface the roof of the same plan
   */
  public static FramingSet solve(Plan drawn, RoofSurface surface) {
    CalledOff.check();
    Plan sound = sound(drawn);
    Shop shop = Shop.of(sound.unit());
    ShedSeats seats = ShedSeats.of(sound, RunFinder.find(sound).meetings());
    Plan plan = seats.plan();
    FoundRuns found = RunFinder.find(plan);
    List<Mouth> mouths = Mouth.open(plan, found.meetings());
    List<RunLayout> layouts = layouts(found, mouths, shop);
    ValleySets valleys = ValleySets.stand(plan, found.meetings());
    Marks marks = Marks.share(placed(found, layouts, valleys), shop);
    List<Problem> problems = new ArrayList<>(found.problems());
    problems.addAll(seats.problems());
    valleys.problems().stream().filter(p -> !isSaid(p, surface)).forEach(problems::add);
    problems.addAll(opened(found));
    problems.addAll(girdersOnGirders(plan, marks));
    layouts.forEach(layout -> problems.addAll(layout.problems()));
    problems.addAll(OwnPlaces.check(plan, layouts.stream().map(RunLayout::run).toList()));
    problems.addAll(Ladders.check(plan, shop));
    Laid laid =
        Sticks.lay(
            found.runs().stream().filter(Framing::isNew).toList(),
            found.meetings(),
            mouths,
            irregular(plan, found),
            plan,
            surface);
    List<Rafter> rafters = HeldBy.name(laid.rafters(), marks.trusses());
    List<Ladder> ladders = ladders(found, layouts, plan, shop);
    problems.addAll(BareRakes.check(plan, surface, ladders, shop.mark()));
    problems.addAll(laid.problems());
    problems.addAll(StickChecks.check(plan, rafters));
    return new FramingSet(
        marks.trusses(),
        marks.marks(),
        layouts.stream().map(TapeMarks::of).toList(),
        marks.girders(),
        valleys.sets(),
        blocks(plan, layouts, valleys, shop),
        ladders,
        gableWalls(found, plan),
        highWalls(found, plan),
        rafters,
        RafterTape.of(plan, rafters),
        RoofOpening.of(found.meetings()),
        EdgeBoards.of(newParts(plan), surface, shop),
        LevelFascia.find(plan, found.meetings(), shop),
        found.proposals(),
        mouths,
        problems);
  }

  /** The plan without the parts that {@link PlanCheck} has already spoken against. */
  private static Plan sound(Plan plan) {
    Set<String> wrong =
        PlanCheck.check(plan).stream()
            .filter(p -> p.level() == Problem.Level.ERROR)
            .map(p -> p.where().split("/")[0])
            .collect(Collectors.toSet());
    return plan.withParts(
        wrong.contains("plan")
            ? List.of()
            : plan.parts().stream().filter(p -> !wrong.contains(p.id())).toList());
  }

  private static Set<String> newParts(Plan plan) {
    return plan.parts().stream()
        .filter(p -> !p.existing())
        .map(Part::id)
        .collect(Collectors.toSet());
  }

  /** Parts without runs, and those framed with rafters that are more than one plain run. */
  private static List<Part> irregular(Plan plan, FoundRuns found) {
    return plan.parts().stream()
        .filter(p -> !p.existing() && p.frame().method() != Frame.Method.NONE)
        .filter(p -> !isOneRun(p, found) && !isWings(p, found))
        .filter(p -> !hasRuns(p, found) || hasRafters(p))
        .toList();
  }

  private static boolean hasRafters(Part part) {
    return part.frame().method() == Frame.Method.RAFTER;
  }

  private static boolean hasRuns(Part part, FoundRuns found) {
    return found.runs().stream().anyMatch(r -> r.part().id().equals(part.id()));
  }

  private static boolean isOneRun(Part part, FoundRuns found) {
    List<Run> own = found.runs().stream().filter(r -> r.part().id().equals(part.id())).toList();
    return own.size() == 1 && own.get(0).extensions().isEmpty();
  }

  /** Whether every run of a part comes in over another part, as those of a cross gable do. */
  private static boolean isWings(Part part, FoundRuns found) {
    return hasRuns(part, found)
        && found.runs().stream()
            .filter(r -> r.part().id().equals(part.id()))
            .allMatch(
                r ->
                    r.extensions().isEmpty()
                        && found.meetings().stream()
                            .anyMatch(
                                m ->
                                    m.upper().id().equals(r.id())
                                        && !m.lower().part().id().equals(part.id())));
  }

  private static boolean isNew(Run run) {
    return !run.part().existing();
  }

  private static boolean trussed(Run run) {
    return isNew(run) && run.part().frame().method() == Frame.Method.TRUSS;
  }

  private static List<RunLayout> layouts(FoundRuns found, List<Mouth> mouths, Shop shop) {
    return found.runs().stream()
        .filter(Framing::trussed)
        .map(
            run -> {
              CalledOff.check();
              return RunLayout.lay(
                  run, OwnPlaces.of(run, found.runs()), found.meetings(), mouths, shop);
            })
        .toList();
  }

  private static List<Placed> placed(FoundRuns found, List<RunLayout> layouts, ValleySets valleys) {
    List<Placed> placed = new ArrayList<>();
    layouts.forEach(layout -> placed.addAll(layout.trusses()));
    for (ValleySet set : valleys.sets()) {
      Run wing = run(found, set.upper());
      if (trussed(wing)) {
        placed.addAll(ValleyTrusses.of(set, wing));
      }
    }
    return placed;
  }

  private static Run run(FoundRuns found, String id) {
    return found.runs().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
  }

  private static List<RidgeBlocks> blocks(
      Plan plan, List<RunLayout> layouts, ValleySets valleys, Shop shop) {
    double relief = plan.defaults().ridgeBlockRelief();
    List<RidgeBlocks> blocks = new ArrayList<>();
    for (RunLayout layout : layouts) {
      blocks.addAll(RidgeBlocks.along(layout, relief, shop));
      for (ValleySet set : valleys.sets()) {
        if (set.upper().equals(layout.run().id())) {
          blocks.addAll(RidgeBlocks.in(set, layout.run(), relief, shop));
        }
      }
    }
    return blocks;
  }

  private static List<Ladder> ladders(
      FoundRuns found, List<RunLayout> layouts, Plan plan, Shop shop) {
    List<Ladder> ladders = new ArrayList<>();
    for (Run run : found.runs().stream().filter(Framing::isNew).toList()) {
      CalledOff.check();
      ladders.addAll(Ladders.of(run, row(run, layouts), found.meetings(), plan.defaults(), shop));
    }
    return ladders;
  }

  private static List<GableWall> gableWalls(FoundRuns found, Plan plan) {
    return found.runs().stream()
        .filter(run -> isNew(run) && run.part().frame().method() == Frame.Method.RAFTER)
        .flatMap(run -> GableWall.of(run, found.meetings(), plan).stream())
        .toList();
  }

  private static List<HighWall> highWalls(FoundRuns found, Plan plan) {
    return found.runs().stream()
        .filter(Framing::isNew)
        .flatMap(run -> HighWall.of(run, plan).stream())
        .toList();
  }

  private static Row row(Run run, List<RunLayout> layouts) {
    return layouts.stream()
        .filter(l -> l.run().id().equals(run.id()))
        .findFirst()
        .map(RunLayout::row)
        .orElseGet(() -> Row.of(Sticks.stations(run), run.part().frame().thickness()));
  }

  /** A wing that passes over the ridge is told of once, by the roof. */
  private static boolean isSaid(Problem valley, RoofSurface surface) {
    return hasKey(valley, "framing.valley.taller")
        && surface.problems().stream()
            .filter(p -> hasKey(p, "surface.open.overRidge"))
            .anyMatch(p -> p.where().split("/")[0].equals(valley.where()));
  }

  private static boolean hasKey(Problem problem, String key) {
    return problem.wrong() instanceof Phrase said && said.key().equals(key);
  }

  /** Girders hung on girders: the load of a whole roof end on one hanger. */
  private static List<Problem> girdersOnGirders(Plan plan, Marks marks) {
    Set<String> girders = marks.girders().stream().map(Girder::truss).collect(Collectors.toSet());
    return marks.trusses().stream()
        .filter(t -> girders.contains(t.id()))
        .flatMap(
            t ->
                Stream.of(t.carriedFrom(), t.carriedTo())
                    .flatMap(Optional::stream)
                    .map(by -> girderOnGirder(plan, t, mark(marks, by))))
        .toList();
  }

  private static Problem girderOnGirder(Plan plan, Truss carried, String by) {
    return Problem.note(
        carried.part(),
        Phrase.of(
            "framing.girder.girder", PlaceName.part(carried.part()).in(plan), carried.mark(), by));
  }

  private static String mark(Marks marks, String truss) {
    return marks.trusses().stream()
        .filter(t -> t.id().equals(truss))
        .findFirst()
        .orElseThrow()
        .mark();
  }

  /** Roofs that exist and would have to be cut open. */
  private static List<Problem> opened(FoundRuns found) {
    return found.meetings().stream()
        .filter(m -> m.needsGirder() && !isNew(m.lower()) && isNew(m.upper()))
        .map(
            m ->
                Problem.warning(
                    m.lower().part().id(),
                    Phrase.of(
                        "framing.join.cuts",
                        PlaceName.of(m.lower().part()),
                        PlaceName.of(m.upper().part()))))
        .toList();
  }
}
