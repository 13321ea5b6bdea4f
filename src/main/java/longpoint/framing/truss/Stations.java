package longpoint.framing.truss;

import java.util.ArrayList;
import java.util.List;

/**
 * Centres of trusses along a run, rising.
 *
 * @param near fixed ones from the start: the end truss, or those of a hip end
 * @param between the ordinary ones
 * @param far fixed ones at the other end
 */
public record Stations(List<Double> near, List<Double> between, List<Double> far) {
  public Stations {
    near = List.copyOf(near);
    between = List.copyOf(between);
    far = List.copyOf(far);
  }

  /**
   * Carries a grid on from the near ones until the next would run into the far ones; the last bay
   * is whatever is left.
   *
   * @param first centre of the first ordinary one
   * @param spacing centre to centre
   * @param thickness of each
   */
  public static Stations fill(
      List<Double> near, double first, List<Double> far, double spacing, double thickness) {
    List<Double> between = new ArrayList<>();
    double limit = far.isEmpty() ? Double.NEGATIVE_INFINITY : far.get(0) - thickness;
    for (int k = 0; first + k * spacing <= limit; k++) {
      between.add(first + k * spacing);
    }
    return new Stations(near, between, far);
  }

  public List<Double> all() {
    List<Double> all = new ArrayList<>(near);
    all.addAll(between);
    all.addAll(far);
    return List.copyOf(all);
  }

  /** Where the tape is marked: the near face of each, the truss standing beyond the mark. */
  public List<Double> tapeMarks(double thickness) {
    return all().stream().map(s -> s - thickness / 2).toList();
  }

  /** Clear distance from each to the next. */
  public List<Double> gaps(double thickness) {
    List<Double> all = all();
    List<Double> gaps = new ArrayList<>();
    for (int i = 0; i + 1 < all.size(); i++) {
      gaps.add(all.get(i + 1) - all.get(i) - thickness);
    }
    return List.copyOf(gaps);
  }
}
