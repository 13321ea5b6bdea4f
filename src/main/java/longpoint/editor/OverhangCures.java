package longpoint.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.units.LengthFigure;
import longpoint.wording.Phrase;

/** Cures of overhangs that run into each other: as long as there is room for, or none at all. */
final class OverhangCures {
  private final Plan plan;
  private final Part part;
  private final List<Cure> cures = new ArrayList<>();

  private OverhangCures(Plan plan, Part part) {
    this.plan = plan;
    this.part = part;
  }

  static List<Cure> of(Plan plan, Part part, Problem problem) {
    OverhangCures all = new OverhangCures(plan, part);
    if (problem.wrong() instanceof Phrase wrong) {
      switch (wrong.key()) {
        case "surface.crowded" -> all.shorten(sides(wrong), figure(problem).orElse(0.0));
        case "surface.noRoom" -> sides(wrong).forEach(all::beside);
        case "surface.tangled" -> all.none();
        default -> {
          // About something else.
        }
      }
    }
    return all.cures;
  }

  private static List<Integer> sides(Phrase wrong) {
    return wrong.parts().stream()
        .filter(p -> p instanceof PlaceName place && place.side() >= 0)
        .map(p -> ((PlaceName) p).side())
        .toList();
  }

  /** The longest overhangs that clear each other, which the cure's words name. */
  private static Optional<Double> figure(Problem problem) {
    return problem.mend() instanceof Phrase mend
            && mend.key().equals("surface.crowded.under")
            && mend.parts().get(0) instanceof LengthFigure figure
        ? Optional.of(figure.length())
        : Optional.empty();
  }

  private void shorten(List<Integer> sides, double touching) {
    double room = Math.max(0, Marks.under(plan.unit(), touching));
    List<Ref.OfSide> over =
        sides.stream()
            .filter(s -> plan.side(part, s).overhang() > room)
            .map(s -> new Ref.OfSide(part.id(), s))
            .toList();
    if (!over.isEmpty()) {
      Command command = SideCommands.overhang(plan, over, Optional.of(room));
      cures.add(
          Cures.cure("overhangs", command, Naming.sides(plan, over), Naming.length(plan, room)));
    }
  }

  /** The two walls beside one that their overhangs leave no room for. */
  private void beside(int side) {
    Segment wall = part.side(side);
    List<Integer> beside = new ArrayList<>();
    double fascia = 0;
    for (Side other : plan.sides(part)) {
      boolean meets =
          other.wall().to().equals(wall.from()) || other.wall().from().equals(wall.to());
      if (other.index() != side && meets) {
        beside.add(other.index());
        fascia = Math.max(fascia, other.fascia());
      }
    }
    shorten(beside, Math.max(0, wall.length() / 2 - fascia));
    shorten(beside, 0);
    beside.add(side);
    usualHeels(beside);
  }

  /** Fascias near one level leave each wall its room. */
  private void usualHeels(List<Integer> sides) {
    List<Ref.OfSide> own =
        sides.stream()
            .filter(s -> part.edges().get(s).heel().isPresent())
            .map(s -> new Ref.OfSide(part.id(), s))
            .toList();
    if (!own.isEmpty()) {
      Command command = SideCommands.heel(plan, own, Optional.empty());
      cures.add(Cures.named("usualHeels", command, Naming.sides(plan, own)));
    }
  }

  private void none() {
    List<Integer> all = new ArrayList<>();
    for (int i = 0; i < part.sideCount(); i++) {
      all.add(i);
    }
    shorten(all, 0);
    usualHeels(all);
  }
}
