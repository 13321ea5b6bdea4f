package longpoint.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import longpoint.drawing.Page;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.sheets.GableHouse;
import longpoint.sheets.Paper;
import longpoint.sheets.PlanView;
import longpoint.sheets.SheetSet;
import longpoint.sheets.Solved;
import longpoint.surface.Roof;
import longpoint.surface.RoofSurface;
import longpoint.units.Slope;
import longpoint.wording.Language;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/**
 * Whatever a user can draw becomes files that strict readers accept: outlines that cross themselves
 * or double back, sides of no length, parts on top of each other, far off, tiny and huge.
 */
@Execution(ExecutionMode.CONCURRENT)
class AnyPlanTest {
  @TestFactory
  Stream<DynamicTest> filesStandWhateverIsDrawn() {
    return IntStream.range(0, 25)
        .mapToObj(i -> DynamicTest.dynamicTest("plan " + i, () -> check(i)));
  }

  private static void check(int seed) throws Exception {
    Plan plan = plan(new Random(seed));
    RoofSurface surface = Roof.solve(plan);
    Paper paper = Paper.values()[seed % Paper.values().length];
    SheetSet sheet = SheetSet.of(Solved.roof(plan, surface), paper);
    for (Page page : sheet.pages()) {
      ByteArrayOutputStream svg = new ByteArrayOutputStream();
      SvgWriter.write(page, svg);
      assertThat(SvgFile.read(svg.toByteArray()).root().getLocalName()).isEqualTo("svg");
    }
    ByteArrayOutputStream pdf = new ByteArrayOutputStream();
    PdfWriter.write(sheet.pages(), plan.title(), Language.ENGLISH, pdf);
    try (PDDocument read = Loader.loadPDF(pdf.toByteArray())) {
      assertThat(read.getNumberOfPages()).isEqualTo(sheet.pages().size());
    }
    PlanView view = PlanView.of(plan, surface, sheet.roofScale().unitsPerMm(plan.unit()));
    ByteArrayOutputStream dxf = new ByteArrayOutputStream();
    DxfWriter.write(view.drawing(), plan.unit(), sheet.roofScale().ratio(), dxf);
    DxfCheck.check(DxfFile.read(dxf.toByteArray()));
  }

  private static Plan plan(Random random) {
    double size = Math.pow(10, random.nextInt(8) - 1);
    Point far = new Point(random.nextInt(3) * 1e6, -random.nextInt(3) * 1e5);
    List<Part> parts = new ArrayList<>();
    int count = 1 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      parts.add(part("p" + i, random, size, far));
    }
    return GableHouse.PLAN.withTitle("Plan \u0007 <" + size + ">").withParts(parts);
  }

  private static Part part(String id, Random random, double size, Point far) {
    List<Point> points = new ArrayList<>();
    int corners = 3 + random.nextInt(9);
    for (int i = 0; i < corners; i++) {
      Point last = points.isEmpty() ? far : points.get(points.size() - 1);
      // Whole steps make corners meet, sides double back and sides of no length.
      double x = (random.nextInt(5) - 2) * size;
      double y = (random.nextInt(5) - 2) * size;
      points.add(last.plus(new Point(x, y)));
    }
    EdgeKind[] kinds = EdgeKind.values();
    List<Edge> edges = new ArrayList<>(Collections.nCopies(corners, Edge.of(EdgeKind.EAVE)));
    edges.replaceAll(
        e ->
            random.nextInt(3) > 0
                ? Edge.eave(Slope.inTwelve(random.nextInt(20)))
                : Edge.of(kinds[random.nextInt(kinds.length)]));
    return GableHouse.PLAN
        .parts()
        .get(0)
        .withId(id)
        .withName("Part \ud800 & co")
        .withShape(new Ring(points), List.of(), edges);
  }
}
