package longpoint.field.built;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.Part;
import longpoint.plan.PlanDimension.Corner;

/**
 * The two diagonals of a part of four corners drawn square.
 *
 * @param part its id
 * @param corners their numbers, round the walls
 * @param first from the first corner to the third
 * @param second from the second corner to the fourth
 * @param rack how far the wall between the third and fourth corner is to be moved along itself,
 *     from third towards fourth, to make the diagonals alike; negative the other way
 * @param allowed difference that is usual to let pass
 */
public record Diagonals(
    String part, List<Integer> corners, double first, double second, double rack, double allowed) {
  /** No walls of 10 to 100 ft are held to less than a quarter of an inch (seen there as well). */
  static final double LEAST_MM = 6.35;

  /**
   * Three quarters of an inch in 100 ft of diagonal, as a handbook of construction tolerances is
   * quoted in a builders' journal (seen there).
   */
  static final double ALLOWED = 0.75 / 1200;

  /** Degrees: drawn any less square, equal diagonals mean nothing. */
  private static final double SQUARE = 0.01;

  public Diagonals {
    corners = List.copyOf(corners);
  }

  public double difference() {
    return first - second;
  }

  public boolean passes() {
    return Math.abs(difference()) <= allowed;
  }

  static Optional<Diagonals> of(
      Part part, Map<Corner, Point> at, List<OutOfSquare> corners, int number, double least) {
    boolean rectangle =
        part.sideCount() == 4
            && corners.stream().allMatch(c -> Math.abs(c.planned() - 90) < SQUARE);
    if (!rectangle) {
      return Optional.empty();
    }
    Ring ring = new Ring(BuiltPlan.corners(part, part.outline(), 0, at));
    double first = ring.corner(0).distance(ring.corner(2));
    double second = ring.corner(1).distance(ring.corner(3));
    // Moving the far wall by s along itself changes the squares of the diagonals by 4 a s together.
    double rack = (first * first - second * second) / (4 * ring.side(2).length());
    return Optional.of(
        new Diagonals(
            part.id(),
            List.of(number, number + 1, number + 2, number + 3),
            first,
            second,
            rack,
            Math.max(least, Math.max(first, second) * ALLOWED)));
  }
}
