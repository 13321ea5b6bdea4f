package longpoint.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.geometry.Segment;
import longpoint.plan.Defaults;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.OpenSideCheck;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.units.LengthUnit;
import longpoint.units.SlopeText;

/** Cures of one side. */
final class SideCures {
  /** In inches: no eave or rake reaches further without posts under it. */
  private static final double LONGEST_OVERHANG = 72;

  /** A quarter inch in a foot, and 60 in 12: as far as slopes can be meant. */
  private static final double LEAST_SLOPE = 0.25 / 12;

  private static final double STEEPEST = 5;

  private final Plan plan;
  private final Part part;
  private final int side;
  private final List<Ref.OfSide> ref;
  private final List<Cure> cures = new ArrayList<>();

  private SideCures(Plan plan, Part part, int side) {
    this.plan = plan;
    this.part = part;
    this.side = side;
    this.ref = List.of(new Ref.OfSide(part.id(), side));
  }

  static List<Cure> of(Plan plan, Part part, int side) {
    SideCures all = new SideCures(plan, part, side);
    all.corner();
    all.cures.addAll(CrossingCures.of(plan, part, side));
    all.figures();
    all.open();
    all.cures.addAll(LevelCures.of(plan, part, side));
    return all.cures;
  }

  /** A side of no length, or one that doubles back, goes with the corner it starts at. */
  private void corner() {
    double mark = plan.unit() == LengthUnit.INCH ? 1 / 16.0 : 1;
    if (part.side(side).length() < mark || doublesBack()) {
      Selection corner = Selection.of(Ref.corner(part.id(), side));
      cures.add(Cures.named("corner", PlanCommands.delete(corner)));
    }
  }

  private boolean doublesBack() {
    Segment here = part.side(side);
    for (int i = 0; i < part.sideCount(); i++) {
      Segment before = part.side(i);
      if (i != side && before.to().equals(here.from()) && before.length() > 0) {
        return here.length() > 0
            && before.direction().dot(here.direction()) < 0
            && Guide.parallel(before.direction(), here.direction());
      }
    }
    return false;
  }

  /** Figures that cannot be meant go back to the plan's own. */
  private void figures() {
    Edge edge = part.edges().get(side);
    Defaults usual = plan.defaults();
    double most = LONGEST_OVERHANG * (plan.unit() == LengthUnit.INCH ? 1 : 25.4);
    if (edge.overhang().filter(o -> !(o >= 0 && o <= most)).isPresent()) {
      Command follow = SideCommands.overhang(plan, ref, Optional.empty());
      cures.add(Cures.cure("overhang", follow, Naming.length(plan, usual.overhang())));
    }
    if (edge.heel().filter(h -> !(h >= 0)).isPresent()) {
      Command follow = SideCommands.heel(plan, ref, Optional.empty());
      cures.add(Cures.cure("heel", follow, Naming.length(plan, plan.usualHeel(part))));
    }
    boolean odd =
        edge.slope().filter(s -> !(s.ratio() >= LEAST_SLOPE && s.ratio() <= STEEPEST)).isPresent();
    if (edge.kind() == EdgeKind.EAVE && odd) {
      Command follow = SideCommands.slope(plan, ref, Optional.empty());
      cures.add(Cures.cure("slope", follow, SlopeText.of(usual.slope())));
    }
  }

  /** An open side lies on a part that its own is joined to, or is something else. */
  private void open() {
    if (part.edges().get(side).kind() != EdgeKind.OPEN) {
      return;
    }
    boolean over = plan.joins().stream().anyMatch(j -> j.upper().equals(part.id()));
    for (Part other : plan.parts()) {
      if (!over && !other.id().equals(part.id()) && OpenSideCheck.standsAt(part, side, other)) {
        cures.add(PartCures.over(part, other));
      }
    }
    cures.add(Cures.cure("gable", SideCommands.kind(plan, ref, EdgeKind.GABLE)));
    cures.add(Cures.cure("eave", SideCommands.kind(plan, ref, EdgeKind.EAVE)));
  }
}
