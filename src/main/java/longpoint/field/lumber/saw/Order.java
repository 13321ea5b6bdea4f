package longpoint.field.lumber.saw;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Front door: an order that a yard can fill. Few lengths are stacked, found and cut with fewer
 * mistakes than many, so a little more board is bought where that saves a length. The bound stays
 * that of all lengths sold.
 */
public final class Order {
  /** More board than the least that one may buy to need fewer lengths. */
  public static final double ALLOWANCE = 0.03;

  /** More different lengths than this are no longer few. */
  private static final int FEW = 3;

  /** How many choices of as many lengths, the best by the plain way of cutting, are looked into. */
  private static final int TRIED = 3;

  private Order() {}

  /**
   * Shares pieces out over as few lengths as can be had for little more board.
   *
   * @param sizes of the pieces in steps, each at most the longest board
   * @param counts of each size
   * @param boards lengths sold, in steps
   * @param kerf of the saw in steps
   * @return at most {@link #ALLOWANCE} above the least board that was found with all lengths
   * @throws IllegalArgumentException if a piece is longer than every board
   */
  public static Sawing.Result of(int[] sizes, int[] counts, int[] boards, int kerf) {
    Sawing.Result all = Sawing.share(sizes, counts, boards, kerf);
    long allowed = (long) Math.floor(all.total() * (1 + ALLOWANCE));
    int used = (int) all.runs().stream().mapToInt(Sawing.Run::board).distinct().count();
    int[] rising = Arrays.stream(boards).sorted().distinct().toArray();
    int longest = IntStream.of(sizes).max().orElse(0);
    for (int lengths = 1; lengths <= FEW && lengths < used; lengths++) {
      for (int[] choice : promising(sizes, counts, choices(rising, lengths, longest), kerf)) {
        Sawing.Result few = Sawing.share(sizes, counts, choice, kerf, allowed);
        if (few.total() <= allowed) {
          return new Sawing.Result(few.runs(), few.total(), all.bound());
        }
      }
    }
    return all;
  }

  private static List<int[]> promising(int[] sizes, int[] counts, List<int[]> choices, int kerf) {
    record Tried(int[] boards, long length) {}
    return choices.stream()
        .map(c -> new Tried(c, plainly(new Demand(sizes, counts, c, kerf))))
        .sorted(Comparator.comparingLong(Tried::length))
        .limit(TRIED)
        .map(Tried::boards)
        .toList();
  }

  private static long plainly(Demand demand) {
    return FirstFit.of(demand).stream().mapToLong(p -> demand.boards()[p.board]).sum();
  }

  /** Every choice of so many lengths of which the longest is long enough for the longest piece. */
  private static List<int[]> choices(int[] rising, int lengths, int longest) {
    List<int[]> choices = new ArrayList<>();
    add(rising, 0, new int[lengths], 0, choices);
    choices.removeIf(c -> c[lengths - 1] < longest);
    return choices;
  }

  private static void add(int[] rising, int from, int[] chosen, int held, List<int[]> choices) {
    if (held == chosen.length) {
      choices.add(chosen.clone());
      return;
    }
    for (int i = from; i < rising.length; i++) {
      chosen[held] = rising[i];
      add(rising, i + 1, chosen, held + 1, choices);
    }
  }
}
