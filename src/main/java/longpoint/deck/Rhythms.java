package longpoint.deck;

import java.util.ArrayList;
import java.util.List;
import longpoint.plan.Deck;

/** The rhythms of end joints worth trying on a plane, for each way to start. */
final class Rhythms {
  private Rhythms() {}

  /**
   * @param strips of the plane, lowest course first
   * @return at least one; exactly one unless the start is {@link Deck.Start#LEAST}
   */
  static List<JointChain> of(List<Strip> strips, Uprights uprights, Deck.Start start, Panel panel) {
    double left = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    for (Strip strip : strips) {
      if (strip.course() == strips.get(0).course()) {
        left = Math.min(left, strip.bounds().minX());
        right = Math.max(right, strip.bounds().maxX());
      }
    }
    double[] places = uprights.places();
    if (start == Deck.Start.LEAST) {
      return every(places, left, right, panel);
    }
    return List.of(from(places, anchor(places, left, right, start, panel), left, right, panel));
  }

  /** Where a whole sheet laid at the start of the first course would end, moved onto a support. */
  private static double anchor(
      double[] places, double left, double right, Deck.Start start, Panel panel) {
    double wish =
        switch (start) {
          case LEFT, LEAST -> left + panel.length();
          case RIGHT -> right - panel.length();
          case CENTRE -> (left + right) / 2;
        };
    double best = Double.NaN;
    for (double place : places) {
      boolean reach =
          switch (start) {
            case LEFT, LEAST -> place <= wish + panel.rounding();
            case RIGHT -> place >= wish - panel.rounding();
            case CENTRE -> true;
          };
      if (reach && !(Math.abs(place - wish) >= Math.abs(best - wish))) {
        best = place;
      }
    }
    return Double.isNaN(best) ? wish : best;
  }

  private static JointChain from(
      double[] places, double anchor, double left, double right, Panel panel) {
    return places.length == 0
        ? module(anchor, left, right, panel)
        : JointChain.through(
            places, new double[] {anchor, JointChain.half(places, anchor, panel)}, panel);
  }

  /** With nothing to land on, joints keep the sheet module. */
  private static JointChain module(double anchor, double left, double right, Panel panel) {
    return new JointChain(
        List.of(
            steps(anchor, left, right, panel),
            steps(anchor + panel.length() / 2, left, right, panel)));
  }

  private static double[] steps(double anchor, double left, double right, Panel panel) {
    double u = anchor - panel.length() * Math.ceil((anchor - left) / panel.length());
    List<Double> steps = new ArrayList<>();
    for (; u < right; u += panel.length()) {
      steps.add(u);
    }
    return steps.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Every phase of both chains, and the three plain starts. */
  private static List<JointChain> every(double[] places, double left, double right, Panel panel) {
    List<JointChain> all = new ArrayList<>();
    for (Deck.Start plain : List.of(Deck.Start.LEFT, Deck.Start.RIGHT, Deck.Start.CENTRE)) {
      all.add(from(places, anchor(places, left, right, plain, panel), left, right, panel));
    }
    for (double first : places) {
      if (first <= left || first > left + panel.length() + panel.rounding()) {
        continue;
      }
      JointChain chain = from(places, first, left, right, panel);
      all.add(chain);
      for (double second : places) {
        if (second > left
            && second <= left + panel.length() + panel.rounding()
            && JointChain.clear(second, chain.of(1), panel)) {
          all.add(JointChain.through(places, new double[] {first, second}, panel));
        }
      }
    }
    return all;
  }
}
