package longpoint.field.chalk;

import java.util.List;
import java.util.Objects;
import longpoint.geometry.Segment;

/**
 * Lookouts along one rake of a plane.
 *
 * @param rake in (u, v), from the fascia up
 * @param marks lower edge of each, v from the fascia arris
 * @param wall from the rake's outside in to the gable truss's outside face, where marking begins:
 *     nothing hangs outside it yet, ≥ 0
 * @param reach from the rake's outside in to the last truss a lookout is nailed to
 */
public record Lookouts(String plane, Segment rake, List<Double> marks, double wall, double reach) {
  public Lookouts {
    Objects.requireNonNull(plane);
    Objects.requireNonNull(rake);
    marks = List.copyOf(marks);
  }
}
