package longpoint.deck.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import longpoint.geometry.Ring;

/**
 * Pieces shared out over sheets, in groups that can be exchanged: another sharing out comes of
 * taking one group and some sheets up and placing all that is loose again. Nothing is changed in
 * place, so that a worse one is simply dropped.
 */
public final class Sharing {
  /** Of the emptiest sheets this many are picked from when some are taken up. */
  private static final int EMPTIEST = 12;

  private final double length;
  private final double width;
  private final double touch;
  private final List<Bin> whole;
  private final List<Bin> bins;

  /** Items by group; their numbers are unique over all groups and exchanges. */
  private final Map<Integer, List<Item>> groups;

  /** Shapes of outlines seen before; the same few come back with every exchange. */
  private final Map<Ring, Item> known;

  private final int next;

  private Sharing(
      Sharing of, List<Bin> whole, List<Bin> bins, Map<Integer, List<Item>> groups, int next) {
    this(of.length, of.width, of.touch, of.known, whole, bins, groups, next);
  }

  private Sharing(
      double length,
      double width,
      double touch,
      Map<Ring, Item> known,
      List<Bin> whole,
      List<Bin> bins,
      Map<Integer, List<Item>> groups,
      int next) {
    this.length = length;
    this.width = width;
    this.touch = touch;
    this.known = known;
    this.whole = whole;
    this.bins = bins;
    this.groups = groups;
    this.next = next;
  }

  /** No pieces on sheets of a size; {@code touch} as for {@link Nest}. */
  public static Sharing empty(double length, double width, double touch) {
    return new Sharing(
        length, width, touch, new IdentityHashMap<>(), List.of(), List.of(), Map.of(), 0);
  }

  /** How many sheets. */
  public int sheets() {
    return whole.size() + bins.size();
  }

  /**
   * How unevenly what is left over is spread, in sheets squared: where it is gathered in few
   * sheets, one of them is soon empty.
   */
  public double gathered() {
    double sheet = length * width;
    return bins.stream().mapToDouble(b -> b.free() * b.free()).sum() / (sheet * sheet);
  }

  /**
   * Another sharing out, with other pieces in one group.
   *
   * @param group its number; a new one if there is none yet
   * @param outlines of all its pieces
   * @param taken how many sheets besides are taken up
   */
  public Sharing with(int group, List<Ring> outlines, int taken, Random random) {
    Map<Integer, List<Item>> all = new HashMap<>(groups);
    int number = next;
    List<Item> own = new ArrayList<>();
    for (Ring outline : outlines) {
      own.add(known.computeIfAbsent(outline, o -> Item.of(0, o, touch)).numbered(number++));
    }
    Set<Integer> gone = new HashSet<>();
    all.getOrDefault(group, List.of()).forEach(i -> gone.add(i.index()));
    all.put(group, own);
    List<Bin> full = new ArrayList<>();
    for (Bin bin : whole) {
      if (!gone.contains(bin.puts().get(0).item())) {
        full.add(bin);
      }
    }
    List<Item> loose = new ArrayList<>();
    for (Item item : own) {
      if (item.shape().area >= length * width - touch * (length + width)) {
        Bin bin = new Bin(length, width, touch);
        bin.add(new Bin.Put(item.index(), false, item.shape(), 0, 0));
        full.add(bin);
      } else {
        loose.add(item);
      }
    }
    List<Bin> kept = without(gone);
    takeUp(kept, loose, taken, random);
    place(kept, loose, random);
    return new Sharing(this, full, kept, all, number);
  }

  private List<Bin> without(Set<Integer> gone) {
    List<Bin> kept = new ArrayList<>(bins.size() + 1);
    for (Bin bin : bins) {
      if (bin.puts().stream().noneMatch(p -> gone.contains(p.item()))) {
        kept.add(bin);
        continue;
      }
      Bin less = new Bin(length, width, touch);
      bin.puts().stream().filter(p -> !gone.contains(p.item())).forEach(less::add);
      if (!less.puts().isEmpty()) {
        kept.add(less);
      }
    }
    return kept;
  }

  private void takeUp(List<Bin> kept, List<Item> loose, int taken, Random random) {
    kept.sort(Comparator.comparingDouble(b -> -b.free()));
    for (int k = 0; k < taken && !kept.isEmpty(); k++) {
      int among = k % 2 == 0 ? Math.min(EMPTIEST, kept.size()) : kept.size();
      Bin bin = kept.remove(random.nextInt(among));
      bin.puts().forEach(p -> loose.add(Nest.item(p)));
    }
  }

  /** Large ones first, but not strictly; each where it leaves the least. */
  private void place(List<Bin> kept, List<Item> loose, Random random) {
    record Keyed(Item item, double key) {}
    List<Keyed> order = new ArrayList<>();
    loose.sort(Comparator.comparingInt(Item::index));
    for (Item item : loose) {
      order.add(new Keyed(item, item.shape().area * (0.7 + 0.6 * random.nextDouble())));
    }
    order.sort(Comparator.comparingDouble((Keyed k) -> -k.key));
    kept.sort(Comparator.comparingDouble(Bin::free));
    for (Keyed keyed : order) {
      put(kept, keyed.item);
    }
  }

  private void put(List<Bin> kept, Item item) {
    Bin filled = null;
    for (int i = 0; i < kept.size() && filled == null; i++) {
      Bin bin = kept.get(i);
      if (bin.free() >= item.shape().area - touch * length) {
        Bin.Put put = bin.place(item);
        if (put != null) {
          kept.remove(i);
          filled = new Bin(length, width, touch);
          bin.puts().forEach(filled::add);
          filled.add(put);
        }
      }
    }
    if (filled == null) {
      filled = new Bin(length, width, touch);
      filled.add(new Bin.Put(item.index(), false, item.shape(), 0, 0));
    }
    int at = 0;
    while (at < kept.size() && kept.get(at).free() < filled.free()) {
      at++;
    }
    kept.add(at, filled);
  }

  /**
   * Where every piece is cut.
   *
   * @param order groups in the order their pieces are numbered in, one after another
   * @return as {@link Nest#pack}
   */
  public List<List<Nest.Place>> places(List<Integer> order) {
    Map<Integer, Integer> number = new HashMap<>();
    for (int group : order) {
      groups.getOrDefault(group, List.of()).forEach(i -> number.put(i.index(), number.size()));
    }
    List<List<Nest.Place>> sheets = new ArrayList<>();
    for (List<Bin> some : List.of(whole, bins)) {
      for (Bin bin : some) {
        sheets.add(
            bin.puts().stream()
                .map(p -> new Nest.Place(number.get(p.item()), p.turned(), p.u(), p.v()))
                .sorted(Comparator.comparingInt(Nest.Place::piece))
                .toList());
      }
    }
    sheets.sort(Comparator.comparingInt(s -> s.get(0).piece()));
    return sheets;
  }
}
