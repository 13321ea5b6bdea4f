package longpoint.surface;

import static longpoint.surface.Plans.GABLE;
import static longpoint.surface.Plans.bare;
import static longpoint.surface.Plans.eave;
import static longpoint.surface.Plans.part;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import longpoint.geometry.Ring;
import longpoint.plan.Edge;
import longpoint.plan.InLine;
import longpoint.plan.Part;
import org.junit.jupiter.api.Test;

/**
 * A flat bump-out, 3 in 12, stands 60 before the middle of a wall that carries 6 in 12. By hand: (y
 * + 60) ÷ 4 = y ÷ 2 at y = 60, 30 up; there one of the two planes goes on over both walls.
 */
class InLineTest {
  @Test
  void theLongerWallGoesOn() {
    RoofSurface roof = solve(eave(3), eave(6));
    // y ÷ 2 = (240 − y) ÷ 2
    ridgeAt(roof, 120, 60);
    assertThat(ground(roof, "h/2")).isCloseTo(120 * 120, within(1e-6));
    assertThat(level(roof)).isCloseTo(120, within(1e-9));
  }

  @Test
  void theBumpOutGoesOnWhereTheUserWantsIt() {
    theBumpOutGoesOn(solve(eave(3).withInLine(Optional.of(InLine.GOES_ON)), eave(6)));
  }

  @Test
  void theMainWallGivesWayWhereTheUserWantsIt() {
    theBumpOutGoesOn(solve(eave(3), eave(6).withInLine(Optional.of(InLine.GIVES_WAY))));
  }

  /** (y + 60) ÷ 4 = (240 − y) ÷ 2 at y = 140, 50 up. */
  private static void theBumpOutGoesOn(RoofSurface roof) {
    ridgeAt(roof, 140, 50);
    assertThat(ground(roof, "h/2")).isCloseTo(120 * 120 + 480 * 80, within(1e-6));
    assertThat(level(roof)).isCloseTo(360, within(1e-9));
  }

  @Test
  void whereBothAreToGoOnTheRuleDecides() {
    Optional<InLine> on = Optional.of(InLine.GOES_ON);
    ridgeAt(solve(eave(3).withInLine(on), eave(6).withInLine(on)), 120, 60);
  }

  private static RoofSurface solve(Edge bumpOut, Edge front) {
    Ring outline = Ring.of(0, 0, 180, 0, 180, -60, 300, -60, 300, 0, 480, 0, 480, 240, 0, 240);
    Part house = part("h", 0, outline, front, GABLE, bumpOut, GABLE, front, GABLE, eave(6), GABLE);
    RoofSurface roof = Roof.solve(bare(house));
    RoofLaws.check(roof);
    return roof;
  }

  private static void ridgeAt(RoofSurface roof, double y, double z) {
    assertThat(roof.lines(LineKind.RIDGE))
        .isNotEmpty()
        .allSatisfy(r -> assertThat(r.from().y()).isCloseTo(y, within(1e-9)))
        .allSatisfy(r -> assertThat(r.from().z()).isCloseTo(z, within(1e-9)));
  }

  private static double ground(RoofSurface roof, String plane) {
    return roof.plane(plane).orElseThrow().visible().stream().mapToDouble(r -> r.area()).sum();
  }

  /** Length of the level line where the plane that gives way ends. */
  private static double level(RoofSurface roof) {
    return roof.lines(LineKind.BREAK).stream().mapToDouble(RoofLine::run).sum();
  }
}
