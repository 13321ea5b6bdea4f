package longpoint.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import longpoint.drawing.Anchor;
import longpoint.drawing.Drawing;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.drawing.Page;
import longpoint.drawing.Placement;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.sheets.GableHouse;
import longpoint.sheets.Layers;
import longpoint.sheets.PlanView;
import longpoint.units.LengthUnit;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

class SvgWriterTest {
  private static byte[] bytes(Page page) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SvgWriter.write(page, out);
    return out.toByteArray();
  }

  private static SvgFile page(Mark... marks) throws Exception {
    return SvgFile.read(bytes(new Page("R-1", "Test", 210, 297, List.of(marks))));
  }

  @Test
  void paperIsInMillimetres() throws Exception {
    Element svg = page().root();
    assertThat(svg.getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
    assertThat(svg.getAttribute("width")).isEqualTo("210mm");
    assertThat(svg.getAttribute("height")).isEqualTo("297mm");
    assertThat(svg.getAttribute("viewBox")).isEqualTo("0 0 210 297");
  }

  /** SVG Accessibility API Mappings (W3C): a picture named by its title, told by its desc. */
  @Test
  void thoseWhoCannotSeeItAreToldWhatItIs() throws Exception {
    SvgFile svg = page();
    assertThat(svg.root().getAttribute("role")).isEqualTo("img");
    assertThat(svg.root().getAttribute("aria-labelledby")).isEqualTo("title desc");
    assertThat(svg.byId("title").getTextContent()).isEqualTo("R-1 Test");
    assertThat(svg.byId("desc").getTextContent()).contains("210 mm wide");
  }

  /** A mark with no mirror image: y up on the page is y down in the file, x stays. */
  @Test
  void nothingIsMirrored() throws Exception {
    SvgFile svg =
        page(
            new Mark.Path(
                List.of(new Point(1, 2), new Point(5, 2), new Point(5, 3)),
                false,
                Layers.WALL,
                "f"),
            new Mark.Arc(new Point(0, 100), 10, 0, 90, Layers.WALL, "arc"),
            new Mark.Text(new Point(7, 8), "F", 2.5, 30, Anchor.START, Layers.WALL, "text"));
    assertThat(SvgFile.corners(svg.byId("A-WALL-OTLN.f")))
        .containsExactly(new Point(1, 295), new Point(5, 295), new Point(5, 294));
    // From three o'clock counter-clockwise to twelve: sweep flag 0 where y runs down.
    assertThat(svg.byId("A-WALL-OTLN.arc").getAttribute("d"))
        .isEqualTo("M10 197A10 10 0 0 0 0 187");
    assertThat(svg.byId("A-WALL-OTLN.text").getAttribute("transform"))
        .isEqualTo("rotate(-30 7 289)");
  }

  @Test
  void roofStandsOnThePageAtItsScale() throws Exception {
    double scale = 25.4 / 48;
    PlanView view = PlanView.of(GableHouse.PLAN, GableHouse.SURFACE, 1 / scale);
    SvgFile svg =
        page(
            new Mark.Group(
                "plan", new Placement(new Point(20, 30), scale, 0), view.drawing().marks()));
    List<Point> ridge = SvgFile.corners(svg.byId("A-ROOF-RIDG.l0"));
    assertThat(ridge.get(0).x()).isCloseTo(20 - 12 * scale, within(1e-6));
    assertThat(ridge.get(0).y()).isCloseTo(297 - 30 - 168 * scale, within(1e-6));
    assertThat(ridge.get(1).x()).isCloseTo(20 + 492 * scale, within(1e-6));
    Element layer = (Element) svg.byId("A-ROOF-RIDG.l0").getParentNode();
    assertThat(layer.getAttribute("id")).isEqualTo("A-ROOF-RIDG");
    assertThat(layer.getAttribute("stroke-width")).as("pens do not scale").isEqualTo("0.35");
    assertThat(((Element) layer.getParentNode()).getAttribute("id")).isEqualTo("plan");
  }

  @Test
  void realSizeIsTheSizeOfTheBuilding() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Drawing line =
        new Drawing(
            "wall",
            List.of(Mark.Path.line(new Point(10, 10), new Point(58, 10), Layers.WALL, "w")));
    SvgWriter.writeRealSize(line, LengthUnit.INCH, 48, out);
    SvgFile svg = SvgFile.read(out.toByteArray());
    List<Point> ends = SvgFile.corners(svg.byId("A-WALL-OTLN.w"));
    assertThat(ends.get(0).distance(ends.get(1))).isCloseTo(48 * 25.4, within(1e-6));
    // 5 mm of blank paper each side at 1:48.
    assertThat(svg.root().getAttribute("width")).isEqualTo("1699.2mm");
    assertThat(svg.byId("A-WALL-OTLN").getAttribute("stroke-width")).isEqualTo("16.8");
  }

  @Test
  void everyIdIsThereOnce() throws Exception {
    PlanView view = PlanView.of(GableHouse.PLAN, GableHouse.SURFACE, 2);
    Mark.Group twice =
        new Mark.Group("plan", new Placement(new Point(0, 0), 0.5, 0), view.drawing().marks());
    SvgFile svg = page(twice, twice);
    List<String> ids =
        svg.elements("*").map(e -> e.getAttribute("id")).filter(i -> !i.isEmpty()).toList();
    assertThat(ids).doesNotHaveDuplicates().allMatch(i -> i.matches("[A-Za-z_][A-Za-z0-9._-]*"));
    assertThat(ids).contains("A-WALL-OTLN.main.0", "plan..2");
  }

  @Test
  void holesStayHoles() throws Exception {
    Region ring =
        new Region(Ring.of(0, 0, 9, 0, 9, 9, 0, 9), List.of(Ring.of(3, 3, 3, 6, 6, 6, 6, 3)));
    Element fill = page(new Mark.Fill(ring, Layers.TINT, "p")).byId("A-ROOF-PATT.p");
    assertThat(fill.getAttribute("fill-rule")).isEqualTo("evenodd");
    assertThat(SvgFile.corners(fill)).hasSize(8);
  }

  @Test
  void capitalsHaveTheHeightAsked() throws Exception {
    Element text =
        page(new Mark.Text(new Point(0, 0), "H", 3.5, 0, Anchor.CENTRE, Layers.TEXT, "t"))
            .byId("A-ANNO-TEXT.t");
    assertThat(Double.parseDouble(text.getAttribute("font-size")) * Lettering.CAPITAL)
        .isCloseTo(3.5, within(1e-5));
    assertThat(text.getAttribute("dy")).isEqualTo("1.75");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "</text><script>alert(1)</script>",
        "a & b < c > d \" e ' f",
        "]]> &amp; &#0; <!-- -->",
        "two  spaces %s %d %n $1 \\n",
        "屋根 é \ud83c\udfe0 \u202e abc",
        "%1$s%"
      })
  void hostileTextComesBackWordForWord(String hostile) throws Exception {
    SvgFile svg =
        SvgFile.read(bytes(new Page("", hostile, 100, 100, List.of(text(hostile, hostile)))));
    assertThat(svg.elements("text").findFirst().get().getTextContent()).isEqualTo(hostile);
    assertThat(svg.elements("title").findFirst().get().getTextContent()).isEqualTo(hostile);
    assertThat(svg.elements("script")).isEmpty();
  }

  @Test
  void charactersXmlCannotHoldAreReplaced() throws Exception {
    SvgFile svg = page(text("a\u0000b\u0008\ud800c\ufffed\te\nf", "s"));
    assertThat(svg.elements("text").findFirst().get().getTextContent())
        .isEqualTo("a\ufffdb\ufffd\ufffdc\ufffdd e f");
  }

  @Test
  void veryLongTextIsWrittenWhole() throws Exception {
    String text = "gable & ".repeat(20_000);
    assertThat(page(text(text, "s")).elements("text").findFirst().get().getTextContent())
        .isEqualTo(text);
  }

  @Test
  void samePageSameBytes() throws IOException {
    Page page =
        new Page(
            "R-1",
            "Test",
            210,
            297,
            PlanView.of(GableHouse.PLAN, GableHouse.SURFACE, 2).drawing().marks());
    assertThat(bytes(page)).isEqualTo(bytes(page));
    assertThat(new String(bytes(page), java.nio.charset.StandardCharsets.UTF_8))
        .doesNotContain("\r")
        .doesNotContain("NaN");
  }

  @Test
  void aFullDiskIsSaid() {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            throw new IOException("no space left");
          }
        };
    Page page = new Page("", "x".repeat(100_000), 10, 10, List.of());
    Assertions.assertThatThrownBy(() -> SvgWriter.write(page, full))
        .isInstanceOf(IOException.class)
        .hasMessage("no space left");
  }

  private static Mark text(String text, String subject) {
    return new Mark.Text(new Point(1, 1), text, 2.5, 0, Anchor.START, Layers.TEXT, subject);
  }
}
