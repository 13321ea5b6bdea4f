package longpoint.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Plan;
import longpoint.planfile.Opened;
import longpoint.planfile.PlanFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PacketTest {
  private static final Path SAMPLE = Path.of("sample-plans/tolverby-cabin.json");

  @TempDir private Path folder;

  @Test
  void everySheetOpensAsThePlanItShows() throws Exception {
    Plan plan = PlanFile.read(SAMPLE).plan();
    Design design = Pipeline.solve(plan);
    List<Path> sheets =
        Packet.write(design, folder).stream().filter(f -> f.toString().endsWith(".svg")).toList();
    assertThat(sheets).hasSizeGreaterThan(5);
    for (Path sheet : sheets) {
      Opened opened = PlanFile.read(sheet);
      assertThat(opened.plan()).as(sheet.toString()).isEqualTo(plan);
      assertThat(opened.source()).isEqualTo(Opened.Source.SHEET);
      assertThat(opened.notes()).isEmpty();
    }
  }
}
