package longpoint.field.lumber.saw;

/**
 * What is to be cut, in whole steps of a tape's finest mark.
 *
 * @param sizes of the pieces, the saw's cut not included, each &gt; 0
 * @param counts of each, ≥ 0
 * @param boards lengths sold, rising, the last at least as long as any piece
 * @param kerf of the saw, ≥ 0; one cut goes with every piece, the last of a full board may need
 *     none
 */
record Demand(int[] sizes, int[] counts, int[] boards, int kerf) {
  int types() {
    return sizes.length;
  }

  /** Length a piece takes up with its saw cut. */
  int taken(int type) {
    return sizes[type] + kerf;
  }

  /** Room in a board, counted so that the last piece's saw cut may fall off its end. */
  int room(int board) {
    return boards[board] + kerf;
  }

  int longestRoom() {
    return room(boards.length - 1);
  }

  Demand with(int[] counts) {
    return new Demand(sizes, counts, boards, kerf);
  }

  boolean met() {
    for (int count : counts) {
      if (count > 0) {
        return false;
      }
    }
    return true;
  }

  /** Length that all boards are multiples of: any total bought is one too. */
  long grain() {
    long grain = 0;
    for (int board : boards) {
      long a = grain;
      long b = board;
      while (b != 0) {
        long rest = a % b;
        a = b;
        b = rest;
      }
      grain = a;
    }
    return grain;
  }
}
