package longpoint.field.built;

import longpoint.stop.CalledOff;

/**
 * The singular values of a small dense matrix, by turning pairs of columns until all are square to
 * each other (one-sided Jacobi; Hestenes 1958). Slow for large matrices and as exact as doubles
 * allow for small ones, rank-deficient ones included.
 *
 * <p>{@code A = U S Vᵀ}; column k of {@code u} and {@code v} belongs to {@code s[k]}. Where a value
 * is 0 its column of {@code u} is 0. Values are in no order.
 */
final class Svd {
  /** Columns whose cosine is below this are square to each other: some units of rounding. */
  private static final double SQUARE = 1e-15;

  /** A column below this share of the whole is nothing but rounding, and square to all. */
  private static final double NONE = 1e-14;

  /** It takes six to ten sweeps; more means the figures are not numbers. */
  private static final int MOST_SWEEPS = 60;

  final double[][] u;
  final double[] s;
  final double[][] v;

  /**
   * @param a rows of equal length, finite; left as it is
   * @param columns how long the rows are; there may be no row
   */
  Svd(double[][] a, int columns) {
    this(a, columns, unturned(columns));
  }

  private static double[][] unturned(int columns) {
    double[][] v = new double[columns][columns];
    for (int j = 0; j < columns; j++) {
      v[j][j] = 1;
    }
    return v;
  }

  /**
   * As the other, from columns of V that are nearly right already, such as those of a matrix much
   * like this one: then few turns are left.
   *
   * @param start square to each other, one long; left as they are
   */
  Svd(double[][] a, int columns, double[][] start) {
    int rows = a.length;
    // Held by columns, since columns are what is turned.
    double[][] w = new double[columns][rows];
    double[][] turn = new double[columns][];
    for (int j = 0; j < columns; j++) {
      turn[j] = start[j].clone();
      for (int i = 0; i < rows; i++) {
        w[j][i] = dot(a[i], turn[j]);
      }
    }
    double all = 0;
    for (double[] column : w) {
      all += dot(column, column);
    }
    double none = NONE * NONE * all;
    boolean turned = true;
    for (int sweep = 0; turned && sweep < MOST_SWEEPS; sweep++) {
      CalledOff.check();
      turned = false;
      for (int p = 0; p < columns; p++) {
        for (int q = p + 1; q < columns; q++) {
          turned |= square(w, turn, p, q, none);
        }
      }
    }
    s = new double[columns];
    u = new double[columns][rows];
    v = turn;
    for (int k = 0; k < columns; k++) {
      s[k] = Math.sqrt(dot(w[k], w[k]));
      for (int i = 0; i < rows; i++) {
        u[k][i] = s[k] > 0 ? w[k][i] / s[k] : 0;
      }
    }
  }

  /** Turns two columns square to each other; false if they are already. */
  private static boolean square(double[][] w, double[][] v, int p, int q, double none) {
    double alpha = dot(w[p], w[p]);
    double beta = dot(w[q], w[q]);
    double gamma = dot(w[p], w[q]);
    if (gamma == 0
        || Math.min(alpha, beta) <= none
        || Math.abs(gamma) <= SQUARE * Math.sqrt(alpha * beta)) {
      return false;
    }
    double zeta = (beta - alpha) / (2 * gamma);
    double t = Math.copySign(1, zeta) / (Math.abs(zeta) + Math.sqrt(1 + zeta * zeta));
    double c = 1 / Math.sqrt(1 + t * t);
    turn(w[p], w[q], c, c * t);
    turn(v[p], v[q], c, c * t);
    return true;
  }

  private static void turn(double[] p, double[] q, double c, double s) {
    for (int i = 0; i < p.length; i++) {
      double before = p[i];
      p[i] = c * before - s * q[i];
      q[i] = s * before + c * q[i];
    }
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
