package longpoint.deck;

import java.nio.file.Path;
import java.util.Arrays;
import longpoint.framing.Framing;
import longpoint.framing.FramingSet;
import longpoint.plan.Deck;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.surface.Roof;
import longpoint.surface.RoofSurface;

/**
 * Sheets of plans against their bound, started at the left and searched for the least, and what
 * that costs: the median of warm runs. By hand, see DEVELOPERS.md.
 */
final class DeckTiming {
  private DeckTiming() {}

  public static void main(String[] files) throws Exception {
    int runs = Integer.getInteger("runs", 9);
    for (String file : files) {
      Plan plan = PlanFile.read(Path.of(file)).plan();
      for (Deck.Start start : new Deck.Start[] {Deck.Start.LEFT, Deck.Start.LEAST}) {
        Plan started =
            plan.withParts(
                plan.parts().stream().map(p -> p.withDeck(p.deck().withStart(start))).toList());
        RoofSurface surface = Roof.solve(started);
        FramingSet framing = Framing.solve(started, surface);
        double[] times = new double[runs];
        DeckPlan deck = DeckPlan.NONE;
        for (int i = 0; i < runs; i++) {
          long from = System.nanoTime();
          deck = Sheathing.lay(started, surface, framing);
          times[i] = (System.nanoTime() - from) / 1e6;
        }
        Arrays.sort(times, runs / 2, runs);
        System.out.printf(
            "%s %s: %d sheets, at least %d, %.1f %% over, %.0f ms%n",
            Path.of(file).getFileName(),
            start.key(),
            deck.sheetsBought(),
            deck.lowerBound(),
            100.0 * (deck.sheetsBought() - deck.lowerBound()) / Math.max(1, deck.lowerBound()),
            times[(runs + runs / 2) / 2]);
      }
    }
  }
}
