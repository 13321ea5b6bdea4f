package longpoint.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import longpoint.geometry.Bounds;
import longpoint.geometry.Meeting;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.units.LengthUnit;
import longpoint.wording.Phrase;
import longpoint.wording.Worded;

/**
 * Whether the rings of one part are an outline with holes: sides with a length, no side doubling
 * back on the one before, none crossing or touching another, holes inside.
 */
final class ShapeCheck {
  /** The user mends them one at a time; more would bury the rest of the list. */
  private static final int MOST_CROSSINGS = 6;

  private final Plan plan;
  private final Part part;
  private final List<Problem> problems = new ArrayList<>();

  /**
   * A side that has a length.
   *
   * @param number in the part
   * @param ring it belongs to, 0 the outline
   * @param next number of the side it shares its end with
   */
  private record Wall(int number, int ring, int next, Segment line, Bounds box) {}

  private ShapeCheck(Plan plan, Part part) {
    this.plan = plan;
    this.part = part;
  }

  static List<Problem> check(Plan plan, Part part) {
    ShapeCheck check = new ShapeCheck(plan, part);
    List<Wall> walls = check.walls();
    if (!check.spikes(walls)) {
      check.crossings(walls);
    }
    if (check.problems.isEmpty()) {
      check.windings();
      check.holes();
    }
    check.shortWalls(walls);
    return check.problems;
  }

  /** The sides, less those of no length, which are told. */
  private List<Wall> walls() {
    List<Wall> walls = new ArrayList<>();
    int first = 0;
    for (int r = 0; r <= part.holes().size(); r++) {
      Ring ring = part.rings().get(r);
      List<Integer> kept = new ArrayList<>();
      for (int i = 0; i < ring.size(); i++) {
        if (ring.side(i).length() > 0) {
          kept.add(i);
        } else {
          error(first + i, "noLength");
        }
      }
      for (int k = 0; k < kept.size(); k++) {
        int next = kept.get((k + 1) % kept.size());
        Segment line = ring.side(kept.get(k));
        Bounds box = Bounds.of(List.of(line.from(), line.to()));
        walls.add(new Wall(first + kept.get(k), r, first + next, line, box));
      }
      first += ring.size();
    }
    return walls;
  }

  /** Whether there are any; a spike also touches other walls, which need not be told then. */
  private boolean spikes(List<Wall> walls) {
    boolean some = false;
    for (Wall wall : walls) {
      Segment next = part.side(wall.next());
      Point d = wall.line().direction();
      Point e = next.direction();
      if (wall.number() != wall.next() && d.dot(e) < 0 && Math.abs(d.cross(e)) < Reshape.PARALLEL) {
        error(wall.next(), "spike", name(wall.number()), place(next.from()));
        some = true;
      }
    }
    return some;
  }

  private void crossings(List<Wall> walls) {
    Wall[] byX = walls.toArray(Wall[]::new);
    Arrays.sort(byX, Comparator.comparingDouble(w -> w.box().minX()));
    List<Wall[]> pairs = new ArrayList<>();
    for (int i = 0; i < byX.length && pairs.size() < MOST_CROSSINGS; i++) {
      Bounds reach = byX[i].box();
      for (int j = i + 1; j < byX.length && byX[j].box().minX() <= reach.maxX(); j++) {
        Bounds other = byX[j].box();
        if (other.minY() <= reach.maxY()
            && reach.minY() <= other.maxY()
            && pairs.size() < MOST_CROSSINGS
            && meet(byX[i], byX[j])) {
          boolean inOrder = byX[i].number() < byX[j].number();
          pairs.add(new Wall[] {byX[inOrder ? i : j], byX[inOrder ? j : i]});
        }
      }
    }
    pairs.sort(
        Comparator.<Wall[]>comparingInt(p -> p[0].number()).thenComparing(p -> p[1].number()));
    for (Wall[] pair : pairs) {
      Point place = Meeting.of(pair[0].line(), pair[1].line()).orElseThrow();
      String key = pair[1].ring() == 0 ? "crosses" : "crosses.hole";
      error(pair[0].number(), key, name(pair[1].number()), place(place));
    }
  }

  /** Whether two walls that are not neighbours cross or touch. */
  private static boolean meet(Wall a, Wall b) {
    boolean neighbours = a.next() == b.number() || b.next() == a.number();
    return !neighbours && Meeting.of(a.line(), b.line()).isPresent();
  }

  private void windings() {
    if (!part.outline().counterClockwise()) {
      problems.add(Problem.error(part.id(), Phrase.of("plan.clockwise", PlaceName.of(part))));
    }
    for (Ring hole : part.holes()) {
      if (hole.counterClockwise()) {
        problems.add(
            Problem.error(part.id(), Phrase.of("plan.counterClockwise", PlaceName.of(part))));
      }
    }
  }

  /** Nothing crosses, so one corner tells where a whole hole lies. */
  private void holes() {
    int first = part.outline().size();
    for (int i = 0; i < part.holes().size(); i++) {
      Ring hole = part.holes().get(i);
      if (!Meeting.holds(part.outline(), hole.corner(0))) {
        error(first, "hole.outside");
      }
      for (int j = 0; j < part.holes().size(); j++) {
        if (i != j && Meeting.holds(part.holes().get(j), hole.corner(0))) {
          error(first, "hole.inside");
        }
      }
      first += hole.size();
    }
  }

  private void shortWalls(List<Wall> walls) {
    // Shorter than the smallest mark on the tape cannot be built, so it cannot be meant.
    double mark = plan.unit() == LengthUnit.INCH ? 1 / 16.0 : 1;
    for (Wall wall : walls) {
      if (wall.line().length() < mark) {
        problems.add(
            Problem.warning(
                Side.id(part.id(), wall.number()),
                Phrase.of("plan.tooShort", name(wall.number()))));
      }
    }
  }

  private PlacePoint place(Point p) {
    return PlacePoint.of(p, plan.unit());
  }

  private PlaceName name(int side) {
    return PlaceName.of(part, side);
  }

  private void error(int side, String key, Worded... more) {
    List<Worded> parts = new ArrayList<>(List.of(name(side)));
    parts.addAll(List.of(more));
    problems.add(Problem.error(Side.id(part.id(), side), new Phrase("plan." + key, parts)));
  }
}
