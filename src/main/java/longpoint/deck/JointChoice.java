package longpoint.deck;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/**
 * The end joints of one strip: a shortest walk from its left end to its right, every step at most a
 * sheet long, every stop on a support and clear of the joints of the course below. A stop off the
 * plane's rhythm costs more than a piece, a piece too short to span two bays part of one.
 *
 * <p>Where no such walk exists the rules give way in this order, and the result says so:
 *
 * <ol>
 *   <li>joints may come nearer to those of the course below;
 *   <li>joints may fall between supports, on the plane's rhythm or on the sheet module.
 * </ol>
 *
 * @param joints in order, without the ends of the strip
 * @param kept how much of the rules could be kept
 */
record JointChoice(double[] joints, Kept kept) {
  /** How much of the rules could be kept. */
  enum Kept {
    ALL,
    /** On supports, but nearer than half a sheet's width to a joint below. */
    SUPPORT,
    /** Some joint has no support under it. */
    NOTHING
  }

  /** What a walk minds besides the rules. */
  enum Care {
    /** Short pieces and tips are worth leaving the rhythm for. */
    PIECES,
    /** The rhythm alone, which keeps courses clear of each other all the way up. */
    RHYTHM
  }

  private static final double SAME_COST = 1e-6;
  private static final double PIECE = 1;
  private static final double OFF_RHYTHM = 1.5;
  private static final double SHORT_PIECE = 0.25;

  /** A tip at a hip or valley that a nail would split; worth moving a joint or two for. */
  private static final double TIP = 4;

  /** Where a strip's joints find support all the way up. */
  static double[] held(Strip strip, Uprights uprights, Panel panel) {
    return Arrays.stream(uprights.places())
        .filter(u -> inside(u, strip, panel))
        .filter(u -> uprights.hold(u, strip))
        .toArray();
  }

  /**
   * @param held where joints find support, in order
   * @param rhythm where joints would rather be; empty for no wish
   * @param below joints of the course beneath
   * @param care what to mind besides
   */
  static JointChoice of(
      Strip strip, double[] held, double[] rhythm, double[] below, Care care, Panel panel) {
    double[] clear = Arrays.stream(held).filter(u -> JointChain.clear(u, below, panel)).toArray();
    double[] walk = walk(strip, clear, rhythm, care, panel);
    if (walk != null) {
      return new JointChoice(walk, Kept.ALL);
    }
    walk = walk(strip, held, rhythm, care, panel);
    if (walk != null) {
      return new JointChoice(walk, Kept.SUPPORT);
    }
    return new JointChoice(anywhere(strip, held, rhythm, below, panel), Kept.NOTHING);
  }

  private static boolean inside(double u, Strip strip, Panel panel) {
    return u > strip.bounds().minX() + panel.sliver() && u < strip.bounds().maxX() - panel.sliver();
  }

  private static double[] anywhere(
      Strip strip, double[] held, double[] rhythm, double[] below, Panel panel) {
    List<Double> places = new ArrayList<>();
    Arrays.stream(held).forEach(places::add);
    Arrays.stream(rhythm).filter(u -> inside(u, strip, panel)).forEach(places::add);
    double half = panel.length() / 2;
    module(strip, strip.course() % 2 == 1 ? 0 : half, panel).forEach(places::add);
    double[] all = places.stream().mapToDouble(Double::doubleValue).sorted().distinct().toArray();
    double[] clear = Arrays.stream(all).filter(u -> JointChain.clear(u, below, panel)).toArray();
    double[] walk = walk(strip, clear, rhythm, Care.RHYTHM, panel);
    if (walk == null) {
      walk = walk(strip, all, rhythm, Care.RHYTHM, panel);
    }
    if (walk == null) {
      // A strip a hair longer than so many sheets has no joint at its very end: half sheets do it.
      double[] halves =
          Stream.concat(module(strip, 0, panel).stream(), module(strip, half, panel).stream())
              .mapToDouble(Double::doubleValue)
              .sorted()
              .distinct()
              .toArray();
      walk = walk(strip, halves, rhythm, Care.RHYTHM, panel);
    }
    return walk;
  }

  /** Sheet after sheet from the left end, the first one short by {@code off}. */
  private static List<Double> module(Strip strip, double off, Panel panel) {
    List<Double> places = new ArrayList<>();
    for (double u = strip.bounds().minX() + panel.length() - off;
        u < strip.bounds().maxX();
        u += panel.length()) {
      if (inside(u, strip, panel)) {
        places.add(u);
      }
    }
    return places;
  }

  /** A walk that likes some stops more than others at random; null where there is none. */
  static double[] stray(Strip strip, double[] places, Random random, Panel panel) {
    double[] stops = random.doubles(places.length).map(d -> STRAY * d).toArray();
    return cheapest(strip, places, stops, Care.PIECES, panel);
  }

  /** What the most disliked stop of a stray walk costs, in pieces. */
  private static final double STRAY = 0.8;

  private static double[] walk(
      Strip strip, double[] places, double[] rhythm, Care care, Panel panel) {
    double[] stops = Arrays.stream(places).map(u -> stopCost(u, rhythm, panel)).toArray();
    return cheapest(strip, places, stops, care, panel);
  }

  /**
   * The cheapest walk, or null if some step would be longer than a sheet.
   *
   * @param stops what stopping at each of the places costs
   */
  private static double[] cheapest(
      Strip strip, double[] places, double[] stops, Care care, Panel panel) {
    int n = places.length + 2;
    double[] at = new double[n];
    System.arraycopy(places, 0, at, 1, places.length);
    at[0] = strip.bounds().minX();
    at[n - 1] = strip.bounds().maxX();
    double[] cost = new double[n];
    int[] from = new int[n];
    Arrays.fill(cost, 1, n, Double.POSITIVE_INFINITY);
    for (int j = 1; j < n; j++) {
      double stop = j == n - 1 ? 0 : stops[j - 1];
      for (int i = j - 1; i >= 0; i--) {
        double step = at[j] - at[i];
        if (step > panel.length() + panel.rounding()) {
          break;
        }
        double c = cost[i] + stop + PIECE + (care == Care.PIECES ? tooShort(step, panel) : 0);
        // Equal walks stay equal when the plan is turned: rounding must not choose between them.
        if (c < cost[j] - SAME_COST || Double.isInfinite(cost[j])) {
          cost[j] = c;
          from[j] = i;
        }
      }
    }
    if (Double.isInfinite(cost[n - 1])) {
      return null;
    }
    List<Double> joints = new ArrayList<>();
    for (int j = from[n - 1]; j > 0; j = from[j]) {
      joints.add(0, at[j]);
    }
    return joints.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Sheets are strong over two bays or more; the shorter a piece, the worse. */
  private static double tooShort(double step, Panel panel) {
    if (step < panel.shortest() / 2) {
      return TIP;
    }
    return SHORT_PIECE * Math.max(0, 2 - step / panel.shortest());
  }

  private static double stopCost(double u, double[] rhythm, Panel panel) {
    if (rhythm.length == 0) {
      return 0;
    }
    double off = Double.POSITIVE_INFINITY;
    for (double wish : rhythm) {
      off = Math.min(off, Math.abs(wish - u));
    }
    return off <= panel.rounding() ? 0 : OFF_RHYTHM + off / panel.length();
  }
}
