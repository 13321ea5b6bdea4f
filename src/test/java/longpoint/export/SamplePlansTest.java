package longpoint.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import longpoint.drawing.Page;
import longpoint.export.DxfFile.Item;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.sheets.Layers;
import longpoint.sheets.Paper;
import longpoint.sheets.PlanView;
import longpoint.sheets.SheetSet;
import longpoint.sheets.Solved;
import longpoint.surface.Roof;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofSurface;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.w3c.dom.Element;

/** The sample plans, written and read back: every roof line is where the roof says it is. */
class SamplePlansTest {
  @TestFactory
  Stream<DynamicTest> filesHoldTheRoof() throws Exception {
    List<Path> samples;
    try (Stream<Path> files = Files.list(Path.of("sample-plans"))) {
      samples = files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
    }
    assertThat(samples).isNotEmpty();
    return samples.stream()
        .map(f -> DynamicTest.dynamicTest(f.getFileName().toString(), () -> check(f)));
  }

  private static void check(Path file) throws Exception {
    Plan plan = PlanFile.read(file).plan();
    RoofSurface surface = Roof.solve(plan);
    SheetSet sheet = SheetSet.of(Solved.roof(plan, surface), Paper.A3);
    checkSvg(roofPlan(sheet), plan, surface, sheet.roofScale().ratio());
    double unitsPerMm = sheet.roofScale().unitsPerMm(plan.unit());
    PlanView view = PlanView.of(plan, surface, unitsPerMm);
    assertThat(view.leftOff()).isZero();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DxfWriter.write(view.drawing(), plan.unit(), sheet.roofScale().ratio(), out);
    DxfFile dxf = DxfFile.read(out.toByteArray());
    DxfCheck.check(dxf);
    for (RoofLine line : surface.lines()) {
      for (Segment seen : surface.seen(line)) {
        Item item = entity(dxf, line);
        assertThat(at(item, 10).distance(seen.from())).isCloseTo(0, within(1e-6));
        assertThat(at(item, 11).distance(seen.to())).isCloseTo(0, within(1e-6));
      }
    }
  }

  /** Lines that show; in the samples none shows in more than one stretch. */
  private static List<RoofLine> seen(RoofSurface surface) {
    assertThat(surface.lines()).allSatisfy(l -> assertThat(surface.seen(l)).hasSizeLessThan(2));
    return surface.lines().stream().filter(l -> !surface.seen(l).isEmpty()).toList();
  }

  private static Page roofPlan(SheetSet sheets) {
    return sheets.pages().stream()
        .filter(p -> p.title().startsWith("Roof plan"))
        .findFirst()
        .orElseThrow();
  }

  private static Item entity(DxfFile dxf, RoofLine line) {
    return dxf.entities("LINE")
        .filter(i -> i.text(8).equals(Layers.of(line.kind()).name()))
        .filter(i -> i.has(1000) && i.text(1000).equals(line.id()))
        .findFirst()
        .orElseThrow();
  }

  private static Point at(Item item, int code) {
    return new Point(item.number(code), item.number(code + 10));
  }

  /** On paper every line has its plan length at the scale of the sheet, and its bearing. */
  private static void checkSvg(Page page, Plan plan, RoofSurface surface, double ratio)
      throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SvgWriter.write(page, out);
    SvgFile svg = SvgFile.read(out.toByteArray());
    double mm = plan.unit().toMillimetres(1) / ratio;
    for (RoofLine line : seen(surface)) {
      String id = XmlText.name(Layers.of(line.kind()).name() + "/" + line.id());
      Element path = svg.byId(id);
      List<Point> ends = SvgFile.corners(path);
      Segment seen = surface.seen(line).get(0);
      Point step = seen.to().minus(seen.from()).times(mm);
      assertThat(ends.get(1).x() - ends.get(0).x()).isCloseTo(step.x(), within(2e-6));
      assertThat(ends.get(0).y() - ends.get(1).y()).isCloseTo(step.y(), within(2e-6));
    }
  }
}
