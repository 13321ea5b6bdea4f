package longpoint.surface;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import org.locationtech.jts.geom.Polygon;

/** Puts the planes and lines together in the plan's own coordinates, in a fixed order. */
final class Assembly {
  /** Ends whose heights differ by less than this many grains are level. */
  private static final double LEVEL = 64;

  static final Comparator<RoofLine> ORDER =
      Comparator.comparing(RoofLine::kind)
          .thenComparing(l -> String.join("+", l.planes()))
          .thenComparing(l -> l.from().x())
          .thenComparing(l -> l.from().y())
          .thenComparing(l -> l.to().x())
          .thenComparing(l -> l.to().y());

  private final Point origin;
  private final Grain grain;
  private final Map<Point, List<Double>> heights = new HashMap<>();

  Assembly(Point origin, Grain grain) {
    this.origin = origin;
    this.grain = grain;
  }

  /** The ground of every plane that shows or is built on. */
  Map<String, JoinedRoof.Share> shares(Joining joining) {
    Set<Point> ends = new HashSet<>();
    for (LineFinder.Stretch line : joining.lines()) {
      ends.add(line.line().from());
      ends.add(line.line().to());
    }
    Map<String, List<Polygon>> visible = new HashMap<>();
    Map<String, List<Polygon>> covered = new HashMap<>();
    Map<String, List<Polygon>> sheltered = new HashMap<>();
    for (int c = 0; c < joining.standing().size(); c++) {
      Polygon shape = joining.presence().ground().cells().get(c).shape();
      Standing here = joining.standing().get(c);
      if (!here.empty()) {
        visible.computeIfAbsent(here.top().id(), k -> new ArrayList<>()).add(shape);
        here.covered()
            .forEach(p -> covered.computeIfAbsent(p.id(), k -> new ArrayList<>()).add(shape));
        here.sheltered()
            .forEach(p -> sheltered.computeIfAbsent(p.id(), k -> new ArrayList<>()).add(shape));
      }
    }
    Set<String> ids = new HashSet<>(visible.keySet());
    ids.addAll(covered.keySet());
    Map<String, JoinedRoof.Share> shares = new HashMap<>();
    for (String id : ids) {
      shares.put(
          id,
          new JoinedRoof.Share(
              regions(visible.getOrDefault(id, List.of()), ends),
              regions(covered.getOrDefault(id, List.of()), ends),
              regions(sheltered.getOrDefault(id, List.of()), ends)));
    }
    return shares;
  }

  private List<Region> regions(List<Polygon> cells, Set<Point> ends) {
    return Regions.dissolve(cells, ends, grain).stream().map(this::home).toList();
  }

  private Region home(Region region) {
    return new Region(home(region.shell()), region.holes().stream().map(this::home).toList());
  }

  private Ring home(Ring ring) {
    return new Ring(ring.points().stream().map(origin::plus).toList());
  }

  List<RoofLine> lines(List<LineFinder.Stretch> stretches) {
    List<RoofLine> lines = new ArrayList<>();
    for (LineFinder.Stretch s : stretches) {
      lines.add(line(s));
    }
    lines.sort(ORDER);
    return numbered(lines);
  }

  private RoofLine line(LineFinder.Stretch s) {
    Point3 a = lift(s.on().plane(), s.line().from());
    Point3 b = lift(s.on().plane(), s.line().to());
    boolean level = Math.abs(a.z() - b.z()) <= LEVEL * grain.place();
    boolean turned = level ? after(a, b) : a.z() > b.z();
    return new RoofLine("", s.kind(), turned ? b : a, turned ? a : b, s.planes());
  }

  private static boolean after(Point3 a, Point3 b) {
    return a.x() != b.x() ? a.x() > b.x() : a.y() > b.y();
  }

  /** One height for all lines that end together, whichever of the planes it was taken from. */
  private Point3 lift(Plane plane, Point local) {
    double height = plane.heightAt(local);
    List<Double> known = heights.computeIfAbsent(local, p -> new ArrayList<>());
    for (double z : known) {
      if (Math.abs(z - height) <= grain.height(plane, plane)) {
        return origin.plus(local).at(z);
      }
    }
    known.add(height);
    return origin.plus(local).at(height);
  }

  /** Ids from kind and planes, with a count where the same planes meet more than once. */
  private static List<RoofLine> numbered(List<RoofLine> lines) {
    Map<String, Integer> seen = new TreeMap<>();
    List<RoofLine> named = new ArrayList<>();
    for (RoofLine line : lines) {
      String name = line.kind().key() + ":" + String.join("+", line.planes());
      int count = seen.merge(name, 1, Integer::sum);
      String id = count == 1 ? name : name + "#" + count;
      named.add(new RoofLine(id, line.kind(), line.from(), line.to(), line.planes()));
    }
    return named;
  }
}
