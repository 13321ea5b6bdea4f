package longpoint.editor;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;

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

  /** Typed figures as they were read, to the last bit. */
  static String entry(Entry entry, LengthUnit unit) {
    if (entry instanceof Entry.Size size) {
      return LengthText.exact(size.width(), unit) + " x " + LengthText.exact(size.depth(), unit);
    }
    if (entry instanceof Entry.Polar polar) {
      return LengthText.exact(polar.length(), unit) + " < " + polar.degrees() + "°";
    }
    return entry instanceof Entry.Angle angle
        ? angle.degrees() + "°"
        : LengthText.exact(((Entry.Length) entry).length(), unit);
  }

  /** The figure, or that the plan's default is followed. */
  static String orDefault(Optional<String> figure) {
    return figure.orElseGet(() -> Messages.text("naming.default"));
  }
}
