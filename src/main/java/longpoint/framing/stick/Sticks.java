package longpoint.framing.stick;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import longpoint.framing.Shop;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Meeting;
import longpoint.framing.run.Mouth;
import longpoint.framing.run.Run;
import longpoint.geometry.Point;
import longpoint.plan.Edge;
import longpoint.plan.Frame;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.surface.RoofSurface;
import longpoint.units.LengthFigure;
import longpoint.wording.Phrase;

/** Front door of this package: every rafter of the runs framed with rafters. */
public final class Sticks {
  /** Cosine of the angle within which two rafters climb one plane. */
  private static final double SAME_WAY = 0.999;

  private Sticks() {}

  /**
   * @param runs those to be framed
   * @param meetings of the whole plan
   * @param mouths where tails are left off
   * @param irregular parts that are not one straight run; their rafters are read off the roof
   */
  public static Laid lay(
      List<Run> runs,
      List<Meeting> meetings,
      List<Mouth> mouths,
      List<Part> irregular,
      Plan plan,
      RoofSurface surface) {
    Shop shop = Shop.of(plan.unit());
    List<Stick> sticks = new ArrayList<>();
    List<Problem> openings = new ArrayList<>();
    for (Part part : irregular) {
      sticks.addAll(
          PlaneSticks.lay(plan, part, surface, mouths, Opening.all(meetings), shop.mark()));
    }
    sticks = new ArrayList<>(OnDeck.stand(plan, irregular, surface, sticks, openings, shop.mark()));
    List<Stick> hipEnds = new ArrayList<>();
    Set<String> done = irregular.stream().map(Part::id).collect(Collectors.toSet());
    for (Run run : runs) {
      if (run.part().frame().method() == Frame.Method.RAFTER && !done.contains(run.part().id())) {
        sticks.addAll(RunSticks.lay(run, meetings, mouths, plan.unit()));
      }
    }
    for (Run run : runs) {
      for (Bank end : List.of(Bank.START, Bank.END)) {
        if (hasHipRafters(run, end)) {
          hipEnds.addAll(RunSticks.hipEnd(run, end, plan.unit()));
        }
      }
    }
    for (Meeting m : meetings) {
      Part upper = m.upper().part();
      Optional<Opening> opening = Opening.of(m);
      List<Double> cut = RunMarks.stations(m.lower(), m.bank());
      if (opening.isPresent()) {
        double thickness = m.lower().part().frame().thickness();
        if (!m.lower().part().existing()) {
          cut = opening.get().places(sticks, thickness).stream().map(m::along).toList();
        }
        sticks = opening.get().frame(sticks, thickness);
        openings.add(headed(m));
      }
      boolean rafters = upper.frame().method() == Frame.Method.RAFTER;
      if (!upper.existing() && !done.contains(upper.id()) && (rafters || !m.takesValleyTrusses())) {
        List<Stick> joining = MeetingSticks.lay(m, runs, opening, cut);
        sticks.addAll(joining);
        for (Stick valley : joining) {
          sticks = crossed(sticks, valley, m);
        }
      }
    }
    Stock stock = Stock.of(plan);
    List<Problem> problems = new ArrayList<>(openings);
    List<Stick> settled = new ArrayList<>();
    for (Part part : plan.parts()) {
      List<Stick> own = sticks.stream().filter(s -> s.part().equals(part.id())).toList();
      List<Stick> standing = RidgeBoards.join(own.stream().filter(Stick::climbs).toList());
      List<Stick> all =
          Peaks.settle(
              standing,
              part.frame().thickness(),
              part.frame().choices().sticks().soundPost(),
              3 * part.frame().thickness());
      List<Stick> kept = all.stream().filter(s -> !isShort(s, stock)).toList();
      settled.addAll(kept);
      if (kept.size() < all.size()) {
        problems.add(leftOut(part, all.size() - kept.size(), stock, plan));
      }
    }
    settled.addAll(hipEnds.stream().filter(Stick::climbs).toList());
    return new Laid(Marking.share(settled, plan), problems);
  }

  /** A jack without as much length as it is deep: there a nailer does. */
  private static boolean isShort(Stick s, Stock stock) {
    return switch (s.kind()) {
      case HIP_JACK, VALLEY_JACK, CRIPPLE ->
          s.cut().shortened(s.tail() + s.over()).length() < stock.depth(s.kind());
      case COMMON, HIP, VALLEY, RIDGE, TRIMMER, HEADER -> false;
    };
  }

  private static Problem headed(Meeting m) {
    Part main = m.lower().part();
    Part dormer = m.upper().part();
    return Problem.note(
        dormer.id(), Phrase.of("framing.opening", PlaceName.of(dormer), PlaceName.of(main)));
  }

  private static Problem leftOut(Part part, int count, Stock stock, Plan plan) {
    return Problem.note(
        part.id(),
        Phrase.of(
            "framing.stick.short",
            PlaceName.of(part),
            count,
            new LengthFigure(stock.rafter(), plan.unit())));
  }

  /** The rafters of a plane cut at the valley that runs on through it. */
  private static List<Stick> crossed(List<Stick> sticks, Stick valley, Meeting m) {
    if (valley.kind() != RafterKind.VALLEY) {
      return sticks;
    }
    Set<String> parts = Set.of(m.lower().part().id(), m.upper().part().id());
    Point up = m.upper().axes().along();
    return Crossing.cut(
        sticks,
        valley,
        m.lower().part().frame().thickness(),
        s -> parts.contains(s.part()) && s.up().unit().dot(up) > SAME_WAY);
  }

  /** Whether an end of a run of trusses is framed with rafters. */
  private static boolean hasHipRafters(Run run, Bank end) {
    return run.part().frame().method() == Frame.Method.TRUSS
        && run.bound(end).isEave()
        && run.bound(end)
            .side()
            .map(side -> run.part().edges().get(side.index()).hip())
            .equals(Optional.of(Optional.of(Edge.HipEnd.RAFTERS)));
  }

  /** Centres of a run's rafters along its ridge, rising. */
  public static List<Double> stations(Run run) {
    return RunMarks.stations(run, Bank.LOW);
  }
}
