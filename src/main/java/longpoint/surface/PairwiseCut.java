package longpoint.surface;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import longpoint.stop.CalledOff;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

/**
 * Cuts a few hundred lines wherever they cross or touch by looking at every pair whose boxes meet:
 * many times faster than a noder made for map sheets, and just as careful about places that are one
 * but for rounding.
 *
 * <ol>
 *   <li>ends nearer than the grain to an earlier end become that end;
 *   <li>an end nearer than the grain to a line cuts it; lines that cross elsewhere cut each other
 *       in a place of their own, or in an end if one is near;
 *   <li>cutting can bend a line across another one, so all is looked at again until nothing is cut.
 * </ol>
 */
final class PairwiseCut {
  private static final int PASSES = 4;

  /** A square of the grid under the places, in grains: so large that few places lie at its edge. */
  private static final double SQUARE = 256;

  private final double grain;
  private final double grid;
  private final Map<Long, Integer> newest = new HashMap<>();

  private double[] x = new double[256];
  private double[] y = new double[256];
  private int[] older = new int[256];
  private int places;

  private int[] from = new int[256];
  private int[] to = new int[256];
  private int stretches;

  /** Cuts found in this pass: the stretch and the place. */
  private int[] cutStretch = new int[256];

  private int[] cutPlace = new int[256];
  private int cuts;

  /**
   * @param grain places nearer than this are one
   * @param grid places lie on multiples of this, which is far finer
   */
  PairwiseCut(double grain, double grid) {
    this.grain = grain;
    this.grid = grid;
  }

  /**
   * Cuts the lines.
   *
   * @return whether it came to an end: no stretch crosses or touches another but at its ends
   */
  boolean cut(Collection<LineString> lines) {
    for (LineString line : lines) {
      int before = place(line.getCoordinateN(0).x, line.getCoordinateN(0).y);
      for (int i = 1; i < line.getNumPoints(); i++) {
        int after = place(line.getCoordinateN(i).x, line.getCoordinateN(i).y);
        stretch(before, after);
        before = after;
      }
    }
    for (int pass = 0; pass < PASSES; pass++) {
      CalledOff.check();
      once();
      cuts = 0;
      findCuts();
      if (cuts == 0) {
        return true;
      }
      applyCuts();
    }
    return false;
  }

  int stretches() {
    return stretches;
  }

  Coordinate from(int stretch) {
    return new Coordinate(x[from[stretch]], y[from[stretch]]);
  }

  Coordinate to(int stretch) {
    return new Coordinate(x[to[stretch]], y[to[stretch]]);
  }

  /** The number of the place at a point, or of one nearer than the grain. */
  private int place(double atX, double atY) {
    double px = Math.rint(atX / grid) * grid + 0.0;
    double py = Math.rint(atY / grid) * grid + 0.0;
    double square = SQUARE * grain;
    long left = (long) Math.floor((px - grain) / square);
    long right = (long) Math.floor((px + grain) / square);
    long low = (long) Math.floor((py - grain) / square);
    long high = (long) Math.floor((py + grain) / square);
    for (long column = left; column <= right; column++) {
      for (long row = low; row <= high; row++) {
        for (int p = newest.getOrDefault(key(column, row), -1); p >= 0; p = older[p]) {
          if (Math.abs(x[p] - px) <= grain && Math.hypot(x[p] - px, y[p] - py) <= grain) {
            return p;
          }
        }
      }
    }
    if (places == x.length) {
      x = Arrays.copyOf(x, 2 * places);
      y = Arrays.copyOf(y, 2 * places);
      older = Arrays.copyOf(older, 2 * places);
    }
    x[places] = px;
    y[places] = py;
    long key = key((long) Math.floor(px / square), (long) Math.floor(py / square));
    older[places] = newest.getOrDefault(key, -1);
    newest.put(key, places);
    return places++;
  }

  private static long key(long column, long row) {
    return column << 32 ^ row & 0xFFFFFFFFL;
  }

  private void stretch(int a, int b) {
    if (a == b) {
      return;
    }
    if (stretches == from.length) {
      from = Arrays.copyOf(from, 2 * stretches);
      to = Arrays.copyOf(to, 2 * stretches);
    }
    from[stretches] = before(a, b) ? a : b;
    to[stretches++] = before(a, b) ? b : a;
  }

  private boolean before(int a, int b) {
    return x[a] < x[b] || (x[a] == x[b] && y[a] < y[b]);
  }

