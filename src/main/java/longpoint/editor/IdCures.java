package longpoint.editor;

import java.util.ArrayList;
import java.util.List;
import longpoint.plan.Part;
import longpoint.plan.Plan;

/** Gives parts ids that tell them apart, as a plan edited by hand may not have them. */
final class IdCures {
  private IdCures() {}

  /** Cures of the id that a problem names; of {@code plan}, those of parts without any. */
  static List<Cure> of(Plan plan, String where) {
    List<Cure> cures = new ArrayList<>();
    if (where.equals("plan") && plan.parts().stream().anyMatch(p -> p.id().isBlank())) {
      cures.add(cure("id.fresh", IdCures::named));
    }
    if (plan.parts().stream().filter(p -> p.id().equals(where)).count() > 1) {
      cures.add(cure("id.apart", p -> apart(p, where), where));
    }
    if (where.indexOf('/') >= 0 && plan.part(where).isPresent()) {
      String plain = plan.freshId(where.replace('/', '-'));
      cures.add(cure("id.plain", p -> p.withPartRenamed(where, plain), where, plain));
    }
    return cures;
  }

  private static Cure cure(
      String key, java.util.function.UnaryOperator<Plan> edit, Object... parts) {
    String label = Messages.text("cure." + key, parts);
    return new Cure(label, Command.of(label, edit));
  }

  private static Plan named(Plan plan) {
    Plan rest = plan;
    for (int i = 0; i < plan.parts().size(); i++) {
      if (plan.parts().get(i).id().isBlank()) {
        rest = withId(rest, i, rest.freshId("part"));
      }
    }
    return rest;
  }

  /** The first keeps its id, and with it the joins and dimensions that name it. */
  private static Plan apart(Plan plan, String id) {
    Plan rest = plan;
    boolean first = true;
    for (int i = 0; i < plan.parts().size(); i++) {
      if (plan.parts().get(i).id().equals(id)) {
        rest = first ? rest : withId(rest, i, rest.freshId(id));
        first = false;
      }
    }
    return rest;
  }

  private static Plan withId(Plan plan, int place, String id) {
    List<Part> parts = new ArrayList<>(plan.parts());
    parts.set(place, parts.get(place).withId(id));
    return plan.withParts(parts);
  }
}
