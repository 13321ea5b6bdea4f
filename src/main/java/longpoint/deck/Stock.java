package longpoint.deck;

import java.util.List;
import java.util.Objects;

/**
 * All sheets of one size and thickness.
 *
 * @param panel size and thickness
 * @param sheets to buy, each with its cutting diagram
 * @param areaUsed area of the pieces
 * @param lowerBound sheets that no cutting of these courses can do without: proven, see {@link
 *     longpoint.deck.nest.CourseBound}
 */
public record Stock(Panel panel, List<CutSheet> sheets, double areaUsed, int lowerBound) {
  public Stock {
    Objects.requireNonNull(panel);
    sheets = List.copyOf(sheets);
  }

  public int bought() {
    return sheets.size();
  }

  /** Share of what is bought that ends up as waste, 0 to 1. */
  public double waste() {
    return sheets.isEmpty() ? 0 : 1 - areaUsed / (sheets.size() * panel.area());
  }
}
