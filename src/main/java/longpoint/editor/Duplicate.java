package longpoint.editor;

import java.util.List;
import java.util.Optional;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Attached;
import longpoint.plan.Motion;
import longpoint.plan.Plan;

/** Copies of what is picked, put down clear of it. */
public final class Duplicate {
  /** Share of the copied parts' width between them and the copy. */
  private static final double APART = 0.1;

  private Duplicate() {}

  /** Copies what is picked, and picks the copies. */
  public static void picked(ToolRunner runner) {
    Plan before = runner.document().plan();
    runner.apply(of(before, runner.document().selection()));
    copies(Optional.of(runner.document().plan()), before).ifPresent(runner::select);
  }

  /** Parts that a plan has and an earlier one had not; empty when there are none. */
  public static Optional<Selection> copies(Optional<Plan> plan, Plan before) {
    List<Ref> fresh =
        plan.stream()
            .flatMap(p -> p.parts().stream())
            .filter(p -> before.part(p.id()).isEmpty())
            .map(p -> Ref.part(p.id()))
            .toList();
    return fresh.isEmpty() ? Optional.empty() : Optional.of(new Selection(fresh));
  }

  /** Copies the parts that are picked, whole or in some side, with what stands against them. */
  static Command of(Plan plan, Selection picked) {
    List<String> parts = Attached.with(plan, picked.within(plan).touchedParts());
    if (parts.isEmpty()) {
      return now -> new Outcome.Refuse(Messages.text("gesture.nothing"));
    }
    Bounds box = Bounds.EMPTY;
    for (String id : parts) {
      box = box.with(plan.part(id).orElseThrow().outline().bounds());
    }
    double aside = Math.ceil((1 + APART) * box.width());
    return PartCommands.copy(plan, parts, Motion.shift(new Point(aside, 0)));
  }
}
