package longpoint.editor;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import longpoint.plan.Buying;
import longpoint.plan.Defaults;
import longpoint.plan.Handling;
import longpoint.plan.OnSite;
import longpoint.plan.Part;
import longpoint.plan.Particulars;
import longpoint.plan.Plan;

/** Edits of the plan as a whole, and of whatever is selected. */
public final class PlanCommands {
  private PlanCommands() {}

  public static Command title(String title) {
    return Command.of(Messages.text("do.title"), p -> p.withTitle(title));
  }

  /** Changes what the title block of the sheets says. */
  public static Command particulars(UnaryOperator<Particulars> edit) {
    return Command.of(
        Messages.text("do.particulars"), p -> p.withParticulars(edit.apply(p.particulars())));
  }

  /** Changes what holds wherever a side says nothing of its own. */
  public static Command defaults(UnaryOperator<Defaults> edit) {
    return Command.of(Messages.text("do.defaults"), p -> p.withDefaults(edit.apply(p.defaults())));
  }

  /** Changes what the user decides about what is bought. */
  public static Command buying(Buying buying) {
    return Command.of(Messages.text("do.buying"), p -> p.withBuying(buying));
  }

  /** Changes what was measured or delivered. */
  public static Command onSite(UnaryOperator<OnSite> edit) {
    return Command.of(Messages.text("do.onSite"), p -> p.withOnSite(edit.apply(p.onSite())));
  }

  /** Draws the walls where they stand. */
  public static Command builtWalls(Plan built) {
    return Command.of(Messages.text("do.builtWalls"), p -> built);
  }

  /** Changes what the user knows of weights, loads and restraint. */
  public static Command handling(Handling handling) {
    return Command.of(Messages.text("do.handling"), p -> p.withHandling(handling));
  }

  /**
   * Takes away what is selected: parts whole, corners so that the walls beside them close up, and a
   * courtyard with any of its sides; notes, dimensions and the picture beneath. A wall of the
   * outline cannot go by itself.
   */
  public static Command delete(Selection selection) {
    return plan -> {
      Selection there = selection.within(plan);
      return there.isEmpty() ? Outcome.NONE : delete(there, plan);
    };
  }

  private static Outcome delete(Selection selection, Plan plan) {
    List<String> whole = selection.parts();
    Plan rest = plan;
    for (String id : selection.touchedParts()) {
      if (whole.contains(id)) {
        rest = rest.withoutPart(id);
        continue;
      }
      Part part = plan.part(id).orElseThrow();
      List<Ref> pieces = selection.refs().stream().filter(r -> r.part().equals(id)).toList();
      if (Removal.hasWall(part, pieces)) {
        return new Outcome.Refuse(Messages.text("refuse.side"));
      }
      Optional<Part> less = Removal.from(part, pieces);
      if (less.isEmpty()) {
        return new Outcome.Refuse(Messages.text("refuse.corner"));
      }
      rest = rest.withPart(less.get());
    }
    rest = MarkupCommands.without(rest, selection.besides());
    String what = Naming.gone(plan, selection);
    return new Outcome.Commit(Messages.text("do.delete", what), rest);
  }
}
