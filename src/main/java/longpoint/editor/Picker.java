package longpoint.editor;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.Plan;

/**
 * Finds what the pointer is on. Within reach a corner goes before a side and a side before the part
 * it stands in; of several the nearest, of parts the smallest, then the one drawn last. Notes and
 * dimensions come after sides, and the picture beneath comes last.
 */
public final class Picker {
  private Picker() {}

  public static Optional<Ref> pick(Plan plan, Point at, double reach) {
    return corner(plan, at, reach)
        .<Ref>map(c -> c)
        .or(() -> side(plan, at, reach))
        .or(() -> MarkupPicker.pick(plan, at, reach))
        .or(() -> part(plan, at))
        .or(() -> MarkupPicker.backdrop(plan, at));
  }

  /** Everything under the pointer, what {@link #pick} finds first. */
  public static List<Ref> all(Plan plan, Point at, double reach) {
    Stream<Ref> corners =
        sides(plan)
            .map(s -> new Ref.OfCorner(s.part(), s.side()))
            .filter(c -> distance(plan, c, at) <= reach)
            .sorted(Comparator.comparingDouble(c -> distance(plan, c, at)))
            .map(c -> c);
    Stream<Ref> sides =
        sides(plan)
            .filter(s -> distance(plan, s, at) <= reach)
            .sorted(Comparator.comparingDouble(s -> distance(plan, s, at)))
            .map(s -> s);
    Stream<Ref> parts =
        Stream.iterate(plan.parts().size() - 1, i -> i >= 0, i -> i - 1)
            .map(plan.parts()::get)
            .filter(p -> covers(p, at))
            .sorted(Comparator.comparingDouble(p -> p.region().area()))
            .map(p -> new Ref.OfPart(p.id()));
    return Stream.of(
            corners,
            sides,
            MarkupPicker.pick(plan, at, reach).stream(),
            parts,
            MarkupPicker.backdrop(plan, at).stream())
        .flatMap(s -> s)
        .toList();
  }

  public static Optional<Ref.OfCorner> corner(Plan plan, Point at, double reach) {
    return sides(plan)
        .map(s -> new Ref.OfCorner(s.part(), s.side()))
        .filter(c -> distance(plan, c, at) <= reach)
        .min(Comparator.comparingDouble(c -> distance(plan, c, at)));
  }

  public static Optional<Ref.OfSide> side(Plan plan, Point at, double reach) {
    return sides(plan)
        .filter(s -> distance(plan, s, at) <= reach)
        .min(Comparator.comparingDouble(s -> distance(plan, s, at)));
  }

  public static Optional<Ref.OfPart> part(Plan plan, Point at) {
    return plan.parts().stream()
        .filter(p -> covers(p, at))
        .reduce((a, b) -> b.region().area() <= a.region().area() ? b : a)
        .map(p -> new Ref.OfPart(p.id()));
  }

  /** Sides that lie wholly in a box, or the whole part where all its sides do. */
  public static List<Ref> inside(Plan plan, Bounds box) {
    return Stream.concat(
            plan.parts().stream().flatMap(p -> inside(p, box)), MarkupPicker.inside(plan, box))
        .toList();
  }

  /** Sides that a box touches, or the whole part where it takes in all of them. */
  public static List<Ref> touched(Plan plan, Bounds box) {
    Set<Ref> found = new LinkedHashSet<>(inside(plan, box));
    sides(plan)
        .filter(s -> !found.contains(new Ref.OfPart(s.part())))
        .filter(s -> touches(plan.part(s.part()).orElseThrow().side(s.side()), box))
        .forEach(found::add);
    return List.copyOf(found);
  }

  /** Whether some of a line lies in a box: it is cut down to the box edge by edge. */
  private static boolean touches(Segment line, Bounds box) {
    Point step = line.to().minus(line.from());
    double[] toward = {-step.x(), step.x(), -step.y(), step.y()};
    double[] room = {
      line.from().x() - box.minX(),
      box.maxX() - line.from().x(),
      line.from().y() - box.minY(),
      box.maxY() - line.from().y()
    };
    double low = 0;
    double high = 1;
    for (int i = 0; i < toward.length; i++) {
      if (toward[i] == 0 && room[i] < 0) {
        return false;
      }
      if (toward[i] < 0) {
        low = Math.max(low, room[i] / toward[i]);
      } else if (toward[i] > 0) {
        high = Math.min(high, room[i] / toward[i]);
      }
    }
    return low <= high;
  }

  private static Stream<Ref> inside(Part part, Bounds box) {
    List<Ref> sides =
        IntStream.range(0, part.sideCount())
            .filter(i -> box.contains(part.side(i).from()) && box.contains(part.side(i).to()))
            .<Ref>mapToObj(i -> new Ref.OfSide(part.id(), i))
            .toList();
    return sides.size() == part.sideCount() ? Stream.of(new Ref.OfPart(part.id())) : sides.stream();
  }

  private static Stream<Ref.OfSide> sides(Plan plan) {
    return plan.parts().stream()
        .flatMap(p -> IntStream.range(0, p.sideCount()).mapToObj(i -> new Ref.OfSide(p.id(), i)));
  }

  private static double distance(Plan plan, Ref.OfCorner corner, Point at) {
    return corner.at(plan).orElseThrow().distance(at);
  }

  private static double distance(Plan plan, Ref.OfSide side, Point at) {
    return plan.part(side.part()).orElseThrow().side(side.side()).distance(at);
  }

  private static boolean covers(Part part, Point at) {
    return covers(part.outline(), at) && part.holes().stream().noneMatch(h -> covers(h, at));
  }

  /** Counts crossings of a level line from the point to the right. */
  private static boolean covers(Ring ring, Point at) {
    boolean inside = false;
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.corner(i);
      Point b = ring.corner(i + 1);
      if (a.y() > at.y() != b.y() > at.y()
          && at.x() < a.x() + (b.x() - a.x()) * ((at.y() - a.y()) / (b.y() - a.y()))) {
        inside = !inside;
      }
    }
    return inside;
  }
}
