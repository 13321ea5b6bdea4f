package longpoint.desktop.canvas;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import longpoint.drawing.Box;
import longpoint.geometry.Bounds;

/** The room already taken by lettering, so that no word is painted on another. */
final class WordSpace {
  private final double cell;
  private final Map<Long, List<Box>> taken = new HashMap<>();

  /**
   * @param cell side of a square of the index, about the length of a word
   */
  WordSpace(double cell) {
    this.cell = cell;
  }

  /** Takes room for a word if it is free, and says whether it was. */
  boolean take(Box box) {
    List<Long> squares = squares(box.bounds());
    for (long square : squares) {
      for (Box other : taken.getOrDefault(square, List.of())) {
        if (box.overlaps(other)) {
          return false;
        }
      }
    }
    squares.forEach(s -> taken.computeIfAbsent(s, k -> new ArrayList<>()).add(box));
    return true;
  }

  private List<Long> squares(Bounds around) {
    List<Long> squares = new ArrayList<>();
    for (long i = floor(around.minX()); i <= floor(around.maxX()); i++) {
      for (long j = floor(around.minY()); j <= floor(around.maxY()); j++) {
        squares.add(i << 32 ^ j & 0xFFFFFFFFL);
      }
    }
    return squares;
  }

  private long floor(double at) {
    return (long) Math.floor(at / cell);
  }
}
