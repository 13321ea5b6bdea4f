package longpoint.tracing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.stop.CalledOff;

/**
 * Chains open lines into closed rings.
 *
 * <p>Ends that are near each other meet in a node, an end that stops against the middle of another
 * line makes one there. Lines that lead nowhere are taken away one after the other; of every net
 * that is left, the outermost face is the outline (the ring a hand draws that goes round it and
 * takes every turning to the outside).
 *
 * <p>Loose ends that would close an outline if they met are gaps: the nearest two first, or else
 * the two ends of one chain, however far apart they are.
 */
final class Chains {
  /** Pairs of loose end and line that are compared at most. */
  private static final long MOST_PAIRS = 50_000_000;

  /** More loose ends than this are a sketch, and are not compared each with each. */
  private static final int MOST_LOOSE = 2000;

  private final double tolerance;
  private final List<List<Point>> rings = new ArrayList<>();
  private List<Segment> gaps = List.of();

  private Chains(double tolerance) {
    this.tolerance = tolerance;
  }

  /**
   * @param paths each of two points or more
   * @param tolerance ends nearer than this meet, &gt; 0
   * @param reach ends of different chains farther apart than this are no gap
   * @param what becomes of gaps
   */
  static Chains of(List<List<Point>> paths, double tolerance, double reach, Traced.Gaps what) {
    Chains chains = new Chains(tolerance);
    List<List<Point>> pieces = chains.cutAtLooseEnds(paths);
    Net net = chains.net(pieces, List.of());
    List<Segment> bridges = pairs(net.looseEnds(), reach);
    Net bridged = chains.net(pieces, bridges);
    bridged.prune();
    chains.gaps = bridges.stream().filter(b -> bridged.joins(b.from(), b.to())).toList();
    Net closing =
        switch (what) {
          case LEFT_OPEN -> net;
          case CLOSED -> bridged;
        };
    closing.prune();
    closing.outerFaces().forEach(chains::split);
    return chains;
  }

  private Net net(List<List<Point>> pieces, List<Segment> bridges) {
    Net net = new Net(tolerance);
    pieces.forEach(net::add);
    bridges.forEach(b -> net.add(List.of(b.from(), b.to())));
    return net;
  }

  /** Which loose ends might meet, each with one other at most. */
  private static List<Segment> pairs(List<Net.Loose> loose, double reach) {
    List<Segment> all = new ArrayList<>();
    List<Segment> own = new ArrayList<>();
    for (int i = 0; i < loose.size(); i++) {
      Net.Loose a = loose.get(i);
      for (int j = i + 1; j < loose.size(); j++) {
        Point b = loose.get(j).at();
        boolean oneChain = a.far().equals(b);
        if (oneChain && a.many()) {
          own.add(new Segment(a.at(), b));
        } else if (!oneChain && loose.size() <= MOST_LOOSE && a.at().distance(b) <= reach) {
          all.add(new Segment(a.at(), b));
        }
      }
    }
    own.stream().filter(s -> s.length() <= reach).forEach(all::add);
    all.sort(Comparator.comparingDouble(Segment::length));
    own.stream().filter(s -> s.length() > reach).forEach(all::add);
    Set<Point> taken = new HashSet<>();
    List<Segment> pairs = new ArrayList<>();
    for (Segment s : all) {
      if (!taken.contains(s.from()) && !taken.contains(s.to())) {
        taken.add(s.from());
        taken.add(s.to());
        pairs.add(s);
      }
    }
    return pairs;
  }

  List<List<Point>> rings() {
    return rings;
  }

  /** From one end to the other of each place where an outline would close. */
  List<Segment> gaps() {
    return gaps;
  }

  private List<List<Point>> cutAtLooseEnds(List<List<Point>> paths) {
    Nodes ends = new Nodes(tolerance);
    for (List<Point> path : paths) {
      CalledOff.check();
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
