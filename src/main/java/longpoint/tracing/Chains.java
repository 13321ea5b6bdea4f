package longpoint.tracing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;

/**
 * Chains open lines into closed rings.
 *
 * <p>Ends that are near each other meet in a node, an end that stops against the middle of another
 * line makes one there. Lines that lead nowhere are taken away one after the other; of every net
 * that is left, the outermost face is the outline (the ring a hand draws that goes round it and
 * takes every turning to the outside).
 */
final class Chains {
  /** Pairs of loose end and line that are compared at most. */
  private static final long MOST_PAIRS = 50_000_000;

  private final double tolerance;
  private final List<List<Point>> rings = new ArrayList<>();
  private final List<Gap> gaps = new ArrayList<>();

  /** Two ends of one chain of lines that do not meet. */
  record Gap(Point from, Point to) {
    double width() {
      return from.distance(to);
    }
  }

  private Chains(double tolerance) {
    this.tolerance = tolerance;
  }

  /**
   * @param paths each of two points or more
   * @param tolerance ends nearer than this meet, &gt; 0
   */
  static Chains of(List<List<Point>> paths, double tolerance) {
    Chains chains = new Chains(tolerance);
    Net net = new Net(tolerance);
    for (List<Point> path : chains.cutAtLooseEnds(paths)) {
      net.add(path);
    }
    net.openChains().forEach(chains::gap);
    net.prune();
    net.outerFaces().forEach(chains::split);
    return chains;
  }

  List<List<Point>> rings() {
    return rings;
  }

  /** Chains of several lines that all but close. */
  List<Gap> gaps() {
    return gaps;
  }

  private void gap(List<Point> ends) {
    gaps.add(new Gap(ends.get(0), ends.get(1)));
  }

  private List<List<Point>> cutAtLooseEnds(List<List<Point>> paths) {
    Nodes ends = new Nodes(tolerance);
    for (List<Point> path : paths) {
      ends.count(path.get(0));
      ends.count(path.get(path.size() - 1));
    }
    List<Point> loose = ends.once();
    if ((long) loose.size() * paths.size() > MOST_PAIRS) {
      return paths;
    }
    List<List<Point>> cut = new ArrayList<>();
    for (List<Point> path : paths) {
      cut.addAll(cut(path, loose));
    }
    return cut;
  }

  private List<List<Point>> cut(List<Point> path, List<Point> at) {
    List<List<Point>> pieces = new ArrayList<>();
    List<Point> piece = new ArrayList<>(List.of(path.get(0)));
    for (int i = 0; i + 1 < path.size(); i++) {
      Point from = path.get(i);
      Point to = path.get(i + 1);
      for (Point p : onLine(from, to, at)) {
        piece.add(p);
        pieces.add(piece);
        piece = new ArrayList<>(List.of(p));
      }
      piece.add(to);
    }
    pieces.add(piece);
    return pieces;
  }

  private List<Point> onLine(Point from, Point to, List<Point> loose) {
    double length = from.distance(to);
    List<Point> found = new ArrayList<>();
    if (length <= 2 * tolerance) {
      return found;
    }
    Point along = to.minus(from).times(1 / length);
    for (Point p : loose) {
      double s = along.dot(p.minus(from));
      boolean between = s > tolerance && s < length - tolerance;
      if (between && Math.abs(along.cross(p.minus(from))) <= tolerance) {
        found.add(p);
      }
    }
    found.sort((a, b) -> Double.compare(along.dot(a), along.dot(b)));
    return found;
  }

  /** A face that runs through a node twice is two rings that touch there. */
  private void split(List<Net.Step> face) {
    List<Net.Step> walk = new ArrayList<>();
    for (Net.Step step : face) {
      walk.add(step);
      for (int i = walk.size() - 1; i >= 0; i--) {
        if (walk.get(i).from() == step.to()) {
          List<Net.Step> loop = walk.subList(i, walk.size());
          ring(loop);
          loop.clear();
          break;
        }
      }
    }
  }

  private void ring(List<Net.Step> loop) {
    List<Point> points = new ArrayList<>();
    loop.forEach(s -> points.addAll(s.points().subList(0, s.points().size() - 1)));
    // The outside of a net is walked clockwise.
    if (points.size() >= 3 && new Ring(points).signedArea() < 0) {
      Collections.reverse(points);
      rings.add(points);
    }
  }
}
