package longpoint.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import longpoint.drawing.Anchor;
import longpoint.drawing.Drawing;
import longpoint.drawing.Mark;
import longpoint.drawing.Placement;
import longpoint.export.DxfFile.Item;
import longpoint.export.DxfFile.Tag;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.sheets.GableHouse;
import longpoint.sheets.Layers;
import longpoint.sheets.PlanView;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DxfWriterTest {
  private static byte[] write(Drawing drawing, LengthUnit unit) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DxfWriter.write(drawing, unit, 48, out);
    return out.toByteArray();
  }

  private static DxfFile read(Mark... marks) throws IOException {
    DxfFile file = DxfFile.read(write(new Drawing("Test", List.of(marks)), LengthUnit.INCH));
    DxfCheck.check(file);
    return file;
  }

  private static Drawing gable() {
    return PlanView.of(GableHouse.PLAN, GableHouse.SURFACE, 48 / 25.4).drawing();
  }

  @Test
  void gableHouseStandsUpToAStrictReader() throws IOException {
    DxfFile file = DxfFile.read(write(gable(), LengthUnit.INCH));
    DxfCheck.check(file);
    assertThat(file.header().get("$INSUNITS").get(0).value()).isEqualTo("1");
  }

  @Test
  void emptyDrawingStandsUpToAStrictReader() throws IOException {
    assertThat(read().sections().get("ENTITIES")).isEmpty();
  }

  @Test
  void millimetresAreNamed() throws IOException {
    DxfFile file = DxfFile.read(write(new Drawing("", List.of()), LengthUnit.MILLIMETRE));
    DxfCheck.check(file);
    // 4 is millimetres in the published DXF reference.
    assertThat(file.header().get("$INSUNITS").get(0).value()).isEqualTo("4");
    assertThat(file.header().get("$MEASUREMENT").get(0).value()).isEqualTo("1");
  }

  @Test
  void roofLinesComeBackInRealSizeOnTheirLayers() throws IOException {
    DxfFile file = DxfFile.read(write(gable(), LengthUnit.INCH));
    Item ridge =
        file.entities("LINE").filter(i -> i.text(8).equals("A-ROOF-RIDG")).findFirst().get();
    assertThat(ridge.number(10)).isCloseTo(-12, within(1e-6));
    assertThat(ridge.number(20)).isCloseTo(168, within(1e-6));
    assertThat(ridge.number(11)).isCloseTo(492, within(1e-6));
    assertThat(ridge.number(21)).isCloseTo(168, within(1e-6));
    assertThat(ridge.text(1000)).isEqualTo("l0");
  }

  @Test
  void planesAreClosedOutlinesWithTheirAreaInPlan() throws IOException {
    DxfFile file = DxfFile.read(write(gable(), LengthUnit.INCH));
    List<Item> outlines =
        file.entities("LWPOLYLINE").filter(i -> i.text(8).equals("A-ROOF-PATT")).toList();
    assertThat(outlines).hasSize(2).allMatch(i -> i.text(70).equals("1"));
    // 504 long by 185.5 in plan each.
    for (Item outline : outlines) {
      List<Double> x = outline.all(10).map(Tag::number).toList();
      List<Double> y = outline.all(20).map(Tag::number).toList();
      double twice = 0;
      for (int i = 0; i < x.size(); i++) {
        int j = (i + 1) % x.size();
        twice += x.get(i) * y.get(j) - x.get(j) * y.get(i);
      }
      assertThat(twice / 2).isCloseTo(504 * 185.5, within(1e-6));
    }
  }

  @Test
  void dimensionsAreTrueOnesThatMeasureTheWall() throws IOException {
    DxfFile file = DxfFile.read(write(gable(), LengthUnit.INCH));
    List<Item> all = file.entities("DIMENSION").toList();
    assertThat(all.stream().map(i -> i.number(42))).containsExactlyInAnyOrder(480.0, 336.0);
    for (Item d : all) {
      assertThat(Math.hypot(d.number(14) - d.number(13), d.number(24) - d.number(23)))
          .isCloseTo(d.number(42), within(1e-6));
      assertThat(d.text(1)).as("left to be measured").isEqualTo("<>");
    }
  }

  @Test
  void slantingDimensionIsAligned() throws IOException {
    Item d =
        read(new Mark.Dimension(
                new Point(0, 0), new Point(36, 48), 10, "5'-0\"", Layers.DIMENSIONS, "a"))
            .entities("DIMENSION")
            .findFirst()
            .get();
    assertThat((int) d.number(70) & 7).isEqualTo(1);
    assertThat(d.number(42)).isCloseTo(60, within(1e-9));
  }

  @Test
  void figureThatSaysMoreThanTheLengthIsKept() throws IOException {
    Item d =
        read(new Mark.Dimension(
                new Point(0, 0), new Point(48, 0), 10, "verify", Layers.DIMENSIONS, "a"))
            .entities("DIMENSION")
            .findFirst()
            .get();
    assertThat(d.text(1)).isEqualTo("verify");
  }

  /** A mark with no mirror image shows a flip of either axis, and of arcs. */
  @Test
  void nothingIsMirrored() throws IOException {
    DxfFile file =
        read(
            new Mark.Path(
                List.of(new Point(1, 2), new Point(5, 2), new Point(5, 3)), false, Layers.WALL, ""),
            new Mark.Arc(new Point(0, 0), 10, 0, 90, Layers.WALL, ""),
            new Mark.Arc(new Point(0, 0), 10, 90, -120, Layers.WALL, ""),
            new Mark.Text(new Point(7, 8), "F", 2.5, 30, Anchor.START, Layers.TEXT, ""));
    Item path = file.entities("LWPOLYLINE").findFirst().get();
    assertThat(path.all(10).map(Tag::number)).containsExactly(1.0, 5.0, 5.0);
    assertThat(path.all(20).map(Tag::number)).containsExactly(2.0, 2.0, 3.0);
    assertThat(path.text(70)).isEqualTo("0");
    List<Item> arcs = file.entities("ARC").toList();
    assertThat(arcs.get(0).number(50)).isEqualTo(0);
    assertThat(arcs.get(0).number(51)).isEqualTo(90);
    // From 90 clockwise through 120 is from 330 counter-clockwise to 90.
    assertThat(arcs.get(1).number(50)).isCloseTo(330, within(1e-9));
    assertThat(arcs.get(1).number(51)).isCloseTo(90, within(1e-9));
    Item text = file.entities("TEXT").findFirst().get();
    assertThat(text.number(10)).isEqualTo(7);
    assertThat(text.number(50)).isCloseTo(30, within(1e-9));
  }

  @Test
  void groupsLandWhereTheyArePlaced() throws IOException {
    Mark line = Mark.Path.line(new Point(1, 0), new Point(3, 0), Layers.WALL, "");
    DxfFile file =
        read(
            new Mark.Group(
                "outer",
                new Placement(new Point(100, 0), 2, 90),
                List.of(
                    new Mark.Group("inner", new Placement(new Point(5, 0), 1, 0), List.of(line)))));
    // (1,0) → (6,0) in the outer group → doubled and turned (0,12) → (100,12).
    Item item = file.entities("LINE").findFirst().get();
    assertThat(item.number(10)).isCloseTo(100, within(1e-9));
    assertThat(item.number(20)).isCloseTo(12, within(1e-9));
    assertThat(item.number(21)).isCloseTo(16, within(1e-9));
  }

  @Test
  void holesAreOutlinesOfTheirOwn() throws IOException {
    Region ring =
        new Region(Ring.of(0, 0, 10, 0, 10, 10, 0, 10), List.of(Ring.of(4, 4, 4, 6, 6, 6, 6, 4)));
    assertThat(read(new Mark.Fill(ring, Layers.TINT, "p")).entities("LWPOLYLINE")).hasSize(2);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0\nEOF\n0\nSECTION",
        "line\r\nbreak\tand \u0000 nought",
        "100%%c of %%%% and %%d",
        "back\\slash \\U+0041 \\P",
        "caret ^J",
        "é ü ß Ω 屋根 \ud83c\udfe0 \ud800",
        "  999\n"
      })
  void hostileTextStaysOneString(String hostile) throws IOException {
    DxfFile file =
        read(
            new Mark.Text(new Point(0, 0), hostile, 2.5, 0, Anchor.START, Layers.TEXT, hostile),
            Mark.Path.line(new Point(0, 0), new Point(1, 1), Layers.WALL, ""));
    assertThat(file.sections().get("ENTITIES")).hasSize(2);
    String text = file.entities("TEXT").findFirst().get().text(1);
    assertThat(text).matches("[ -~]*").doesNotContain("%%");
  }

  @Test
  void lettersOutsideAsciiAreEscaped() throws IOException {
    DxfFile file =
        read(new Mark.Text(new Point(0, 0), "Ω é", 2.5, 0, Anchor.START, Layers.TEXT, ""));
    assertThat(file.entities("TEXT").findFirst().get().text(1)).isEqualTo("\\U+03A9 \\U+00E9");
  }

  @Test
  void veryLongTextIsCutToWhatTheFormatHolds() throws IOException {
    read(
        new Mark.Text(
            new Point(0, 0),
            "ä".repeat(5000),
            2.5,
            0,
            Anchor.MIDDLE,
            Layers.TEXT,
            "x".repeat(999)));
  }

  @Test
  void sameDrawingSameBytes() throws IOException {
    assertThat(write(gable(), LengthUnit.INCH)).isEqualTo(write(gable(), LengthUnit.INCH));
  }
}
