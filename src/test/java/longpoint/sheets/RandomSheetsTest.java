package longpoint.sheets;

import java.util.List;
import longpoint.packet.Packet;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Plan;
import longpoint.surface.RandomPlans;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The laws of a page on made-up houses. */
@Execution(ExecutionMode.CONCURRENT)
class RandomSheetsTest {
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void lawsHold(long seed) {
    Plan plan =
        Plan.empty(LengthUnit.INCH)
            .withTitle("Made up " + seed)
            .withParts(List.of(new RandomPlans(seed).house("main")));
    Design design = Pipeline.solve(plan);
    Paper paper = Paper.values()[(int) (seed % Paper.values().length)];
    Packet.pages(design, paper).forEach(SheetLaws::check);
  }
}
