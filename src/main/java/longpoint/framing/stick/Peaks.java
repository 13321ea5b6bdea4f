package longpoint.framing.stick;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.framing.stick.Joint.Face;
import longpoint.geometry.Point;

/**
 * Where hips come together: at the end of a ridge, or in one point with no ridge between them.
 *
 * <p>At a ridge's end hips lie with one cheek on its sides, and the ridge runs on until it has
 * their whole thickness; where commons stand at the ridge's end, hips come with two cheeks into the
 * corner between them (Griffith, Carpentry, 1916, app. IV; Carpentry Refresher). With no ridge the
 * rafters are set in order: the first pair end to end, each later one into the corner of those
 * before it (Griffith art. 37); where no two stand opposite, all are mitred alike; a post takes
 * half its width off each.
 */
final class Peaks {
  /** Two rafters this near to opposite, degrees, meet end to end. */
  private static final double STRAIGHT = 1;

  /** Beyond this angle between two pieces neither turns a side to the other. */
  private static final double BESIDE = 90.5;

  private final List<Stick> sticks;
  private final double thickness;
  private final Optional<Double> post;
  private final double near;

  private Peaks(List<Stick> sticks, double thickness, Optional<Double> post, double near) {
    this.sticks = new ArrayList<>(sticks);
    this.thickness = thickness;
    this.post = post;
    this.near = near;
  }

  /**
   * The rafters of one part with what comes off their heads at every peak.
   *
   * @param post width across the flats of a post under each peak without a ridge, &gt; 0
   * @param near heads closer than this meet
   */
  static List<Stick> settle(
      List<Stick> sticks, double thickness, Optional<Double> post, double near) {
    Peaks peaks = new Peaks(sticks, thickness, post, near);
    peaks.points().forEach(peaks::settle);
    return peaks.sticks;
  }

  /** Where hips and valleys end: the middle of those that end together. */
  private List<Point> points() {
    List<List<Point>> together = new ArrayList<>();
    for (Stick s : sticks) {
      if (s.kind() == RafterKind.HIP || s.kind() == RafterKind.VALLEY) {
        Point head = s.head();
        together.stream()
            .filter(t -> t.get(0).distance(head) < near)
            .findFirst()
            .orElseGet(
                () -> {
                  together.add(new ArrayList<>());
                  return together.get(together.size() - 1);
                })
            .add(head);
      }
    }
    return together.stream().map(Peaks::middle).toList();
  }

  private static Point middle(List<Point> points) {
    Point sum = points.stream().reduce(new Point(0, 0), Point::plus);
    return sum.times(1.0 / points.size());
  }

  private void settle(Point at) {
    List<Integer> ridges = new ArrayList<>();
    List<Integer> heads = new ArrayList<>();
    // Beside a ridge a common some inches from its end is like any other along it.
    for (int i = 0; i < sticks.size(); i++) {
      Stick s = sticks.get(i);
      boolean end = s.head().distance(at) < near || s.foot().distance(at) < near;
      if (s.kind() == RafterKind.RIDGE && end) {
        ridges.add(i);
      }
    }
    double common = ridges.isEmpty() ? near : thickness / 2;
    for (int i = 0; i < sticks.size(); i++) {
      Stick s = sticks.get(i);
      if (s.head().distance(at) < (isCommon(s) ? common : near) && isHeld(s)) {
        heads.add(i);
      }
    }
    List<Integer> hips = heads.stream().filter(i -> isKind(i, RafterKind.HIP)).toList();
    boolean valleys = hips.isEmpty();
    if (valleys && ridges.size() < 2) {
      brokenHips(at, heads);
    } else if (ridges.size() == 1 && hips.size() <= 2) {
      new RidgeEnd(sticks, thickness, at, ridges.get(0), heads).settle();
    } else if (ridges.isEmpty() && heads.size() > 2 && post.isPresent()) {
      heads.forEach(i -> head(i, Joint.square(Bearing.POST, post.orElseThrow() / 2)));
    } else if (heads.size() > 1 || ridges.size() > 1) {
      meet(at, ridges, heads);
    }
  }

