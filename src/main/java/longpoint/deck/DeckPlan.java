package longpoint.deck;

import java.util.List;
import java.util.Optional;
import longpoint.plan.Problem;

/**
 * The whole deck.
 *
 * @param planes in the order of the roof's planes, flush ones together
 * @param stock what to buy, in the order first needed
 * @param problems what to look at before building
 */
public record DeckPlan(List<PlaneDeck> planes, List<Stock> stock, List<Problem> problems) {
  public static final DeckPlan NONE = new DeckPlan(List.of(), List.of(), List.of());

  public DeckPlan {
    planes = List.copyOf(planes);
    stock = List.copyOf(stock);
    problems = List.copyOf(problems);
  }

  /** The deck that holds a roof plane. */
  public Optional<PlaneDeck> plane(String id) {
    return planes.stream().filter(p -> p.planes().contains(id)).findFirst();
  }

  public int sheetsBought() {
    return stock.stream().mapToInt(Stock::bought).sum();
  }

  public double areaUsed() {
    return stock.stream().mapToDouble(Stock::areaUsed).sum();
  }

  /** Sheets that no cutting of these courses can do without. */
  public int lowerBound() {
    return stock.stream().mapToInt(Stock::lowerBound).sum();
  }
}
