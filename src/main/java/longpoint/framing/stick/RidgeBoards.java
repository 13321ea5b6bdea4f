package longpoint.framing.stick;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Point;

/** Ridges that run on in one line from one another are one board. */
final class RidgeBoards {
  /** Ends closer than this in plan units are one end. */
  private static final double SAME = 1e-6;

  /** Cosine of the angle within which two ridges are in line. */
  private static final double STRAIGHT = 1 - 1e-9;

  private RidgeBoards() {}

  static List<Stick> join(List<Stick> sticks) {
    List<Stick> joined = new ArrayList<>();
    for (Stick s : sticks) {
      int with = -1;
      for (int i = 0; i < joined.size() && s.kind() == RafterKind.RIDGE; i++) {
        if (joined.get(i).kind() == RafterKind.RIDGE && runOn(joined.get(i), s)) {
          with = i;
        }
      }
      if (with < 0) {
        joined.add(s);
      } else {
        joined.set(with, joined(joined.get(with), s));
      }
    }
    return joined;
  }

  private static boolean runOn(Stick a, Stick b) {
    return a.run().equals(b.run())
        && Math.abs(a.slope()) < SAME
        && Math.abs(b.slope()) < SAME
        && Math.abs(a.up().unit().dot(b.up().unit())) > STRAIGHT
        && (meet(a.head(), b.foot())
            || meet(a.head(), b.head())
            || meet(a.foot(), b.foot())
            || meet(a.foot(), b.head()));
  }

  private static boolean meet(Point p, Point q) {
    return p.distance(q) < SAME;
  }

  private static Stick joined(Stick a, Stick b) {
    boolean same = a.up().dot(b.up()) > 0;
    Point foot = same ? b.foot() : b.head();
    Point head = same ? b.head() : b.foot();
    Joint atFoot = same ? b.atFoot() : b.atHead().turned();
    Joint atHead = same ? b.atHead() : b.atFoot().turned();
    return meet(a.head(), foot)
        ? a.between(a.foot(), head).withHead(atHead)
        : a.between(foot, a.head()).withFoot(atFoot);
  }
}
