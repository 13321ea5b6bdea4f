package longpoint.surface;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * What stands over one cell of ground.
 *
 * @param top the roof seen from above, or null where there is none
 * @param covered roofs that are built beneath it, in the order of their parts
 * @param sheltered those of them that lie in the open air beneath an overhang
 */
record Standing(Piece top, List<Piece> covered, List<Piece> sheltered) {
  static final Standing NOTHING = new Standing(null, List.of(), List.of());

  Standing {
    covered = List.copyOf(covered);
    sheltered = List.copyOf(sheltered);
  }

  boolean empty() {
    return top == null;
  }

  /** Whether a plane is built here, seen or covered. */
  boolean holds(String plane) {
    return (top != null && top.id().equals(plane))
        || covered.stream().anyMatch(p -> p.id().equals(plane));
  }

  /** The part's plane that the rain or the wind can reach, or null. */
  Piece outdoors(String part) {
    return Stream.concat(Stream.of(top).filter(Objects::nonNull), sheltered.stream())
        .filter(p -> p.part().equals(part))
        .findFirst()
        .orElse(null);
  }
}
