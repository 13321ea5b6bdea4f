package longpoint.deck;

import java.util.List;
import java.util.Objects;
import longpoint.geometry.Region;

/**
 * The deck of one plane, laid flat. A plane of a part that already stands has no courses and no
 * pieces: there is nothing to buy, but there are lines to snap on it.
 *
 * @param plane id of the roof plane; where planes lie flush and are sheathed as one, of the first
 * @param planes ids of all roof planes sheathed as one, mostly just the one
 * @param unfold plan to (u, v)
 * @param panel its sheets
 * @param ground what is sheathed, in (u, v)
 * @param rims named sides of the ground
 * @param supports centre lines under it, in (u, v)
 * @param courses from the fascia up
 * @param pieces in the order of their numbers; they tile the ground
 * @param cutDifferences of every hip and valley on the plane
 */
public record PlaneDeck(
    String plane,
    List<String> planes,
    Unfold unfold,
    Panel panel,
    List<Region> ground,
    List<PieceEdge> rims,
    List<Support> supports,
    List<Course> courses,
    List<Piece> pieces,
    List<CutDifference> cutDifferences) {
  public PlaneDeck {
    Objects.requireNonNull(plane);
    planes = List.copyOf(planes);
    Objects.requireNonNull(unfold);
    Objects.requireNonNull(panel);
    ground = List.copyOf(ground);
    rims = List.copyOf(rims);
    supports = List.copyOf(supports);
    courses = List.copyOf(courses);
    pieces = List.copyOf(pieces);
    cutDifferences = List.copyOf(cutDifferences);
  }

  /** True area to be sheathed. */
  public double area() {
    return ground.stream().mapToDouble(Region::area).sum();
  }
}
