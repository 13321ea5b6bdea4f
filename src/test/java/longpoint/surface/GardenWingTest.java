package longpoint.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longpoint.geometry.Point3;
import longpoint.plan.Problem;
import org.junit.jupiter.api.Test;

/**
 * The garden wing: a 480 × 336 house at 8 in 12 and a 144 wide wing at 10 in 12, equal plates and
 * heels, worked by hand.
 *
 * <p>Measured from the plate's top + heel, the main plane stands at 8/12·y and the wing's at
 * 10/12·d, d from the wing's wall inward, so they meet where y = 1.25·d. The wing's ridge lies at d
 * = 72, so the valleys end at y = 90; the main fascia lies at y = −17.5, so they start at d = −14.
 */
class GardenWingTest {
  private final RoofSurface roof = Roof.solve(Plans.gardenWing());

  @Test
  void notesTheStepBetweenTheFasciasAndHowToLevelIt() {
    assertThat(roof.problems())
        .extracting(Problem::level, Problem::where)
        .containsExactly(tuple(Problem.Level.NOTE, "wing/1"), tuple(Problem.Level.NOTE, "wing/3"));
    // 17.5 out at 8 in 12 and at 10 in 12: 11.667 and 14.583 down, 2.917 apart. Level at 11.667 ÷
    // (10/12) = 14 out, 12.5 to the tail; or with the heel raised to 7.417.
    Problem first = roof.problems().get(0);
    assertThat(first.message()).contains("2 15/16\" lower");
    assertThat(first.cure()).contains("1'-0 1/2\"").contains("7 7/16\"");
  }

  @Test
  void valleysRunFromTheMainFasciaToTheEndOfTheWingRidge() {
    double top = 97.125 + 4.5 + 60;
    double foot = 97.125 + 4.5 - 17.5 * 8 / 12;
    check("valley:main/0+wing/3", new Point3(154, -17.5, foot), new Point3(240, 90, top));
    check("valley:main/0+wing/1", new Point3(326, -17.5, foot), new Point3(240, 90, top));
    check("ridge:wing/1+wing/3", new Point3(240, -156, top), new Point3(240, 90, top));
    // √(86² + 107.5² + (89.958 − 161.625)²)
    assertThat(line("valley:main/0+wing/3").length()).isCloseTo(155.2043, within(1e-4));
  }

  @Test
  void theHouseIsBuiltWholeBeneathTheWing() {
    RoofPlane front = roof.plane("main/0").orElseThrow();
    double plane = 504 * 185.5;
    double under = 172 * 107.5 / 2;
    // The wing reaches 14 in past its walls on each side at the fascia: a triangle 172 wide.
    assertThat(front.planArea()).isCloseTo(plane - under, within(1e-6));
    double covered = front.covered().stream().mapToDouble(r -> r.area()).sum();
    assertThat(covered).isCloseTo(under, within(1e-6));
  }

  @Test
  void linesEndOnCornersOfBothPlanes() {
    for (RoofLine line : roof.lines()) {
      for (String id : line.planes()) {
        List<Point3> corners =
            roof.plane(id).orElseThrow().visible().stream()
                .flatMap(r -> r.shell().points().stream())
                .map(p -> p.at(0))
                .toList();
        assertThat(corners).contains(line.from().plan().at(0), line.to().plan().at(0));
      }
    }
  }

  private RoofLine line(String id) {
    return roof.lines().stream().filter(l -> l.id().equals(id)).findFirst().orElseThrow();
  }

  private void check(String id, Point3 from, Point3 to) {
    assertThat(line(id).from().distance(from)).isLessThan(1e-9);
    assertThat(line(id).to().distance(to)).isLessThan(1e-9);
  }
}