  /** Every stretch once, from left to right. */
  private void once() {
    Integer[] order = new Integer[stretches];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, this::compare);
    int[] nextFrom = new int[stretches];
    int[] nextTo = new int[stretches];
    int kept = 0;
    for (int i : order) {
      if (kept == 0 || nextFrom[kept - 1] != from[i] || nextTo[kept - 1] != to[i]) {
        nextFrom[kept] = from[i];
        nextTo[kept++] = to[i];
      }
    }
    from = nextFrom;
    to = nextTo;
    stretches = kept;
  }

  private int compare(int i, int j) {
    int first = order(from[i], from[j]);
    return first != 0 ? first : order(to[i], to[j]);
  }

  private int order(int a, int b) {
    return a == b ? 0 : before(a, b) ? -1 : 1;
  }

  private void findCuts() {
    for (int i = 0; i < stretches; i++) {
      double end = x[to[i]] + grain;
      double low = Math.min(y[from[i]], y[to[i]]) - grain;
      double high = Math.max(y[from[i]], y[to[i]]) + grain;
      for (int j = i + 1; j < stretches && x[from[j]] <= end; j++) {
        if (Math.max(y[from[j]], y[to[j]]) >= low && Math.min(y[from[j]], y[to[j]]) <= high) {
          look(i, j);
        }
      }
    }
  }

  private void look(int i, int j) {
    touch(from[i], j);
    touch(to[i], j);
    touch(from[j], i);
    touch(to[j], i);
    if (from[i] == from[j] || from[i] == to[j] || to[i] == from[j] || to[i] == to[j]) {
      return;
    }
    double a = side(i, from[j]);
    double b = side(i, to[j]);
    double c = side(j, from[i]);
    double d = side(j, to[i]);
    if (a > 0 != b > 0 && c > 0 != d > 0) {
      double share = a / (a - b);
      int here =
          place(
              x[from[j]] + share * (x[to[j]] - x[from[j]]),
              y[from[j]] + share * (y[to[j]] - y[from[j]]));
      cutAt(i, here);
      cutAt(j, here);
    }
  }

  private double side(int stretch, int p) {
    int a = from[stretch];
    int b = to[stretch];
    return (x[b] - x[a]) * (y[p] - y[a]) - (y[b] - y[a]) * (x[p] - x[a]);
  }

  /** An end near a stretch cuts it. */
  private void touch(int p, int stretch) {
    int a = from[stretch];
    int b = to[stretch];
    if (p == a || p == b) {
      return;
    }
    double dx = x[b] - x[a];
    double dy = y[b] - y[a];
    double along = (x[p] - x[a]) * dx + (y[p] - y[a]) * dy;
    double square = dx * dx + dy * dy;
    double off = side(stretch, p);
    if (along > 0 && along < square && off * off <= grain * grain * square) {
      cutAt(stretch, p);
    }
  }

  private void cutAt(int stretch, int p) {
    if (p == from[stretch] || p == to[stretch]) {
      return;
    }
    if (cuts == cutStretch.length) {
      cutStretch = Arrays.copyOf(cutStretch, 2 * cuts);
      cutPlace = Arrays.copyOf(cutPlace, 2 * cuts);
    }
    cutStretch[cuts] = stretch;
    cutPlace[cuts++] = p;
  }

  /** Puts the pieces in place of each stretch that was cut. */
  private void applyCuts() {
    Integer[] order = new Integer[cuts];
    Arrays.setAll(order, i -> i);
    Arrays.sort(
        order,
        (i, j) ->
            cutStretch[i] != cutStretch[j]
                ? Integer.compare(cutStretch[i], cutStretch[j])
                : Double.compare(along(i), along(j)));
    for (int k = 0; k < cuts; ) {
      int stretch = cutStretch[order[k]];
      int start = from[stretch];
      int end = to[stretch];
      int first = cutPlace[order[k]];
      int before = first;
      for (k++; k < cuts && cutStretch[order[k]] == stretch; k++) {
        stretch(before, cutPlace[order[k]]);
        before = cutPlace[order[k]];
      }
      stretch(before, end);
      from[stretch] = before(start, first) ? start : first;
      to[stretch] = before(start, first) ? first : start;
    }
  }

  private double along(int cut) {
    int a = from[cutStretch[cut]];
    int b = to[cutStretch[cut]];
    int p = cutPlace[cut];
    return (x[p] - x[a]) * (x[b] - x[a]) + (y[p] - y[a]) * (y[b] - y[a]);
  }
}
