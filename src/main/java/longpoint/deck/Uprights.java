package longpoint.deck;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import longpoint.geometry.Segment;

/**
 * The supports of one plane that run straight up the slope, where end joints can fall. Supports
 * that run any other way carry a sheet but not a joint square to the eave.
 */
final class Uprights {
  /**
   * An upright support leans less than its own thickness over its length, so that a straight joint
   * stays on it.
   */
  private static final double LEAN_IN_THICKNESSES = 0.5;

  /**
   * How far a joint may run on past the end of its support, as a share of the sheet's width: the
   * fascia, a hip or ridge, or the feather end of a valley truss carries the last few inches.
   */
  private static final double BEYOND_THE_END = 1.0 / 8;

  private record Upright(double u, double from, double to, double thickness) {}

  private final List<Upright> uprights = new ArrayList<>();
  private final double beyond;
  private final double rounding;

  /**
   * @param supports in (u, v)
   */
  Uprights(List<Support> supports, Panel panel) {
    beyond = panel.width() * BEYOND_THE_END;
    rounding = panel.rounding();
    for (Support support : supports) {
      Segment line = support.line();
      double lean = Math.abs(line.to().x() - line.from().x());
      double from = Math.min(line.from().y(), line.to().y());
      double to = Math.max(line.from().y(), line.to().y());
      if (lean <= LEAN_IN_THICKNESSES * support.thickness() && lean < to - from) {
        uprights.add(new Upright(line.middle().x(), from, to, support.thickness()));
      }
    }
    uprights.sort(Comparator.comparingDouble(Upright::u).thenComparingDouble(Upright::from));
  }

  boolean isEmpty() {
    return uprights.isEmpty();
  }

  /** Where supports stand, in order, each place once. */
  double[] places() {
    List<Double> places = new ArrayList<>();
    for (Upright upright : uprights) {
      if (places.isEmpty() || upright.u - places.get(places.size() - 1) > rounding) {
        places.add(upright.u);
      }
    }
    return places.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Whether a joint at {@code u} finds support all the way up through the strip. */
  boolean hold(double u, Strip strip) {
    List<Strip.Span> sections = strip.sections(u);
    return !sections.isEmpty() && sections.stream().allMatch(s -> covered(u, s));
  }

  private boolean covered(double u, Strip.Span section) {
    double reached = section.from();
    for (Upright upright : uprights) {
      if (Math.abs(upright.u - u) <= rounding && upright.from <= reached + beyond) {
        reached = Math.max(reached, upright.to + beyond);
      }
    }
    return reached >= section.to();
  }
}
