package longpoint.deck.nest;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Fewest sheets that any cutting of the courses into pieces can need, whatever the end joints and
 * however offcuts are used, as long as courses keep their lines and pieces are not turned
 * crosswise.
 *
 * <p>Proof. An upright line through a sheet meets stretches of pieces whose heights there add up to
 * at most the sheet's width W. Let f give every height a worth such that heights which add up to at
 * most W are together worth at most W (a dual feasible function: Fekete and Schepers, 2001). Over a
 * sheet of length L the sum of f is therefore at most W·L. End joints are upright and take nothing
 * from the heights, so the f of all courses together, divided by W·L and rounded up, is a bound.
 * Two kinds of f are tried and the better bound taken:
 *
 * <ul>
 *   <li>W for heights above W − e, the height itself from e to W − e, and 0 below e, with 0 &lt; e
 *       ≤ W/2: if one height is above W − e the others are below e; else f never exceeds the
 *       height. A small e gives plain area over sheet area;
 *   <li>{@link HeightPrices} of the heights in steps of W/{@value #STEPS}, rounded down: steps that
 *       add up to at most {@value #STEPS} are worth at most W, and heights in a sheet are so.
 * </ul>
 */
public final class CourseBound {
  /**
   * Rounding in heights, as a share of the width, and in sums of areas, as a share of a sheet. It
   * is always taken off: a height of half the width and a hair more pairs with another like it.
   */
  private static final double ROUNDING = 1e-7;

  /** Finer steps gain less than a hundredth of a sheet and cost more time. */
  private static final int STEPS = 192;

  /**
   * A height this little short of a step counts as that step: as many as there are steps, one above
   * the other, still come to less than one step more.
   */
  private static final double SHORT_OF_A_STEP = 0.5 / (STEPS + 1);

  private final double length;
  private final double width;
  private final List<double[]> runs = new ArrayList<>();

  public CourseBound(double length, double width) {
    this.length = length;
    this.width = width;
  }

  /**
   * A stretch of a course over which its height changes evenly.
   *
   * @param run along the eave, ≥ 0
   * @param left height at one end
   * @param right height at the other end
   */
  public void add(double run, double left, double right) {
    if (run > 0) {
      double a = Math.min(width, Math.max(0, Math.min(left, right) - ROUNDING * width));
      double b = Math.min(width, Math.max(0, Math.max(left, right) - ROUNDING * width));
      runs.add(new double[] {run, a, b});
    }
  }

  /** The bound for all stretches added so far, by the first kind of f: quick. */
  public int sheets() {
    TreeSet<Double> steps = new TreeSet<>();
    for (double[] run : runs) {
      for (int k = 1; k <= 2; k++) {
        double e = run[k] > width / 2 ? width - run[k] + ROUNDING * width : run[k];
        if (e > 0 && e <= width / 2) {
          steps.add(e);
        }
      }
    }
    double most = covered(0);
    for (double e : steps) {
      most = Math.max(most, covered(e));
    }
    return (int) Math.ceil(most / (length * width) - ROUNDING);
  }

  private double covered(double e) {
    double sum = 0;
    for (double[] run : runs) {
      sum += run[0] * meanOf(run[1], run[2], e);
    }
    return sum;
  }

  /** Mean of f over heights spread evenly from a to b. */
  private double meanOf(double a, double b, double e) {
    if (b - a <= ROUNDING * width) {
      double h = (a + b) / 2;
      return h > width - e ? width : h >= e ? h : 0;
    }
    double lowEnd = Math.min(b, Math.max(a, e));
    double highEnd = Math.min(b, Math.max(a, width - e));
    double middle = (highEnd * highEnd - lowEnd * lowEnd) / 2;
    return (middle + width * (b - highEnd)) / (b - a);
  }

  /** The better bound of both kinds: some hundredths of a second to some tenths. */
  public int best() {
    int known = sheets();
    double[] steps = new double[STEPS + 1];
    for (double[] run : runs) {
      spread(run, steps);
    }
    double[] worth = HeightPrices.of(steps, known);
    double sum = 0;
    for (int k = 0; k <= STEPS; k++) {
      sum += steps[k] * worth[k];
    }
    return Math.max(known, (int) Math.ceil(sum - ROUNDING));
  }

  /** Adds the run along the eave over which a stretch is each number of steps high. */
  private void spread(double[] run, double[] steps) {
    double from = run[1] / width * STEPS + SHORT_OF_A_STEP;
    double to = run[2] / width * STEPS + SHORT_OF_A_STEP;
    if (to - from <= ROUNDING * STEPS) {
      steps[(int) from] += run[0] / length;
      return;
    }
    for (int k = (int) from; k <= Math.min(STEPS, (int) to); k++) {
      double share = Math.min(to, k + 1) - Math.max(from, k);
      steps[k] += run[0] / length * share / (to - from);
    }
  }
}
