package longpoint.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import longpoint.drawing.Box;
import longpoint.drawing.Mark;
import longpoint.drawing.Page;
import longpoint.drawing.Strokes;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.surface.Roof;
import longpoint.surface.RoofSurface;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class PlanSheetTest {
  @TestFactory
  Stream<DynamicTest> everyPlanOnEveryPaper() {
    List<DynamicTest> tests = new ArrayList<>();
    for (Map.Entry<String, Plan> entry : DrawnPlans.all().entrySet()) {
      for (Paper paper : Paper.values()) {
        tests.add(
            DynamicTest.dynamicTest(
                entry.getKey() + " on " + paper.title(), () -> check(entry.getValue(), paper)));
      }
    }
    return tests.stream();
  }

  private static void check(Plan plan, Paper paper) {
    RoofSurface surface = Roof.solve(plan);
    PlanSheet sheet = PlanSheet.of(plan, surface, paper);
    for (Page page : sheet.pages()) {
      checkLettering(page);
      checkInsideTheBorder(page);
      String words = words(page);
      assertThat(words).contains("not engineering", "supplier's documents", "local code");
      assertThat(words).contains("Scale ", page.number());
    }
    // Heights of ISO 3098-1 (from memory); 2.5 mm is its smallest usual height.
    assertThat(texts(sheet).map(Mark.Text::heightMm).distinct()).isSubsetOf(2.5, 3.5, 5.0);
    // Tables run on until every plane has its row, and no cell is cut short.
    assertThat(tableWords(sheet)).containsAll(PlaneMarks.of(surface).values());
    for (SheetTable table :
        List.of(
            RoofTables.lines(plan, surface),
            RoofTables.planes(plan, surface),
            RoofTables.eaves(plan, surface))) {
      for (List<String> row : table.rows()) {
        List<String> figures = new ArrayList<>(row);
        figures.removeIf(
            c -> c.isEmpty() || plan.parts().stream().anyMatch(p -> p.name().equals(c)));
        assertThat(tableWords(sheet)).containsAll(figures);
      }
    }
  }

  static void checkInsideTheBorder(Page page) {
    Bounds box = Strokes.of(page.marks(), 1).bounds();
    assertThat(box.minX()).isGreaterThanOrEqualTo(10 - 1e-9);
    assertThat(box.minY()).isGreaterThanOrEqualTo(10 - 1e-9);
    assertThat(box.maxX()).isLessThanOrEqualTo(page.widthMm() - 10 + 1e-9);
    assertThat(box.maxY()).isLessThanOrEqualTo(page.heightMm() - 10 + 1e-9);
  }

  /** Words that stand on the page itself, not on the view. */
  private static List<String> tableWords(PlanSheet sheet) {
    return sheet.pages().stream()
        .flatMap(p -> p.marks().stream())
        .filter(m -> m instanceof Mark.Text)
        .map(m -> ((Mark.Text) m).text())
        .toList();
  }

  @Test
  void theScaleIsTheLargestThatFits() {
    // 504 in of roof and 20 mm of dimensions in a field of 177 mm: 1:64 needs 200 mm, 1:96 133 mm.
    PlanSheet letter = PlanSheet.of(GableHouse.PLAN, GableHouse.SURFACE, Paper.LETTER);
    assertThat(letter.scale().ratio()).isEqualTo(96);
    assertThat(letter.scale().title()).startsWith("1/8\" = 1'-0\"");
    assertThat(PlanSheet.of(GableHouse.PLAN, GableHouse.SURFACE, Paper.TABLOID).scale().ratio())
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
    FittedView fitted = FittedView.of(plan, Roof.solve(plan), 173, 170);
    assertThat(fitted.view().leftOff()).isPositive();
    String words = words(PlanSheet.of(plan, Roof.solve(plan), Paper.LETTER).pages().get(0));
    assertThat(words).contains("no room on this paper");
  }

  @Test
  void anErrorIsSaidOnTheSheet() {
    RoofSurface broken =
        new RoofSurface(
            List.of(), List.of(), List.of(Problem.error("main", "House crosses itself.", "")));
    PlanSheet sheet = PlanSheet.of(GableHouse.PLAN, broken, Paper.A4);
    assertThat(words(sheet.pages().get(0))).contains("Incomplete", "House crosses itself.");
  }

  @Test
  void aHostileTitleStaysInItsBlock() {
    Plan plan = GableHouse.PLAN.withTitle("Wwww<&>\u0000\n%s ".repeat(200) + "m".repeat(3000));
    for (Paper paper : Paper.values()) {
      PlanSheet sheet = PlanSheet.of(plan, GableHouse.SURFACE, paper);
      checkLettering(sheet.pages().get(0));
    }
  }

  @Test
  void theScaleBarIsTrue() {
    PaperScale scale = PaperScale.usual(LengthUnit.INCH);
    List<Mark> bar = ScaleBar.bar(new Point(0, 0), LengthUnit.INCH, scale);
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
      PlanSheet sheet = PlanSheet.of(plan, Roof.solve(plan), Paper.A3);
      assertThat(sheet.pages()).isNotEmpty();
      checkLettering(sheet.pages().get(0));
    }
  }

  static void checkLettering(Page page) {
    List<Strokes.Label> labels = Strokes.of(page.marks(), 1).labels();
    for (int i = 0; i < labels.size(); i++) {
      for (int j = i + 1; j < labels.size(); j++) {
        Box a = labels.get(i).box();
        Box b = labels.get(j).box();
        assertThat(a.overlaps(b))
            .as("%s / %s", labels.get(i).mark(), labels.get(j).mark())
            .isFalse();
      }
    }
  }

  static String words(Page page) {
    StringBuilder all = new StringBuilder();
    texts(page.marks()).forEach(t -> all.append(t.text()).append(' '));
    return all.toString();
  }

  private static Stream<Mark.Text> texts(PlanSheet sheet) {
    return sheet.pages().stream().flatMap(p -> texts(p.marks()));
  }

  private static Stream<Mark.Text> texts(List<Mark> marks) {
    return Strokes.of(marks, 1).labels().stream()
        .map(Strokes.Label::mark)
        .filter(m -> m instanceof Mark.Text)
        .map(m -> (Mark.Text) m);
  }
}
