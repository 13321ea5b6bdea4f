package longpoint.framing.stick;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longpoint.pipeline.Pipeline;
import longpoint.planfile.PlanFile;
import org.junit.jupiter.api.Test;

/**
 * Hips over an octagon come off by the order they are set in: Griffith, Carpentry (1916), art. 37.
 */
class PeaksTest {
  @Test
  void hipsOverAnOctagonAreSaidToRunToTheMiddle() throws Exception {
    assertThat(said(octagon(0, 0))).hasSize(1).allSatisfy(s -> assertThat(s).startsWith("8 hips"));
    assertThat(said(octagon(1e6, -1e6))).hasSize(1);
  }

  @Test
  void hipsAtTheEndsOfARidgeAreNot() throws Exception {
    assertThat(said("[[0,0],[240,0],[240,120],[0,120]]")).isEmpty();
  }

  private static List<String> said(String outline) throws Exception {
    String plan =
        "{\"format\":\"longpoint-plan\",\"version\":1,\"unit\":\"in\",\"parts\":[{\"id\":\"bay\","
            + "\"plateHeight\":96,\"frame\":{\"method\":\"rafter\"},\"outline\":"
            + outline
            + "}]}";
    return Pipeline.solve(PlanFile.read(plan.getBytes("UTF-8")).plan()).problems().stream()
        .map(p -> p.message())
        .filter(m -> m.contains("meet in one point"))
        .toList();
  }

  private static String octagon(double x, double y) {
    StringBuilder text = new StringBuilder("[");
    for (int k = 0; k < 8; k++) {
      double turn = Math.PI / 8 + k * Math.PI / 4;
      text.append(k == 0 ? "" : ",")
          .append("[" + (x + 65 * Math.cos(turn)) + "," + (y + 65 * Math.sin(turn)) + "]");
    }
    return text.append("]").toString();
  }
}
