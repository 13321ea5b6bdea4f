package longpoint.field.lumber.saw;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The cheapest mixture of patterns, in fractions: the revised simplex method with its patterns made
 * as they are needed (Gilmore and Gomory, 1961 and 1963).
 *
 * <p>Promised: a mixture that meets the demand, and prices of the pieces. Not promised: that it is
 * the very cheapest; rounding may stop it early. {@link Bound} turns the prices into a bound that
 * holds all the same.
 */
final class Mixture {
  /** Prices in whole numbers of this share of a step, so that the knapsack is exact. */
  static final long FINE = 1 << 20;

  /** A pattern that saves less than this share of its board does not pay for its pivot. */
  private static final double SAVING = 1e-7;

  /** Pivots on smaller numbers than this would blow rounding up. */
  private static final double PIVOT = 1e-9;

  private final Demand demand;
  private final int[] types;
  private final double[][] inverse;
  private final double[] amounts;
  private final Pattern[] patterns;
  private final long grain;

  private Mixture(Demand demand, int[] types) {
    this.demand = demand;
    this.types = types;
    int m = types.length;
    inverse = new double[m][m];
    amounts = new double[m];
    patterns = new Pattern[m];
    grain = demand.grain();
  }

  static Mixture of(Demand demand, Effort effort) {
    int[] types = IntStream.range(0, demand.types()).filter(i -> demand.counts()[i] > 0).toArray();
    Mixture mixture = new Mixture(demand, types);
    mixture.oneTypeEach();
    int patience = 200 + 50 * types.length;
    while (patience-- > 0 && !effort.spent() && mixture.improve(effort)) {
      // each round brings in the pattern that pays best
    }
    return mixture;
  }

  /** Starts from boards that hold pieces of one type alone. */
  private void oneTypeEach() {
    for (int row = 0; row < types.length; row++) {
      int type = types[row];
      int chosen = -1;
      int count = 0;
      for (int b = 0; b < demand.boards().length; b++) {
        int fits = Math.min(demand.room(b) / demand.taken(type), demand.counts()[type]);
        boolean cheaper =
            chosen < 0 || (long) demand.boards()[b] * count < (long) demand.boards()[chosen] * fits;
        if (fits > 0 && cheaper) {
          chosen = b;
          count = fits;
        }
      }
      int[] counts = new int[demand.types()];
      counts[type] = count;
      patterns[row] = new Pattern(chosen, counts);
      inverse[row][row] = 1.0 / count;
      amounts[row] = (double) demand.counts()[type] / count;
    }
  }

  /** What a piece of each type costs in this mixture, in {@link #FINE} shares of a step, ≥ 0. */
  long[] prices() {
    long[] prices = new long[demand.types()];
    for (int col = 0; col < types.length; col++) {
      double price = 0;
      for (int row = 0; row < types.length; row++) {
        price += demand.boards()[patterns[row].board] * inverse[row][col];
      }
      prices[types[col]] = Math.max(0, (long) Math.floor(price * FINE));
    }
    return prices;
  }

  private boolean improve(Effort effort) {
    long[] prices = prices();
    Knapsack knapsack = new Knapsack(demand, prices);
    effort.spend(knapsack.steps());
    int chosen = -1;
    double best = SAVING;
    for (int b = 0; b < demand.boards().length; b++) {
      double cost = demand.boards()[b];
      double saving = (knapsack.value(b) / (double) FINE - cost) / cost;
      if (saving > best) {
        best = saving;
        chosen = b;
      }
    }
    return chosen >= 0 && !goodEnough(prices, best) && bringIn(knapsack.pattern(chosen));
  }

  /**
   * Whether a better mixture could not raise or lower the number of steps to buy: the bound these
   * prices give, and this mixture, come to the same next multiple of what boards are sold in.
   */
  private boolean goodEnough(long[] prices, double overpriced) {
    double worth = 0;
    for (int i = 0; i < prices.length; i++) {
      worth += prices[i] / (double) FINE * demand.counts()[i];
    }
    double proven = worth / (1 + overpriced) * (1 - SAVING);
    double cost = 0;
    for (int row = 0; row < patterns.length; row++) {
      cost += demand.boards()[patterns[row].board] * amounts[row];
    }
    return Math.ceil(proven / grain) >= Math.ceil(cost * (1 - SAVING) / grain);
  }

  private boolean bringIn(Pattern pattern) {
    int m = types.length;
    double[] column = new double[m];
    for (int row = 0; row < m; row++) {
      for (int col = 0; col < m; col++) {
        column[row] += inverse[row][col] * pattern.counts[types[col]];
      }
    }
    int out = leaving(column);
    if (out < 0) {
      return false;
    }
    double pivot = column[out];
    for (int col = 0; col < m; col++) {
      inverse[out][col] /= pivot;
    }
    amounts[out] /= pivot;
    for (int row = 0; row < m; row++) {
      if (row != out && column[row] != 0) {
        for (int col = 0; col < m; col++) {
          inverse[row][col] -= column[row] * inverse[out][col];
        }
        amounts[row] = Math.max(0, amounts[row] - column[row] * amounts[out]);
      }
    }
    patterns[out] = pattern;
    return true;
  }

  private int leaving(double[] column) {
    int out = -1;
    for (int row = 0; row < column.length; row++) {
      if (column[row] > PIVOT
          && (out < 0 || amounts[row] * column[out] < amounts[out] * column[row])) {
        out = row;
      }
    }
    return out;
  }

  /** The patterns of the mixture with how often each is cut, in fractions. */
  List<Share> shares() {
    List<Share> shares = new ArrayList<>();
    for (int row = 0; row < patterns.length; row++) {
      shares.add(new Share(patterns[row], amounts[row]));
    }
    return shares;
  }

  record Share(Pattern pattern, double amount) {}
}
