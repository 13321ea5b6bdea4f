package longpoint.deck;

import java.util.List;
import java.util.Objects;
import longpoint.geometry.Region;

/**
 * One sheet to buy and how it is cut up. Its lower left corner is 0, 0 and its length runs along x.
 *
 * @param number from 1 within its stock
 * @param pieces what comes out of it
 */
public record CutSheet(int number, List<Placed> pieces) {
  public CutSheet {
    pieces = List.copyOf(pieces);
  }

  /**
   * A piece in the sheet.
   *
   * @param piece its id
   * @param cut its letter
   * @param turned end for end from how it lies on the roof
   * @param outline in the sheet
   */
  public record Placed(String piece, String cut, boolean turned, Region outline) {
    public Placed {
      Objects.requireNonNull(piece);
      Objects.requireNonNull(cut);
      Objects.requireNonNull(outline);
    }
  }

  public double used() {
    return pieces.stream().mapToDouble(p -> p.outline().area()).sum();
  }
}
