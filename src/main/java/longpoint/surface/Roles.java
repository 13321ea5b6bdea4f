package longpoint.surface;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.plan.EdgeKind;
import longpoint.plan.Join;

/**
 * Who lies over whom where two parts share ground, and what is built beneath.
 *
 * <p>A join in the plan says it. Without one, the part with an open side lies over the part
 * without; failing that the part with the smaller roof lies over the larger, then the later id over
 * the earlier. Such a join is an overlay.
 */
final class Roles {
  private final Map<String, PartRoof> roofs = new HashMap<>();
  private final List<Join> joins;

  Roles(List<PartRoof> roofs, List<Join> joins) {
    roofs.forEach(r -> this.roofs.put(r.part(), r));
    this.joins = joins;
  }

  /** Whether {@code a} lies over {@code b}. */
  boolean over(String a, String b) {
    Optional<Join> said = join(a, b);
    if (said.isPresent()) {
      return said.get().upper().equals(a);
    }
    boolean openA = open(a);
    if (openA != open(b)) {
      return openA;
    }
    int byArea = Double.compare(roofs.get(a).own().getArea(), roofs.get(b).own().getArea());
    return byArea != 0 ? byArea < 0 : a.compareTo(b) > 0;
  }

  Join.Method method(String a, String b) {
    return join(a, b).map(Join::method).orElse(Join.Method.OVERLAY);
  }

  private Optional<Join> join(String a, String b) {
    return joins.stream()
        .filter(
            j ->
                (j.upper().equals(a) && j.lower().equals(b))
                    || (j.upper().equals(b) && j.lower().equals(a)))
        .findFirst();
  }

  private boolean open(String part) {
    return roofs.get(part).sides().stream().anyMatch(s -> s.kind() == EdgeKind.OPEN);
  }
}
