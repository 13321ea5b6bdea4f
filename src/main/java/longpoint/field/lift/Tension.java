package longpoint.field.lift;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.geometry.Point3;

/**
 * What lines from one hook carry. The hook is plumb over the centre of gravity; lines do not
 * stretch and pull only.
 *
 * <p>Two lines, and three, are settled by statics: the pulls at the hook add up to the weight. Four
 * are not: a hair's difference in length decides which of them hang slack. For each line the most
 * is told that it carries in any way three or two of them can hold the section alone. Where two
 * lines across from each other can, that is the common practice of reckoning four lines as two (US
 * Navy NAVEDTRA 14080, bridle hitch: two of the legs may take practically the full load).
 */
final class Tension {
  /** A line's pull below this share of the weight is no pull: rounding. */
  private static final double SLACK = 1e-9;

  private Tension() {}

  /**
   * The most each line may carry.
   *
   * @param weight &gt; 0
   * @return empty if the section cannot hang level from these places
   */
  static Optional<double[]> most(double weight, Point3 hook, List<Point3> places, double within) {
    return switch (places.size()) {
      case 2 -> two(weight, hook, places, within);
      case 3 -> three(weight, hook, places);
      default -> four(weight, hook, places);
    };
  }

  /** Both places and the hook stand in one upright plane, or it does not hang level. */
  private static Optional<double[]> two(
      double weight, Point3 hook, List<Point3> places, double within) {
    Point3 a = places.get(0);
    Point3 b = places.get(1);
    double apart = a.plan().distance(b.plan());
    if (apart < within) {
      return Optional.empty();
    }
    double off = b.plan().minus(a.plan()).cross(hook.plan().minus(a.plan())) / apart;
    double da = b.plan().minus(a.plan()).dot(hook.plan().minus(a.plan())) / apart;
    double db = apart - da;
    if (Math.abs(off) > within || da < -SLACK * apart || db < -SLACK * apart) {
      return Optional.empty();
    }
    double ha = hook.z() - a.z();
    double hb = hook.z() - b.z();
    // Level pulls are equal: Ta·da/la = Tb·db/lb; upright ones add up to the weight.
    double level = da * hb + db * ha;
    if (level <= 0) {
      return Optional.empty();
    }
    return Optional.of(
        new double[] {
          weight * db * Math.hypot(da, ha) / level, weight * da * Math.hypot(db, hb) / level
        });
  }

  private static Optional<double[]> three(double weight, Point3 hook, List<Point3> places) {
    double[][] u = new double[3][];
    for (int i = 0; i < 3; i++) {
      Point3 p = places.get(i);
      double length = hook.distance(p);
      u[i] =
          new double[] {
            (hook.x() - p.x()) / length, (hook.y() - p.y()) / length, (hook.z() - p.z()) / length
          };
    }
    double all = det(u[0], u[1], u[2]);
    double[] up = {0, 0, 1};
    if (Math.abs(all) < SLACK) {
      return Optional.empty();
    }
    double[] pulls = {
      weight * det(up, u[1], u[2]) / all,
      weight * det(u[0], up, u[2]) / all,
      weight * det(u[0], u[1], up) / all
    };
    for (double pull : pulls) {
      if (pull < -SLACK * weight) {
        return Optional.empty();
      }
    }
    return Optional.of(pulls);
  }

  private static Optional<double[]> four(double weight, Point3 hook, List<Point3> places) {
    double[] most = new double[places.size()];
    boolean any = false;
    for (int without = 0; without < places.size(); without++) {
      List<Integer> kept = new ArrayList<>();
      for (int i = 0; i < places.size(); i++) {
        if (i != without) {
          kept.add(i);
        }
      }
      Optional<double[]> pulls = three(weight, hook, kept.stream().map(places::get).toList());
      if (pulls.isPresent()) {
        any = true;
        for (int k = 0; k < kept.size(); k++) {
          most[kept.get(k)] = Math.max(most[kept.get(k)], pulls.get()[k]);
        }
      }
    }
    return any ? Optional.of(most) : Optional.empty();
  }

  private static double det(double[] a, double[] b, double[] c) {
    return a[0] * (b[1] * c[2] - b[2] * c[1])
        - b[0] * (a[1] * c[2] - a[2] * c[1])
        + c[0] * (a[1] * b[2] - a[2] * b[1]);
  }
}
