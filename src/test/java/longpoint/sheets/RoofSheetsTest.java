package longpoint.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import longpoint.drawing.Mark;
import longpoint.drawing.Page;
import longpoint.drawing.Strokes;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.surface.Roof;
import longpoint.surface.RoofSurface;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

@Execution(ExecutionMode.CONCURRENT)
class RoofSheetsTest {
  private static RoofSheets sheets(Plan plan, RoofSurface surface, Paper paper) {
    return RoofSheets.of(plan, surface, new SheetBorder(plan, List.of(), paper));
  }

  private static List<Page> pages(Plan plan, RoofSurface surface, Paper paper) {
    return SheetSet.of(Solved.roof(plan, surface), paper).pages();
  }

  /** Tables run on until every plane has its row, and no cell is cut short. */
  @TestFactory
  Stream<DynamicTest> tablesAreWhole() {
    List<DynamicTest> tests = new ArrayList<>();
    for (Map.Entry<String, Plan> entry : DrawnPlans.all().entrySet()) {
      for (Paper paper : Paper.values()) {
        tests.add(
            DynamicTest.dynamicTest(
                entry.getKey() + " on " + paper.title(), () -> whole(entry.getValue(), paper)));
      }
    }
    return tests.stream();
  }

  private static void whole(Plan plan, Paper paper) {
    RoofSurface surface = Roof.solve(plan);
    RoofSheets sheets = sheets(plan, surface, paper);
    assertThat(tableWords(sheets)).containsAll(PlaneMarks.of(surface).values());
    for (SheetTable table :
        List.of(
            RoofTables.lines(plan, surface),
            RoofTables.planes(plan, surface),
            RoofTables.eaves(plan, surface))) {
      for (List<String> row : table.rows()) {
        List<String> figures = new ArrayList<>(row);
        figures.removeIf(
            c -> c.isEmpty() || plan.parts().stream().anyMatch(p -> p.name().equals(c)));
        assertThat(tableWords(sheets)).containsAll(figures);
      }
    }
  }

  /** Words that stand on the sheet itself, not on the view. */
  private static List<String> tableWords(RoofSheets sheets) {
    return sheets.sheets().stream()
        .flatMap(p -> p.marks().stream())
        .filter(m -> m instanceof Mark.Text)
        .map(m -> ((Mark.Text) m).text())
        .toList();
  }

  @Test
  void theScaleIsTheLargestThatFits() {
    // 504 in of roof and 17 mm of dimensions in a field 181.4 mm wide and 160.9 high: 1:64 needs
    // 217 mm, 1:96 needs 151.
    RoofSheets letter = sheets(GableHouse.PLAN, GableHouse.SURFACE, Paper.LETTER);
    assertThat(letter.scale().ratio()).isEqualTo(96);
    assertThat(letter.scale().title()).startsWith("1/8\" = 1'-0\"");
    // 371 in and 17 mm in 224.4 mm of height: 1:48 needs 213.
    assertThat(sheets(GableHouse.PLAN, GableHouse.SURFACE, Paper.TABLOID).scale().ratio())
        .isEqualTo(48);
  }

  /** Paper inches to a foot times the ratio is a foot. */
  @Test
  void namedScalesAreWhatTheySay() {
    for (PaperScale scale : PaperScale.of(LengthUnit.INCH)) {
      String[] sides = scale.title().split("\" = ");
      double paper = 0;
      for (String piece : sides[0].split(" ")) {
        String[] cut = piece.split("/");
        paper += Double.parseDouble(cut[0]) / (cut.length == 1 ? 1 : Double.parseDouble(cut[1]));
      }
      double feet = Double.parseDouble(sides[1].split("'")[0]);
      assertThat(feet * 12 / paper).as(scale.title()).isEqualTo(scale.ratio());
      assertThat(scale.title()).endsWith("(1:" + (int) scale.ratio() + ")");
    }
  }

