package longpoint.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longpoint.drawing.Page;
import longpoint.export.SvgWriter;
import longpoint.framing.Framing;
import longpoint.framing.FramingSet;
import longpoint.framing.truss.TrussMark;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.surface.Roof;
import longpoint.surface.RoofSurface;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class FrameSheetTest {
  static Map<String, Plan> plans() throws Exception {
    Map<String, Plan> plans = new LinkedHashMap<>(DrawnPlans.all());
    try (Stream<Path> files = Files.list(Path.of("sample-plans"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
        plans.put(file.getFileName().toString(), PlanFile.read(file).plan());
      }
    }
    return plans;
  }

  @TestFactory
  Stream<DynamicTest> everyPlan() throws Exception {
    return plans().entrySet().stream()
        .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> check(e.getValue())));
  }

  private static void check(Plan plan) throws Exception {
    RoofSurface surface = Roof.solve(plan);
    FramingSet framing = Framing.solve(plan, surface);
    Paper paper = plan.unit() == LengthUnit.INCH ? Paper.TABLOID : Paper.A4;
    FrameSheet sheet = FrameSheet.of(plan, surface, framing, paper);
    int number = 0;
    for (Page page : sheet.pages()) {
      PlanSheetTest.checkLettering(page);
      PlanSheetTest.checkInsideTheBorder(page);
      assertThat(page.number()).isEqualTo("F-" + ++number);
      String words = PlanSheetTest.words(page);
      assertThat(words).contains("not engineering", "Before you start", "Scale ", page.number());
      if (plan.unit() == LengthUnit.MILLIMETRE) {
        assertThat(words).doesNotContain("'-");
      }
    }
    String all = sheet.pages().stream().map(PlanSheetTest::words).collect(Collectors.joining(" "));
    for (TrussMark mark : framing.marks()) {
      String pieces = mark.quantity() == 1 ? "one" : mark.quantity() + " pieces";
      String caption = mark.mark() + "   " + mark.kind().key() + ", " + pieces;
      assertThat(all).contains(caption);
    }
    boolean trusses = !framing.trusses().isEmpty();
    assertThat(all.contains("temporary") || all.contains("falls over until it is held"))
        .isEqualTo(trusses || !framing.rafters().isEmpty());
    assertThat(all.contains("Shape only, not engineered")).isEqualTo(trusses);
    assertThat(bytes(sheet))
        .isEqualTo(bytes(FrameSheet.of(plan, surface, Framing.solve(plan, surface), paper)));
  }

  private static byte[] bytes(FrameSheet sheet) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (Page page : sheet.pages()) {
      SvgWriter.write(page, out);
    }
    return out.toByteArray();
  }

  @Test
  void noFrameGivesNoSheet() {
    Plan plan = Plan.empty(LengthUnit.INCH);
    assertThat(FrameSheet.of(plan, Roof.solve(plan), FramingSet.NONE, Paper.A4).pages()).isEmpty();
    assertThat(
            FrameSheet.of(GableHouse.PLAN, GableHouse.SURFACE, FramingSet.NONE, Paper.A4).pages())
        .isEmpty();
  }

  /** Small paper splits the big house into a layout of each part; all its marks are on paper. */
  @Test
  void aHouseTooLargeForOneLayoutGetsOneOfEachPart() throws Exception {
    Plan plan = plans().get("heronsmere-lodge.json");
    RoofSurface surface = Roof.solve(plan);
    FramingSet framing = Framing.solve(plan, surface);
    List<Page> pages = FrameSheet.of(plan, surface, framing, Paper.TABLOID).pages();
    assertThat(pages.get(0).title()).startsWith("Frame overview");
    assertThat(pages.stream().filter(p -> p.title().startsWith("Layout: ")).count())
        .isEqualTo(plan.parts().size());
  }

  @Test
  void valleyTablesGiveWhatTheDrawingShows() {
    Plan plan = DrawnPlans.wing();
    RoofSurface surface = Roof.solve(plan);
    FramingSet framing = Framing.solve(plan, surface);
    FrameTables tables = new FrameTables(framing, plan.unit());
    List<List<String>> rows = tables.valley(framing.valleySets().get(0)).rows();
    // A wing of 10/12 on a main roof of 8/12, 24 in apart: each truss is 24 · 8/12 lower at its
    // peak
    // and 2 · 16 · 12/10 = 38.4 in shorter than the one below.
    double first = framing.valleySets().get(0).trusses().get(0).length();
    double second = framing.valleySets().get(0).trusses().get(1).length();
    assertThat(first - second).isCloseTo(38.4, org.assertj.core.api.Assertions.within(1e-9));
    assertThat(rows.get(1).get(1)).isEqualTo("V2");
    assertThat(rows).hasSize(framing.valleySets().get(0).trusses().size());
  }
}
