package longpoint.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import longpoint.geometry.Bounds;
import longpoint.wording.Phrase;
import longpoint.wording.Worded;

/** Whether the joins name parts that can be joined, each over another and none in a circle. */
final class JoinCheck {
  private final Plan plan;
  private final List<Problem> problems = new ArrayList<>();

  private JoinCheck(Plan plan) {
    this.plan = plan;
  }

  static List<Problem> check(Plan plan) {
    JoinCheck check = new JoinCheck(plan);
    Set<List<String>> seen = new HashSet<>();
    List<Join> sound = new ArrayList<>();
    for (Join join : plan.joins()) {
      if (check.names(join)) {
        if (seen.add(List.of(join.upper(), join.lower()))) {
          sound.add(join);
          check.reach(join);
        } else {
          check.add(
              join.upper(),
              Phrase.of("plan.join.twice", check.name(join.upper()), check.name(join.lower())));
        }
      }
    }
    check.circles(sound);
    return check.problems;
  }

  private boolean names(Join join) {
    boolean named = known(join.upper()) & known(join.lower());
    if (named && join.upper().equals(join.lower())) {
      add(join.upper(), Phrase.of("plan.join.itself", name(join.upper())));
      return false;
    }
    return named;
  }

  private boolean known(String id) {
    if (plan.part(id).isEmpty()) {
      add("plan", Phrase.of("plan.join.unknown", id));
      return false;
    }
    return true;
  }

  /** The eaves of one part may reach the other where their walls do not. */
  private void reach(Join join) {
    Bounds upper = box(plan.part(join.upper()).orElseThrow());
    Bounds lower = box(plan.part(join.lower()).orElseThrow());
    if (upper.minX() > lower.maxX()
        || lower.minX() > upper.maxX()
        || upper.minY() > lower.maxY()
        || lower.minY() > upper.maxY()) {
      problems.add(
          Problem.warning(
              join.upper(), Phrase.of("plan.join.apart", name(join.upper()), name(join.lower()))));
    }
  }

  private Bounds box(Part part) {
    double reach = plan.sides(part).stream().mapToDouble(Side::reach).max().orElse(0);
    return part.outline().bounds().grown(Math.max(0, reach));
  }

  /** Following joins downward from any part must end: nothing lies upon itself. */
  private void circles(List<Join> joins) {
    Map<String, List<String>> below = new LinkedHashMap<>();
    for (Join join : joins) {
      below.computeIfAbsent(join.upper(), id -> new ArrayList<>()).add(join.lower());
    }
    Set<String> told = new HashSet<>();
    for (String id : below.keySet()) {
      List<String> circle = told.contains(id) ? List.of() : circle(id, below);
      if (!circle.isEmpty()) {
        told.addAll(circle);
        Worded way = name(circle.get(0));
        for (String next : circle.subList(1, circle.size())) {
          way = Phrase.of("plan.join.over", way, name(next));
        }
        add(id, Phrase.of("plan.join.circle", Phrase.of("plan.join.over", way, name(id))));
      }
    }
  }

  /** The shortest way down from a part to itself; empty if there is none. */
  private static List<String> circle(String start, Map<String, List<String>> below) {
    Map<String, String> above = new HashMap<>();
    Deque<String> open = new ArrayDeque<>(List.of(start));
    while (!open.isEmpty()) {
      String id = open.remove();
      for (String next : below.getOrDefault(id, List.of())) {
        if (next.equals(start)) {
          List<String> way = new ArrayList<>();
          for (String step = id; step != null; step = above.get(step)) {
            way.add(0, step);
          }
          return way;
        }
        if (above.putIfAbsent(next, id) == null) {
          open.add(next);
        }
      }
    }
    return List.of();
  }

  private PlaceName name(String id) {
    return PlaceName.part(id).in(plan);
  }

  private void add(String where, Phrase wrong) {
    problems.add(Problem.error(where, wrong));
  }
}
