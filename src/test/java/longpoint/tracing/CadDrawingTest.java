package longpoint.tracing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.units.LengthUnit;
import longpoint.wording.Language;
import org.junit.jupiter.api.Test;

/** Group codes and flags are those of the published DXF reference (from memory). */
class CadDrawingTest {
  /** Not its own mirror image in any direction. */
  private static final Ring F_SHAPE =
      Ring.of(
          0, 0, 100, 0, 100, 200, 260, 200, 260, 300, 100, 300, 100, 400, 320, 400, 320, 500, 0,
          500);

  private static Traced trace(Dxf dxf) throws TracingException {
    return trace(dxf, LengthUnit.INCH);
  }

  private static Traced trace(Dxf dxf, LengthUnit unit) throws TracingException {
    CadDrawing drawing = CadDrawing.read(dxf.bytes());
    return drawing.trace(drawing.likelyLayers(), drawing.likelyUnit(), unit);
  }

  private static Ring only(Traced traced) {
    assertThat(traced.outlines()).hasSize(1);
    return traced.outlines().get(0).ring();
  }

  private static void same(Ring found, Ring wanted) {
    assertThat(found.size()).isEqualTo(wanted.size());
    assertThat(found.counterClockwise()).isTrue();
    int start = 0;
    for (int i = 0; i < found.size(); i++) {
      start = found.corner(i).distance(wanted.corner(0)) < 1e-6 ? i : start;
    }
    for (int i = 0; i < wanted.size(); i++) {
      assertThat(found.corner(start + i).distance(wanted.corner(i)))
          .as("corner %d", i)
          .isLessThan(1e-6);
    }
  }

  private static Dxf inches() {
    return Dxf.drawing().header("$INSUNITS", 1).section("ENTITIES");
  }

