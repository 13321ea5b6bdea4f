package longpoint.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longpoint.drawing.Page;
import longpoint.drawing.Strokes;
import longpoint.packet.Packet;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Particulars;
import longpoint.plan.Plan;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

@Execution(ExecutionMode.CONCURRENT)
class SheetSetTest {
  /** Share of all lettering that a wide line may run through, for want of a better place. */
  private static final double CROSSED = 0.02;

  /** Every sample and drawn plan on every paper. */
  @TestFactory
  Stream<DynamicTest> everyPlanOnEveryPaper() throws Exception {
    List<DynamicTest> tests = new ArrayList<>();
    for (Map.Entry<String, Plan> entry : FrameSheetsTest.plans().entrySet()) {
      tests.add(
          DynamicTest.dynamicTest(
              entry.getKey(),
              () -> {
                Design design = Pipeline.solve(entry.getValue());
                for (Paper paper : Paper.values()) {
                  check(design, paper);
                }
              }));
    }
    return tests.stream();
  }

  private static void check(Design design, Paper paper) {
    List<Page> pages = Packet.pages(design, paper);
    int labels = 0;
    List<String> crossed = new ArrayList<>();
    int number = 0;
    for (Page page : pages) {
      SheetLaws.check(page);
      labels += Strokes.of(page.marks(), 1).labels().size();
      crossed.addAll(SheetLaws.crossed(page));
      assertThat(page.number()).isEqualTo(SheetBorder.number(++number, pages.size()));
      assertThat(page.widthMm()).isEqualTo(paper.widthMm());
      String words = SheetLaws.words(page);
      assertThat(words).contains("not engineering", "supplier's", "local code", "Scale ");
      assertThat(words).contains("Sheet " + page.number() + " of " + pages.size());
    }
    listsEverySheet(design.plan(), pages);
    assertThat(crossed.size()).as(crossed::toString).isLessThanOrEqualTo((int) (labels * CROSSED));
  }

  /** The sheet list on the cover has every title once in a row, under its number. */
  private static void listsEverySheet(Plan plan, List<Page> pages) {
    String cover =
        pages.stream()
            .filter(p -> p.title().startsWith("Cover"))
            .map(SheetLaws::words)
            .collect(Collectors.joining());
    String job = ", " + (plan.title().isBlank() ? "Untitled" : plan.title());
    String before = "Cover";
    for (Page page : pages) {
      String title = page.title().substring(0, page.title().length() - job.length());
      if (!title.startsWith("Cover") && !title.equals(before)) {
        assertThat(cover).containsPattern(page.number() + "( to [0-9]+)? ");
      }
      before = title;
    }
  }

  @Test
  void theSameSheetsEveryTime() {
    Design design = Pipeline.solve(DrawnPlans.wing());
    assertThat(Packet.pages(design, Paper.A4)).isEqualTo(Packet.pages(design, Paper.A4));
  }

  @Test
  void aPlanWithNothingInItHasACover() {
    Design design = Pipeline.solve(DrawnPlans.all().get("empty"));
    assertThat(Packet.pages(design, Paper.LETTER).get(0).title()).startsWith("Cover");
  }

  /** A date stands there only if the plan gives one: the program has no clock. */
  @Test
  void theTitleBlockSaysWhatThePlanGives() {
    Particulars given =
        new Particulars(
            "12 Quarry Lane", "M. Orrin", "2031-05-06", Optional.of(30.0), Optional.empty());
    Design design = Pipeline.solve(DrawnPlans.wing().withParticulars(given));
    for (Page page : Packet.pages(design, Paper.LETTER)) {
      assertThat(SheetLaws.words(page))
          .contains("12 Quarry Lane", "Drawn by M. Orrin", "2031-05-06");
      assertThat(SheetLaws.words(page)).doesNotContain("Plan north");
    }
  }
}
