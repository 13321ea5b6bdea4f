package longpoint.desktop;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.editor.Ref;
import longpoint.geometry.Point;

/**
 * Something worked out from the plan that can be picked by itself: a truss or all alike, a run, a
 * rafter, a roof line or all of a kind, a board of the cut list, a piece of sheathing, a chalk
 * line.
 *
 * @param id as the marks of the drawings call it
 * @param home what of the plan it belongs to, if one thing alone
 * @param plane whose flat drawing shows it, if any
 * @param mark that it is made by, if it is a truss
 * @param alike ids of what is picked with it: of a mark, every truss that has it
 * @param rows ids of what else the rows of lists tell of it by: of a truss, its mark and its run
 * @param places chains of points in plan
 */
public record Thing(
    String id,
    Optional<Ref> home,
    Optional<String> plane,
    Optional<String> mark,
    Set<String> alike,
    Set<String> rows,
    List<List<Point>> places) {
  public Thing {
    alike = Set.copyOf(alike);
    rows = Set.copyOf(rows);
    places = places.stream().map(List::copyOf).toList();
  }

  /** Something in one place or several, of no plane and no mark. */
  static Thing of(String id, Optional<Ref> home, List<List<Point>> places) {
    return new Thing(id, home, Optional.empty(), Optional.empty(), Set.of(), Set.of(), places);
  }

  Thing onPlane(String plane) {
    return new Thing(id, home, Optional.of(plane), mark, alike, rows, places);
  }

  Thing marked(String mark) {
    return new Thing(id, home, plane, Optional.of(mark), alike, rows, places);
  }

  Thing with(Set<String> alike) {
    return new Thing(id, home, plane, mark, alike, rows, places);
  }

  Thing toldBy(Set<String> rows) {
    return new Thing(id, home, plane, mark, alike, rows, places);
  }
}
