package longpoint.plan;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import longpoint.units.SlopeText;

/** Whether the figures of one part can be meant: slopes, overhangs, heights, spacings, sizes. */
final class FigureCheck {
  /**
   * A quarter inch in a foot, the least slope that building codes let any roofing have; a plane
   * nearer level than that is a slip or wants a design of its own (common practice).
   */
  private static final double LEAST_SLOPE = 0.25 / 12;

  /** 60 in 12, 79 degrees: steeper than any roof that is walked or sheathed from roof jacks. */
  private static final double STEEPEST = 5;

  /** In inches: no eave or rake reaches further without posts under it. */
  private static final double LONGEST_OVERHANG = 72;

  /**
   * In inches. A house outline is some 20 to 200 ft; one drawn in millimetres and read as inches is
   * 25 times that, and the other way round it is under four feet.
   */
  private static final double LONGEST_PART = 4800;

  private static final double SHORTEST_PART = 48;
  private static final double HIGHEST_PLATE = 1200;

  private final Plan plan;
  private final Part part;
  private final List<Problem> problems = new ArrayList<>();

  private FigureCheck(Plan plan, Part part) {
    this.plan = plan;
    this.part = part;
  }

  static List<Problem> check(Plan plan, Part part) {
    FigureCheck check = new FigureCheck(plan, part);
    check.size();
    check.someEave();
    for (int side = 0; side < part.sideCount(); side++) {
      check.side(side);
    }
    check.straightRuns();
    check.frame();
    check.deck();
    return check.problems;
  }

  private void size() {
    Bounds box = part.outline().bounds();
    double across = Math.max(box.width(), box.height());
    String other = plan.unit() == LengthUnit.INCH ? "millimetres" : "inches";
    if (across > inches(LONGEST_PART) || across < inches(SHORTEST_PART)) {
      problems.add(
          Problem.warning(
              part.id(),
              name() + " is " + text(across) + " across.",
              "If its figures are " + other + ", change the plan's unit."));
    }
    if (!Double.isFinite(part.plateHeight())
        || Math.abs(part.plateHeight()) > inches(HIGHEST_PLATE)) {
      problems.add(
          Problem.warning(
              part.id(),
              "The plate height of " + name() + " can hardly be meant.",
              "Type the height of the top of the plate above the floor."));
    }
  }

  private void someEave() {
    if (part.edges().stream().noneMatch(e -> e.kind() == EdgeKind.EAVE)) {
      problems.add(
          Problem.error(
              part.id(),
              "No side of " + name() + " is an eave, so its roof has nothing to rise from.",
              "Make at least one side an eave."));
    }
  }

  private void side(int side) {
    Edge edge = part.edges().get(side);
    if (edge.kind() == EdgeKind.EAVE) {
      slope(side, PlanCheck.slope(plan, part, side).ratio());
    }
    boolean reaches = edge.kind() == EdgeKind.EAVE || edge.kind() == EdgeKind.GABLE;
    double overhang = edge.overhang().orElse(0.0);
    if (reaches && !(overhang >= 0)) {
      error(side, "has an overhang below zero", "Set it to 0 or more");
    } else if (reaches && overhang > inches(LONGEST_OVERHANG)) {
      warning(side, "has an overhang of " + text(overhang), "Check it, and the plan's unit");
    }
    if (edge.kind() == EdgeKind.EAVE && !(edge.heel().orElse(0.0) >= 0)) {
      error(
          side,
          "has a heel below zero, which puts the framing below its plate",
          "Set the heel to 0 or more");
    }
  }

  private void slope(int side, double ratio) {
    if (!(ratio > 0)) {
      error(side, "is an eave with no slope", "Give it a slope, or make it a gable");
    } else if (ratio < LEAST_SLOPE) {
      warning(side, "slopes less than a quarter inch in a foot", "Check its slope");
    } else if (ratio > STEEPEST) {
      warning(side, "is steeper than 60 in 12", "Check its slope");
    }
  }

