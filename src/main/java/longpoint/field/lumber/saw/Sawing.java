package longpoint.field.lumber.saw;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.function.ToDoubleFunction;

/**
 * The boards to buy for pieces of given lengths, with a proven bound.
 *
 * <p>In: whole steps, at most a few hundred lengths. Out: every piece on exactly one board; total
 * length as little as was found, which as a rule is the bound itself. The same pieces give the same
 * boards.
 */
public final class Sawing {
  /**
   * Boards cut alike.
   *
   * @param board length
   * @param times how many are cut so
   * @param counts of each size handed in
   */
  public record Run(int board, int times, List<Integer> counts) {
    public Run {
      counts = List.copyOf(counts);
    }
  }

  /**
   * What to buy.
   *
   * @param runs longest boards first
   * @param total length bought
   * @param bound no cutting of the same pieces from the same boards does with less
   */
  public record Result(List<Run> runs, long total, long bound) {
    public Result {
      runs = List.copyOf(runs);
    }
  }

  /** How often some boards are cut again before a result off the bound is accepted. */
  private static final int ROUNDS = 60;

  private static final long SEED = 20;

  private final Demand demand;
  private final Effort effort = new Effort();
  private final long bound;
  private List<Pattern> best;

  private Sawing(Demand demand, long enough) {
    this.demand = demand;
    Mixture mixture = Mixture.of(demand, effort);
    bound = Bound.of(demand, mixture.prices());
    best = FirstFit.of(demand);
    List<Pattern> found = dive(mixture, demand.counts());
    best = cheaper(found, best) ? found : best;
    cutSomeAgain(Math.max(bound, enough));
  }

  /**
   * Shares pieces out.
   *
   * @param sizes of the pieces in steps, each at most the longest board
   * @param counts of each size
   * @param boards lengths sold, in steps
   * @param kerf of the saw in steps
   * @throws IllegalArgumentException if a piece is longer than every board
   */
  static Result share(int[] sizes, int[] counts, int[] boards, int kerf) {
    return share(sizes, counts, boards, kerf, 0);
  }

  /**
   * As the other.
   *
   * @param enough total that is good enough to stop looking
   */
  static Result share(int[] sizes, int[] counts, int[] boards, int kerf, long enough) {
    int[] rising = boards.clone();
    Arrays.sort(rising);
    for (int size : sizes) {
      if (size < 1 || size > rising[rising.length - 1]) {
        throw new IllegalArgumentException("no board for a piece of " + size);
      }
    }
    Sawing sawing = new Sawing(new Demand(sizes, counts, rising, kerf), enough);
    return sawing.result();
  }

  /** Takes up a few boards, the most wasteful always, and cuts their pieces anew. */
  private void cutSomeAgain(long enough) {
    Random random = new Random(SEED);
    for (int round = 0; round < ROUNDS && length(best) > enough && !effort.spent(); round++) {
      List<Pattern> kept = new ArrayList<>(best);
      kept.sort(Comparator.comparingInt(p -> -p.left(demand)));
      List<Pattern> taken = new ArrayList<>();
      int boards = Math.min(kept.size(), 4 + round % 5);
      for (int k = 0; k < boards; k++) {
        taken.add(kept.remove(k < 2 ? 0 : random.nextInt(kept.size())));
      }
      int[] wanted = new int[demand.types()];
      for (Pattern pattern : taken) {
        for (int i = 0; i < wanted.length; i++) {
          wanted[i] += pattern.counts[i];
        }
      }
      List<Pattern> anew =
          round % 2 == 0
              ? dive(Mixture.of(demand.with(wanted), effort), wanted)
              : stray(wanted, random);
      if (!cheaper(taken, anew)) {
        kept.addAll(anew);
        best = kept;
      }
    }
  }

  /** Cuts whole patterns off a mixture, mixes again what is left, until nothing is. */
  private List<Pattern> dive(Mixture first, int[] counts) {
    List<Pattern> cut = new ArrayList<>();
    int[] wanted = counts.clone();
    Mixture mixture = first;
    while (true) {
      boolean whole = false;
      for (Mixture.Share share : mixture.shares()) {
        int amount = (int) Math.floor(share.amount() + WHOLE);
        int times = Math.min(amount, share.pattern().times(wanted));
        whole |= times > 0;
        take(share.pattern(), times, wanted, cut);
      }
      if (!whole) {
        take(most(mixture, wanted, Mixture.Share::amount), 1, wanted, cut);
      }
      if (demand.with(wanted).met()) {
        return cut;
      }
      mixture = Mixture.of(demand.with(wanted), effort);
    }
  }

  /** As a dive, but a board at a time and not always the one the mixture holds most of. */
  private List<Pattern> stray(int[] counts, Random random) {
    List<Pattern> cut = new ArrayList<>();
    int[] wanted = counts.clone();
    while (!demand.with(wanted).met()) {
      Mixture mixture = Mixture.of(demand.with(wanted), effort);
      Pattern next = most(mixture, wanted, s -> (s.amount() + WHOLE) * random.nextDouble());
      take(next, 1, wanted, cut);
    }
    return cut;
  }

  private static Pattern most(
      Mixture mixture, int[] wanted, ToDoubleFunction<Mixture.Share> liking) {
    Pattern most = null;
    double best = -1;
    for (Mixture.Share share : mixture.shares()) {
      double liked = liking.applyAsDouble(share);
      if (liked > best && share.pattern().times(wanted) > 0) {
        best = liked;
        most = share.pattern();
      }
    }
    return Objects.requireNonNull(most, "a mixture holds patterns of what is wanted");
  }

  /** Amounts are whole but for rounding if they are this near. */
  private static final double WHOLE = 1e-6;

  private void take(Pattern pattern, int times, int[] wanted, List<Pattern> cut) {
    for (int k = 0; k < times; k++) {
      cut.add(pattern.onShortest(demand));
    }
    for (int i = 0; i < wanted.length; i++) {
      wanted[i] -= times * pattern.counts[i];
    }
  }

  private long length(List<Pattern> patterns) {
    return patterns.stream().mapToLong(p -> demand.boards()[p.board]).sum();
  }

  /** Less board; then fewer boards. */
  private boolean cheaper(List<Pattern> a, List<Pattern> b) {
    long more = length(a) - length(b);
    return more < 0 || (more == 0 && a.size() < b.size());
  }

  private Result result() {
    Map<Pattern, Integer> times = new LinkedHashMap<>();
    best.forEach(p -> times.merge(p, 1, Integer::sum));
    List<Run> runs = new ArrayList<>();
    times.forEach(
        (p, n) ->
            runs.add(
                new Run(demand.boards()[p.board], n, Arrays.stream(p.counts).boxed().toList())));
    runs.sort(
        Comparator.comparingInt((Run r) -> -r.board())
            .thenComparing(r -> r.counts().toString(), Comparator.reverseOrder()));
    return new Result(runs, length(best), bound);
  }
}
