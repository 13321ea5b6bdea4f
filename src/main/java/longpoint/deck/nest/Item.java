package longpoint.deck.nest;

import longpoint.geometry.Ring;

/**
 * A piece to be cut, ready to be placed.
 *
 * @param index of the piece in the caller's list
 * @param shape as it lies on the roof
 * @param turned end for end
 * @param symmetric whether turning changes nothing
 */
record Item(int index, Shape shape, Shape turned, boolean symmetric) {
  static Item of(int index, Ring outline, double touch) {
    Shape shape = Shape.of(outline, touch);
    boolean box = shape.length * shape.height - shape.area <= touch * shape.length;
    return new Item(index, shape, shape.turned(), box);
  }

  /** The same piece under another number. */
  Item numbered(int number) {
    return new Item(number, shape, turned, symmetric);
  }
}
