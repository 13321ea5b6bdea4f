package longpoint.surface.sweep;

import java.util.Arrays;

/** Numbers in a row, without boxing. */
final class IntList {
  int[] at = new int[16];
  int size;

  void add(int value) {
    if (size == at.length) {
      at = Arrays.copyOf(at, 2 * size);
    }
    at[size++] = value;
  }

  void clear() {
    size = 0;
  }
}
