package longpoint.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import org.junit.jupiter.api.Test;

/** Moving, turning and mirroring, against plane geometry worked by hand. */
class MotionTest {
  private static final Part ELL =
      new Part(
          "main",
          "House",
          false,
          Ring.of(0, 0, 400, 0, 400, 100, 200, 100, 200, 300, 0, 300),
          List.of(Ring.of(20, 20, 20, 60, 60, 60)),
          97.125,
          IntStream.range(1, 10).mapToObj(i -> Edge.eave(Slope.inTwelve(i))).toList(),
          Frame.of(LengthUnit.INCH),
          Deck.of(LengthUnit.INCH),
          Extras.NONE);

  @Test
  void aShiftKeepsEverythingButThePlace() {
    Part moved = Motion.shift(new Point(12.5, -3)).on(ELL);
    assertThat(moved.outline().corner(3)).isEqualTo(new Point(212.5, 97));
    assertThat(moved.edges()).isEqualTo(ELL.edges());
    assertThat(Motion.shift(new Point(-12.5, 3)).on(moved)).isEqualTo(ELL);
  }

  @Test
  void quarterTurnsAreExact() {
    Motion quarter = Motion.turn(new Point(400, 0), 90);
    assertThat(quarter.on(new Point(0, 0))).isEqualTo(new Point(400, -400));
    Part turned = ELL;
    for (int i = 0; i < 4; i++) {
      turned = quarter.on(turned);
    }
    assertThat(turned).isEqualTo(ELL);
  }

  @Test
  void aTurnOfThirtyDegreesIsCounterClockwise() {
    Point p = Motion.turn(new Point(0, 0), 30).on(new Point(2, 0));
    assertThat(p.x()).isCloseTo(Math.sqrt(3), within(1e-12));
    assertThat(p.y()).isCloseTo(1, within(1e-12));
  }

  @Test
  void aMirrorImageKeepsTheHouseTurnAndEachSidesEdge() {
    Motion mirror = Motion.mirror(new Segment(new Point(0, 0), new Point(0, 1)));
    Part image = mirror.on(ELL);
    assertThat(image.outline().counterClockwise()).isTrue();
    assertThat(image.holes().get(0).counterClockwise()).isFalse();
    assertThat(image.deck().start()).isEqualTo(Deck.Start.RIGHT);
    for (int i = 0; i < ELL.sideCount(); i++) {
      Segment side = ELL.side(i);
      Segment expected = new Segment(mirror.on(side.to()), mirror.on(side.from()));
      Edge edge = ELL.edges().get(i);
      assertThat(IntStream.range(0, image.sideCount()))
          .anyMatch(k -> image.side(k).equals(expected) && image.edges().get(k).equals(edge));
    }
    assertThat(mirror.on(image)).isEqualTo(ELL);
  }
}
