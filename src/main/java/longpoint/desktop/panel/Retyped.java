package longpoint.desktop.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BinaryOperator;
import java.util.function.Function;

/**
 * A list of entries that the user typed over. What the typed text cannot show of an entry, as keys
 * of a plan file that the program does not know, stays with it: an entry typed at the same place is
 * the one that was there, and those left over on both sides, which have been moved, go together in
 * their order.
 */
final class Retyped {
  private Retyped() {}

  /**
   * @param before the list as it was
   * @param typed the entries as they were read
   * @param place of an entry, as it is typed
   * @param kept an entry made of the one before and the one typed for it
   */
  static <T> List<T> list(
      List<T> before, List<T> typed, Function<T, String> place, BinaryOperator<T> kept) {
    List<T> left = new ArrayList<>(before);
    List<T> of = new ArrayList<>();
    for (T t : typed) {
      T same =
          left.stream().filter(b -> place.apply(b).equals(place.apply(t))).findFirst().orElse(null);
      left.remove(same);
      of.add(same);
    }
    List<T> list = new ArrayList<>();
    for (int i = 0; i < typed.size(); i++) {
      T was = of.get(i) == null && !left.isEmpty() ? left.remove(0) : of.get(i);
      list.add(was == null ? typed.get(i) : kept.apply(was, typed.get(i)));
    }
    return list;
  }
}