  /** Eaves that run on in one line belong to one plane, or two planes part where they meet. */
  private void straightRuns() {
    int first = 0;
    for (var ring : part.rings()) {
      for (int i = 0; i < ring.size(); i++) {
        int next = first + (i + 1) % ring.size();
        if (ring.side(i).length() > 0
            && part.side(next).length() > 0
            && runOn(ring.side(i), part.side(next))) {
          straightRun(first + i, next);
        }
      }
      first += ring.size();
    }
  }

  private static boolean runOn(Segment a, Segment b) {
    Point d = a.direction();
    Point e = b.direction();
    return d.dot(e) > 0 && Math.abs(d.cross(e)) < Reshape.PARALLEL;
  }

  private void straightRun(int side, int next) {
    Side a = plan.side(part, side);
    Side b = plan.side(part, next);
    if (a.kind() != EdgeKind.EAVE || b.kind() != EdgeKind.EAVE) {
      return;
    }
    String both = "and side " + (next + 1) + " run on in one line but ";
    if (a.slope().ratio() != b.slope().ratio()) {
      String slopes = SlopeText.of(a.slope()) + " and " + SlopeText.of(b.slope());
      warning(side, both + "slope " + slopes, "Give both one slope, or step the wall");
    } else if (a.heel() != b.heel()) {
      String heels = text(a.heel()) + " and " + text(b.heel());
      warning(side, both + "have heels of " + heels, "Give both one heel, or step the wall");
    }
  }

  private void frame() {
    Frame frame = part.frame();
    positive(frame.spacing(), "truss or rafter spacing");
    positive(frame.thickness(), "truss or rafter thickness");
    frame.hipSetback().ifPresent(setback -> positive(setback, "set-back of the hip girder"));
    frame.choices().haul().ifPresent(haul -> positive(haul, "height that can be hauled"));
    frame.choices().ceiling().ifPresent(this::ceiling);
    if (frame.thickness() >= frame.spacing() && frame.spacing() > 0) {
      problems.add(
          Problem.error(
              part.id(),
              "The trusses or rafters of " + name() + " are as thick as their spacing.",
              "Set a wider spacing."));
    }
  }

  private void ceiling(Slope ceiling) {
    for (int side = 0; side < part.sideCount(); side++) {
      boolean eave = part.edges().get(side).kind() == EdgeKind.EAVE;
      if (eave && ceiling.ratio() >= PlanCheck.slope(plan, part, side).ratio()) {
        warning(side, "is no steeper than the ceiling under it", "Lower the ceiling's slope");
        return;
      }
    }
  }

  private void deck() {
    if (!(part.deck().thickness() >= 0)) {
      problems.add(
          Problem.error(
              part.id(),
              "The sheathing of " + name() + " is thinner than nothing.",
              "Set its thickness to 0 or more."));
    }
    positive(part.deck().sheetWidth(), "sheet width");
    positive(part.deck().sheetLength(), "sheet length");
  }

  private void positive(double figure, String what) {
    if (!(figure > 0)) {
      problems.add(
          Problem.error(
              part.id(),
              "The " + what + " of " + name() + " is not above zero.",
              "Set it above zero."));
    }
  }

  private void error(int side, String wrong, String cure) {
    problems.add(Problem.error(Side.id(part.id(), side), sentence(side, wrong), cure + "."));
  }

  private void warning(int side, String wrong, String cure) {
    problems.add(Problem.warning(Side.id(part.id(), side), sentence(side, wrong), cure + "."));
  }

  private String sentence(int side, String wrong) {
    return PlanCheck.capital(PlanCheck.side(part, side)) + " " + wrong + ".";
  }

  private String name() {
    return PlanCheck.name(part);
  }

  private String text(double length) {
    return LengthText.of(length, plan.unit());
  }

  private double inches(double inches) {
    return plan.unit().fromMillimetres(inches * LengthUnit.MM_PER_INCH);
  }
}
