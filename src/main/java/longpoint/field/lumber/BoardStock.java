package longpoint.field.lumber;

import java.util.List;
import java.util.Objects;

/**
 * Boards of one section to buy and how they are cut up. Lengths in plan units.
 *
 * @param boards how many of each length, longest first
 * @param total length bought
 * @param used length that becomes pieces, saw cuts left out
 * @param lowerBound proven: no cutting of these pieces, each out of one board of the lengths sold,
 *     buys less in total
 * @param patterns boards cut alike, longest first
 */
public record BoardStock(
    Section section,
    List<Boards> boards,
    double total,
    double used,
    double lowerBound,
    List<Pattern> patterns) {
  /**
   * @param length of a board
   * @param count how many
   */
  public record Boards(double length, int count) {}

  /**
   * @param board its length
   * @param times how many are cut so
   * @param pieces in the order they are cut
   * @param left over at the end, saw cuts taken off
   */
  public record Pattern(double board, int times, List<Piece> pieces, double left) {
    public Pattern {
      pieces = List.copyOf(pieces);
    }

    /**
     * @param cut mark in the cut list
     * @param count out of one board
     */
    public record Piece(String cut, int count) {
      public Piece {
        Objects.requireNonNull(cut);
      }
    }
  }

  public BoardStock {
    Objects.requireNonNull(section);
    boards = List.copyOf(boards);
    patterns = List.copyOf(patterns);
  }

  /** How many boards altogether. */
  public int count() {
    return boards.stream().mapToInt(Boards::count).sum();
  }

  /** Share of what is bought that becomes no piece. */
  public double waste() {
    return total > 0 ? 1 - used / total : 0;
  }
}
