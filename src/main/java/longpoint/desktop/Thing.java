package longpoint.desktop;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.editor.Ref;
import longpoint.geometry.Point;

/**
 * Something worked out from the plan that can be picked by itself: a truss or all alike, a rafter,
 * a roof line, a piece of sheathing, a chalk line.
 *
 * @param id as the marks of the drawings call it
 * @param home what of the plan it belongs to, if one thing alone
 * @param plane whose flat drawing shows it, if any
 * @param mark that it is made by, if it is a truss
 * @param alike ids of what is picked with it: of a mark, every truss that has it
 * @param places chains of points in plan
 */
public record Thing(
    String id,
    Optional<Ref> home,
    Optional<String> plane,
    Optional<String> mark,
    Set<String> alike,
    List<List<Point>> places) {
  public Thing {
    alike = Set.copyOf(alike);
    places = places.stream().map(List::copyOf).toList();
  }
}
