package longpoint.surface.sweep;

import java.util.Arrays;

/** Tiles by the time at which each runs out; of equal times the lower number first. */
final class Agenda {
  private int size;
  private int[] heap = new int[64];
  private int[] place = new int[64];
  private double[] time = new double[64];

  Agenda() {
    Arrays.fill(place, -1);
  }

  void clear() {
    size = 0;
    Arrays.fill(place, -1);
  }

  boolean isEmpty() {
    return size == 0;
  }

  int first() {
    return heap[0];
  }

  double firstTime() {
    return size == 0 ? Double.POSITIVE_INFINITY : time[heap[0]];
  }

  /** Sets or changes a tile's time; an infinite time takes it off. */
  void set(int tile, double at) {
    if (tile >= place.length) {
      int old = place.length;
      int room = Math.max(tile + 1, 2 * old);
      place = Arrays.copyOf(place, room);
      time = Arrays.copyOf(time, room);
      Arrays.fill(place, old, room, -1);
    }
    if (at == Double.POSITIVE_INFINITY) {
      remove(tile);
      return;
    }
    if (place[tile] < 0) {
      if (size == heap.length) {
        heap = Arrays.copyOf(heap, 2 * size);
      }
      place[tile] = size;
      heap[size++] = tile;
    }
    time[tile] = at;
    down(up(place[tile]));
  }

  void remove(int tile) {
    int at = tile < place.length ? place[tile] : -1;
    if (at < 0) {
      return;
    }
    place[tile] = -1;
    int last = heap[--size];
    if (last != tile) {
      heap[at] = last;
      place[last] = at;
      down(up(at));
    }
  }

  private boolean less(int a, int b) {
    return time[a] < time[b] || (time[a] == time[b] && a < b);
  }

  private int up(int from) {
    int at = from;
    int tile = heap[at];
    while (at > 0 && less(tile, heap[(at - 1) / 2])) {
      heap[at] = heap[(at - 1) / 2];
      place[heap[at]] = at;
      at = (at - 1) / 2;
    }
    heap[at] = tile;
    place[tile] = at;
    return at;
  }

  private void down(int from) {
    int at = from;
    int tile = heap[at];
    while (2 * at + 1 < size) {
      int child = 2 * at + 1;
      if (child + 1 < size && less(heap[child + 1], heap[child])) {
        child++;
      }
      if (!less(heap[child], tile)) {
        break;
      }
      heap[at] = heap[child];
      place[heap[at]] = at;
      at = child;
    }
    heap[at] = tile;
    place[tile] = at;
  }
}