  /** A hip that starts where a valley and a lower ridge end, up to a higher one, stands on both. */
  private void brokenHips(Point at, List<Integer> valleys) {
    for (int i = 0; i < sticks.size(); i++) {
      Stick hip = sticks.get(i);
      if (hip.kind() == RafterKind.HIP && hip.foot().distance(at) < near && hip.heel().isEmpty()) {
        List<Face> faces = new ArrayList<>();
        for (int v : valleys) {
          Point along = away(sticks.get(v), at);
          boolean left = along.cross(hip.up()) > 0;
          faces.add(Face.leftOf(at, left ? along : along.times(-1), thickness));
        }
        Bearing on = faces.size() == 1 ? Bearing.VALLEY : Bearing.SET_BEFORE;
        Joint foot = Joint.into(on, hip.foot(), hip.up().times(-1), thickness, faces);
        sticks.set(i, hip.withFoot(foot.turned().noLonger()));
      }
    }
  }

  /** A rafter that runs square to its eave up to a ridge. */
  static boolean isCommon(Stick s) {
    return switch (s.kind()) {
      case COMMON, TRIMMER, VALLEY_JACK -> true;
      case HIP, VALLEY, HIP_JACK, CRIPPLE, RIDGE, HEADER -> false;
    };
  }

  private static boolean isHeld(Stick s) {
    return switch (s.kind()) {
      case COMMON, HIP, VALLEY, TRIMMER -> true;
      case VALLEY_JACK -> s.atHead().on() == Bearing.RIDGE || s.atHead().on() == Bearing.RIDGE_END;
      case HIP_JACK, CRIPPLE, RIDGE, HEADER -> false;
    };
  }

  private boolean isKind(int i, RafterKind kind) {
    return sticks.get(i).kind() == kind;
  }

  private void head(int i, Joint joint) {
    sticks.set(i, sticks.get(i).withHead(joint));
  }

  /** Direction from the peak down a rafter, or away along a ridge. */
  static Point away(Stick s, Point at) {
    boolean head = s.head().distance(at) <= s.foot().distance(at);
    return (head ? s.foot().minus(s.head()) : s.head().minus(s.foot())).unit();
  }

  /** Degrees between two directions, 0 to 180. */
  static double between(Point a, Point b) {
    return Math.toDegrees(Math.abs(Math.atan2(a.cross(b), a.dot(b))));
  }

  private void meet(Point at, List<Integer> ridges, List<Integer> heads) {
    ridgesMeet(at, ridges);
    List<Face> set = new ArrayList<>();
    ridges.forEach(i -> set.add(line(i, at)));
    List<List<Integer>> groups = pairs(at, heads);
    boolean opposite = groups.stream().anyMatch(g -> g.size() == 2);
    if (ridges.isEmpty() && !opposite) {
      heads.forEach(i -> head(i, mitred(at, i, heads)));
      return;
    }
    for (int order = 1; !groups.isEmpty(); order++) {
      List<Integer> next = next(groups, at, set);
      groups.remove(next);
      boolean first = set.isEmpty();
      for (int i : next) {
        Joint joint = first ? Joint.square(Bearing.OPPOSITE, 0) : into(at, i, set, ridges.size());
        head(i, joint.inOrder(heads.size() > 2 ? order : 0));
      }
      next.forEach(i -> set.add(line(i, at)));
    }
  }

  /** One runs through, or on past the others; those stop at its side. */
  private void ridgesMeet(Point at, List<Integer> ridges) {
    for (int k = 1; k < ridges.size(); k++) {
      Stick main = sticks.get(ridges.get(0));
      Stick ridge = sticks.get(ridges.get(k));
      double angle = between(away(main, at), away(ridge, at));
      if (angle < 180 - STRAIGHT) {
        double half = thickness / 2 / Math.sin(Math.toRadians(angle));
        sticks.set(ridges.get(k), end(ridge, at, Joint.square(Bearing.RIDGE, half)));
        if (ridges.size() == 2) {
          sticks.set(ridges.get(0), end(main, at, Joint.square(Bearing.NOTHING, -half)));
        }
      }
    }
  }

  static Stick end(Stick ridge, Point at, Joint joint) {
    boolean head = ridge.head().distance(at) <= ridge.foot().distance(at);
    return head ? ridge.withHead(joint) : ridge.withFoot(joint);
  }

