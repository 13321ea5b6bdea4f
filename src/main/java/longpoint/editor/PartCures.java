package longpoint.editor;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Bounds;
import longpoint.geometry.Meeting;
import longpoint.plan.Carried;
import longpoint.plan.EdgeKind;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.units.LengthUnit;

/** Cures of a part as a whole. */
final class PartCures {
  /** In inches, as the plan's checks have them: no house is longer, and none shorter. */
  private static final double LONGEST = 4800;

  private static final double SHORTEST = 48;

  private PartCures() {}

  static List<Cure> of(Plan plan, Part part) {
    List<Cure> cures = new ArrayList<>();
    if (!part.rightWayRound().equals(part)) {
      cures.add(Cures.cure("round", round(part), part.name()));
    }
    if (part.edges().stream().noneMatch(e -> e.kind() == EdgeKind.EAVE)) {
      cures.add(Cures.cure("eaves", SideCommands.kind(plan, longest(part), EdgeKind.EAVE)));
    }
    for (Part other : plan.parts()) {
      boolean apart = other.id().equals(part.id()) || joined(plan, part, other);
      if (!apart && Meeting.sharedArea(part.region(), other.region()) > 0) {
        cures.add(over(part, other));
        cures.add(over(other, part));
      }
    }
    unit(plan, part).ifPresent(cures::add);
    return cures;
  }

  private static Command round(Part part) {
    return Command.of(
        Messages.text("cure.round", part.name()), p -> Carried.rightWayRound(p, part.id()));
  }

  /** Lets one roof run on over another. */
  static Cure over(Part upper, Part lower) {
    return Cures.cure(
        "over",
        PartCommands.join(Join.overlay(upper.id(), lower.id())),
        upper.name(),
        lower.name());
  }

  /** The longest sides of the outline, of a plain house those along its ridge. */
  private static List<Ref.OfSide> longest(Part part) {
    double most = 0;
    for (int i = 0; i < part.outline().size(); i++) {
      most = Math.max(most, part.side(i).length());
    }
    List<Ref.OfSide> longest = new ArrayList<>();
    for (int i = 0; i < part.outline().size(); i++) {
      if (part.side(i).length() == most) {
        longest.add(new Ref.OfSide(part.id(), i));
      }
    }
    return longest;
  }

  static boolean joined(Plan plan, Part a, Part b) {
    return plan.joins().stream()
        .anyMatch(
            j ->
                j.upper().equals(a.id()) && j.lower().equals(b.id())
                    || j.upper().equals(b.id()) && j.lower().equals(a.id()));
  }

  /** A house four hundred feet long, or one of a yard, was drawn in the other unit. */
  private static java.util.Optional<Cure> unit(Plan plan, Part part) {
    Bounds box = part.outline().bounds();
    boolean inches = plan.unit() == LengthUnit.INCH;
    double across = Math.max(box.width(), box.height()) / (inches ? 1 : 25.4);
    LengthUnit other = inches ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
    if (inches ? across <= LONGEST : across >= SHORTEST) {
      return java.util.Optional.empty();
    }
    String name = Messages.text("cure.unit." + other.symbol());
    Command read = Command.of(Messages.text("cure.unit", name), p -> p.withUnit(other));
    return java.util.Optional.of(Cures.cure("unit", read, name));
  }
}
