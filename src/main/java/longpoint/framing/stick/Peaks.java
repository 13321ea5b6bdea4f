package longpoint.framing.stick;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.wording.Phrase;

/**
 * Points where several hips meet with no ridge between them, as over an octagon. What comes off
 * each depends on the order they are set in and on a post at the peak (Griffith, Carpentry, 1916,
 * art. 37), so their lengths run to the middle and that is said.
 */
public final class Peaks {
  /** Two hips meet at the end of any ridge. */
  private static final int SEVERAL = 3;

  private Peaks() {}

  /** A warning for each part with such a point. */
  public static List<Problem> warnings(Plan plan, List<Rafter> rafters) {
    List<Problem> problems = new ArrayList<>();
    for (Part part : plan.parts()) {
      List<Point> heads =
          rafters.stream()
              .filter(r -> r.kind() == RafterKind.HIP && r.part().equals(part.id()))
              .filter(r -> r.shortenHead() == 0)
              .flatMap(r -> r.places().stream().map(Segment::to))
              .toList();
      double near = part.frame().thickness();
      long most =
          heads.stream()
              .mapToLong(p -> heads.stream().filter(q -> q.distance(p) < near).count())
              .max()
              .orElse(0);
      if (most >= SEVERAL) {
        problems.add(
            Problem.warning(part.id(), Phrase.of("framing.peak", most, PlaceName.of(part))));
      }
    }
    return problems;
  }
}
