package longpoint.sheets.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import longpoint.framing.Framing;
import longpoint.framing.FramingSet;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussKind;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.plan.Deck;
import longpoint.plan.Defaults;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.surface.Roof;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The house in space, held to elementary solid geometry: the vector areas of a closed surface add
 * up to nothing, and its volume is that of a prism with a roof on it (divergence theorem).
 */
class RoofSolidTest {
  private static final double PLATE = 97.125;
  private static final double HEEL = 4.5;
  private static final Edge EAVE = Edge.eave(Slope.inTwelve(8)).withHeel(HEEL).withOverhang(0);
  private static final Edge GABLE = Edge.of(EdgeKind.GABLE).withOverhang(0);

  /** Rounding of sums over faces of some 10⁵ square inches. */
  private static final double CLOSED = 1e-2;

  private static Plan house(Ring outline, Edge... edges) {
    Defaults plain = Defaults.of(LengthUnit.INCH);
    Defaults bare =
        new Defaults(
            plain.slope(),
            plain.overhang(),
            plain.heel(),
            0,
            plain.ridgeBlockRelief(),
            plain.lookoutFirst(),
            plain.lookoutSpacing(),
            plain.extras());
    Part part =
        new Part(
            "main",
            "House",
            false,
            outline,
            List.of(),
            PLATE,
            List.of(edges),
            Frame.of(LengthUnit.INCH),
            Deck.of(LengthUnit.INCH),
            Extras.NONE);
    return Plan.empty(LengthUnit.INCH).withDefaults(bare).withPart(part);
  }

  private static Plan gabled() {
    return house(Ring.of(0, 0, 480, 0, 480, 336, 0, 336), EAVE, GABLE, EAVE, GABLE);
  }

  private static RoofSolid solid(Plan plan) {
    return RoofSolid.of(plan, Roof.solve(plan));
  }

  @Test
  void aGableWallComesToItsPointUnderTheRidgeAndAnEaveWallEndsAtTheHeel() {
    List<SolidFace> walls = faces(solid(gabled()), SolidFace.Kind.WALL);
    assertThat(walls)
        .extracting(SolidFace::subject)
        .containsExactly("main/0", "main/1", "main/2", "main/3");
    assertThat(top(walls.get(0))).isCloseTo(PLATE + HEEL, within(1e-6));
    // Half of 28 ft is 168 in; 8 in 12 rises 112 in over it.
    assertThat(top(walls.get(1))).isCloseTo(PLATE + HEEL + 112, within(1e-3));
    assertThat(walls.get(1).rings().get(0)).hasSize(5);
    // A rectangle with a triangle on it.
    assertThat(walls.get(1).area()).isCloseTo(336 * (PLATE + HEEL) + 336 * 112 / 2.0, within(0.1));
  }

  @Test
  void aShedsEndWallsClimbWithItsRoof() {
    Plan shed = house(Ring.of(0, 0, 240, 0, 240, 120, 0, 120), EAVE, GABLE, GABLE, GABLE);
    List<SolidFace> walls = faces(solid(shed), SolidFace.Kind.WALL);
    // 8 in 12 over 10 ft rises 80 in.
    assertThat(top(walls.get(2))).isCloseTo(PLATE + HEEL + 80, within(1e-3));
    assertThat(walls.get(1).area()).isCloseTo(120 * (PLATE + HEEL + 40), within(0.1));
  }

  static Stream<Plan> closedHouses() {
    Ring box = Ring.of(0, 0, 480, 0, 480, 336, 0, 336);
    Ring ell = Ring.of(0, 0, 480, 0, 480, 300, 240, 300, 240, 600, 0, 600);
    Edge steep = Edge.eave(Slope.inTwelve(12)).withHeel(HEEL).withOverhang(0);
    return Stream.of(
        gabled(),
        house(box, EAVE, EAVE, EAVE, EAVE),
        house(box, EAVE, steep, EAVE, GABLE),
        house(ell, EAVE, EAVE, EAVE, EAVE, EAVE, EAVE),
        house(ell, EAVE, GABLE, EAVE, EAVE, GABLE, EAVE),
        // A gable at the re-entrant corner leaves an upright piece of wall over the lower plane.
        house(ell, EAVE, GABLE, EAVE, GABLE, EAVE, GABLE));
  }

