package longpoint.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import longpoint.geometry.Bounds;
import longpoint.geometry.Meeting;
import longpoint.units.Slope;

/**
 * Says in words what is wrong with a plan, naming the side and the cure. A plan that fails is still
 * a plan: it can be edited, saved and opened, and its sound parts are solved.
 *
 * <p>Steps: ids, defaults, then each part's shape ({@link ShapeCheck}) and figures ({@link
 * FigureCheck}), then the joins ({@link JoinCheck}) and ground that two parts both cover. Messages
 * count sides from 1, as people do; {@link Problem#where} holds {@link Side#id}. Whether roofs that
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
    List<Part> sound = check.parts();
    check.problems.addAll(JoinCheck.check(plan));
    check.sharedGround(sound);
    return List.copyOf(check.problems);
  }

  private void ids() {
    Set<String> seen = new HashSet<>();
    Set<String> told = new HashSet<>();
    for (Part part : plan.parts()) {
      String id = part.id();
      if (id.isBlank()) {
        problems.add(
            Problem.error("plan", "A part has no id.", "Give every part a short id of its own."));
      } else if (!seen.add(id) && told.add(id)) {
        problems.add(
            Problem.error(
                id, "Two parts have the id “" + id + "”.", "Give every part an id of its own."));
      }
      if (id.indexOf('/') >= 0) {
        problems.add(
            Problem.error(
                id,
                "The id “" + id + "” holds a slash, which divides a part from its sides.",
                "Write another sign for the slash."));
      }
    }
  }

  private void defaults() {
    Defaults d = plan.defaults();
    if (d.slope().ratio() == 0) {
      problems.add(
          Problem.warning(
              "plan", "The plan's own slope is level.", "Set the slope in the plan's defaults."));
    }
    notNegative(d.overhang(), "overhang");
    notNegative(d.heel(), "heel");
    notNegative(d.fascia(), "fascia thickness");
    notNegative(d.ridgeBlockRelief(), "ridge block relief");
    notNegative(d.lookoutFirst(), "distance to the first lookout");
    if (!(d.lookoutSpacing() > 0)) {
      problems.add(
          Problem.error(
              "plan",
              "The plan's own lookout spacing is not above zero.",
              "Set it in the plan's defaults."));
    }
  }

  private void notNegative(double figure, String name) {
    if (!(figure >= 0)) {
      problems.add(
          Problem.error(
              "plan",
              "The plan's own " + name + " is below zero.",
              "Set it to 0 or more in the plan's defaults."));
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
                  b.id(),
                  name(a) + " and " + name(b) + " cover the same ground, and no join says how.",
                  "Join them, or move their walls apart."));
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

  /** A part as its user knows it. */
  static String name(Part part) {
    return part.name().isBlank() ? "part “" + part.id() + "”" : part.name();
  }

  /** A side as its user counts it. */
  static String side(Part part, int index) {
    return "side " + (index + 1) + " of " + name(part);
  }

  /** At the start of a sentence. */
  static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** The slope a side has when it is an eave. */
  static Slope slope(Plan plan, Part part, int side) {
    return part.edges().get(side).slope().orElse(plan.defaults().slope());
  }
}
