package longpoint.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import longpoint.geometry.Point;

/**
 * Finds the corners of a part again after an edit that changed their numbers. As long as a part has
 * as many sides as before, every corner keeps its number. Otherwise a corner is the one at its old
 * place, or else the nearest of those that were not there before.
 */
final class CornerTrace {
  private final Plan before;
  private final List<Part> after;
  private final Map<String, List<Integer>> traces = new HashMap<>();

  /**
   * @param before the plan as it was
   * @param after its parts now
   */
  CornerTrace(Plan before, List<Part> after) {
    this.before = before;
    this.after = after;
  }

  /** As {@link #corner}, for the end of a dimension. */
  Optional<PlanDimension.End> end(PlanDimension.Corner end) {
    return corner(end).map(c -> c);
  }

  /** The same corner of the changed parts; empty when it has gone. */
  Optional<PlanDimension.Corner> corner(PlanDimension.Corner end) {
    Optional<Part> old = before.part(end.part());
    if (old.isEmpty() || end.corner() < 0 || end.corner() >= old.get().sideCount()) {
      return Optional.of(end); // it held on to nothing before
    }
    Optional<Part> now = after.stream().filter(p -> p.id().equals(end.part())).findFirst();
    if (now.isEmpty()) {
      return Optional.empty();
    }
    int found =
        traces.computeIfAbsent(end.part(), id -> trace(old.get(), now.get())).get(end.corner());
    return found < 0 ? Optional.empty() : Optional.of(new PlanDimension.Corner(end.part(), found));
  }

  /** For every corner its number now, or −1. */
  static List<Integer> trace(Part old, Part now) {
    if (old.sideCount() == now.sideCount()) {
      return IntStream.range(0, old.sideCount()).boxed().toList();
    }
    Map<Point, Integer> places = new HashMap<>();
    for (int i = 0; i < now.sideCount(); i++) {
      places.putIfAbsent(now.side(i).from(), i);
    }
    List<Integer> fresh = new ArrayList<>(places.values());
    for (int i = 0; i < old.sideCount(); i++) {
      fresh.remove(places.get(old.side(i).from()));
    }
    List<Integer> trace = new ArrayList<>();
    for (int i = 0; i < old.sideCount(); i++) {
      Point at = old.side(i).from();
      Integer same = places.get(at);
      trace.add(
          same != null
              ? same
              : fresh.stream()
                  .min(Comparator.comparingDouble(k -> now.side(k).from().distance(at)))
                  .orElse(-1));
    }
    return trace;
  }
}
