package longpoint.surface.sweep;

import java.util.Comparator;
import java.util.TreeMap;

/**
 * Cuts the ground inside an outline into triangles: a line runs over the corners from left to right
 * (K. Hertel and K. Mehlhorn, "Fast triangulation of simple polygons", 1983). Between the walls it
 * crosses, it keeps for each piece of ground the border of what is not cut yet: a chain of corners
 * from the lower wall to the upper one. Corners of equal x are taken from below.
 */
final class Cutting {
  private final Shape shape;
  private final Tiles tiles;
  private final double[] x;
  private final double[] y;
  private final int[] before;
  private final TreeMap<Piece, Piece> pieces = new TreeMap<>(Comparator.naturalOrder());

  /** Ground between two walls. Its chain is linked from the lower wall up. */
  private final class Piece implements Comparable<Piece> {
    /** The side below, which runs to the right. */
    int low;

    /** The side above, which runs to the left. */
    int high;

    Link bottom;
    Link top;
    Link newest;

    /** Only for asking: the corner whose place is looked for. */
    int asked = -1;

    @Override
    public int compareTo(Piece other) {
      if (this == other) {
        return 0;
      }
      if (asked >= 0) {
        return side(other.low, asked) > 0 ? 1 : -1;
      }
      return other.asked >= 0 ? -other.compareTo(this) : compareStarts(other);
    }

    private int compareStarts(Piece other) {
      return side(other.low, low) > 0 ? 1 : -1;
    }
  }

  private static final class Link {
    final int corner;
    Link up;
    Link down;

    Link(int corner) {
      this.corner = corner;
    }
  }

  private Cutting(Shape shape, Tiles tiles) {
    this.shape = shape;
    this.tiles = tiles;
    x = shape.x();
    y = shape.y();
    before = new int[shape.count()];
    for (int i = 0; i < shape.count(); i++) {
      before[following(i)] = i;
    }
  }

  /** Adds triangles without neighbours. False when the outline makes no sense. */
  static boolean into(Tiles tiles, Shape shape) {
    return new Cutting(shape, tiles).run();
  }

  private int following(int side) {
    return shape.next()[side];
  }

  private boolean run() {
    int[] order = Order.of(x, y, shape.count());
    for (int v : order) {
      int a = before[v];
      int b = following(v);
      boolean fromLeft = earlier(a, v);
      boolean toRight = earlier(v, b);
      boolean left = turn(a, v, b) > 0;
      boolean fine;
      if (!fromLeft && toRight) {
        fine = left ? start(v) : split(v);
      } else if (fromLeft && !toRight) {
        fine = left ? end(v) : merge(v);
      } else {
        fine = fromLeft ? alongBelow(v) : alongAbove(v);
      }
      if (!fine) {
        return false;
      }
    }
    return pieces.isEmpty();
  }

  private boolean earlier(int a, int b) {
    return x[a] < x[b] || (x[a] == x[b] && y[a] < y[b]);
  }

  private double turn(int a, int b, int c) {
    return (x[b] - x[a]) * (y[c] - y[b]) - (y[b] - y[a]) * (x[c] - x[b]);
  }

  /** Positive when a corner lies above a side that runs to the right. */
  private double side(int low, int v) {
    return turn(low, following(low), v);
  }

  private Piece beneath(int v) {
    Piece probe = new Piece();
    probe.asked = v;
    return pieces.floorKey(probe);
  }

  private Piece piece(int v, int low, int high) {
    Piece piece = new Piece();
    piece.low = low;
    piece.high = high;
    return piece;
  }

  private boolean start(int v) {
    Piece piece = piece(v, v, before[v]);
    Link link = new Link(v);
    piece.bottom = link;
    piece.top = link;
    piece.newest = link;
    piece.asked = v;
    pieces.put(piece, piece);
    piece.asked = -1;
    return true;
  }

  private boolean split(int v) {
    Piece lower = beneath(v);
    if (lower == null) {
      return false;
    }
    Piece upper = piece(v, v, lower.high);
    lower.high = before[v];
    // Both parts keep the newest corner: it sees v.
    Link twin = new Link(lower.newest.corner);
    twin.up = lower.newest.up;
    if (twin.up != null) {
      twin.up.down = twin;
    }
    upper.bottom = twin;
    upper.top = twin.up == null ? twin : lower.top;
    lower.newest.up = null;
    lower.top = lower.newest;
    addOnTop(lower, v);
    addBelow(upper, v);
    upper.asked = v;
    pieces.put(upper, upper);
    upper.asked = -1;
    return true;
  }

  private boolean end(int v) {
    Piece piece = beneathOrAt(v);
    if (piece == null || following(piece.low) != v || piece.high != v) {
      return false;
    }
    addOnTop(piece, v);
    remove(piece, v);
    // Every corner of the chain sees the last one.
    return piece.bottom.corner != v && piece.bottom.up == piece.top;
  }

  private boolean merge(int v) {
    // The lower wall of the upper piece ends here, and so does the upper wall of the lower piece.
    Piece upper = at(v, before[v]);
    if (upper == null) {
      return false;
    }
    addBelow(upper, v);
    remove(upper, v);
    Piece lower = beneath(v);
    if (lower == null || lower.high != v) {
      return false;
    }
    addOnTop(lower, v);
    // One chain: the lower one up to v, then the upper one from v.
    lower.top.up = upper.bottom.up;
    if (lower.top.up != null) {
      lower.top.up.down = lower.top;
      lower.newest = lower.top;
      lower.top = upper.top;
    } else {
      lower.newest = lower.top;
    }
    lower.high = upper.high;
    return true;
  }

  private boolean alongBelow(int v) {
    Piece piece = at(v, before[v]);
    if (piece == null) {
      return false;
    }
    addBelow(piece, v);
    piece.low = v;
    return true;
  }

  private boolean alongAbove(int v) {
    Piece piece = beneath(v);
    if (piece == null || piece.high != v) {
      return false;
    }
    addOnTop(piece, v);
    piece.high = before[v];
    return true;
  }

  /** The piece over a wall that ends at v. */
  private Piece at(int v, int low) {
    Piece piece = new Piece();
    piece.asked = v;
    // The corner lies on its own wall, which counts as above: look just below and just above.
    Piece found = pieces.floorKey(piece);
    if (found == null || found.low != low) {
      found = pieces.higherKey(piece);
    }
    return found != null && found.low == low ? found : null;
  }

  private Piece beneathOrAt(int v) {
    return at(v, before[v]);
  }

  private void remove(Piece piece, int v) {
    piece.asked = v;
    pieces.remove(piece);
    piece.asked = -1;
  }

  private void addOnTop(Piece piece, int v) {
    Link link = piece.top;
    while (link.down != null && turn(link.down.corner, link.corner, v) < 0) {
      tiles.add(link.corner, link.down.corner, v);
      link = link.down;
    }
    Link fresh = new Link(v);
    fresh.down = link;
    link.up = fresh;
    piece.top = fresh;
    piece.newest = fresh;
  }

  private void addBelow(Piece piece, int v) {
    Link link = piece.bottom;
    while (link.up != null && turn(link.up.corner, link.corner, v) > 0) {
      tiles.add(link.up.corner, link.corner, v);
      link = link.up;
    }
    Link fresh = new Link(v);
    fresh.up = link;
    link.down = fresh;
    piece.bottom = fresh;
    piece.newest = fresh;
  }
}
