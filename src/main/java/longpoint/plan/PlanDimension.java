package longpoint.plan;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/**
 * A dimension the user put on the plan. Its figure is always the distance as it is now: an end that
 * holds on to a corner goes where the corner goes.
 *
 * @param id its own among the notes and dimensions of the plan
 * @param along the direction it measures in
 * @param offset how far the dimension line stands off from the first end, to the left of the
 *     direction measured in, in plan units; negative to the right
 */
public record PlanDimension(
    String id, End from, End to, Along along, double offset, Extras extras) {
  /** The direction a dimension measures in. */
  public enum Along {
    /** From one end straight to the other. */
    STRAIGHT,
    /** Level across the page. */
    ACROSS,
    /** Straight up the page. */
    UP;

    /** As it stands in a plan file. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** What one end holds on to. */
  public sealed interface End {
    /** Where it is now; empty when the corner has gone. */
    Optional<Point> at(Plan plan);
  }

  /**
   * A corner of a part.
   *
   * @param corner number of the side that starts there
   */
  public record Corner(String part, int corner) implements End {
    public Corner {
      Objects.requireNonNull(part);
    }

    @Override
    public Optional<Point> at(Plan plan) {
      return plan.part(part)
          .filter(p -> corner >= 0 && corner < p.sideCount())
          .map(p -> p.side(corner).from());
    }
  }

  /** A place on the page. */
  public record Place(Point at) implements End {
    public Place {
      Objects.requireNonNull(at);
    }

    @Override
    public Optional<Point> at(Plan plan) {
      return Optional.of(at);
    }
  }

  public PlanDimension {
    Objects.requireNonNull(id);
    Objects.requireNonNull(from);
    Objects.requireNonNull(to);
    Objects.requireNonNull(along);
    Objects.requireNonNull(extras);
  }

  public PlanDimension withEnds(End from, End to) {
    return new PlanDimension(id, from, to, along, offset, extras);
  }

  public PlanDimension withLine(Along along, double offset) {
    return new PlanDimension(id, from, to, along, offset, extras);
  }

  /** The two measured points; empty when an end has gone or nothing lies between them. */
  public Optional<Segment> ends(Plan plan) {
    return from.at(plan)
        .flatMap(a -> to.at(plan).map(b -> new Segment(a, b)))
        .filter(s -> direction(s).dot(s.to().minus(s.from())) != 0);
  }

  /** Where the dimension line is drawn; its length is what the dimension says. */
  public Optional<Segment> line(Plan plan) {
    return ends(plan).map(s -> line(s, along, offset));
  }

  /**
   * A dimension line.
   *
   * @param ends the two measured points, different along the direction measured in
   */
  public static Segment line(Segment ends, Along along, double offset) {
    Point u = direction(ends, along);
    Point start = ends.from().plus(u.left().times(offset));
    return new Segment(start, start.plus(u.times(u.dot(ends.to().minus(ends.from())))));
  }

  private Point direction(Segment ends) {
    return direction(ends, along);
  }

  /** One unit long; across and up the page always to the right and up. */
  public static Point direction(Segment ends, Along along) {
    return switch (along) {
      case STRAIGHT -> ends.length() > 0 ? ends.direction() : new Point(1, 0);
      case ACROSS -> new Point(1, 0);
      case UP -> new Point(0, 1);
    };
  }
}
