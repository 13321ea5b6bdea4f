package longpoint.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import longpoint.geometry.Bounds;
import longpoint.geometry.Meeting;
import longpoint.units.Slope;
import longpoint.wording.Phrase;

/**
 * Says in words what is wrong with a plan, naming the side and the cure. A plan that fails is still
 * a plan: it can be edited, saved and opened, and its sound parts are solved.
 *
 * <p>Steps: ids, defaults, then each part's shape ({@link ShapeCheck}) and figures ({@link
 * FigureCheck}), then the joins ({@link JoinCheck}) and ground that two parts both cover. Messages
 * name walls by the way they face; {@link Problem#where} holds {@link Side#id}. Whether roofs that
 * should meet do meet is for the surface to say.
 */
public final class PlanCheck {
  /**
   * Ground shared by two parts that still counts as standing wall to wall, as a share of the
   * smaller part: walls typed to the nearest sixteenth overlap by about that much.
   */
  private static final double WALL_TO_WALL = 0.001;

  private final Plan plan;
  private final List<Problem> problems = new ArrayList<>();

  private PlanCheck(Plan plan) {
    this.plan = plan;
  }

  /** Problems in the order of parts and sides; empty when all is well. */
  public static List<Problem> check(Plan plan) {
    PlanCheck check = new PlanCheck(plan);
    check.ids();
    check.defaults();
    check.problems.addAll(BuyingCheck.check(plan));
    check.problems.addAll(HandlingCheck.check(plan));
    List<Part> sound = check.parts();
    check.problems.addAll(JoinCheck.check(plan));
    check.problems.addAll(OpenSideCheck.check(plan));
    check.sharedGround(sound);
    return List.copyOf(check.problems);
  }

  private void ids() {
    Set<String> seen = new HashSet<>();
    Set<String> told = new HashSet<>();
    for (Part part : plan.parts()) {
      String id = part.id();
      if (id.isBlank()) {
        problems.add(Problem.error("plan", Phrase.of("plan.noId")));
      } else if (!seen.add(id) && told.add(id)) {
        problems.add(Problem.error(id, Phrase.of("plan.sameId", id)));
      }
      if (id.indexOf('/') >= 0) {
        problems.add(Problem.error(id, Phrase.of("plan.slashId", id)));
      }
    }
  }

  private void defaults() {
    Defaults d = plan.defaults();
    if (d.slope().ratio() == 0) {
      problems.add(Problem.warning("plan", Phrase.of("plan.default.level")));
    }
    notNegative(d.overhang(), "overhang");
    notNegative(d.heel().orElse(0.0), "heel");
    notNegative(d.fascia(), "fascia");
    notNegative(d.ridgeBlockRelief(), "ridgeBlockRelief");
    notNegative(d.lookoutFirst(), "lookoutFirst");
    if (!(d.lookoutSpacing() > 0)) {
      problems.add(Problem.error("plan", Phrase.of("plan.default.lookoutSpacing")));
    }
  }

  private void notNegative(double figure, String name) {
    if (!(figure >= 0)) {
      Phrase what = Phrase.of("plan.figure." + name);
      problems.add(Problem.error("plan", Phrase.of("plan.default.negative", what)));
    }
  }

  /** The parts whose outlines are sound. */
  private List<Part> parts() {
    List<Part> sound = new ArrayList<>();
    for (Part part : plan.parts()) {
      List<Problem> shape = ShapeCheck.check(plan, part);
      problems.addAll(shape);
      problems.addAll(FigureCheck.check(plan, part));
      if (shape.stream().noneMatch(p -> p.level() == Problem.Level.ERROR)) {
        sound.add(part);
      }
    }
    return sound;
  }

  private void sharedGround(List<Part> sound) {
    for (int i = 0; i < sound.size(); i++) {
      for (int j = i + 1; j < sound.size(); j++) {
        Part a = sound.get(i);
        Part b = sound.get(j);
        if (near(a, b) && apart(a, b) && !joined(a, b) && shareGround(a, b)) {
          problems.add(
              Problem.warning(
                  b.id(), Phrase.of("plan.sharedGround", PlaceName.of(a), PlaceName.of(b))));
        }
      }
    }
  }

  /** Whether two parts are told from each other by their ids. */
  private static boolean apart(Part a, Part b) {
    return !a.id().equals(b.id());
  }

  private boolean joined(Part a, Part b) {
    return plan.joins().stream()
        .anyMatch(
            j ->
                j.upper().equals(a.id()) && j.lower().equals(b.id())
                    || j.upper().equals(b.id()) && j.lower().equals(a.id()));
  }

  private static boolean near(Part a, Part b) {
    Bounds boxA = a.outline().bounds();
    Bounds boxB = b.outline().bounds();
    return boxA.minX() < boxB.maxX()
        && boxB.minX() < boxA.maxX()
        && boxA.minY() < boxB.maxY()
        && boxB.minY() < boxA.maxY();
  }

  private static boolean shareGround(Part a, Part b) {
    double smaller = Math.min(a.region().area(), b.region().area());
    return Meeting.sharedArea(a.region(), b.region()) > WALL_TO_WALL * smaller;
  }

  /** The slope a side has when it is an eave. */
  static Slope slope(Plan plan, Part part, int side) {
    return part.edges().get(side).slope().orElse(plan.defaults().slope());
  }
}