  @ParameterizedTest
  @MethodSource("closedHouses")
  void wallsAndRoofCloseWithoutGaps(Plan plan) {
    RoofSurface surface = Roof.solve(plan);
    RoofSolid solid = RoofSolid.of(plan, surface);
    List<SolidFace> outside = new ArrayList<>(faces(solid, SolidFace.Kind.ROOF));
    outside.addAll(faces(solid, SolidFace.Kind.WALL));
    double floor = plan.parts().get(0).region().area();
    double x = 0;
    double y = 0;
    double z = -floor;
    double volume = 0;
    for (SolidFace face : outside) {
      Point3 area = face.areaVector();
      Point3 on = face.rings().get(0).get(0);
      x += area.x();
      y += area.y();
      z += area.z();
      volume += (area.x() * on.x() + area.y() * on.y() + area.z() * on.z()) / 3;
    }
    assertThat(List.of(x, y, z)).allSatisfy(sum -> assertThat(sum).isCloseTo(0, within(CLOSED)));
    assertThat(volume / under(surface)).isCloseTo(1, within(1e-6));
  }

  /** Volume from the datum to the roof, plane by plane in triangles: area × mean height. */
  private static double under(RoofSurface surface) {
    double sum = 0;
    for (RoofPlane plane : surface.planes()) {
      for (Region region : plane.visible()) {
        Point o = region.shell().corner(0);
        for (int i = 1; i + 1 < region.shell().size(); i++) {
          Point a = region.shell().corner(i);
          Point b = region.shell().corner(i + 1);
          double heights =
              plane.plane().heightAt(o) + plane.plane().heightAt(a) + plane.plane().heightAt(b);
          sum += a.minus(o).cross(b.minus(o)) / 2 * heights / 3;
        }
      }
    }
    return sum;
  }

  static Stream<Path> samples() throws java.io.IOException {
    try (Stream<Path> files = Files.list(Path.of("sample-plans"))) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everyRoofFaceHasThePlanesTrueAreaAndEveryWallEndsAtTheRoof(Path sample) throws Exception {
    Plan plan = PlanFile.read(sample).plan();
    RoofSurface surface = Roof.solve(plan);
    RoofSolid solid = RoofSolid.of(plan, surface);
    for (RoofPlane plane : surface.planes()) {
      double area =
          faces(solid, SolidFace.Kind.ROOF).stream()
              .filter(f -> f.subject().equals(plane.id()))
              .mapToDouble(SolidFace::area)
              .sum();
      assertThat(area).as(plane.id()).isCloseTo(plane.area(), within(1e-6 * (1 + plane.area())));
    }
    // Every wall point above the datum lies on a plane of its own part, or at the plate.
    for (SolidFace wall : faces(solid, SolidFace.Kind.WALL)) {
      String part = wall.subject().substring(0, wall.subject().lastIndexOf('/'));
      double plate = plan.part(part).orElseThrow().plateHeight();
      for (Point3 p : wall.rings().get(0)) {
        double off =
            Stream.concat(
                    Stream.of(0.0, plate),
                    surface.planes().stream()
                        .filter(r -> r.part().equals(part))
                        .map(r -> r.plane().heightAt(p.plan())))
                .mapToDouble(z -> Math.abs(z - p.z()))
                .min()
                .orElseThrow();
        assertThat(off).as(wall.subject()).isLessThan(1e-6 * (1 + Math.abs(p.z())));
      }
    }
  }

  @Test
  void commonTrussesStandUnderTheRoofWithTheirPeakAtTheRidge() {
    Plan plan = gabled();
    RoofSurface surface = Roof.solve(plan);
    FramingSet framing = Framing.solve(plan, surface);
    List<SolidEdge> chords =
        RoofSolid.of(plan, surface).with(framing, surface).edges().stream()
            .filter(e -> e.kind() == SolidEdge.Kind.CHORD)
            .toList();
    List<String> commons =
        framing.trusses().stream()
            .filter(t -> t.kind() == TrussKind.COMMON)
            .map(Truss::id)
            .toList();
    assertThat(commons).hasSizeGreaterThan(10);
    for (String id : commons) {
      double high =
          chords.stream()
              .filter(e -> e.subject().equals(id))
              .flatMap(e -> Stream.of(e.from(), e.to()))
              .mapToDouble(Point3::z)
              .max()
              .orElseThrow();
      assertThat(high).isCloseTo(PLATE + HEEL + 112, within(1e-6));
    }
    for (SolidEdge chord : chords) {
      for (Point3 p : List.of(chord.from(), chord.to())) {
        double roof =
            surface.planes().stream()
                .mapToDouble(r -> r.plane().heightAt(p.plan()))
                .min()
                .orElseThrow();
        assertThat(p.z()).as(chord.subject()).isBetween(PLATE - 1e-6, roof + 1e-6);
      }
    }
  }

  private static List<SolidFace> faces(RoofSolid solid, SolidFace.Kind... kinds) {
    return solid.faces().stream().filter(f -> Arrays.asList(kinds).contains(f.kind())).toList();
  }

  private static double top(SolidFace wall) {
    return wall.rings().get(0).stream().mapToDouble(Point3::z).max().orElseThrow();
  }
}
