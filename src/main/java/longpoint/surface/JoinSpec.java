package longpoint.surface;

import java.util.List;
import longpoint.geometry.Point;
import longpoint.plan.Join;

/**
 * All that the joined roof of some parts depends on. Equal specs have equal roofs.
 *
 * @param parts in the order of their ids
 * @param joins between them, as the user set them
 * @param origin from which places are measured while they are joined
 */
record JoinSpec(List<PartSpec> parts, List<Join> joins, Point origin) {
  JoinSpec {
    parts = List.copyOf(parts);
    joins = List.copyOf(joins);
  }

  static JoinSpec of(List<PartSpec> parts, List<Join> all, Point origin) {
    List<String> ids = parts.stream().map(PartSpec::part).toList();
    return new JoinSpec(
        parts,
        all.stream().filter(j -> ids.contains(j.upper()) && ids.contains(j.lower())).toList(),
        origin);
  }
}
