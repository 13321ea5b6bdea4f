package longpoint.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import longpoint.framing.Framing;
import longpoint.framing.FramingSet;
import longpoint.framing.truss.TrussMark;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.surface.Roof;
import longpoint.surface.RoofSurface;
import longpoint.units.LengthEntry;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

@Execution(ExecutionMode.CONCURRENT)
class FrameSheetsTest {
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

  private static List<Sheet> sheets(Plan plan, Paper paper) {
    RoofSurface surface = Roof.solve(plan);
    FramingSet framing = Framing.solve(plan, surface);
    RoofNames names = new RoofNames(plan, surface);
    SheetBorder border = new SheetBorder(plan, List.of(), paper);
    List<Sheet> sheets =
        new ArrayList<>(LayoutSheets.of(plan, surface, framing, names, border).sheets());
    sheets.addAll(FrameSheets.of(plan, framing, names, border));
    sheets.addAll(StickSheets.of(plan, framing, names, border));
    return sheets;
  }

  private static void check(Plan plan) {
    FramingSet framing = Framing.solve(plan, Roof.solve(plan));
    Paper paper = plan.unit() == LengthUnit.INCH ? Paper.TABLOID : Paper.A4;
    List<Sheet> sheets = sheets(plan, paper);
    StringBuilder all = new StringBuilder();
    for (Sheet sheet : sheets) {
      assertThat(sheet.reminders()).isNotEmpty();
      all.append(SheetLaws.words(sheet.marks())).append(' ');
      sheet.reminders().forEach(r -> all.append(r).append(' '));
    }
    String words = all.toString();
    if (plan.unit() == LengthUnit.MILLIMETRE) {
      assertThat(words).doesNotContain("'-");
    }
    for (TrussMark mark : framing.marks()) {
      String pieces = mark.quantity() == 1 ? "one" : mark.quantity() + " pieces";
      String caption = mark.mark() + "   " + mark.kind().key() + ", " + pieces;
      assertThat(words).contains(caption);
    }
    boolean trusses = !framing.trusses().isEmpty();
    assertThat(words.contains("falls over until it is held")).isEqualTo(trusses);
    assertThat(words.contains("until its rafters stand in pairs"))
        .isEqualTo(!trusses && !framing.rafters().isEmpty());
    assertThat(words.contains("Shape only, not engineered")).isEqualTo(trusses);
  }

  /** Every printed length of the schedule reads back as the engine's, to half of its last mark. */
  @TestFactory
  Stream<DynamicTest> theScheduleIsTheEngines() throws Exception {
    return plans().entrySet().stream()
        .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> schedule(e.getValue())));
  }

  private static void schedule(Plan plan) throws Exception {
    RoofSurface surface = Roof.solve(plan);
    FramingSet framing = Framing.solve(plan, surface);
    RoofNames names = new RoofNames(plan, surface);
    SheetTable table = new TrussTables(framing, new Cells(Words.of(plan)), names).schedule();
    StringBuilder printed = new StringBuilder();
    sheets(plan, Paper.A4).forEach(s -> printed.append(SheetLaws.words(s.marks())).append(' '));
    double half = plan.unit() == LengthUnit.INCH ? 1 / 32.0 : 0.5;
    int counted = 0;
    for (int i = 0; i < table.rows().size(); i++) {
      List<String> row = table.rows().get(i);
      TrussMark mark = framing.marks().get(i);
      double[] engine = {
        mark.span(), mark.height(), mark.heelLow(), mark.heelHigh(), mark.tailLow(), mark.tailHigh()
      };
      for (int j = 0; j < engine.length; j++) {
        String cell = row.get(4 + j);
        assertThat(LengthEntry.read(cell, plan.unit())).isCloseTo(engine[j], within(half + 1e-9));
        assertThat(printed).contains(cell);
      }
      assertThat(row.get(3)).isEqualTo(Integer.toString(mark.plies()));
      counted += Integer.parseInt(row.get(2));
    }
    assertThat(counted).isEqualTo(framing.trusses().size());
  }

  @Test
  void noFrameGivesNoSheet() {
    Plan plan = Plan.empty(LengthUnit.INCH);
    assertThat(sheets(plan, Paper.A4)).isEmpty();
  }

  /** Small paper splits the big house into a layout of each part; all its marks are on paper. */
  @Test
  void aHouseTooLargeForOneLayoutGetsOneOfEachPart() throws Exception {
    Plan plan = plans().get("heronsmere-lodge.json");
    List<Sheet> sheets = sheets(plan, Paper.TABLOID);
    assertThat(sheets.get(0).title()).isEqualTo("Frame overview");
    assertThat(sheets.stream().filter(p -> p.title().startsWith("Layout: ")).count())
        .isEqualTo(plan.parts().size());
  }

  /**
   * A layout too crowded for its paper goes on over match lines: on tabloid nothing is left off, on
   * letter no more than a mark or two of a large house, which the title block tells.
   */
  @Test
  void hardlyAMarkOfALayoutIsLeftOff() throws Exception {
    for (Map.Entry<String, Plan> e : plans().entrySet()) {
      assertThat(leftOff(e.getValue(), Paper.LETTER)).as(e.getKey()).isLessThanOrEqualTo(2);
    }
    for (String sample : List.of("heronsmere-lodge.json", "sable-lane-garden-wing.json")) {
      assertThat(leftOff(plans().get(sample), Paper.TABLOID)).as(sample).isZero();
    }
    List<Sheet> court = sheets(plans().get("quennel-court.json"), Paper.LETTER);
    assertThat(court.get(0).title()).startsWith("Frame layout, 1 of ");
    assertThat(SheetLaws.words(court.get(0).marks())).contains("Match line: 2 of ");
  }

  private static int leftOff(Plan plan, Paper paper) {
    return sheets(plan, paper).stream()
        .filter(p -> p.title().startsWith("Layout: ") || p.title().startsWith("Frame layout"))
        .mapToInt(Sheet::leftOff)
        .sum();
  }

  @Test
  void valleyTablesGiveWhatTheDrawingShows() {
    Plan plan = DrawnPlans.wing();
    RoofSurface surface = Roof.solve(plan);
    FramingSet framing = Framing.solve(plan, surface);
    ValleyTables tables =
        new ValleyTables(framing, new Cells(Words.of(plan)), new RoofNames(plan, surface));
    List<List<String>> rows = tables.valley(framing.valleySets().get(0)).rows();
    // A wing of 10/12 on a main roof of 8/12, 24 in apart: each truss is 24 · 8/12 lower at its
    // peak
    // and 2 · 16 · 12/10 = 38.4 in shorter than the one below.
    double first = framing.valleySets().get(0).trusses().get(0).length();
    double second = framing.valleySets().get(0).trusses().get(1).length();
    assertThat(first - second).isCloseTo(38.4, within(1e-9));
    assertThat(rows.get(1).get(1)).isEqualTo("V2");
    assertThat(rows).hasSize(framing.valleySets().get(0).trusses().size());
  }
}
