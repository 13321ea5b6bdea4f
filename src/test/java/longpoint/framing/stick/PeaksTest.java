package longpoint.framing.stick;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import longpoint.framing.FramingSet;
import longpoint.pipeline.Pipeline;
import longpoint.planfile.PlanFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Hips that meet, from a plan file to the list. Griffith, Carpentry (1916), art. 37: over an
 * octagon the first pair is cut to the whole diagonal with plain cuts, the second loses the
 * thickness of the first, the third and fourth the diagonal thickness of those set before and get
 * double side cuts. He tells it of pairs, one rafter loses half.
 */
class PeaksTest {
  private static final double T = 1.5;

  /** Regular polygon of walls with rafters all round, an even number of sides or not. */
  static String polygon(int sides, double radius, double rise, String frame) {
    StringBuilder outline = new StringBuilder();
    StringBuilder edges = new StringBuilder();
    for (int k = 0; k < sides; k++) {
      double turn = Math.PI / sides + k * 2 * Math.PI / sides;
      outline.append(
          String.format(
              Locale.ROOT,
              "%s[%.9f,%.9f]",
              k == 0 ? "" : ",",
              radius * Math.cos(turn),
              radius * Math.sin(turn)));
      edges
          .append(k == 0 ? "" : ",")
          .append("{\"kind\":\"eave\",\"slope\":\"" + rise + "/12\",\"heel\":5}");
    }
    return plan("\"outline\":[" + outline + "],\"edges\":[" + edges + "]", frame);
  }

  static String plan(String shape, String frame) {
    return "{\"format\":\"longpoint-plan\",\"version\":1,\"unit\":\"in\",\"parts\":[{\"id\":\"bay\","
        + "\"plateHeight\":96,\"frame\":{\"method\":\"rafter\","
        + frame
        + "\"thickness\":"
        + T
        + "},"
        + shape
        + "}]}";
  }

  static FramingSet solve(String plan) throws Exception {
    return Pipeline.solve(PlanFile.read(plan.getBytes("UTF-8")).plan()).framing();
  }

  static List<Rafter> of(FramingSet set, RafterKind kind) {
    return set.rafters().stream()
        .filter(r -> r.kind() == kind)
        .sorted(Comparator.comparingInt(r -> r.head().order()))
        .toList();
  }

  @Test
  void hipsOfAnOctagonComeOffByTheOrderTheyAreSetIn() throws Exception {
    List<Rafter> hips = of(solve(polygon(8, 65, 10, "")), RafterKind.HIP);
    assertThat(hips).extracting(Rafter::quantity).containsExactly(2, 2, 2, 2);
    assertThat(hips).extracting(r -> r.head().order()).containsExactly(1, 2, 3, 4);
    assertThat(hips)
        .extracting(Rafter::shortenHead)
        .usingComparatorForType(near(), Double.class)
        .containsExactly(0.0, T / 2, T * Math.sqrt(2) / 2, T * Math.sqrt(2) / 2);
    assertThat(hips.get(0).head().sideCut()).isEqualTo(90, within(1e-9));
    assertThat(hips.get(1).head().sideCut()).isEqualTo(90, within(1e-9));
    for (Rafter hip : hips.subList(2, 4)) {
      assertThat(hip.head().isDouble()).isTrue();
      assertThat(hip.head().left().planAngle()).isEqualTo(45, within(1e-6));
      assertThat(hip.head().right().planAngle()).isEqualTo(45, within(1e-6));
      assertThat(hip.head().point()).isEqualTo(0, within(1e-6));
      assertThat(hip.head().left().reach()).isEqualTo(-T / 2, within(1e-6));
    }
    // Griffith art. 38: 13 (12.99) and 10 for seat and plumb cut; every length along that.
    double slope = 10 / 12.988706;
    double line = 65 * Math.hypot(1, slope);
    assertThat(hips.get(0).lineLength()).isEqualTo(line, within(1e-3));
    assertThat(hips.get(2).length() - hips.get(2).tail())
        .isEqualTo(line - T * Math.sqrt(0.5) * Math.hypot(1, slope), within(1e-3));
  }

  /** Griffith art. 37: with a post the width of its square, as for a ridge: half off each. */
  @ParameterizedTest
  @ValueSource(ints = {3, 4, 5, 6, 8, 12})
  void aPostTakesHalfItsWidthOffEachHip(int sides) throws Exception {
    List<Rafter> hips = of(solve(polygon(sides, 90, 8, "\"post\":8,")), RafterKind.HIP);
    assertThat(hips).hasSize(1);
    assertThat(hips.get(0).quantity()).isEqualTo(sides);
    assertThat(hips.get(0).shortenHead()).isEqualTo(4);
    assertThat(hips.get(0).head().on()).isEqualTo(Bearing.POST);
  }

  /** Four hips over a square: one pair end to end, the other against its sides. */
  @Test
  void pyramid() throws Exception {
    List<Rafter> hips = of(solve(polygon(4, 85, 8, "")), RafterKind.HIP);
    assertThat(hips).extracting(Rafter::quantity).containsExactly(2, 2);
    assertThat(hips.get(0).shortenHead()).isEqualTo(0, within(1e-9));
    assertThat(hips.get(1).shortenHead()).isEqualTo(T / 2, within(1e-6));
  }

  /** Where no two stand opposite all are mitred at half the angle between them, whole length. */
  @ParameterizedTest
  @ValueSource(ints = {3, 5, 7, 9})
  void oddNumbersAreMitred(int sides) throws Exception {
    List<Rafter> hips = of(solve(polygon(sides, 120, 9, "")), RafterKind.HIP);
    assertThat(hips).hasSize(1);
    Rafter hip = hips.get(0);
    assertThat(hip.quantity()).isEqualTo(sides);
    assertThat(hip.shortenHead()).isEqualTo(0, within(1e-6));
    assertThat(hip.head().on()).isEqualTo(Bearing.MITRED);
    assertThat(hip.head().left().planAngle()).isEqualTo(180.0 / sides, within(1e-5));
    assertThat(hip.head().right().planAngle()).isEqualTo(180.0 / sides, within(1e-5));
  }

  /** No two hips have wood in one place, and each touches what was set before it. */
  @ParameterizedTest
  @ValueSource(ints = {3, 4, 5, 6, 7, 8, 10, 12, 16})
  void woodMeetsAndDoesNotPass(int sides) throws Exception {
    FramingSet set = solve(polygon(sides, 200, 7, ""));
    PlanWood.check(of(set, RafterKind.HIP));
  }

  private static Comparator<Double> near() {
    return (a, b) -> Math.abs(a - b) < 1e-6 ? 0 : Double.compare(a, b);
  }
}
