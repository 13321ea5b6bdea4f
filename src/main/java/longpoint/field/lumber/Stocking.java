package longpoint.field.lumber;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import longpoint.field.lumber.saw.Order;
import longpoint.field.lumber.saw.Sawing;

/**
 * Boards for the pieces of one section. Pieces are counted up to the next mark of the tape and the
 * saw's cut likewise, so that what is bought is never short.
 */
final class Stocking {
  /** Share of a mark that figures may stand past it by rounding. */
  private static final double DUST = 1e-6;

  private Stocking() {}

  static BoardStock of(Section section, List<Cut> all, LumberChoices choices, double mark) {
    List<Cut> cuts =
        all.stream().sorted(Comparator.comparingDouble((Cut c) -> -c.board())).toList();
    int[] boards = choices.lengths().stream().mapToInt(l -> (int) Math.floor(l / mark)).toArray();
    int longest = boards[boards.length - 1];
    int[] sizes = cuts.stream().mapToInt(c -> Math.min(longest, steps(c.board(), mark))).toArray();
    int[] counts = cuts.stream().mapToInt(Cut::count).toArray();
    Sawing.Result sawn = Order.of(sizes, counts, boards, steps(choices.kerf(), mark));
    Map<Integer, Integer> bought = new TreeMap<>(Comparator.reverseOrder());
    sawn.runs().forEach(r -> bought.merge(r.board(), r.times(), Integer::sum));
    return new BoardStock(
        section,
        bought.entrySet().stream()
            .map(e -> new BoardStock.Boards(e.getKey() * mark, e.getValue()))
            .toList(),
        sawn.total() * mark,
        cuts.stream().mapToDouble(c -> c.count() * c.board()).sum(),
        sawn.bound() * mark,
        sawn.runs().stream().map(r -> pattern(r, cuts, choices.kerf(), mark)).toList());
  }

  private static int steps(double length, double mark) {
    return (int) Math.ceil(length / mark - DUST);
  }

  private static BoardStock.Pattern pattern(
      Sawing.Run run, List<Cut> cuts, double kerf, double mark) {
    List<BoardStock.Pattern.Piece> pieces = new ArrayList<>();
    double left = run.board() * mark;
    for (int i = 0; i < cuts.size(); i++) {
      int count = run.counts().get(i);
      if (count > 0) {
        pieces.add(new BoardStock.Pattern.Piece(cuts.get(i).mark(), count));
        left -= count * (cuts.get(i).board() + kerf);
      }
    }
    return new BoardStock.Pattern(run.board() * mark, run.times(), pieces, Math.max(0, left));
  }
}
