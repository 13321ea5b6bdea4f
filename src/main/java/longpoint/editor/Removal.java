package longpoint.editor;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import longpoint.plan.Part;
import longpoint.plan.Reshape;

/**
 * Takes selected corners and courtyards out of one part. A side of a courtyard stands for the whole
 * of it, and so do its corners when fewer than three would stay.
 */
final class Removal {
  private Removal() {}

  /** The part without them; empty when its outline could not close any more. */
  static Optional<Part> from(Part part, List<Ref> refs) {
    // By number, worked from the highest down, so that the numbers below stay good.
    Map<Integer, Function<Part, Optional<Part>>> steps = new TreeMap<>((a, b) -> b - a);
    for (int hole = 0; hole < part.holes().size(); hole++) {
      int first = first(part, hole);
      if (goes(part, hole, refs)) {
        int number = hole;
        steps.put(first, p -> Optional.of(Reshape.removeHole(p, number)));
      }
    }
    for (Ref ref : refs) {
      if (ref instanceof Ref.OfCorner corner) {
        Optional<Integer> hole = Reshape.holeOf(part, corner.corner());
        if (hole.isEmpty() || !goes(part, hole.get(), refs)) {
          steps.put(corner.corner(), p -> Reshape.removeCorner(p, corner.corner()));
        }
      }
    }
    Optional<Part> left = Optional.of(part);
    for (Function<Part, Optional<Part>> step : steps.values()) {
      left = left.flatMap(step);
    }
    return left;
  }

  /** Whether a selected side is a wall of the outline, which cannot go by itself. */
  static boolean hasWall(Part part, List<Ref> refs) {
    return refs.stream()
        .anyMatch(r -> r instanceof Ref.OfSide side && Reshape.holeOf(part, side.side()).isEmpty());
  }

  private static boolean goes(Part part, int hole, List<Ref> refs) {
    int first = first(part, hole);
    int count = part.holes().get(hole).size();
    long corners =
        refs.stream()
            .filter(r -> r instanceof Ref.OfCorner c && within(c.corner(), first, count))
            .count();
    return count - corners < 3
        || refs.stream().anyMatch(r -> r instanceof Ref.OfSide s && within(s.side(), first, count));
  }

  private static boolean within(int number, int first, int count) {
    return number >= first && number < first + count;
  }

  private static int first(Part part, int hole) {
    return part.outline().size()
        + part.holes().subList(0, hole).stream().mapToInt(r -> r.size()).sum();
  }
}
