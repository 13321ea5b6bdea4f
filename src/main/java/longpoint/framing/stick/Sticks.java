package longpoint.framing.stick;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import longpoint.framing.Shop;
import longpoint.framing.rafter.Incline;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Meeting;
import longpoint.framing.run.Mouth;
import longpoint.framing.run.Run;
import longpoint.geometry.Segment;
import longpoint.plan.Edge;
import longpoint.plan.Frame;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.surface.RoofSurface;

/** Front door of this package: every rafter of the runs framed with rafters. */
public final class Sticks {
  /** Two rafters are one if no length differs by more than this share of the finest mark. */
  private static final double SAME = 1.0 / 16;

  private Sticks() {}

  /**
   * @param runs those to be framed
   * @param meetings of the whole plan
   * @param mouths where tails are left off
   * @param irregular parts that are not one straight run; their rafters are read off the roof
   */
  public static List<Rafter> lay(
      List<Run> runs,
      List<Meeting> meetings,
      List<Mouth> mouths,
      List<Part> irregular,
      Plan plan,
      RoofSurface surface) {
    Shop shop = Shop.of(plan.unit());
    List<Stick> sticks = new ArrayList<>();
    for (Part part : irregular) {
      sticks.addAll(PlaneSticks.lay(plan, part, surface, mouths, shop.mark()));
    }
    Set<String> done = irregular.stream().map(Part::id).collect(Collectors.toSet());
    for (Run run : runs) {
      if (run.part().frame().method() == Frame.Method.RAFTER && !done.contains(run.part().id())) {
        sticks.addAll(RunSticks.lay(run, meetings, mouths));
      }
    }
    for (Run run : runs) {
      for (Bank end : List.of(Bank.START, Bank.END)) {
        if (hasHipRafters(run, end)) {
          sticks.addAll(RunSticks.hipEnd(run, end));
        }
      }
    }
    for (Meeting m : meetings) {
      Part upper = m.upper().part();
      boolean rafters = upper.frame().method() == Frame.Method.RAFTER;
      if (!upper.existing() && !done.contains(upper.id()) && (rafters || !m.takesValleyTrusses())) {
        sticks.addAll(MeetingSticks.lay(m));
      }
    }
    return share(sticks.stream().filter(Stick::climbs).toList(), shop);
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
    return RunSticks.stations(run, Bank.LOW);
  }

  private static List<Rafter> share(List<Stick> sticks, Shop shop) {
    Map<String, List<Stick>> groups = new LinkedHashMap<>();
    for (Stick stick : sticks) {
      groups.computeIfAbsent(key(stick, shop.mark() * SAME), k -> new ArrayList<>()).add(stick);
    }
    Map<RafterKind, Integer> numbers = new HashMap<>();
    List<Rafter> rafters = new ArrayList<>();
    for (List<Stick> group : groups.values()) {
      int number = numbers.merge(group.get(0).kind(), 1, Integer::sum);
      rafters.add(rafter(group, group.get(0).kind().letter() + number));
    }
    return List.copyOf(rafters);
  }

  private static String key(Stick s, double same) {
    return s.kind()
        + "/"
        + s.run()
        + "/"
        + Math.round(s.line().run() / same)
        + "/"
        + Math.round(s.cut().run() / same)
        + "/"
        + Math.round(s.cut().rise() / same);
  }

  private static Rafter rafter(List<Stick> group, String mark) {
    Stick s = group.get(0);
    Incline line = s.line();
    return new Rafter(
        mark,
        s.kind(),
        s.part(),
        s.run(),
        group.size(),
        line.run(),
        line.rise(),
        line.length(),
        s.atFoot().shortening(),
        s.atHead().shortening(),
        new Incline(s.tail(), s.slope()).length(),
        s.cut().length(),
        line.plumbCut(),
        line.levelCut(),
        line.sideCut(s.atFoot().angle()),
        line.sideCut(s.atHead().angle()),
        s.drop(),
        group.stream().map(g -> new Segment(g.foot(), g.head())).toList());
  }
}
