package longpoint.field.built;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.field.built.Network.Settled;
import longpoint.geometry.Point;

/**
 * What the tapes leave open besides where the whole stands and which way it faces, and which tape
 * would close it.
 */
final class Freedom {
  /** Share of a step: far above rounding, far below anything a loose mode shows. */
  private static final double SHOWS = 1e-6;

  private final Settled settled;
  private final List<int[]> taped;

  /** What is loose, whole pieces that move as one included: square to each other, one long. */
  private final List<double[]> loose;

  private final List<double[]> whole;

  /**
   * @param taped pairs of points that need no further tape
   */
  Freedom(Settled settled, List<int[]> taped) {
    this.settled = settled;
    this.taped = taped;
    this.loose = settled.loose();
    this.whole = whole();
  }

  /** Whether a point may move against those it hangs together with. */
  boolean isOpen(int point) {
    return share(loose, point) - share(whole, point) > SHOWS;
  }

  private static double share(List<double[]> modes, int point) {
    double sum = 0;
    for (double[] mode : modes) {
      sum += mode[2 * point] * mode[2 * point] + mode[2 * point + 1] * mode[2 * point + 1];
    }
    return sum;
  }

  /** How many ways the shape may still go. */
  int ways() {
    return Math.max(0, loose.size() - whole.size());
  }

  /** Pieces that hang together, each moved right, up and round. */
  private List<double[]> whole() {
    int[] piece = pieces();
    List<double[]> modes = new ArrayList<>();
    for (int p = 0; p < piece.length; p++) {
      if (piece[p] == p) {
        for (int way = 0; way < 3; way++) {
          square(modes, rigid(piece, p, way)).ifPresent(modes::add);
        }
      }
    }
    return modes;
  }

  private double[] rigid(int[] piece, int of, int way) {
    double[] mode = new double[2 * piece.length];
    for (int i = 0; i < piece.length; i++) {
      if (piece[i] == of) {
        Point arm = settled.at().get(i).minus(settled.at().get(of));
        mode[2 * i] = way == 0 ? 1 : way == 2 ? -arm.y() : 0;
        mode[2 * i + 1] = way == 1 ? 1 : way == 2 ? arm.x() : 0;
      }
    }
    return mode;
  }

  /** What is left of a step without its share in others, one long; empty if that is nothing. */
  private static Optional<double[]> square(List<double[]> to, double[] step) {
    double before = Math.sqrt(dot(step, step));
    double[] rest = step.clone();
    for (double[] mode : to) {
      double share = dot(mode, rest);
      for (int i = 0; i < rest.length; i++) {
        rest[i] -= share * mode[i];
      }
    }
    double length = Math.sqrt(dot(rest, rest));
    if (!(length > SHOWS * before)) {
      return Optional.empty();
    }
    for (int i = 0; i < rest.length; i++) {
      rest[i] /= length;
    }
    return Optional.of(rest);
  }

  private int[] pieces() {
    int[] piece = new int[settled.at().size()];
    for (int i = 0; i < piece.length; i++) {
      piece[i] = i;
    }
    boolean joined = true;
    while (joined) {
      joined = false;
      for (Network.Tie tie : settled.ties()) {
        joined |= join(piece, tie);
      }
    }
    return piece;
  }

  private static boolean join(int[] piece, Network.Tie tie) {
    int[] ends =
        tie instanceof Network.Length l
            ? new int[] {l.from(), l.to()}
            : new int[] {
              ((Network.OnLine) tie).point(),
              ((Network.OnLine) tie).from(),
              ((Network.OnLine) tie).to()
            };
    int least = Integer.MAX_VALUE;
    for (int end : ends) {
      least = Math.min(least, piece[end]);
    }
    boolean changed = false;
    for (int end : ends) {
      changed |= piece[end] != least;
      piece[end] = least;
    }
    return changed;
  }

  /** Pairs of points to tape so that nothing stays open, the one that tells most first. */
  List<int[]> closing() {
    List<int[]> pairs = new ArrayList<>();
    List<double[]> open = new ArrayList<>(loose);
    int[] piece = pieces();
    for (int ways = ways(); ways > 0; ways--) {
      int[] best = null;
      double most = SHOWS;
      for (int i = 0; i < piece.length; i++) {
        for (int j = i + 1; j < piece.length; j++) {
          double tells = piece[i] == piece[j] && !isTaped(i, j) ? told(open, row(i, j)) : 0;
          if (tells > most * (1 + SHOWS)) {
            most = tells;
            best = new int[] {i, j};
          }
        }
      }
      if (best == null) {
        return pairs;
      }
      pairs.add(best);
      close(open, row(best[0], best[1]));
    }
    return pairs;
  }

  private boolean isTaped(int i, int j) {
    return taped.stream().anyMatch(t -> t[0] == i && t[1] == j || t[0] == j && t[1] == i);
  }

  private double[] row(int i, int j) {
    double[] row = new double[2 * settled.at().size()];
    new Network.Length(i, j, 0, 1).slope(settled.at(), row);
    return row;
  }

  private static double told(List<double[]> modes, double[] row) {
    double sum = 0;
    for (double[] mode : modes) {
      double share = dot(mode, row);
      sum += share * share;
    }
    return sum;
  }

  /** Takes out of the loose modes the one step that a length would hold. */
  private static void close(List<double[]> modes, double[] row) {
    double[] held = new double[row.length];
    for (double[] mode : modes) {
      double share = dot(mode, row);
      for (int i = 0; i < held.length; i++) {
        held[i] += share * mode[i];
      }
    }
    double length = Math.sqrt(dot(held, held));
    List<double[]> kept = new ArrayList<>();
    for (int i = 0; i < held.length; i++) {
      held[i] /= length;
    }
    for (double[] mode : modes) {
      List<double[]> before = new ArrayList<>(List.of(held));
      before.addAll(kept);
      square(before, mode).ifPresent(kept::add);
    }
    modes.clear();
    modes.addAll(kept);
  }

  /** The pair whose tape would check most of what nothing checks; empty if all is checked. */
  Optional<int[]> checking(int tapes) {
    int[] piece = pieces();
    int[] best = null;
    double most = SHOWS;
    for (int i = 0; i < piece.length; i++) {
      for (int j = i + 1; j < piece.length; j++) {
        double gain = piece[i] == piece[j] && !isTaped(i, j) ? gain(row(i, j), tapes) : 0;
        if (gain > most * (1 + SHOWS)) {
          most = gain;
          best = new int[] {i, j};
        }
      }
    }
    return Optional.ofNullable(best);
  }

  /** By how much the redundancy of unchecked tapes would grow. */
  private double gain(double[] row, int tapes) {
    Svd svd = settled.decomposed();
    double own = 0;
    double[] along = new double[settled.held().length];
    for (int k = 0; k < along.length; k++) {
      along[k] = settled.held()[k] ? dot(svd.v[k], row) / svd.s[k] : 0;
      own += along[k] * along[k];
    }
    double gain = 0;
    for (int t = 0; t < tapes; t++) {
      if (settled.redundancy(t) < UNCHECKED) {
        double both = 0;
        for (int k = 0; k < along.length; k++) {
          both += along[k] * svd.u[k][t];
        }
        double sigma = settled.ties().get(t).sigma();
        gain += both * both / (sigma * sigma + own);
      }
    }
    return gain;
  }

  /** With less than this of a mistake showing, a reading counts as unchecked. */
  static final double UNCHECKED = 0.05;

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
