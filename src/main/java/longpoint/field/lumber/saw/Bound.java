package longpoint.field.lumber.saw;

/**
 * Least board that can do, proven: if no board yields pieces worth more than its length, the pieces
 * together are worth no more than the boards they come from. Any prices may be tried; where a board
 * would yield too much, all prices are lowered until it does not (Farley, 1990). The check is
 * exact, in whole numbers, and does not depend on how the prices were found.
 */
final class Bound {
  private Bound() {}

  /**
   * @param prices of a piece of each type, in {@link Mixture#FINE} shares of a step
   * @return steps of board, a whole number of the step all boards are multiples of
   */
  static long of(Demand demand, long[] prices) {
    long[] sound = lowered(demand, prices);
    long worth = 0;
    for (int i = 0; i < demand.types(); i++) {
      worth += sound[i] * demand.counts()[i];
    }
    long grain = demand.grain() * Mixture.FINE;
    return -Math.floorDiv(-worth, grain) * (grain / Mixture.FINE);
  }

  private static long[] lowered(Demand demand, long[] prices) {
    long[] sound = prices.clone();
    for (int i = 0; i < sound.length; i++) {
      sound[i] = demand.counts()[i] > 0 ? sound[i] : 0;
    }
    double worst = overpriced(demand, sound);
    while (worst > 1) {
      // A hair more than needed, so that rounding down ends the loop.
      double factor = (1 - 1e-12) / worst;
      for (int i = 0; i < sound.length; i++) {
        sound[i] = (long) Math.floor(sound[i] * factor);
      }
      worst = overpriced(demand, sound);
    }
    return sound;
  }

  /** The greatest share of its own length that a board yields in value; over 1 is too much. */
  private static double overpriced(Demand demand, long[] prices) {
    Knapsack knapsack = new Knapsack(demand, prices);
    double worst = 0;
    for (int b = 0; b < demand.boards().length; b++) {
      long length = demand.boards()[b] * Mixture.FINE;
      long value = knapsack.value(b);
      if (value > length) {
        worst = Math.max(worst, Math.nextUp((double) value / length));
      }
    }
    return worst;
  }
}
