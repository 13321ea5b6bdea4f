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
        ? WallName.of(plan, plan.part(there.get(0).part()).orElseThrow(), there.get(0).side())
        : Messages.text("naming.sides", there.size());
  }

  /** Names of parts in the order given. */
  static String parts(Plan plan, List<String> parts) {
    return parts.stream()
        .flatMap(id -> plan.part(id).map(Part::name).stream())
        .collect(Collectors.joining(", "));
  }

  /** What a deletion takes away. */
  static String gone(Plan plan, Selection selection) {
    if (!selection.parts().isEmpty()) {
      return parts(plan, selection.parts());
    }
    if (!selection.touchedParts().isEmpty()) {
      return Messages.text("naming.corners");
    }
    return selection.besides().size() == 1
        ? ref(plan, selection.besides().get(0))
        : Messages.text("naming.besides", selection.besides().size());
  }

  /** A note, a dimension or the picture. */
  static String ref(Plan plan, Ref ref) {
    if (ref instanceof Ref.OfNote note) {
      return plan.markup()
          .note(note.note())
          .map(n -> entry(new Entry.Words(n.text()), plan.unit()))
          .orElse("");
    }
    return Messages.text(ref instanceof Ref.OfDimension ? "naming.dimension" : "naming.backdrop");
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
    if (entry instanceof Entry.Words words) {
      return "“" + words.text().replace('\n', ' ') + "”";
    }
    return entry instanceof Entry.Angle angle
        ? angle.degrees() + "°"
        : LengthText.exact(((Entry.Length) entry).length(), unit);
  }

  /** How typed figures are read. */
  static String read(Entry entry, Plan plan) {
    return Messages.text("typed.enter", entry(entry, plan.unit()));
  }

  /** The figure, or that the plan's default is followed. */
  static String orDefault(Optional<String> figure) {
    return figure.orElseGet(() -> Messages.text("naming.default"));
  }
}
