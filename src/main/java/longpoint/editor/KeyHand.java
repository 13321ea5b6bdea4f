package longpoint.editor;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import longpoint.geometry.Point;
import longpoint.plan.Part;

/**
 * Keys in the place of a mouse, where a tool waits for a point: arrow keys move the held place by a
 * step of the grid, Page Down and Page Up carry it from corner to corner of the plan, Enter clicks.
 */
final class KeyHand {
  /** A key points exactly; this only lets the corner be told that it stands on, plan units. */
  private static final double REACH = 1e-6;

  private KeyHand() {}

  /** What the mouse would have done; empty where a key stands for nothing. */
  static Optional<Event> stands(Event.Pressing pressing, Optional<Point> held, Scene scene) {
    return held.flatMap(
        at ->
            switch (pressing.key()) {
              case ENTER -> Optional.of(new Event.Pressed(exact(at)));
              case NEXT -> corner(at, 1, scene).map(c -> new Event.Moved(snapping(c)));
              case PREVIOUS -> corner(at, -1, scene).map(c -> new Event.Moved(snapping(c)));
              case UP, DOWN, LEFT, RIGHT ->
                  Optional.of(new Event.Moved(exact(at.plus(ArrowStep.of(pressing, scene)))));
              case ESCAPE, BACKSPACE, DELETE, TAB -> Optional.empty();
            });
  }

  /** Nothing holds it but the key. */
  private static Pointer exact(Point at) {
    return new Pointer(at, REACH, Set.of(Modifier.ALT));
  }

  private static Pointer snapping(Point at) {
    return new Pointer(at, REACH, Set.of());
  }

  private static Optional<Point> corner(Point at, int step, Scene scene) {
    List<Point> corners =
        scene.plan().parts().stream()
            .flatMap((Part p) -> p.rings().stream())
            .flatMap(r -> r.points().stream())
            .toList();
    if (corners.isEmpty()) {
      return Optional.empty();
    }
    OptionalInt on =
        IntStream.range(0, corners.size()).filter(i -> corners.get(i).equals(at)).findFirst();
    int next =
        on.isPresent() ? Math.floorMod(on.getAsInt() + step, corners.size()) : near(corners, at);
    return Optional.of(corners.get(next));
  }

  private static int near(List<Point> corners, Point at) {
    int nearest = 0;
    for (int i = 1; i < corners.size(); i++) {
      if (corners.get(i).distance(at) < corners.get(nearest).distance(at)) {
        nearest = i;
      }
    }
    return nearest;
  }
}
