package longpoint.surface;

import java.util.List;

/**
 * What stands over one cell of ground.
 *
 * @param top the roof seen from above, or null where there is none
 * @param covered roofs that are built beneath it, in the order of their parts
 */
record Standing(Piece top, List<Piece> covered) {
  static final Standing NOTHING = new Standing(null, List.of());

  Standing {
    covered = List.copyOf(covered);
  }

  boolean empty() {
    return top == null;
  }

  /** Whether a plane is built here, seen or covered. */
  boolean holds(String plane) {
    return (top != null && top.id().equals(plane))
        || covered.stream().anyMatch(p -> p.id().equals(plane));
  }
}