  /** Rafters that stand opposite each other together, the rest alone. */
  private List<List<Integer>> pairs(Point at, List<Integer> heads) {
    List<Integer> left = new ArrayList<>(heads);
    List<List<Integer>> groups = new ArrayList<>();
    while (!left.isEmpty()) {
      int one = left.remove(0);
      List<Integer> group = new ArrayList<>(List.of(one));
      left.stream()
          .filter(j -> between(away(sticks.get(one), at), away(sticks.get(j), at)) > 180 - STRAIGHT)
          .findFirst()
          .ifPresent(group::add);
      left.removeAll(group);
      groups.add(group);
    }
    return groups;
  }

  /** Commons before hips, pairs before single ones; then whatever stands freest of those set. */
  private List<Integer> next(List<List<Integer>> groups, Point at, List<Face> set) {
    List<Integer> best = groups.get(0);
    for (List<Integer> group : groups) {
      if (rank(group, at, set) > rank(best, at, set) + 1e-6) {
        best = group;
      }
    }
    return best;
  }

  private double rank(List<Integer> group, Point at, List<Face> set) {
    double common = isCommon(sticks.get(group.get(0))) ? 1000 : 0;
    double pair = set.isEmpty() && group.size() == 2 ? 2000 : 0;
    Point own = away(sticks.get(group.get(0)), at);
    return common + pair + set.stream().mapToDouble(d -> between(own, d.along())).min().orElse(0);
  }

  /** The middle line of a piece, from its end at the peak away. */
  private Face line(int i, Point at) {
    Stick s = sticks.get(i);
    boolean head = s.head().distance(at) <= s.foot().distance(at);
    return new Face(head ? s.head() : s.foot(), away(s, at));
  }

  private Joint into(Point at, int i, List<Face> set, int ridges) {
    Point own = away(sticks.get(i), at);
    List<Face> faces = new ArrayList<>();
    for (Face other : set) {
      Point along = other.along();
      if (between(own, along) <= BESIDE) {
        Point turned = along.cross(own) > 0 ? along : along.times(-1);
        faces.add(Face.leftOf(other.at(), turned, thickness));
      } else if (ridges == 1 && other == set.get(0)) {
        faces.add(new Face(other.at(), along.left()));
      }
    }
    boolean ridge =
        ridges > 0
            && set.subList(0, ridges).stream().anyMatch(r -> between(own, r.along()) <= BESIDE)
            && faces.size() == 1;
    if (faces.isEmpty()) {
      // It comes to the outside of a corner: square, to the point where both sides meet.
      double least = set.stream().mapToDouble(d -> between(own, d.along())).min().orElse(180);
      double off = least > 180 - STRAIGHT ? 0 : thickness / 2 / Math.sin(Math.toRadians(least));
      return Joint.square(ridges > 0 ? Bearing.RIDGE_END : Bearing.SET_BEFORE, off);
    }
    Bearing on = ridge ? Bearing.RIDGE : Bearing.SET_BEFORE;
    return Joint.into(on, sticks.get(i).head(), sticks.get(i).up(), thickness, faces).noLonger();
  }

  /** Half way to each neighbour. */
  private Joint mitred(Point at, int i, List<Integer> heads) {
    Point own = away(sticks.get(i), at);
    double[] turn = {360, 360};
    for (int j : heads) {
      double angle = Math.toDegrees(Math.atan2(own.cross(dir(j, at)), own.dot(dir(j, at))));
      if (j != i) {
        turn[0] = Math.min(turn[0], (angle + 360) % 360);
        turn[1] = Math.min(turn[1], (360 - angle) % 360);
      }
    }
    List<Face> faces = new ArrayList<>();
    for (int side = 0; side < 2; side++) {
      double half = Math.toRadians(turn[side] / 2) * (side == 0 ? 1 : -1);
      double x = own.x() * Math.cos(half) - own.y() * Math.sin(half);
      double y = own.x() * Math.sin(half) + own.y() * Math.cos(half);
      if (turn[side] < 180 - STRAIGHT) {
        faces.add(new Face(at, new Point(x, y)));
      }
    }
    return Joint.into(Bearing.MITRED, sticks.get(i).head(), sticks.get(i).up(), thickness, faces)
        .noLonger();
  }

  private Point dir(int j, Point at) {
    return away(sticks.get(j), at);
  }
}