  @Test
  void tablesAddUp() {
    // Ridge 504 in = 42 ft; eaves 2 · 42 ft; rakes 4 · 185.5 · √(1 + 4/9) = 891.77 in.
    assertThat(RoofTables.lines(GableHouse.PLAN, GableHouse.SURFACE).rows())
        .containsExactly(
            List.of("Ridge", "1", "42'-0\""),
            List.of("Eave", "2", "84'-0\""),
            List.of("Rake", "4", "74'-3 3/4\""));
    // 504 · 185.5 · √(1 + 4/9) / 144 = 780.30 sq ft each.
    assertThat(RoofTables.planes(GableHouse.PLAN, GableHouse.SURFACE).rows())
        .containsExactly(
            List.of("A", "House", "8/12", "780.3 sq ft"),
            List.of("B", "House", "8/12", "780.3 sq ft"),
            List.of("", "All planes", "", "1560.6 sq ft"));
  }

  @Test
  void eavesSayWhatSetsTheirHeight() {
    assertThat(RoofTables.eaves(GableHouse.PLAN, GableHouse.SURFACE).rows())
        .containsExactly(List.of("A B", "1'-4\"", "0'-4 1/2\"", "8'-1 1/8\""));
  }

  /** The bays on Letter paper: more labels than there is room for, and the title block says so. */
  @Test
  void whatIsLeftOffIsSaid() {
    Plan plan = DrawnPlans.all().get("bays");
    FittedView<PlanView> fitted = FittedView.of(plan, Roof.solve(plan), 173, 170);
    assertThat(fitted.view().leftOff()).isPositive();
    String words = allWords(pages(plan, Roof.solve(plan), Paper.LETTER));
    assertThat(words).contains("no room on this paper");
  }

  @Test
  void anErrorIsSaidOnTheSheet() {
    RoofSurface broken =
        new RoofSurface(
            List.of(), List.of(), List.of(Problem.error("main", "House crosses itself.", "")));
    for (Page page : pages(GableHouse.PLAN, broken, Paper.A4)) {
      assertThat(SheetLaws.words(page)).contains("Incomplete", "House crosses itself.");
      SheetLaws.check(page);
    }
  }

  @Test
  void aHostileTitleStaysInItsBlock() {
    Plan plan = GableHouse.PLAN.withTitle("Wwww<&>\u0000\n%s ".repeat(200) + "m".repeat(3000));
    for (Paper paper : Paper.values()) {
      pages(plan, GableHouse.SURFACE, paper).forEach(SheetLaws::check);
    }
  }

  @Test
  void theScaleBarIsTrue() {
    PaperScale scale = PaperScale.usual(LengthUnit.INCH);
    List<Mark> bar =
        ScaleBar.bar(new Point(0, 0), Words.of(Plan.empty(LengthUnit.INCH)), scale, 60);
    // Four fields of 2 ft at 1:48: 96 in of building on 2 in of paper.
    assertThat(texts(bar).map(Mark.Text::text)).containsExactly("0", "4", "8 ft");
    List<Mark.Text> ends = texts(bar).toList();
    assertThat(ends.get(2).at().x() - ends.get(0).at().x())
        .isCloseTo(50.8, org.assertj.core.api.Assertions.within(1e-9));
  }

  @Test
  void aVeryLargeAndAFarPlanFindAScale() {
    for (double times : new double[] {1e-3, 1e4, 1e9}) {
      Plan plan =
          GableHouse.PLAN.withParts(
              GableHouse.PLAN.parts().stream()
                  .map(
                      p ->
                          p.withShape(
                              new longpoint.geometry.Ring(
                                  p.outline().points().stream().map(q -> q.times(times)).toList()),
                              List.of(),
                              p.edges()))
                  .toList());
      pages(plan, Roof.solve(plan), Paper.A3).forEach(SheetLaws::check);
    }
  }

  private static String allWords(List<Page> pages) {
    StringBuilder all = new StringBuilder();
    pages.forEach(p -> all.append(SheetLaws.words(p)).append(' '));
    return all.toString();
  }

  private static Stream<Mark.Text> texts(List<Mark> marks) {
    return Strokes.of(marks, 1).labels().stream()
        .map(Strokes.Label::mark)
        .filter(m -> m instanceof Mark.Text)
        .map(m -> (Mark.Text) m);
  }
}
