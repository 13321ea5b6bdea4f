package longpoint.surface;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/** Makes one line of stretches that touch, lie straight, and lie between the same planes. */
final class LineMerger {
  private LineMerger() {}

  /** The stretches merged; the order of groups follows the kind and the planes. */
  static List<LineFinder.Stretch> merge(List<LineFinder.Stretch> stretches, Grain grain) {
    Map<String, List<LineFinder.Stretch>> groups = new TreeMap<>();
    for (LineFinder.Stretch s : stretches) {
      String key = s.kind().ordinal() + " " + String.join(" ", s.planes()) + " " + s.on().id();
      groups.computeIfAbsent(key, k -> new ArrayList<>()).add(s);
    }
    List<LineFinder.Stretch> merged = new ArrayList<>();
    groups.values().forEach(g -> merged.addAll(mergeGroup(g, grain.near())));
    return merged;
  }

  private static List<LineFinder.Stretch> mergeGroup(List<LineFinder.Stretch> group, double near) {
    Map<Point, Set<LineFinder.Stretch>> at = new LinkedHashMap<>();
    for (LineFinder.Stretch s : group) {
      enter(at, s);
    }
    for (Point joint : List.copyOf(at.keySet())) {
      List<LineFinder.Stretch> two = List.copyOf(at.get(joint));
      if (two.size() == 2) {
        Point a = otherEnd(two.get(0), joint);
        Point b = otherEnd(two.get(1), joint);
        Segment through = new Segment(a, b);
        if (through.length() > near && through.distance(joint) <= near) {
          two.forEach(s -> leave(at, s));
          LineFinder.Stretch one = two.get(0);
          enter(at, new LineFinder.Stretch(one.kind(), one.planes(), one.on(), through));
        }
      }
    }
    Set<LineFinder.Stretch> left = new LinkedHashSet<>();
    at.values().forEach(left::addAll);
    return List.copyOf(left);
  }

  private static void enter(Map<Point, Set<LineFinder.Stretch>> at, LineFinder.Stretch s) {
    at.computeIfAbsent(s.line().from(), p -> new LinkedHashSet<>()).add(s);
    at.computeIfAbsent(s.line().to(), p -> new LinkedHashSet<>()).add(s);
  }

  private static void leave(Map<Point, Set<LineFinder.Stretch>> at, LineFinder.Stretch s) {
    at.get(s.line().from()).remove(s);
    at.get(s.line().to()).remove(s);
  }

  private static Point otherEnd(LineFinder.Stretch s, Point joint) {
    return s.line().from().equals(joint) ? s.line().to() : s.line().from();
  }
}
