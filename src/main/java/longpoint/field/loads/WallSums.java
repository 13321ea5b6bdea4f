package longpoint.field.loads;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import longpoint.field.loads.BearingLoad.On;
import longpoint.geometry.Segment;
import longpoint.plan.Plan;
import longpoint.plan.Side;

/**
 * Bearings on walls put together to stretches: neighbours that bring nearly the same stand in one.
 * Each bearing's stretch of wall goes half way to its neighbours.
 */
final class WallSums {
  /** Reactions this near, as a share, make one stretch. */
  private static final double ALIKE = 0.05;

  private WallSums() {}

  /** Bearings at one place, and the wall they have between their neighbours. */
  private record Stood(List<BearingLoad> bearings, double from, double to) {
    double length() {
      return to - from;
    }

    double width() {
      return bearings.stream().mapToDouble(b -> b.reaction().level()).sum() / length();
    }
  }

  static List<WallLoad> of(Plan plan, List<BearingLoad> bearings, List<Member> members) {
    Map<String, Member> byId = new HashMap<>();
    members.forEach(m -> byId.put(m.id(), m));
    Map<String, List<BearingLoad>> walls = new LinkedHashMap<>();
    bearings.stream()
        .filter(b -> b.on() == On.WALL || b.on() == On.GABLE_WALL)
        .forEach(b -> walls.computeIfAbsent(b.subject(), w -> new ArrayList<>()).add(b));
    List<WallLoad> loads = new ArrayList<>();
    for (Side side : plan.parts().stream().flatMap(p -> plan.sides(p).stream()).toList()) {
      List<BearingLoad> on = walls.getOrDefault(side.id(), List.of());
      for (BearingLoad b : on) {
        if (b.on() == On.GABLE_WALL) {
          loads.add(load(plan, side, List.of(allAlong(side, b, byId.get(b.member())))));
        }
      }
      loads.addAll(stretches(plan, side, on.stream().filter(b -> b.on() == On.WALL).toList()));
    }
    return loads;
  }

  private static Stood allAlong(Side side, BearingLoad b, Member member) {
    double from = side.wall().along(member.axis().from());
    double to = side.wall().along(member.axis().to());
    return new Stood(List.of(b), Math.min(from, to), Math.max(from, to));
  }

  /** Place of a bearing along its wall. */
  static double along(Plan plan, BearingLoad b) {
    return wall(plan, b.subject()).map(w -> w.along(b.at())).orElse(0.0);
  }

  private static Optional<Segment> wall(Plan plan, String id) {
    return plan.parts().stream()
        .flatMap(p -> plan.sides(p).stream())
        .filter(s -> s.id().equals(id))
        .map(Side::wall)
        .findFirst();
  }

  private static List<WallLoad> stretches(Plan plan, Side side, List<BearingLoad> bearings) {
    List<BearingLoad> row = new ArrayList<>(bearings);
    row.sort(Comparator.comparingDouble(b -> side.wall().along(b.at())));
    // What hangs on a girder stands on its post; the wall beside it has its neighbours.
    row.removeIf(b -> b.carries() > 0);
    double spacing = plan.part(side.part()).orElseThrow().frame().spacing();
    double thickness = plan.part(side.part()).orElseThrow().frame().thickness();
    List<Stood> stood = new ArrayList<>();
    int from = 0;
    while (from < row.size()) {
      int to = from + 1;
      double here = side.wall().along(row.get(from).at());
      while (to < row.size() && side.wall().along(row.get(to).at()) - here <= 2 * thickness) {
        to++;
      }
      double before = from == 0 ? 2 * here : here - side.wall().along(row.get(from - 1).at());
      double last = side.wall().along(row.get(to - 1).at());
      double after =
          to == row.size()
              ? 2 * (side.wall().length() - last)
              : side.wall().along(row.get(to).at()) - last;
      double start = here - Math.max(thickness, Math.min(before, spacing)) / 2;
      double end = last + Math.max(thickness, Math.min(after, spacing)) / 2;
      stood.add(new Stood(row.subList(from, to), start, end));
      from = to;
    }
    List<WallLoad> loads = new ArrayList<>();
    int first = 0;
    for (int i = 1; i <= stood.size(); i++) {
      if (i == stood.size() || !alike(stood.get(i - 1), stood.get(i))) {
        loads.add(load(plan, side, stood.subList(first, i)));
        first = i;
      }
    }
    return loads;
  }

  private static boolean alike(Stood a, Stood b) {
    double more = Math.max(Math.abs(a.width()), Math.abs(b.width()));
    return Math.abs(b.from() - a.to()) <= 1e-6 * (1 + Math.abs(a.to()))
        && Math.abs(a.width() - b.width()) <= ALIKE * more;
  }

  private static WallLoad load(Plan plan, Side side, List<Stood> stood) {
    Amount reaction = Amount.NONE;
    double area = 0;
    Set<String> marks = new LinkedHashSet<>();
    int count = 0;
    for (BearingLoad b : stood.stream().flatMap(s -> s.bearings().stream()).toList()) {
      reaction = reaction.plus(b.reaction());
      area += b.area();
      marks.add(b.mark());
      count++;
    }
    double from = stood.get(0).from();
    double to = stood.get(stood.size() - 1).to();
    double length = to - from;
    Force force = Force.of(reaction, plan.handling().loads(), plan.unit());
    return new WallLoad(
        side.id(),
        from,
        to,
        List.copyOf(marks),
        count,
        area,
        reaction.level() / length,
        reaction,
        force,
        force.along(length, plan.unit()));
  }
}
