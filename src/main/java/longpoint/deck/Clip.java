package longpoint.deck;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import longpoint.geometry.Bounds;
import longpoint.geometry.Overlay;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;

/**
 * Cuts regions of an unfolded plane along straight lines. Convex ones, most of a roof, are cut side
 * by side (Sutherland and Hodgman, 1974); the others go through the general overlay.
 */
final class Clip {
  private Clip() {}

  /** The pieces of a region between two level lines. */
  static List<Region> course(Region region, double from, double to, Panel panel) {
    Bounds box = region.shell().bounds();
    return box(region, box.minX() - 1, box.maxX() + 1, from, to, panel);
  }

  /** The pieces of a region between two upright lines. */
  static List<Region> between(Region region, double from, double to, Panel panel) {
    Bounds box = region.shell().bounds();
    return box(region, from, to, box.minY() - 1, box.maxY() + 1, panel);
  }

  /** The pieces of a region on the side of a line where {@code height} is not negative. */
  static List<Region> above(Region region, ToDoubleFunction<Point> height, Panel panel) {
    if (convex(region)) {
      return tidy(clip(region.shell().points(), height), panel).map(List::of).orElse(List.of());
    }
    Bounds box = region.shell().bounds().grown(panel.length());
    Ring all =
        Ring.of(
            box.minX(),
            box.minY(),
            box.maxX(),
            box.minY(),
            box.maxX(),
            box.maxY(),
            box.minX(),
            box.maxY());
    return tidy(clip(all.points(), height), panel)
        .map(half -> Overlay.common(List.of(region), List.of(half)))
        .orElse(List.of());
  }

  private static List<Region> box(
      Region region, double left, double right, double bottom, double top, Panel panel) {
    Bounds own = region.shell().bounds();
    if (own.minX() >= left && own.maxX() <= right && own.minY() >= bottom && own.maxY() <= top) {
      return List.of(region);
    }
    if (convex(region)) {
      List<Point> points = region.shell().points();
      points = clip(points, p -> p.x() - left);
      points = clip(points, p -> right - p.x());
      points = clip(points, p -> p.y() - bottom);
      points = clip(points, p -> top - p.y());
      return tidy(points, panel).map(List::of).orElse(List.of());
    }
    Ring window = Ring.of(left, bottom, right, bottom, right, top, left, top);
    return Overlay.common(List.of(region), List.of(new Region(window))).stream()
        .map(r -> tidy(r, panel))
        .flatMap(Optional::stream)
        .toList();
  }

  static boolean convex(Region region) {
    if (!region.holes().isEmpty()) {
      return false;
    }
    Ring ring = region.shell();
    for (int i = 0; i < ring.size(); i++) {
      Point in = ring.corner(i).minus(ring.corner(i - 1));
      Point out = ring.corner(i + 1).minus(ring.corner(i));
      if (in.cross(out) < 0) {
        return false;
      }
    }
    return true;
  }

  private static List<Point> clip(List<Point> points, ToDoubleFunction<Point> inside) {
    List<Point> kept = new ArrayList<>(points.size() + 2);
    for (int i = 0; i < points.size(); i++) {
      Point a = points.get(i);
      Point b = points.get((i + 1) % points.size());
      double da = inside.applyAsDouble(a);
      double db = inside.applyAsDouble(b);
      if (da >= 0) {
        kept.add(a);
      }
      if ((da < 0 && db > 0) || (da > 0 && db < 0)) {
        kept.add(a.toward(b, da / (da - db)));
      }
    }
    return kept;
  }

  /** Without corners that stand on the line between their neighbours; empty if nothing is left. */
  private static Optional<Region> tidy(Region region, Panel panel) {
    List<Ring> holes =
        region.holes().stream()
            .map(h -> tidy(h.points(), panel).map(r -> r.shell().reversed()))
            .flatMap(Optional::stream)
            .toList();
    return tidy(region.shell().points(), panel).map(r -> new Region(r.shell(), holes));
  }

  private static Optional<Region> tidy(List<Point> points, Panel panel) {
    List<Point> kept = new ArrayList<>(points);
    boolean changed = true;
    while (changed && kept.size() >= 3) {
      changed = false;
      for (int i = 0; i < kept.size() && kept.size() >= 3; i++) {
        Point before = kept.get(Math.floorMod(i - 1, kept.size()));
        Point after = kept.get((i + 1) % kept.size());
        if (idle(before, kept.get(i), after, panel.rounding())) {
          kept.remove(i);
          changed = true;
          i--;
        }
      }
    }
    if (kept.size() < 3) {
      return Optional.empty();
    }
    Ring ring = new Ring(kept);
    return Optional.of(new Region(ring.counterClockwise() ? ring : ring.reversed()));
  }

  private static boolean idle(Point before, Point corner, Point after, double rounding) {
    Point across = after.minus(before);
    double length = across.length();
    if (length <= rounding) {
      return true;
    }
    return Math.abs(across.cross(corner.minus(before))) <= rounding * length;
  }
}
