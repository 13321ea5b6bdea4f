package longpoint.tracing;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;

/** Lines between nodes, each as two steps, there and back. */
final class Net {
  /**
   * One way along a line.
   *
   * @param points from node to node
   */
  record Step(int number, int from, int to, List<Point> points) {
    double angle() {
      Point first = points.get(1).minus(points.get(0));
      return Math.atan2(first.y(), first.x());
    }
  }

  private record Ends(int from, int to) {}

  private final Nodes nodes;

  /** Step 2i and its way back 2i + 1. */
  private final List<Step> steps = new ArrayList<>();

  private final List<List<Step>> leaving = new ArrayList<>();
  private final Set<Ends> straight = new HashSet<>();

  Net(double tolerance) {
    nodes = new Nodes(tolerance);
  }

  /** Adds a line; a straight one that is there already, or of no length, is passed over. */
  void add(List<Point> path) {
    int from = nodes.number(path.get(0));
    int to = nodes.number(path.get(path.size() - 1));
    while (leaving.size() < nodes.size()) {
      leaving.add(new ArrayList<>());
    }
    boolean plain = path.size() == 2;
    Ends ends = new Ends(Math.min(from, to), Math.max(from, to));
    if (plain && (from == to || !straight.add(ends))) {
      return;
    }
    List<Point> points = new ArrayList<>(path);
    points.set(0, nodes.place(from));
    points.set(points.size() - 1, nodes.place(to));
    List<Point> back = new ArrayList<>(points);
    Collections.reverse(back);
    step(new Step(steps.size(), from, to, points));
    step(new Step(steps.size(), to, from, back));
  }

  private void step(Step step) {
    steps.add(step);
    leaving.get(step.from()).add(step);
  }

  private Step back(Step step) {
    return steps.get(step.number() ^ 1);
  }

  /**
   * An end that nothing meets.
   *
   * @param far the other end of its chain of lines that does not branch; itself where that branches
   * @param many whether the chain could close on itself: three lines or more
   */
  record Loose(Point at, Point far, boolean many) {}

  /** Every end that nothing meets, in the order of the lines. */
  List<Loose> looseEnds() {
    List<Loose> loose = new ArrayList<>();
    for (int node = 0; node < leaving.size(); node++) {
      if (leaving.get(node).size() != 1) {
        continue;
      }
      Step step = leaving.get(node).get(0);
      int lines = 1;
      while (leaving.get(step.to()).size() == 2) {
        List<Step> both = leaving.get(step.to());
        step = both.get(0) == back(step) ? both.get(1) : both.get(0);
        lines++;
      }
      boolean end = leaving.get(step.to()).size() == 1;
      boolean many = lines > 2 || step.points().size() > 3;
      loose.add(new Loose(nodes.place(node), nodes.place(end ? step.to() : node), many));
    }
    return loose;
  }

  /** Whether a line leads straight from one place to another. */
  boolean joins(Point from, Point to) {
    int end = nodes.number(to);
    return leaving.get(nodes.number(from)).stream()
        .anyMatch(s -> s.to() == end && s.points().size() == 2);
  }

  /** Takes away lines that lead nowhere. */
  void prune() {
    Deque<Integer> ends = new ArrayDeque<>();
    for (int node = 0; node < leaving.size(); node++) {
      ends.add(node);
    }
    while (!ends.isEmpty()) {
      List<Step> only = leaving.get(ends.remove());
      if (only.size() == 1) {
        Step step = only.get(0);
        leaving.get(step.to()).remove(back(step));
        only.clear();
        ends.add(step.to());
      }
    }
  }

  /** The outside of each net that hangs together, walked clockwise. */
  List<List<Step>> outerFaces() {
    for (List<Step> around : leaving) {
      around.sort(Comparator.comparingDouble(Step::angle).thenComparing(Step::number));
    }
    List<List<Step>> faces = new ArrayList<>();
    Set<Integer> walked = new HashSet<>();
    for (List<Step> around : leaving) {
      for (Step first : around) {
        if (!walked.contains(first.number())) {
          List<Step> face = face(first, walked);
          if (signedArea(face) < 0) {
            faces.add(face);
          }
        }
      }
    }
    return faces;
  }

  /** Keeps the ground on its left: at every node the first turning clockwise from the way back. */
  private List<Step> face(Step first, Set<Integer> walked) {
    List<Step> face = new ArrayList<>();
    Step step = first;
    do {
      walked.add(step.number());
      face.add(step);
      List<Step> around = leaving.get(step.to());
      int at = around.indexOf(back(step));
      step = around.get(Math.floorMod(at - 1, around.size()));
    } while (step != first);
    return face;
  }

  private static double signedArea(List<Step> face) {
    List<Point> points = new ArrayList<>();
    face.forEach(s -> points.addAll(s.points().subList(0, s.points().size() - 1)));
    return points.size() < 3 ? 0 : new Ring(points).signedArea();
  }
}
