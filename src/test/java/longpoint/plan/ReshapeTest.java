package longpoint.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.Reshape.End;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import org.junit.jupiter.api.Test;

/** Edits of walls, against plane geometry worked by hand. */
class ReshapeTest {
  /** 480 by 336, sides numbered from the south one; each edge told apart by its slope. */
  private static final Part HOUSE = part(Ring.of(0, 0, 480, 0, 480, 336, 0, 336));

  /** An L: the notch is at the north-east. */
  private static final Part ELL = part(Ring.of(0, 0, 400, 0, 400, 100, 200, 100, 200, 300, 0, 300));

  private static Part part(Ring outline) {
    List<Edge> edges =
        Stream.iterate(1, i -> i + 1)
            .limit(outline.size())
            .map(i -> Edge.eave(Slope.inTwelve(i)))
            .toList();
    LengthUnit unit = LengthUnit.INCH;
    return new Part(
        "main",
        "House",
        false,
        outline,
        List.of(),
        97.125,
        edges,
        Frame.of(unit),
        Deck.of(unit),
        Extras.NONE);
  }

  private static void check(Optional<Part> changed, Ring outline, int... slopes) {
    assertThat(changed).isPresent();
    assertThat(changed.get().outline()).isEqualTo(outline);
    assertThat(slopes(changed.get())).containsExactly(slopes);
  }

  /** The rise in twelve of each edge; 0 for one made anew. */
  private static int[] slopes(Part part) {
    return part.edges().stream()
        .mapToInt(e -> (int) Math.round(e.slope().map(Slope::ratio).orElse(0.0) * 12))
        .toArray();
  }

  @Test
  void aCornerMovesAlone() {
    check(
        Reshape.moveCorner(HOUSE, 2, new Point(500, 400)),
        Ring.of(0, 0, 480, 0, 500, 400, 0, 336),
        1,
        2,
        3,
        4);
  }

  @Test
  void aCornerOnItsNeighbourMakesTheSideBetweenVanish() {
    check(Reshape.moveCorner(HOUSE, 2, new Point(480, 0)), Ring.of(0, 0, 480, 0, 0, 336), 1, 3, 4);
  }

  @Test
  void aCornerMayNotTurnTheOutlineInsideOut() {
    assertThat(Reshape.moveCorner(part(Ring.of(0, 0, 9, 0, 0, 9)), 2, new Point(0, -9))).isEmpty();
  }

  @Test
  void aSideMovesParallelAndItsNeighboursStretch() {
    check(
        Reshape.moveSide(HOUSE, 1, 24.5), Ring.of(0, 0, 504.5, 0, 504.5, 336, 0, 336), 1, 2, 3, 4);
    check(
        Reshape.moveSide(HOUSE, 0, -36.25),
        Ring.of(0, 36.25, 480, 36.25, 480, 336, 0, 336),
        1,
        2,
        3,
        4);
  }

  @Test
  void neighboursOutOfSquareKeepTheirDirection() {
    // A right triangle 300 by 400: moving the 300 base out by 40 scales it by 440/400.
    Part triangle = part(Ring.of(0, 0, 300, 0, 0, 400));
    Ring moved = Reshape.moveSide(triangle, 0, 40).orElseThrow().outline();
    assertThat(moved.corner(0)).isEqualTo(new Point(0, -40));
    assertThat(moved.corner(1).x()).isCloseTo(330, within(1e-9));
    assertThat(moved.corner(1).y()).isCloseTo(-40, within(1e-9));
  }

  @Test
  void aSideMovedPastTheFarWallIsRefused() {
    assertThat(Reshape.moveSide(HOUSE, 1, -480)).isEmpty();
    assertThat(Reshape.moveSide(HOUSE, 1, -500)).isEmpty();
  }

  @Test
  void aJogPushedFlushLosesItsReturn() {
    // Side 3 of the L stands at x = 200; moved out by 200 it reaches the east wall.
    check(
        Reshape.moveSide(ELL, 3, 200),
        Ring.of(0, 0, 400, 0, 400, 100, 400, 300, 0, 300),
        1,
        2,
        4,
        5,
        6);
  }

