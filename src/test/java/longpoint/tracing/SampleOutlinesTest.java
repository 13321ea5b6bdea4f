package longpoint.tracing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import longpoint.export.DxfWriter;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.sheets.ModelDrawing;
import longpoint.sheets.Paper;
import longpoint.sheets.SheetSet;
import longpoint.sheets.Solved;
import longpoint.surface.Roof;
import longpoint.surface.RoofSurface;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What we write ourselves comes back: every part's outline out of the DXF of its plan. */
class SampleOutlinesTest {
  static Stream<Path> samples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("sample-plans"))) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everyOutlineComesBack(Path sample) throws Exception {
    Plan plan = PlanFile.read(sample).plan();
    RoofSurface surface = Roof.solve(plan);
    SheetSet sheets = SheetSet.of(Solved.roof(plan, surface), Paper.A3);
    ModelDrawing model = ModelDrawing.of(plan, surface, sheets.roofScale());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DxfWriter.write(model.drawing(), plan.unit(), model.scale().ratio(), out);
    CadDrawing drawing = CadDrawing.read(out.toByteArray());
    assertThat(drawing.likelyUnit().planUnit()).isEqualTo(plan.unit());
    Traced traced = drawing.trace(drawing.likelyLayers(), drawing.likelyUnit(), plan.unit());
    assertThat(traced.notes()).isEmpty();
    List<Region> grounds = traced.regions(Traced.Inner.COURTYARDS);
    assertThat(grounds).hasSameSizeAs(plan.parts());
    for (Part part : plan.parts()) {
      assertThat(grounds).as(part.id()).anyMatch(g -> same(g, part.region()));
    }
  }

  private static boolean same(Region a, Region b) {
    return same(a.shell(), b.shell())
        && a.holes().size() == b.holes().size()
        && a.holes().stream().allMatch(h -> b.holes().stream().anyMatch(i -> same(h, i)));
  }

  private static boolean same(Ring a, Ring b) {
    return a.size() == b.size()
        && a.counterClockwise() == b.counterClockwise()
        && a.points().stream()
            .allMatch(p -> b.points().stream().anyMatch(q -> p.distance(q) <= 1e-6));
  }
}
