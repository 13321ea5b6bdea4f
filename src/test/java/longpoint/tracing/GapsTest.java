package longpoint.tracing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.Set;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;

/** Lines that would close an outline if they met. */
class GapsTest {
  /** A house with a wing; corners a yard or more apart. */
  private static final Ring HOUSE =
      Ring.of(0, 0, 480, 0, 480, 288, 360, 288, 360, 420, 144, 420, 144, 288, 0, 288);

  private static Traced trace(Dxf dxf, Traced.Gaps gaps) throws Exception {
    return CadDrawing.read(dxf.bytes())
        .trace(Set.of("A-WALL"), DrawingUnit.INCH, LengthUnit.INCH, gaps);
  }

  /** The house's walls, each broken in its middle by a door if it is to have one. */
  private static Dxf walls(Set<Integer> doors, double width) {
    Dxf dxf = Dxf.drawing().header("$INSUNITS", 1).section("ENTITIES");
    for (int i = 0; i < HOUSE.size(); i++) {
      Point a = HOUSE.corner(i);
      Point b = HOUSE.corner(i + 1);
      if (doors.contains(i)) {
        Point half = b.minus(a).unit().times(width / 2);
        Point middle = a.toward(b, 0.5);
        line(dxf, a, middle.minus(half));
        line(dxf, middle.plus(half), b);
      } else {
        line(dxf, a, b);
      }
    }
    return dxf;
  }

  private static void line(Dxf dxf, Point a, Point b) {
    dxf.line("A-WALL", a.x(), a.y(), b.x(), b.y());
  }

  @Test
  void doorsLeftOutOfTheWallsAreFoundAndClosedStraightAcross() throws Exception {
    Random random = new Random(11);
    for (int round = 0; round < 40; round++) {
      Set<Integer> doors =
          Set.copyOf(random.ints(1 + round % 4, 0, HOUSE.size()).boxed().distinct().toList());
      double width = 4 + random.nextInt(44);
      Traced open = trace(walls(doors, width).end(), Traced.Gaps.LEFT_OPEN);
      assertThat(open.outlines()).isEmpty();
      assertThat(open.gaps()).hasSize(doors.size());
      assertThat(open.gaps()).allSatisfy(g -> assertThat(g.width()).isCloseTo(width, within(1e-6)));
      assertThat(open.notes()).hasSize(doors.size());
      Traced closed = trace(walls(doors, width).end(), Traced.Gaps.CLOSED);
      assertThat(closed.outlines()).hasSize(1);
      assertThat(closed.outlines().get(0).ring().points())
          .containsExactlyInAnyOrderElementsOf(HOUSE.points());
      assertThat(closed.notes()).hasSize(doors.size());
    }
  }

  @Test
  void aGarageDoorOfOneChainIsAGapHoweverWide() throws Exception {
    Traced open = trace(walls(Set.of(0), 192).end(), Traced.Gaps.LEFT_OPEN);
    assertThat(open.gaps()).hasSize(1);
    assertThat(open.gaps().get(0).width()).isEqualTo(192);
    Traced closed = trace(walls(Set.of(0), 192).end(), Traced.Gaps.CLOSED);
    assertThat(closed.outlines().get(0).ring().area()).isEqualTo(HOUSE.area());
  }

  @Test
  void linesThatWouldCloseNothingAreNoGaps() throws Exception {
    Dxf dxf = walls(Set.of(), 0);
    dxf.line("A-WALL", 600, 0, 700, 0).line("A-WALL", 710, 0, 710, 90);
    dxf.line("A-WALL", 480, 100, 520, 100);
    Traced traced = trace(dxf.end(), Traced.Gaps.LEFT_OPEN);
    assertThat(traced.gaps()).isEmpty();
    assertThat(traced.outlines()).hasSize(1);
  }

  @Test
  void theLayerOfWallsThatAreNotClosedIsStillTheLikelyOne() throws Exception {
    CadDrawing drawing = CadDrawing.read(walls(Set.of(1), 30).end().bytes());
    assertThat(drawing.likelyLayers()).containsExactly("A-WALL");
    assertThat(List.copyOf(trace(walls(Set.of(1), 30).end(), Traced.Gaps.LEFT_OPEN).lines()))
        .hasSize(HOUSE.size() + 1);
  }
}
