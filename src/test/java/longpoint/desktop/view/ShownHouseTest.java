package longpoint.desktop.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import longpoint.desktop.solid.SolidLayer;
import longpoint.framing.Houses;
import longpoint.geometry.Point3;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Join;
import longpoint.sheets.solid.RoofSolid;
import longpoint.sheets.solid.SolidFace;
import org.junit.jupiter.api.Test;

/** What is left of a house when parts of it are not to be seen. */
class ShownHouseTest {
  private static final Design DESIGN = Pipeline.solve(Houses.gardenWing(Join.Method.OVERLAY));

  private static RoofSolid without(String... parts) {
    return ShownHouse.of(DESIGN, Set.of(parts), Set.of(SolidLayer.values()));
  }

  /** Area in plan of the roof faces of a part. */
  private static double area(RoofSolid house, String part) {
    return house.faces().stream()
        .filter(f -> f.kind() == SolidFace.Kind.ROOF && f.subject().startsWith(part + "/"))
        .mapToDouble(f -> f.rings().stream().mapToDouble(ShownHouseTest::area).sum())
        .sum();
  }

  /** Holes run the other way round, and count against the shell. */
  private static double area(List<Point3> ring) {
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      Point3 a = ring.get(i);
      Point3 b = ring.get((i + 1) % ring.size());
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return twice / 2;
  }

  @Test
  void underAHiddenWingTheRoofGoesOn() {
    Design alone = Pipeline.solve(DESIGN.plan().withoutPart("wing"));
    RoofSolid main = RoofSolid.of(alone.plan(), alone.surface());
    assertThat(area(without("wing"), "main")).isCloseTo(area(main, "main"), within(1e-6));
    assertThat(area(without(), "main")).isLessThan(area(main, "main") - 1);
    assertThat(area(without("wing"), "wing")).isZero();
  }

  @Test
  void whatLiesOverAHiddenRoofStaysAsItIs() {
    assertThat(area(without("main"), "wing")).isEqualTo(area(without(), "wing"));
    assertThat(area(without("main"), "main")).isZero();
  }

  @Test
  void framesAndSheetsOfHiddenPartsGoToo() {
    Set<String> wing = Set.of("wing");
    DESIGN.framing().trusses().stream()
        .filter(t -> wing.contains(t.part()))
        .forEach(
            t -> assertThat(without("wing").edges()).noneMatch(e -> e.subject().equals(t.id())));
    assertThat(without("wing").edges())
        .anyMatch(e -> e.subject().startsWith("main:"))
        .noneMatch(e -> e.subject().equals("rake:wing/0"));
  }
}
