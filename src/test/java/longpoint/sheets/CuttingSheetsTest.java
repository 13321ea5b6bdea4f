package longpoint.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import longpoint.deck.CutSheet;
import longpoint.deck.Stock;
import longpoint.drawing.Mark;
import longpoint.drawing.Page;
import longpoint.packet.Packet;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Plan;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Whoever saws finds the name of every piece on the sheet it comes out of, however small it is. */
class CuttingSheetsTest {
  @TestFactory
  Stream<DynamicTest> everyPieceIsNamed() throws Exception {
    Map<String, Plan> plans = FrameSheetsTest.plans();
    return plans.entrySet().stream()
        .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> check(Pipeline.solve(e.getValue()))));
  }

  private static void check(Design design) {
    Set<String> sawn = new TreeSet<>();
    for (Stock stock : design.deck().stock()) {
      for (CutSheet sheet : stock.sheets()) {
        double spare = stock.panel().area() - sheet.used();
        boolean whole =
            sheet.pieces().size() == 1 && spare <= stock.panel().sliver() * stock.panel().width();
        if (!whole) {
          sheet.pieces().forEach(p -> sawn.add(p.piece()));
        }
      }
    }
    for (Paper paper : Paper.values()) {
      Set<String> named = new TreeSet<>();
      for (Page page : Packet.pages(design, paper)) {
        if (page.title().startsWith("Sheets to cut")) {
          named(page.marks(), named);
        }
      }
      assertThat(named).as("on %s", paper).containsAll(sawn);
    }
  }

  private static void named(List<Mark> marks, Set<String> into) {
    for (Mark mark : marks) {
      if (mark instanceof Mark.Group group) {
        named(group.marks(), into);
      } else if (mark instanceof Mark.Text text && text.subject().contains(":")) {
        into.add(text.subject());
      }
    }
  }
}