  @Test
  void halfOfASplitSidePulledOutMakesAReturnWall() {
    Part split = Reshape.insertCorner(HOUSE, 0, new Point(200, 0)).orElseThrow();
    check(Optional.of(split), Ring.of(0, 0, 200, 0, 480, 0, 480, 336, 0, 336), 1, 1, 2, 3, 4);
    check(
        Reshape.moveSide(split, 1, 48),
        Ring.of(0, 0, 200, 0, 200, -48, 480, -48, 480, 336, 0, 336),
        1,
        0,
        1,
        2,
        3,
        4);
    check(
        Reshape.moveSide(split, 0, 48),
        Ring.of(0, -48, 200, -48, 200, 0, 480, 0, 480, 336, 0, 336),
        1,
        0,
        1,
        2,
        3,
        4);
  }

  @Test
  void aGableSteppedOutGetsGableReturns() {
    Part gabled = HOUSE.withEdge(1, Edge.of(EdgeKind.GABLE));
    Part split = Reshape.insertCorner(gabled, 1, new Point(480, 100)).orElseThrow();
    Part stepped = Reshape.moveSide(split, 2, 48).orElseThrow();
    assertThat(stepped.outline())
        .isEqualTo(Ring.of(0, 0, 480, 0, 480, 100, 528, 100, 528, 336, 0, 336));
    assertThat(stepped.edges().subList(1, 4)).extracting(Edge::kind).containsOnly(EdgeKind.GABLE);
  }

  @Test
  void aSideTakesALengthExactlyAndEitherEndGivesWay() {
    check(
        Reshape.sideLength(HOUSE, 0, 291.5, End.FINISH),
        Ring.of(0, 0, 291.5, 0, 291.5, 336, 0, 336),
        1,
        2,
        3,
        4);
    check(
        Reshape.sideLength(HOUSE, 0, 500, End.START),
        Ring.of(-20, 0, 480, 0, 480, 336, -20, 336),
        1,
        2,
        3,
        4);
    check(
        Reshape.sideLengthBothWays(HOUSE, 0, 500),
        Ring.of(-10, 0, 490, 0, 490, 336, -10, 336),
        1,
        2,
        3,
        4);
    assertThat(Reshape.sideLength(HOUSE, 0, 0, End.FINISH)).isEmpty();
    assertThat(Reshape.sideLengthBothWays(HOUSE, 0, -3)).isEmpty();
  }

  @Test
  void aLengthOnASplitSideMovesTheCornerBetweenTheHalves() {
    Part split = Reshape.insertCorner(HOUSE, 0, new Point(200, 0)).orElseThrow();
    check(
        Reshape.sideLength(split, 0, 144, End.FINISH),
        Ring.of(0, 0, 144, 0, 480, 0, 480, 336, 0, 336),
        1,
        1,
        2,
        3,
        4);
  }

  @Test
  void removingACornerUndoesInsertingIt() {
    Part split = Reshape.insertCorner(HOUSE, 3, new Point(0, 100)).orElseThrow();
    assertThat(Reshape.removeCorner(split, 4)).contains(HOUSE);
    assertThat(Reshape.removeCorner(part(Ring.of(0, 0, 9, 0, 0, 9)), 1)).isEmpty();
  }

  @Test
  void holesAreEditedByTheSameNumbers() {
    Ring court = Ring.of(100, 100, 200, 100, 200, 200, 100, 200);
    Part holed = Reshape.addHole(HOUSE, court, Edge.of(EdgeKind.EAVE));
    assertThat(holed.holes().get(0).counterClockwise()).isFalse();
    assertThat(holed.region().area()).isEqualTo(480 * 336 - 100 * 100);
    int side = 4;
    assertThat(Reshape.holeOf(holed, side)).contains(0);
    assertThat(Reshape.holeOf(holed, 3)).isEmpty();
    // Outward is out of the house, into the court: the court gets 30 narrower.
    Part moved = Reshape.moveSide(holed, side, 30).orElseThrow();
    assertThat(moved.region().area()).isEqualTo(480 * 336 - 100 * 70);
    Part three = Reshape.removeCorner(holed, side).orElseThrow();
    assertThat(three.holes().get(0).size()).isEqualTo(3);
    assertThat(Reshape.removeCorner(three, side)).contains(HOUSE);
    assertThat(Reshape.removeHole(holed, 0)).isEqualTo(HOUSE);
  }
}
