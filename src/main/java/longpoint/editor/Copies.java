package longpoint.editor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longpoint.plan.Join;
import longpoint.plan.Motion;
import longpoint.plan.Part;
import longpoint.plan.Plan;

/** Adds copies of parts to a plan, each under an id and a name of its own. */
final class Copies {
  private Copies() {}

  static Plan add(Plan plan, List<String> parts, Motion to) {
    Map<String, String> fresh = new LinkedHashMap<>();
    Plan with = plan;
    for (Part part : plan.parts()) {
      if (parts.contains(part.id())) {
        Part copy =
            to.on(part)
                .withId(with.freshId(stem(part.id())))
                .withName(freshName(with, part.name()));
        fresh.put(part.id(), copy.id());
        with = with.withPart(copy);
      }
    }
    List<Join> joins = new ArrayList<>(plan.joins());
    for (Join join : plan.joins()) {
      if (fresh.containsKey(join.upper()) && fresh.containsKey(join.lower())) {
        joins.add(join.between(fresh.get(join.upper()), fresh.get(join.lower())));
      }
    }
    return with.withJoins(joins);
  }

  /** The id without the number that made it unique. */
  private static String stem(String id) {
    return id.replaceFirst("-\\d+$", "");
  }

  /** The first of name, name 2, name 3, … that no part has. */
  static String freshName(Plan plan, String name) {
    String stem = name.replaceFirst(" \\d+$", "");
    String fresh = stem;
    for (int n = 2; taken(plan, fresh); n++) {
      fresh = stem + " " + n;
    }
    return fresh;
  }

  private static boolean taken(Plan plan, String name) {
    return plan.parts().stream().anyMatch(p -> p.name().equals(name));
  }
}
