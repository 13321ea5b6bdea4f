package longpoint.deck.nest;

/**
 * What stretches of each height are worth, as shares of a sheet's width, so that those one above
 * the other in a sheet are never worth more than the sheet: the best such prices for the heights of
 * one roof, by linear programming.
 *
 * <p>Prices and the cheapest fractional mixture of patterns are found together (revised simplex,
 * patterns made as they are needed: Gilmore and Gomory, 1961). Prices are then rounded to whole
 * numbers, and each height is given the most that smaller ones filling it are worth, by an exact
 * knapsack; so the promise above holds whatever rounding did on the way. Not promised: that no
 * better prices exist.
 */
final class HeightPrices {
  /** Prices in whole numbers of this share, so that the knapsack is exact. */
  private static final long FINE = 1L << 30;

  /** A pattern that saves less than this share of a sheet does not pay for its pivot. */
  private static final double SAVING = 1e-6;

  private static final double PIVOT = 1e-9;

  /** Rounds for each height, a few times what the search takes. */
  private static final int PATIENCE = 20;

  /** Rounding of sums of sheets. */
  private static final double ROUNDING = 1e-7;

  private final int steps;
  private final int[] heights;
  private final double[][] inverse;
  private final double[] amounts;
  private final double[] costs;

  /** Sheets more than which would have to be proven for these prices to be of any use. */
  private final int known;

  private HeightPrices(double[] runs, int known) {
    this.known = known;
    steps = runs.length - 1;
    heights =
        java.util.stream.IntStream.rangeClosed(1, steps).filter(k -> runs[k] > PIVOT).toArray();
    int n = heights.length;
    inverse = new double[n][n];
    amounts = new double[n];
    costs = new double[n];
    for (int i = 0; i < n; i++) {
      int fit = steps / heights[i];
      inverse[i][i] = 1.0 / fit;
      amounts[i] = runs[heights[i]] / fit;
      costs[i] = 1;
    }
  }

  /**
   * @param runs how much there is of each height, in sheets' lengths, heights counted in equal
   *     steps up to the sheet's width; that of height 0 does not matter
   * @param known a bound already known; the search ends once it cannot be bettered
   * @return for each height its worth as a share of a sheet, from 0 to 1, never falling
   */
  static double[] of(double[] runs, int known) {
    HeightPrices search = new HeightPrices(runs, known);
    for (int left = PATIENCE * search.heights.length; left > 0 && search.improve(); left--) {
      // each round brings in what pays best
    }
    return search.proven();
  }

  private double[] prices() {
    int n = heights.length;
    double[] prices = new double[n];
    for (int row = 0; row < n; row++) {
      if (costs[row] != 0) {
        for (int col = 0; col < n; col++) {
          prices[col] += inverse[row][col];
        }
      }
    }
    return prices;
  }

  private boolean improve() {
    double[] prices = prices();
    int n = heights.length;
    for (int i = 0; i < n; i++) {
      if (prices[i] < -SAVING) {
        // More of this height than asked for costs nothing.
        double[] surplus = new double[n];
        surplus[i] = -1;
        return enter(surplus, 0);
      }
    }
    int[] chosen = new int[steps + 1];
    double[] worth = new double[steps + 1];
    for (int room = 1; room <= steps; room++) {
      worth[room] = worth[room - 1];
      chosen[room] = -1;
      for (int i = 0; i < n && heights[i] <= room; i++) {
        double with = worth[room - heights[i]] + prices[i];
        if (with > worth[room]) {
          worth[room] = with;
          chosen[room] = i;
        }
      }
    }
    if (worth[steps] <= 1 + SAVING || decided(worth[steps])) {
      return false;
    }
    double[] pattern = new double[n];
    for (int room = steps; room > 0; ) {
      if (chosen[room] < 0) {
        room--;
      } else {
        pattern[chosen[room]]++;
        room -= heights[chosen[room]];
      }
    }
    return enter(pattern, 1);
  }

  /** Whether more rounds could not change the bound: it lies between two figures of one ceiling. */
  private boolean decided(double worthOfSheet) {
    double most = 0;
    for (int row = 0; row < costs.length; row++) {
      most += costs[row] * amounts[row];
    }
    double ceiling = Math.ceil(most - ROUNDING);
    return ceiling <= known || Math.ceil(most / worthOfSheet - ROUNDING) == ceiling;
  }

  private boolean enter(double[] pattern, double cost) {
    int n = heights.length;
    double[] through = new double[n];
    int leaves = -1;
    for (int row = 0; row < n; row++) {
      for (int col = 0; col < n; col++) {
        through[row] += inverse[row][col] * pattern[col];
      }
      if (through[row] > PIVOT
          && (leaves < 0 || amounts[row] * through[leaves] < amounts[leaves] * through[row])) {
        leaves = row;
      }
    }
    if (leaves < 0) {
      return false;
    }
    double pivot = through[leaves];
    amounts[leaves] /= pivot;
    for (int col = 0; col < n; col++) {
      inverse[leaves][col] /= pivot;
    }
    for (int row = 0; row < n; row++) {
      if (row != leaves && through[row] != 0) {
        amounts[row] = Math.max(0, amounts[row] - through[row] * amounts[leaves]);
        for (int col = 0; col < n; col++) {
          inverse[row][col] -= through[row] * inverse[leaves][col];
        }
      }
    }
    costs[leaves] = cost;
    return true;
  }

  /** Whole prices, the most that fits below each height, and all as a share of the full width. */
  private double[] proven() {
    double[] prices = prices();
    long[] whole = new long[heights.length];
    for (int i = 0; i < whole.length; i++) {
      whole[i] = Math.max(0, Math.round(Math.min(1, prices[i]) * FINE));
    }
    long[] worth = new long[steps + 1];
    for (int room = 1; room <= steps; room++) {
      worth[room] = worth[room - 1];
      for (int i = 0; i < whole.length && heights[i] <= room; i++) {
        worth[room] = Math.max(worth[room], worth[room - heights[i]] + whole[i]);
      }
    }
    double[] shares = new double[steps + 1];
    for (int k = 1; k <= steps && worth[steps] > 0; k++) {
      shares[k] = (double) worth[k] / worth[steps];
    }
    return shares;
  }
}
