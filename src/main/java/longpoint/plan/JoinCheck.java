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
import java.util.stream.Collectors;
import longpoint.geometry.Bounds;

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
          check.add(join.upper(), check.said(join) + " stands twice", "Delete one of the two");
        }
      }
    }
    check.circles(sound);
    return check.problems;
  }

  private boolean names(Join join) {
    boolean named = known(join.upper()) & known(join.lower());
    if (named && join.upper().equals(join.lower())) {
      add(join.upper(), name(join.upper()) + " is joined to itself", "Delete the join");
      return false;
    }
    return named;
  }

  private boolean known(String id) {
    if (plan.part(id).isEmpty()) {
      add(
          "plan",
          "A join names “" + id + "”, but no part has that id",
          "Name a part, or delete it");
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
              join.upper(),
              name(join.upper())
                  + " is joined to "
                  + name(join.lower())
                  + " but stands clear of it.",
              "Move it up to the wall, or delete the join."));
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
        String names = circle.stream().map(this::name).collect(Collectors.joining(" over "));
        add(id, "The joins run in a circle: " + names + " over " + name(id), "Delete one of them");
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

  private String said(Join join) {
    return "The join of " + name(join.upper()) + " over " + name(join.lower());
  }

  private String name(String id) {
    return plan.part(id).map(PlanCheck::name).orElse(id);
  }

  private void add(String where, String wrong, String cure) {
    problems.add(Problem.error(where, PlanCheck.capital(wrong) + ".", cure + "."));
  }
}
