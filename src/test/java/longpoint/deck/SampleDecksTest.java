package longpoint.deck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import longpoint.field.chalk.ChalkLine;
import longpoint.field.chalk.ChalkSheet;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.planfile.PlanFile;
import longpoint.planfile.PlanFileException;
import longpoint.surface.RoofPlane;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The laws of a deck and of its chalk sheets on every sample plan, trusses and all. */
class SampleDecksTest {
  @TestFactory
  Stream<DynamicTest> keepTheLaws() throws IOException {
    List<Path> plans;
    try (Stream<Path> files = Files.list(Path.of("sample-plans"))) {
      plans = files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
    }
    assertThat(plans).isNotEmpty();
    return plans.stream()
        .map(f -> DynamicTest.dynamicTest(f.getFileName().toString(), () -> check(f)));
  }

  private static void check(Path file) throws PlanFileException {
    Design design = Pipeline.solve(PlanFile.read(file).plan());
    DeckPlan deck = design.deck();
    DeckLaws.check(deck);
    List<String> noted = deck.problems().stream().map(p -> p.where()).toList();
    deck.planes().stream()
        .filter(p -> !noted.contains(p.plane()))
        .forEach(DeckLaws::keepsTheRulesForJoints);
    for (RoofPlane plane : design.surface().planes()) {
      assertThat(deck.plane(plane.id())).as(plane.id()).isPresent();
    }
    design.chalk().forEach(sheet -> onThePlane(sheet, deck));
    assertThat(Pipeline.solve(design.plan()).deck()).isEqualTo(deck);
  }

  /** Every line lies on its plane, and level lines of one kind are snapped from the eave up. */
  private static void onThePlane(ChalkSheet sheet, DeckPlan deck) {
    PlaneDeck plane = deck.plane(sheet.plane()).orElseThrow();
    Bounds box = Bounds.EMPTY;
    for (Region region : plane.ground()) {
      box = box.with(region.shell().bounds());
    }
    // Sheet lines and stop nails stand off their lines by the deck's thickness or a truss's.
    Bounds near = box.grown(plane.panel().width() / 8);
    for (ChalkLine line : sheet.lines()) {
      for (Point end : List.of(line.from(), line.to())) {
        Point uv = sheet.datum().onPlane(end);
        assertThat(near.contains(uv)).as("%s %s of %s", line.kind(), uv, sheet.plane()).isTrue();
        assertThat(sheet.datum().taped(uv).distance(end)).isCloseTo(0, within(1e-9));
      }
    }
    assertThat(sheet.running(ChalkLine.Kind.COURSE)).isSorted();
  }
}
