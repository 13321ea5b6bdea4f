package longpoint.editor.tools;

import longpoint.geometry.Ring;
import longpoint.plan.Part;

/** Neighbours among the numbered sides of a part. */
final class Walls {
  private Walls() {}

  /** The side before a side in its ring. */
  static int before(Part part, int side) {
    int first = first(part, side);
    return side > first ? side - 1 : first + count(part, side) - 1;
  }

  /** The side after a side in its ring. */
  static int after(Part part, int side) {
    int first = first(part, side);
    return side + 1 < first + count(part, side) ? side + 1 : first;
  }

  private static int first(Part part, int side) {
    int first = 0;
    for (Ring ring : part.rings()) {
      if (side < first + ring.size()) {
        return first;
      }
      first += ring.size();
    }
    throw new IndexOutOfBoundsException("part " + part.id() + " has no side " + side);
  }

  private static int count(Part part, int side) {
    int first = 0;
    for (Ring ring : part.rings()) {
      if (side < first + ring.size()) {
        return ring.size();
      }
      first += ring.size();
    }
    throw new IndexOutOfBoundsException("part " + part.id() + " has no side " + side);
  }
}