  private static Dxf lines(Dxf dxf, Ring ring, double... gaps) {
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.corner(i);
      Point b = ring.corner(i + 1);
      double gap = i < gaps.length ? gaps[i] : 0;
      dxf.line("A-WALL", a.x() + gap, a.y(), b.x(), b.y());
    }
    return dxf;
  }

  @Test
  void linesInAnyOrderAndDirectionMakeTheOutlineUnmirrored() throws Exception {
    Dxf dxf = inches();
    for (int i : new int[] {3, 0, 7, 9, 1, 5, 2, 8, 4, 6}) {
      Point a = F_SHAPE.corner(i % 2 == 0 ? i : i + 1);
      Point b = F_SHAPE.corner(i % 2 == 0 ? i + 1 : i);
      dxf.line("A-WALL", a.x(), a.y(), b.x(), b.y());
    }
    same(only(trace(dxf.end())), F_SHAPE);
  }

  @Test
  void endsThatAllButMeetAreJoinedAndWiderGapsAreNamed() throws Exception {
    Ring house = Ring.of(0, 0, 300, 0, 300, 200, 0, 200);
    // Where ends do not quite meet the line drawn first decides.
    same(only(trace(lines(inches(), house, 0.1).end())), Ring.of(0.1, 0, 300, 0, 300, 200, 0, 200));
    Traced open = trace(lines(inches(), house, 36).end());
    assertThat(open.outlines()).isEmpty();
    CadDrawing drawing = CadDrawing.read(lines(inches(), house, 36).end().bytes());
    Traced named = drawing.trace(Set.of("A-WALL"), DrawingUnit.INCH, LengthUnit.INCH);
    assertThat(named.notes().get(0).message(Language.ENGLISH))
        .isEqualTo(
            "A line on layer A-WALL is open by 3'-0\": between (3'-0\", 0'-0\") and (0'-0\", 0'-0\").");
    assertThat(named.notes().get(0).message(Language.FRENCH)).contains("calque A-WALL");
  }

  @Test
  void partitionsAndStrayLinesDoNotHideTheOutline() throws Exception {
    Dxf dxf = lines(inches(), Ring.of(0, 0, 300, 0, 300, 200, 0, 200));
    dxf.line("A-WALL", 120, 0, 120, 200).line("A-WALL", 120, 90, 300, 90);
    dxf.line("A-WALL", 300, 200, 420, 260).line("A-WALL", 500, 0, 600, 0);
    same(only(trace(dxf.end())), Ring.of(0, 0, 300, 0, 300, 200, 0, 200));
  }

  @Test
  void aWingDrawnAgainstTheHouseIsPartOfItsOutline() throws Exception {
    Dxf dxf = lines(inches(), Ring.of(0, 0, 300, 0, 300, 200, 0, 200));
    dxf.line("A-WALL", 100, 200, 100, 320).line("A-WALL", 100, 320, 220, 320);
    dxf.line("A-WALL", 220, 320, 220, 200);
    same(
        only(trace(dxf.end())),
        Ring.of(0, 0, 300, 0, 300, 200, 220, 200, 220, 320, 100, 320, 100, 200, 0, 200));
  }

  @Test
  void cornersInAStraightWallAndRepeatedOnesAreDropped() throws Exception {
    Dxf dxf =
        inches()
            .closed(
                "W", 0, 0, 0, 100, 0, 0, 300, 0, 0, 300, 200, 0, 300, 200, 0, 0, 200, 0, 0, 0, 0);
    same(only(trace(dxf.end())), Ring.of(0, 0, 300, 0, 300, 200, 0, 200));
  }

  /** A bulge of 1 is half a circle; area of a 20 by 10 ft hall with a round end, by hand. */
  @Test
  void roundWallsBecomeStraightPiecesCloseToTheArc() throws Exception {
    Dxf dxf = inches().closed("W", 0, 0, 0, 240, 0, 1, 240, 120, 0, 0, 120, 0);
    Ring ring = only(trace(dxf.end()));
    assertThat(ring.area()).isCloseTo(240 * 120 + Math.PI * 60 * 60 / 2, within(25.0));
    assertThat(ring.bounds().maxX()).isCloseTo(300, within(0.2));
    for (Point p : ring.points()) {
      if (p.x() > 240) {
        assertThat(p.distance(new Point(240, 60))).isCloseTo(60, within(2e-6));
      }
    }
  }

  @Test
  void arcsAndLinesChain() throws Exception {
    Dxf dxf = inches().line("W", 0, 0, 240, 0).line("W", 240, 120, 0, 120).line("W", 0, 120, 0, 0);
    dxf.tags(0, "ARC", 8, "W", 10, 240.0, 20, 60.0, 40, 60.0, 50, 270.0, 51, 90.0);
    assertThat(only(trace(dxf.end())).area())
        .isCloseTo(240 * 120 + Math.PI * 60 * 60 / 2, within(25.0));
    Dxf round = inches().tags(0, "CIRCLE", 8, "W", 10, 0.0, 20, 0.0, 40, 100.0);
    assertThat(only(trace(round.end())).area()).isCloseTo(Math.PI * 1e4, within(50.0));
    Dxf oval =
        inches()
            .tags(0, "ELLIPSE", 8, "W", 10, 0.0, 20, 0.0, 11, 0.0, 21, 200.0, 40, 0.5)
            .tags(41, 0.0, 42, 2 * Math.PI);
    Ring ellipse = only(trace(oval.end()));
    assertThat(ellipse.area()).isCloseTo(Math.PI * 200 * 100, within(100.0));
    assertThat(ellipse.bounds().height()).isCloseTo(400, within(1.0));
  }

  @Test
  void oldPolylinesAreRead() throws Exception {
    Dxf dxf = inches().tags(0, "POLYLINE", 8, "W", 66, 1, 70, 1);
    for (Point p : F_SHAPE.points()) {
      dxf.tags(0, "VERTEX", 8, "W", 10, p.x(), 20, p.y());
    }
    same(only(trace(dxf.tags(0, "SEQEND").end())), F_SHAPE);
  }

  @Test
  void blocksStandWhereTheyAreInserted() throws Exception {
    Dxf dxf = Dxf.drawing().header("$INSUNITS", 4).section("BLOCKS");
    dxf.tags(0, "BLOCK", 2, "House", 10, 10.0, 20, 0.0)
        .closed("0", 10, 0, 0, 310, 0, 0, 310, 100, 0, 10, 50, 0);
    dxf.tags(0, "ENDBLK").end().section("ENTITIES");
    dxf.tags(
        0, "INSERT", 8, "WALLS", 2, "HOUSE", 10, 5000.0, 20, 1000.0, 41, 20.0, 42, 20.0, 50, 90.0);
    Traced traced = trace(dxf.end(), LengthUnit.MILLIMETRE);
    same(only(traced), Ring.of(5000, 1000, 5000, 7000, 3000, 7000, 4000, 1000));
    assertThat(traced.outlines().get(0).layer()).isEqualTo("WALLS");
  }

  @Test
  void whatIsDrawnFromBehindIsTurnedRound() throws Exception {
    Dxf dxf = inches().closed("W", 0, 0, 0, -300, 0, 0, -300, 100, 0, 0, 200, 0);
    dxf.tags(210, 0.0, 220, 0.0, 230, -1.0);
    same(only(trace(dxf.end())), Ring.of(0, 0, 300, 0, 300, 100, 0, 200));
    Dxf leaning = inches().closed("W", 0, 0, 0, 300, 0, 0, 300, 100, 0).tags(210, 1.0, 230, 0.0);
    CadDrawing drawing = CadDrawing.read(leaning.end().bytes());
    assertThat(drawing.layers()).isEmpty();
    assertThat(
            drawing.trace(Set.of("W"), DrawingUnit.INCH, LengthUnit.INCH).notes().get(0).message())
        .contains("LWPOLYLINE cannot be traced");
  }

  /** The international inch and foot are 25.4 mm and 12 in exactly (agreement of 1959). */
  @Test
  void unitsBecomeThePlansOwn() throws Exception {
    Ring feet =
        only(
            trace(
                Dxf.drawing()
                    .header("$INSUNITS", 2)
                    .section("ENTITIES")
                    .closed("W", 0, 0, 0, 30.125, 0, 0, 30.125, 20, 0, 0, 20, 0)
                    .end()));
    assertThat(feet.corner(1)).isEqualTo(new Point(361.5, 0));
    Ring metres =
        only(
            trace(
                Dxf.drawing()
                    .header("$INSUNITS", 6)
                    .section("ENTITIES")
                    .closed("W", 0, 0, 0, 12.3, 0, 0, 12.3, 8, 0, 0, 8, 0)
                    .end(),
                LengthUnit.MILLIMETRE));
    assertThat(metres.corner(2)).isEqualTo(new Point(12300, 8000));
    Ring inMm =
        only(
            trace(
                inches().closed("W", 0, 0, 0, 100, 0, 0, 100, 100, 0, 0, 100, 0).end(),
                LengthUnit.MILLIMETRE));
    assertThat(inMm.corner(2)).isEqualTo(new Point(2540, 2540));
  }

  @Test
  void withoutAUnitTheSizeOfABuildingDecidesAndIsSaid() throws Exception {
    CadDrawing feet =
        CadDrawing.read(
            Dxf.drawing()
                .section("ENTITIES")
                .closed("W", 0, 0, 0, 40, 0, 0, 40, 28, 0)
                .end()
                .bytes());
    assertThat(feet.unit()).isEmpty();
    assertThat(feet.likelyUnit()).isEqualTo(DrawingUnit.FOOT);
    CadDrawing mm =
        CadDrawing.read(
            Dxf.drawing()
                .header("$MEASUREMENT", 1)
                .section("ENTITIES")
                .closed("W", 0, 0, 0, 12000, 0, 0, 12000, 8000, 0)
                .end()
                .bytes());
    assertThat(mm.likelyUnit()).isEqualTo(DrawingUnit.MILLIMETRE);
    assertThat(mm.trace(Set.of("W"), mm.likelyUnit(), LengthUnit.MILLIMETRE).notes())
        .anyMatch(n -> n.message().contains("does not say its unit"));
  }

  @Test
  void insideOutlinesAreCourtyardsOnlyWhenAsked() throws Exception {
    Dxf dxf = inches().closed("W", 0, 0, 0, 600, 0, 0, 600, 500, 0, 0, 500, 0);
    dxf.closed("W", 200, 200, 0, 400, 200, 0, 400, 300, 0, 200, 300, 0);
    dxf.closed("W", 600, 0, 0, 800, 0, 0, 800, 200, 0, 600, 200, 0);
    Traced traced = trace(dxf.end());
    assertThat(traced.outlines()).extracting(Outline::depth).containsExactly(0, 0, 1);
    assertThat(traced.regions(Traced.Inner.LEFT_OUT))
        .extracting(Region::holes)
        .containsExactly(List.of(), List.of());
    List<Region> grounds = traced.regions(Traced.Inner.COURTYARDS);
    assertThat(grounds.get(0).holes()).hasSize(1);
    assertThat(grounds.get(0).holes().get(0).counterClockwise()).isFalse();
    assertThat(grounds.get(1).holes()).isEmpty();
  }

  @Test
  void layersSwitchedOffAndPaperSpaceAreNotLikely() throws Exception {
    Dxf dxf = Dxf.drawing().section("TABLES").tags(0, "LAYER", 2, "Old", 70, 0, 62, -7).end();
    dxf.section("ENTITIES").closed("Old", 0, 0, 0, 900, 0, 0, 900, 900, 0);
    dxf.closed("New", 0, 0, 0, 300, 0, 0, 300, 300, 0)
        .tags(0, "LINE", 8, "P", 67, 1, 10, 0, 20, 0, 11, 9, 21, 9);
    CadDrawing drawing = CadDrawing.read(dxf.end().bytes());
    assertThat(drawing.likelyLayers()).containsExactly("New");
    assertThat(drawing.layers())
        .extracting(CadDrawing.LayerSummary::name)
        .containsExactly("New", "Old");
    assertThat(drawing.layers().get(1).hidden()).isTrue();
  }

  @Test
  void aSurveysCoordinatesAreMovedToTheOrigin() throws Exception {
    Dxf dxf = Dxf.drawing().header("$INSUNITS", 6).section("ENTITIES");
    dxf.closed(
        "W", 412000.25, 5.6e6, 0, 412010.25, 5.6e6, 0, 412010.25, 5600008, 0, 412000.25, 5600008,
        0);
    Traced traced = trace(dxf.end(), LengthUnit.MILLIMETRE);
    same(only(traced), Ring.of(0, 0, 10000, 0, 10000, 8000, 0, 8000));
    assertThat(traced.notes()).anyMatch(n -> n.message().contains("far from its origin"));
  }

  @Test
  void lettersOfOldCodePagesAndCodedOnesAreRead() throws Exception {
    String text =
        new String(
            Dxf.drawing()
                .section("HEADER")
                .tags(9, "$DWGCODEPAGE", 3, "ANSI_1252")
                .end()
                .section("ENTITIES")
                .closed("Wände", 0, 0, 0, 300, 0, 0, 300, 300, 0)
                .closed("W\\U+00E4", 0, 0, 0, 300, 0, 0, 300, 300, 0)
                .end()
                .bytes(),
            StandardCharsets.UTF_8);
    CadDrawing drawing = CadDrawing.read(text.getBytes(Charset.forName("windows-1252")));
    assertThat(drawing.layers())
        .extracting(CadDrawing.LayerSummary::name)
        .containsExactlyInAnyOrder("Wände", "Wä");
  }

  private static TracingException refused(byte[] bytes) {
    TracingException e = catchThrowableOfType(TracingException.class, () -> CadDrawing.read(bytes));
    assertThat(e).isNotNull();
    return e;
  }

  private static TracingException refused(String text) {
    return refused(text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void whatCannotBeReadIsRefusedWithItsLine() {
    assertThat(refused("{ \"format\": 1 }")).hasMessageContaining("not a DXF drawing");
    assertThat(refused("")).hasMessageContaining("not a DXF drawing");
    assertThat(refused("AC1032\0\0\0")).hasMessageContaining("Save the drawing as DXF");
    assertThat(refused("AutoCAD Binary DXF\r\n\u001a\0")).hasMessageContaining("text DXF");
    TracingException number =
        refused(inches().tags(0, "LINE", 8, "W", 10, "east", 20, 1, 11, 2, 21, 3).end().bytes());
    assertThat(number)
        .hasMessage("line 20: \"east\" should be a number. Save the drawing as DXF once more.");
    assertThat(number.line()).isEqualTo(20);
    assertThat(refused(inches().tags(0, "CIRCLE", 8, "W", 10, 1, 20, 1).end().bytes()))
        .hasMessageContaining("CIRCLE has no value under group code 40");
    assertThat(refused(inches().line("W", 0, 0, 1, 1).cutShort()))
        .hasMessageContaining("too early");
    assertThat(refused(inches().line("W", 0, 0, 1e13, 1).end().bytes()))
        .hasMessageContaining("too far away");
  }

  @Test
  void blocksInsideThemselvesAreRefused() {
    Dxf loop = inches().tags(0, "INSERT", 8, "W", 2, "A", 10, 0, 20, 0).end().section("BLOCKS");
    loop.tags(0, "BLOCK", 2, "A")
        .tags(0, "INSERT", 8, "W", 2, "A", 10, 0, 20, 0)
        .tags(0, "ENDBLK")
        .end();
    assertThat(refused(loop.bytes())).hasMessageContaining("without end");
    Dxf bomb =
        inches()
            .tags(0, "INSERT", 2, "B", 10, 0, 20, 0, 70, 32000, 71, 32000)
            .end()
            .section("BLOCKS");
    bomb.tags(0, "BLOCK", 2, "B").tags(0, "ENDBLK").end();
    assertThat(refused(bomb.bytes())).hasMessageContaining("repeated too often");
  }
}
