package longpoint.plan;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.units.LengthFigure;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import longpoint.units.SlopeFigure;
import longpoint.wording.Phrase;
import longpoint.wording.Worded;

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
    Phrase other = Phrase.of(plan.unit() == LengthUnit.INCH ? "plan.millimetres" : "plan.inches");
    if (across > inches(LONGEST_PART) || across < inches(SHORTEST_PART)) {
      problems.add(
          Problem.warning(part.id(), Phrase.of("plan.across", name(), length(across), other)));
    }
    if (!Double.isFinite(part.plateHeight())
        || Math.abs(part.plateHeight()) > inches(HIGHEST_PLATE)) {
      problems.add(Problem.warning(part.id(), Phrase.of("plan.plateHeight", name())));
    }
  }

  private void someEave() {
    if (part.edges().stream().noneMatch(e -> e.kind() == EdgeKind.EAVE)) {
      problems.add(Problem.error(part.id(), Phrase.of("plan.noEave", name())));
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
      error(side, "overhang.negative");
    } else if (reaches && overhang > inches(LONGEST_OVERHANG)) {
      warning(side, "overhang.long", length(overhang));
    }
    if (edge.kind() == EdgeKind.EAVE && !(edge.heel().orElse(0.0) >= 0)) {
      error(side, "heel.negative");
    }
  }

  private void slope(int side, double ratio) {
    if (!(ratio > 0)) {
      error(side, "slope.none");
    } else if (ratio < LEAST_SLOPE) {
      warning(side, "slope.least");
    } else if (ratio > STEEPEST) {
      warning(side, "slope.steepest");
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
    if (a.slope().ratio() != b.slope().ratio()) {
      warning(side, "run.slopes", name(next), slope(a), slope(b));
    } else if (a.heel() != b.heel()) {
      warning(side, "run.heels", name(next), length(a.heel()), length(b.heel()));
    }
  }

  private void frame() {
    Frame frame = part.frame();
    positive(frame.spacing(), "spacing");
    positive(frame.thickness(), "thickness");
    frame.hipSetback().ifPresent(setback -> positive(setback, "hipSetback"));
    frame.choices().haul().ifPresent(haul -> positive(haul, "haul"));
    frame.choices().sticks().plateWidth().ifPresent(w -> positive(w, "plateWidth"));
    frame.choices().sticks().post().ifPresent(w -> positive(w, "post"));
    frame.choices().ceiling().ifPresent(this::ceiling);
    if (frame.thickness() >= frame.spacing() && frame.spacing() > 0) {
      problems.add(Problem.error(part.id(), Phrase.of("plan.thick", name())));
    }
  }

  private void ceiling(Slope ceiling) {
    for (int side = 0; side < part.sideCount(); side++) {
      boolean eave = part.edges().get(side).kind() == EdgeKind.EAVE;
      if (eave && ceiling.ratio() >= PlanCheck.slope(plan, part, side).ratio()) {
        warning(side, "ceiling", slope(plan.side(part, side)), new SlopeFigure(ceiling));
        return;
      }
    }
  }

  private void deck() {
    if (!(part.deck().thickness() >= 0)) {
      problems.add(Problem.error(part.id(), Phrase.of("plan.deck.negative", name())));
    }
    positive(part.deck().sheetWidth(), "sheetWidth");
    positive(part.deck().sheetLength(), "sheetLength");
    part.deck().firstCourse().ifPresent(w -> positive(w, "firstCourse"));
    part.edges().stream()
        .flatMap(e -> e.firstCourse().stream())
        .forEach(w -> positive(w, "firstCourse"));
  }

  private void positive(double figure, String key) {
    if (!(figure > 0)) {
      Phrase what = Phrase.of("plan.figure." + key);
      problems.add(Problem.error(part.id(), Phrase.of("plan.notPositive", what, name())));
    }
  }

  private void error(int side, String key) {
    problems.add(Problem.error(Side.id(part.id(), side), said(side, key)));
  }

  private void warning(int side, String key, Worded... more) {
    problems.add(Problem.warning(Side.id(part.id(), side), said(side, key, more)));
  }

  private Phrase said(int side, String key, Worded... more) {
    List<Worded> parts = new ArrayList<>(List.of(name(side)));
    parts.addAll(List.of(more));
    return new Phrase("plan." + key, parts);
  }

  private PlaceName name() {
    return PlaceName.of(part);
  }

  private PlaceName name(int side) {
    return PlaceName.of(part, side);
  }

  private static SlopeFigure slope(Side side) {
    return new SlopeFigure(side.slope());
  }

  private LengthFigure length(double length) {
    return new LengthFigure(length, plan.unit());
  }

  private double inches(double inches) {
    return plan.unit().fromMillimetres(inches * LengthUnit.MM_PER_INCH);
  }
}
