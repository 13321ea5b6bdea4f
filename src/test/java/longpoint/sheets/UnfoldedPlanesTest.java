package longpoint.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import longpoint.deck.PlaneDeck;
import longpoint.drawing.Mark;
import longpoint.geometry.Bounds;
import longpoint.geometry.Ring;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.planfile.PlanFile;
import longpoint.surface.RoofPlane;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class UnfoldedPlanesTest {
  static Stream<Path> samples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("sample-plans"))) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList().stream();
    }
  }

  /** A plane laid flat keeps its true area, which the roof reckons from plan area and slope. */
  @ParameterizedTest
  @MethodSource("samples")
  void outlinesKeepTheTrueAreaAndStandClearOfEachOther(Path sample) throws Exception {
    Design design = Pipeline.solve(PlanFile.read(sample).plan());
    ModelDrawing model =
        UnfoldedPlanes.of(
            design.plan(),
            design.surface(),
            design.deck(),
            design.chalk(),
            PaperScale.of(design.plan().unit()).get(0));
    List<Bounds> boxes = new ArrayList<>();
    assertThat(model.drawing().marks()).hasSameSizeAs(design.deck().planes());
    for (Mark mark : model.drawing().marks()) {
      Mark.Group plane = (Mark.Group) mark;
      List<Mark.Path> outlines =
          plane.marks().stream()
              .filter(m -> m instanceof Mark.Path p && p.layer().equals(Layers.OUTLINE))
              .map(Mark.Path.class::cast)
              .toList();
      String subject = outlines.get(0).subject();
      PlaneDeck deck =
          design.deck().planes().stream()
              .filter(p -> p.plane().equals(subject))
              .findFirst()
              .orElseThrow();
      double area = 0;
      Bounds box = Bounds.EMPTY;
      for (Mark.Path outline : outlines) {
        assertThat(outline.closed()).isTrue();
        Ring ring = new Ring(outline.points());
        area += ring.signedArea();
        for (var p : ring.points()) {
          box = box.with(plane.placement().apply(p));
        }
      }
      assertThat(area).as(subject).isCloseTo(deck.area(), within(1e-6 * deck.area()));
      assertThat(area)
          .as("not less than what is seen of it")
          .isGreaterThan(0.99 * seen(design, deck));
      assertThat(box.minY()).isCloseTo(0, within(1e-9));
      boxes.add(box);
    }
    for (int i = 0; i + 1 < boxes.size(); i++) {
      assertThat(boxes.get(i).maxX()).isLessThan(boxes.get(i + 1).minX());
    }
  }

  private static double seen(Design design, PlaneDeck deck) {
    return design.surface().planes().stream()
        .filter(p -> deck.planes().contains(p.id()))
        .mapToDouble(RoofPlane::area)
        .sum();
  }
}
