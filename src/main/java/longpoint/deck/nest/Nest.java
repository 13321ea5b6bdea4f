package longpoint.deck.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import longpoint.geometry.Ring;
import longpoint.stop.CalledOff;

/**
 * Front door: shares pieces out over sheets.
 *
 * <p>In: outlines no higher than a sheet is wide and no longer than it is long (a height over by
 * what the caller absorbs is taken as the full width). Out: every piece in exactly one sheet,
 * inside it and clear of the others. Not promised: the least number of sheets; {@link CourseBound}
 * says how far off it can be. Pieces that are not convex take the room of their convex hull.
 *
 * <p>Best fit over three orders, then rounds in which some sheets are emptied and their pieces
 * placed again in a shuffled order, the better half kept (ruin and recreate). The shuffle has a
 * fixed seed, so the same pieces give the same sheets.
 */
public final class Nest {
  /** How long to look for a better sharing out. */
  public enum Effort {
    /** Best fit in three orders. */
    QUICK(0),
    /** Rounds of emptying and filling besides; a few milliseconds for a house. */
    THOROUGH(48);

    private final int rounds;

    Effort(int rounds) {
      this.rounds = rounds;
    }
  }

  private static final long SEED = 48;

  /**
   * @param piece index in the list handed in
   * @param turned end for end
   * @param u left end of the piece's box in the sheet, 0 to the sheet's length
   * @param v lower edge of the piece's box in the sheet, 0 to the sheet's width
   */
  public record Place(int piece, boolean turned, double u, double v) {}

  private final double length;
  private final double width;
  private final double touch;

  private Nest(double length, double width, double touch) {
    this.length = length;
    this.width = width;
    this.touch = touch;
  }

  /**
   * Shares pieces out.
   *
   * @param outlines of the pieces, in (u, v)
   * @param length of a sheet
   * @param width of a sheet
   * @param touch overlaps thinner than this are rounding, &gt; 0
   * @param enough stop searching at this many sheets
   * @return sheets in the order of their lowest piece, each with its pieces in order
   */
  public static List<List<Place>> pack(
      List<Ring> outlines, double length, double width, double touch, int enough, Effort effort) {
    Nest nest = new Nest(length, width, touch);
    List<Item> items = new ArrayList<>();
    for (int i = 0; i < outlines.size(); i++) {
      items.add(Item.of(i, outlines.get(i), touch));
    }
    List<Bin> whole = nest.wholeSheets(items);
    int rest = enough - whole.size();
    whole.addAll(nest.improve(nest.bestOrder(items, rest), rest, effort.rounds));
    return inOrder(whole);
  }

  /** Pieces that fill a sheet; they are taken out of {@code items}. */
  private List<Bin> wholeSheets(List<Item> items) {
    List<Bin> whole = new ArrayList<>();
    items.removeIf(
        item -> {
          boolean fills = item.shape().area >= length * width - touch * (length + width);
          if (fills) {
            Bin bin = new Bin(length, width, touch);
            bin.add(new Bin.Put(item.index(), false, item.shape(), 0, 0));
            whole.add(bin);
          }
          return fills;
        });
    return whole;
  }

  private List<Bin> bestOrder(List<Item> items, int enough) {
    List<Comparator<Item>> orders =
        List.of(
            Comparator.comparingDouble(i -> -i.shape().area),
            Comparator.comparingDouble(i -> -i.shape().length),
            Comparator.<Item>comparingDouble(i -> -i.shape().height)
                .thenComparingDouble(i -> -i.shape().length));
    List<Bin> best = null;
    for (Comparator<Item> order : orders) {
      List<Item> sorted = new ArrayList<>(items);
      sorted.sort(order.thenComparingInt(Item::index));
      List<Bin> bins = new ArrayList<>();
      fill(bins, sorted);
      best = best == null || better(bins, best) ? bins : best;
      if (best.size() <= enough) {
        return best;
      }
    }
    return best;
  }

  private List<Bin> improve(List<Bin> start, int enough, int rounds) {
    List<Bin> best = start;
    Random random = new Random(SEED);
    for (int round = 0; round < rounds && best.size() > Math.max(1, enough); round++) {
      CalledOff.check();
      List<Bin> byFree = new ArrayList<>(best);
      byFree.sort(Comparator.comparingDouble(b -> -b.free()));
      List<Bin> kept = new ArrayList<>();
      List<Item> loose = new ArrayList<>();
      int emptied = 2 + round % 4;
      for (int i = 0; i < byFree.size(); i++) {
        Bin bin = byFree.get(i);
        boolean empty = i < emptied || random.nextInt(byFree.size()) < emptied;
        if (empty) {
          bin.puts().forEach(p -> loose.add(item(p)));
        } else {
          kept.add(copy(bin));
        }
      }
      shuffleSomewhat(loose, random);
      fill(kept, loose);
      best = better(kept, best) ? kept : best;
    }
    return best;
  }

  /** The piece of a place, as it lies on the roof. */
  static Item item(Bin.Put put) {
    Shape shape = put.turned() ? put.shape().turned() : put.shape();
    return new Item(put.item(), shape, shape.turned(), false);
  }

  private Bin copy(Bin bin) {
    Bin copy = new Bin(length, width, touch);
    bin.puts().forEach(copy::add);
    return copy;
  }

  /** Large ones first, but not strictly. */
  private static void shuffleSomewhat(List<Item> items, Random random) {
    record Keyed(Item item, double key) {}
    List<Keyed> keyed = new ArrayList<>();
    items.sort(Comparator.comparingInt(Item::index));
    for (Item item : items) {
      keyed.add(new Keyed(item, item.shape().area * (0.6 + 0.8 * random.nextDouble())));
    }
    keyed.sort(Comparator.comparingDouble((Keyed k) -> -k.key));
    items.clear();
    keyed.forEach(k -> items.add(k.item));
  }

  private void fill(List<Bin> bins, List<Item> items) {
    for (Item item : items) {
      Bin chosen = null;
      Bin.Put put = null;
      for (Bin bin : bins) {
        if (bin.free() >= item.shape().area - touch * length
            && (chosen == null || bin.free() < chosen.free())) {
          Bin.Put here = bin.place(item);
          if (here != null) {
            chosen = bin;
            put = here;
          }
        }
      }
      if (chosen == null) {
        chosen = new Bin(length, width, touch);
        bins.add(chosen);
        put = new Bin.Put(item.index(), false, item.shape(), 0, 0);
      }
      chosen.add(put);
    }
  }

  /** Fewer sheets; then the emptiest sheet emptier, for it is the next to go. */
  private static boolean better(List<Bin> a, List<Bin> b) {
    if (a.size() != b.size()) {
      return a.size() < b.size();
    }
    return squares(a) > squares(b) * (1 + MORE);
  }

  /** Less than this is not an improvement but rounding. */
  private static final double MORE = 1e-12;

  private static double squares(List<Bin> bins) {
    return bins.stream().mapToDouble(b -> b.free() * b.free()).sum();
  }

  private static List<List<Place>> inOrder(List<Bin> bins) {
    List<List<Place>> sheets = new ArrayList<>();
    for (Bin bin : bins) {
      sheets.add(
          bin.puts().stream()
              .map(p -> new Place(p.item(), p.turned(), p.u(), p.v()))
              .sorted(Comparator.comparingInt(Place::piece))
              .toList());
    }
    sheets.sort(Comparator.comparingInt(s -> s.get(0).piece()));
    return sheets;
  }
}
