package longpoint.framing.stick;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import longpoint.framing.rafter.Incline;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;

/**
 * How an end meets what it bears on, in plan. The wood ends where its lines, drawn along its
 * length, first come to a face; over its thickness that is one straight cut, or two.
 *
 * @param off what comes off on the middle line
 * @param left how much further the end reaches for each unit to the left of the middle
 * @param right the same to the right
 * @param point left of the middle, where the two meet
 * @param order in which it is set at a peak; 0 for none
 * @param deck the slope a foot stands on, along the rafter and across it
 */
record Joint(
    Bearing on, double off, double left, double right, double point, int order, OnDeck deck) {
  /** Rise of a deck along a rafter that stands on it, and square to it. */
  record OnDeck(double along, double across) {}

  /**
   * A face in plan.
   *
   * @param at a point of it
   * @param along its direction, not nil
   */
  record Face(Point at, Point along) {
    /** The side of a board that turns to somebody on its left. */
    static Face leftOf(Point middle, Point along, double thickness) {
      Point unit = along.unit();
      return new Face(middle.plus(unit.left().times(thickness / 2)), unit);
    }
  }

  /** A cut this much further over one unit of thickness is another cut: some 0.1 degrees. */
  private static final double GAIN = 2e-3;

  /** Two lines this near to parallel do not meet. */
  private static final double PARALLEL = 1e-6;

  Joint {
    Objects.requireNonNull(on);
  }

  static Joint square(Bearing on, double off) {
    return new Joint(on, off, 0, 0, 0, 0, null);
  }

  static final Joint NONE = square(Bearing.NOTHING, 0);
  static final Joint WALL = square(Bearing.WALL, 0);

  /**
   * Against the side of a straight piece whose middle line passes through the end of the rafter's
   * line.
   *
   * @param thickness of that piece; 0 for a line
   * @param out direction of the rafter towards this end
   * @param up direction of the rafter from its foot to its head
   * @param other direction of the piece
   */
  static Joint against(Bearing on, double thickness, Point out, Point up, Point other) {
    double sine = out.unit().cross(other.unit());
    double gain = other.unit().dot(out.unit()) / other.unit().dot(up.unit().left());
    return new Joint(on, thickness / 2 / Math.abs(sine), gain, -gain, 0, 0, null);
  }

  /**
   * Into the corner of several faces, the nearest to the foot everywhere over the thickness.
   *
   * @param head where the rafter's line ends
   * @param up direction of the rafter from its foot to its head
   * @param thickness of the rafter
   * @param faces what it comes to; those along it are passed over
   */
  static Joint into(Bearing on, Point head, Point up, double thickness, List<Face> faces) {
    Point back = up.unit().times(-1);
    Point left = up.unit().left();
    List<double[]> ends = new ArrayList<>();
    for (Face face : faces) {
      double sine = face.along().unit().cross(back);
      if (Math.abs(sine) > PARALLEL) {
        Point to = face.at().minus(head);
        ends.add(
            new double[] {
              face.along().unit().cross(to) / sine, -face.along().unit().cross(left) / sine
            });
      }
    }
    if (ends.isEmpty()) {
      return square(on, 0);
    }
    double[] atLeft = most(ends, thickness / 2);
    double[] atRight = most(ends, -thickness / 2);
    double point =
        atLeft[1] == atRight[1] ? 0 : (atRight[0] - atLeft[0]) / (atLeft[1] - atRight[1]);
    return new Joint(on, most(ends, 0)[0], -atLeft[1], atRight[1], point, 0, null);
  }

  private static double[] most(List<double[]> ends, double y) {
    double[] most = ends.get(0);
    for (double[] end : ends) {
      if (end[0] + end[1] * y > most[0] + most[1] * y + 1e-12) {
        most = end;
      }
    }
    return most;
  }

  /** A foot on a deck, cut along the line where the planes of rafter and deck meet. */
  static Joint onDeck(Plane deck, Point up, double slope) {
    Point unit = up.unit();
    double along = deck.a() * unit.x() + deck.b() * unit.y();
    double across = deck.a() * unit.left().x() + deck.b() * unit.left().y();
    // Equal height on both planes: (slope − along) · s = across · y, and the foot looks down.
    double gain = -across / (slope - along);
    return new Joint(Bearing.DECK, 0, gain, -gain, 0, 0, new OnDeck(along, across));
  }

  /** A head that runs up into a deck steeper than itself. */
  static Joint headOnDeck(Plane deck, Point up, double slope) {
    Joint foot = onDeck(deck, up, slope);
    return new Joint(Bearing.DECK, 0, -foot.left, -foot.right, 0, 0, foot.deck);
  }

  /**
   * The lower end of a hip, pointed for the backs of two fascia boards along the walls beside it.
   *
   * @param up direction from its foot to its head
   * @param one along a wall, the roof on its left
   * @param other along the other
   */
  static Joint hipFascia(Point up, Point one, Point other) {
    double a = one.dot(up) / one.cross(up);
    double b = other.dot(up) / other.cross(up);
    return new Joint(Bearing.WALL, 0, Math.min(a, b), -Math.max(a, b), 0, 0, null);
  }

  /** The lower end of a valley, notched to go over the corner of two fascia boards. */
  static Joint valleyFascia(Point up, Point one, Point other) {
    double a = one.dot(up) / one.cross(up);
    double b = other.dot(up) / other.cross(up);
    return new Joint(Bearing.WALL, 0, Math.max(a, b), -Math.min(a, b), 0, 0, null);
  }

  Joint on(Bearing other) {
    return new Joint(other, off, left, right, point, order, deck);
  }

  /** The same seen by somebody who looks the other way. */
  Joint turned() {
    return new Joint(on, off, right, left, -point, order, deck);
  }

  /** Whether it is cut alike, to what a saw can tell. */
  boolean isLike(Joint other) {
    return Math.abs(left - other.left) < GAIN
        && Math.abs(right - other.right) < GAIN
        && Math.abs(point - other.point) < GAIN;
  }

  /** The same for a rafter that ends no further on than its line. */
  Joint noLonger() {
    return new Joint(on, Math.max(0, off), left, right, point, order, deck);
  }

  Joint inOrder(int place) {
    return new Joint(on, off, left, right, point, place, deck);
  }

  /** As it is cut on a rafter of some thickness. */
  RafterEnd cut(Incline line, double thickness) {
    double face = line.plumbCut();
    double bevel = Math.max(90 - planAngle(left), 90 - planAngle(right));
    if (deck != null) {
      face = Math.toDegrees(Math.abs(Math.atan(line.slope()) - Math.atan(deck.along())));
      double normal = Math.sqrt(1 + deck.along() * deck.along() + deck.across() * deck.across());
      bevel = Math.toDegrees(Math.asin(Math.abs(deck.across()) / normal));
    }
    return new RafterEnd(
        on,
        Optional.empty(),
        off,
        face,
        bevel,
        cheek(line, left, reach(left, right, point, thickness / 2)),
        cheek(line, right, reach(right, left, -point, thickness / 2)),
        point,
        order);
  }

  /** How far an outer edge stands beyond the middle; the halves may meet on its side of that. */
  private static double reach(double own, double other, double point, double half) {
    double past = Math.max(0, point);
    return own * (half - past) - other * past;
  }

  private static RafterEnd.Cheek cheek(Incline line, double gain, double reach) {
    double angle = planAngle(gain);
    return new RafterEnd.Cheek(angle, line.sideCut(angle), reach);
  }

  private static double planAngle(double gain) {
    return Math.toDegrees(Math.atan2(1, Math.abs(gain)));
  }
}
