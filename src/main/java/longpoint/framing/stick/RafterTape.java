package longpoint.framing.stick;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;

/**
 * Where the rafters of one wall stand, taped along its plate. Parallel walls are taped the same
 * way, so that rafters that stand opposite each other have the same mark. Lengths in plan units.
 *
 * @param part id of the part
 * @param side id of the wall
 * @param from the end the tape is hooked to, seen from outside
 * @param hook that corner on the plan
 * @param along the way the tape runs, of length 1
 * @param length of the wall
 * @param thickness of a rafter
 * @param reach level, of the longest tail past the wall
 * @param marks near face of each rafter square to the wall, rising
 */
public record RafterTape(
    String part,
    String side,
    Hand from,
    Point hook,
    Point along,
    double length,
    double thickness,
    double reach,
    List<Double> marks) {
  /** An end of a wall seen from outside. */
  public enum Hand {
    LEFT,
    RIGHT
  }

  /** Sine of the angle within which a rafter stands square to its wall. */
  private static final double SQUARE = 0.01;

  /** Feet this near to a wall stand on it, as a share of a thickness. */
  private static final double ON = 0.1;

  public RafterTape {
    Objects.requireNonNull(from);
    marks = List.copyOf(marks);
  }

  /** One for each wall that has rafters of its own part on it. */
  public static List<RafterTape> of(Plan plan, List<Rafter> rafters) {
    List<RafterTape> tapes = new ArrayList<>();
    for (Part part : plan.parts()) {
      List<Rafter> own =
          rafters.stream().filter(r -> r.part().equals(part.id()) && isTaped(r)).toList();
      for (Side side : plan.sides(part)) {
        if (side.kind() == EdgeKind.EAVE && side.wall().length() > 0 && !own.isEmpty()) {
          RafterTape tape = along(side, part.frame().thickness(), own);
          if (!tape.marks.isEmpty()) {
            tapes.add(tape);
          }
        }
      }
    }
    return List.copyOf(tapes);
  }

  private static boolean isTaped(Rafter r) {
    return switch (r.kind()) {
      case COMMON, HIP_JACK, TRIMMER -> r.foot().on() == Bearing.WALL;
      case HIP, VALLEY, VALLEY_JACK, CRIPPLE, RIDGE, HEADER -> false;
    };
  }

  private static RafterTape along(Side side, double thickness, List<Rafter> rafters) {
    Segment wall = side.wall();
    Point way = wall.direction();
    // To the right across the page, or up it where that says nothing.
    boolean forward = Math.abs(way.x()) > SQUARE ? way.x() > 0 : way.y() > 0;
    Point hook = forward ? wall.from() : wall.to();
    Point along = forward ? way : way.times(-1);
    List<Double> marks = new ArrayList<>();
    double reach = 0;
    for (Rafter r : rafters) {
      for (Segment place : r.places()) {
        boolean on = wall.distance(place.from()) < thickness * ON;
        if (on && Math.abs(place.direction().dot(way)) < SQUARE) {
          marks.add(place.from().minus(hook).dot(along) - thickness / 2);
          reach = Math.max(reach, r.drawn(place).length() - place.length());
        }
      }
    }
    marks.sort(null);
    return new RafterTape(
        side.part(),
        side.id(),
        forward ? Hand.LEFT : Hand.RIGHT,
        hook,
        along,
        wall.length(),
        thickness,
        reach,
        marks);
  }

  /** Square to the wall, away from the part. */
  public Point out() {
    return from == Hand.LEFT ? along.left().times(-1) : along.left();
  }

  /** Clear distance from each rafter to the next; 0 between doubled ones. */
  public List<Double> gaps() {
    List<Double> gaps = new ArrayList<>();
    for (int i = 0; i + 1 < marks.size(); i++) {
      gaps.add(marks.get(i + 1) - marks.get(i) - thickness);
    }
    return gaps;
  }
}
