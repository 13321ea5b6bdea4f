package longpoint.field.lumber.saw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The plain way to cut: quick, and never far off. */
final class FirstFit {
  private FirstFit() {}

  /**
   * Each piece on the first board with room, longest pieces first, then shorter boards where one
   * does.
   */
  static List<Pattern> of(Demand demand) {
    List<int[]> boards = new ArrayList<>();
    List<Integer> rooms = new ArrayList<>();
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < demand.types(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingInt(i -> -demand.sizes()[i]));
    for (int type : order) {
      for (int k = 0; k < demand.counts()[type]; k++) {
        int at = 0;
        while (at < rooms.size() && rooms.get(at) < demand.taken(type)) {
          at++;
        }
        if (at == rooms.size()) {
          rooms.add(demand.longestRoom());
          boards.add(new int[demand.types()]);
        }
        rooms.set(at, rooms.get(at) - demand.taken(type));
        boards.get(at)[type]++;
      }
    }
    int longest = demand.boards().length - 1;
    return boards.stream().map(c -> new Pattern(longest, c).onShortest(demand)).toList();
  }
}
