package longpoint.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import longpoint.geometry.Jts;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.plan.Edge;
import longpoint.plan.Part;
import longpoint.plan.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Made-up houses against laws, and against the offsets of an independent library. */
@Execution(ExecutionMode.CONCURRENT)
class RandomRoofTest {
  private static final int HOUSES = 240;

  /** Every roof obeys the laws; now and then the sweep gives a part up and says so. */
  @Test
  void roofsObeyTheLaws() {
    int given = 0;
    for (long seed = 1; seed <= HOUSES; seed++) {
      RoofSurface roof = Roof.solve(RandomRun.plan(seed));
      RoofLaws.check(roof);
      given += roof.problems().stream().anyMatch(RandomRoofTest::givesUp) ? 1 : 0;
    }
    assertThat(given).isLessThanOrEqualTo(HOUSES / 50);
  }

  private static boolean givesUp(Problem problem) {
    return problem.level() == Problem.Level.ERROR && problem.message().contains("worked out");
  }

  /**
   * Equal slopes all round: the ground above a height is the outline moved in by height ÷ slope,
   * and the roof's edge is the outline moved out, both worked out by the JTS library's mitred
   * buffer.
   */
  @Test
  void levelsAreTheOutlineMovedIn() {
    int looked = 0;
    for (long seed = 1; seed <= 60; seed++) {
      Part drawn = new RandomPlans(seed).house("h");
      Edge[] edges = new Edge[drawn.sideCount()];
      Arrays.fill(edges, Plans.eave(8));
      Part part = drawn.withShape(drawn.outline(), drawn.holes(), List.of(edges));
      RoofSurface roof = Roof.solve(Plans.plan(part));
      Geometry walls = Jts.polygon(part.region());
      if (!roof.problems().isEmpty()) {
        continue;
      }
      looked++;
      for (double in : new double[] {-17.5, -10, 0, 25, 45, 70, 110}) {
        double level = 97 + 4.5 + in * 8 / 12;
        double above = 0;
        for (RoofPlane plane : roof.planes()) {
          above += areaAbove(plane, level);
        }
        assertThat(above)
            .describedAs("seed " + seed + ", " + in + " in")
            .isCloseTo(offset(walls, -in).getArea(), within(1e-4));
      }
    }
    // The others have overhangs that run into each other in a notch or a courtyard.
    assertThat(looked).isGreaterThan(50);
  }

  private static Geometry offset(Geometry walls, double out) {
    BufferParameters square =
        new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 100);
    square.setSimplifyFactor(0);
    return out == 0 ? walls : BufferOp.bufferOp(walls, out, square);
  }

  private static double areaAbove(RoofPlane plane, double level) {
    double area = 0;
    for (Region region : plane.visible()) {
      Geometry above =
          OverlayNGRobust.overlay(
              Jts.polygon(region), above(plane.plane(), level), OverlayNG.INTERSECTION);
      area += above.getArea();
    }
    return area;
  }

  /** The half of a large square in which a plane lies above a height. */
  private static Polygon above(Plane plane, double level) {
    Point up = new Point(plane.a(), plane.b());
    double slope = up.length();
    Point on = up.times((level - plane.c()) / (slope * slope));
    Point far = up.unit().times(10_000);
    Point along = far.left();
    return Jts.polygon(
        new Ring(
            List.of(
                on.plus(along),
                on.minus(along),
                on.minus(along).plus(far),
                on.plus(along).plus(far))));
  }
}
