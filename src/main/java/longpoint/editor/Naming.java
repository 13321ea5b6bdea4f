package longpoint.editor;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.units.LengthText;

/** What things are called in the names of edits. */
final class Naming {
  private Naming() {}

  /** One side by its name, several by their number. */
  static String sides(Plan plan, List<Ref.OfSide> sides) {
    List<Ref.OfSide> there = sides.stream().filter(s -> s.in(plan)).toList();
    return there.size() == 1
        ? WallName.of(plan.part(there.get(0).part()).orElseThrow(), there.get(0).side())
        : Messages.text("naming.sides", there.size());
  }

  /** Names of parts in the order given. */
  static String parts(Plan plan, List<String> parts) {
    return parts.stream()
        .flatMap(id -> plan.part(id).map(Part::name).stream())
        .collect(Collectors.joining(", "));
  }

  static String length(Plan plan, double length) {
    return LengthText.of(length, plan.unit());
  }

  /** The figure, or that the plan's default is followed. */
  static String orDefault(Optional<String> figure) {
    return figure.orElseGet(() -> Messages.text("naming.default"));
  }
}
