package longpoint.framing.truss;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/**
 * The outline of a truss seen square to its face, as points (v, z): v from the outside face of the
 * first bearing, z from the top of its plate. Lengths in plan units.
 *
 * @param span outside to outside of the bearings, or to the face of what carries it, &gt; 0
 * @param top corners of the top edge from tail to tail, v rising
 * @param bottom corners of the bottom edge from bearing to bearing, v rising
 */
public record Profile(double span, List<Point> top, List<Point> bottom) {
  public Profile {
    top = List.copyOf(top);
    bottom = List.copyOf(bottom);
    if (!(span > 0) || top.size() < 2 || bottom.size() < 2) {
      throw new IllegalArgumentException("no profile: span " + span);
    }
  }

  /** A profile with a level bottom at the plate. */
  public static Profile level(double span, List<Point> top) {
    return new Profile(span, top, List.of(new Point(0, 0), new Point(span, 0)));
  }

  /** Height of the top edge. */
  public double topAt(double v) {
    return at(top, v);
  }

  public double bottomAt(double v) {
    return at(bottom, v);
  }

  private static double at(List<Point> edge, double v) {
    for (int i = 0; i + 1 < edge.size(); i++) {
      Point a = edge.get(i);
      Point b = edge.get(i + 1);
      if (v <= b.x() || i + 2 == edge.size()) {
        return b.x() == a.x() ? a.y() : a.y() + (b.y() - a.y()) * (v - a.x()) / (b.x() - a.x());
      }
    }
    throw new IllegalArgumentException("an edge has two corners");
  }

  /** Plumb height above the outside face of the first bearing. */
  public double heelLow() {
    return topAt(0);
  }

  /** Plumb height above the outside face of the last bearing, or at the face that carries it. */
  public double heelHigh() {
    return topAt(span);
  }

  /** Lowest corner of the bottom edge to the highest of the top edge. */
  public double height() {
    double high = top.stream().mapToDouble(Point::y).max().orElseThrow();
    double low = bottom.stream().mapToDouble(Point::y).min().orElseThrow();
    return high - low;
  }

  /** Level length of the tail past the first bearing. */
  public double tailLow() {
    return Math.max(0, -top.get(0).x());
  }

  public double tailHigh() {
    return Math.max(0, top.get(top.size() - 1).x() - span);
  }

  /** Lengths of the top edge from corner to corner, tails included. */
  public List<Double> topChords() {
    return lengths(top);
  }

  public List<Double> bottomChords() {
    return lengths(bottom);
  }

  private static List<Double> lengths(List<Point> edge) {
    List<Double> lengths = new ArrayList<>(edge.size() - 1);
    for (int i = 0; i + 1 < edge.size(); i++) {
      lengths.add(new Segment(edge.get(i), edge.get(i + 1)).length());
    }
    return List.copyOf(lengths);
  }

  /** The same truss turned end for end. */
  public Profile turned() {
    return new Profile(span, turned(top), turned(bottom));
  }

  private List<Point> turned(List<Point> edge) {
    List<Point> points = new ArrayList<>(edge.size());
    for (int i = edge.size() - 1; i >= 0; i--) {
      points.add(new Point(span - edge.get(i).x(), edge.get(i).y()));
    }
    return points;
  }

  /** The same truss cut plumb at the outside of its first bearing. */
  public Profile withoutTailLow() {
    return new Profile(span, between(0, top.get(top.size() - 1).x()), bottom);
  }

  /** The same truss cut plumb at the outside of its last bearing. */
  public Profile withoutTailHigh() {
    return new Profile(span, between(top.get(0).x(), span), bottom);
  }

  /**
   * The piece from one place to another, cut plumb; a tail stays with the end it is on.
   *
   * @param a ≥ 0
   * @param b &gt; a, at most the span
   */
  Profile piece(double a, double b) {
    double first = a > 0 ? a : top.get(0).x();
    double last = b < span ? b : top.get(top.size() - 1).x();
    return new Profile(b - a, moved(between(first, last), a), moved(between(bottom, a, b), a));
  }

  private static List<Point> moved(List<Point> edge, double by) {
    return edge.stream().map(p -> new Point(p.x() - by, p.y())).toList();
  }

  /**
   * The same truss with its bottom chord up from both bearings to the middle.
   *
   * @param slope rise over run, &gt; 0
   */
  Profile scissor(double slope) {
    double middle = span / 2;
    return new Profile(
        span, top, List.of(new Point(0, 0), new Point(middle, slope * middle), new Point(span, 0)));
  }

  /** The top edge from one place to another. */
  private List<Point> between(double from, double to) {
    return between(top, from, to);
  }

  private static List<Point> between(List<Point> edge, double from, double to) {
    List<Point> points = new ArrayList<>();
    points.add(new Point(from, at(edge, from)));
    edge.stream().filter(p -> p.x() > from && p.x() < to).forEach(points::add);
    points.add(new Point(to, at(edge, to)));
    return points;
  }

  /** Whether two trusses would come off one jig. */
  public boolean sameAs(Profile other, double within) {
    return Math.abs(span - other.span) <= within
        && same(top, other.top, within)
        && same(bottom, other.bottom, within);
  }

  private static boolean same(List<Point> a, List<Point> b, double within) {
    if (a.size() != b.size()) {
      return false;
    }
    for (int i = 0; i < a.size(); i++) {
      if (Math.abs(a.get(i).x() - b.get(i).x()) > within
          || Math.abs(a.get(i).y() - b.get(i).y()) > within) {
        return false;
      }
    }
    return true;
  }
}
