package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import longpoint.editor.tools.Tools;
import longpoint.plan.Plan;
import longpoint.tracing.Traced;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Walls out of a CAD drawing, in the real window. */
class TracingWindowTest {
  @TempDir Path folder;
  private WindowDriver window;

  @BeforeEach
  void open() {
    window = new WindowDriver(Plan.empty(LengthUnit.INCH));
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  /** A closed polyline on layer WALLS: 30 by 20 ft, in feet (INSUNITS 2, DXF reference). */
  private Path drawing(String name, boolean closed) throws Exception {
    List<String> tags = new java.util.ArrayList<>();
    tags.addAll(List.of("0", "SECTION", "2", "HEADER", "9", "$ACADVER", "1", "AC1015"));
    tags.addAll(List.of("9", "$INSUNITS", "70", "2", "0", "ENDSEC"));
    tags.addAll(List.of("0", "SECTION", "2", "ENTITIES", "0", "LWPOLYLINE", "8", "WALLS"));
    tags.addAll(List.of("90", closed ? "4" : "5", "70", closed ? "1" : "0"));
    // The last side of the open one stops half a foot short.
    String corners = closed ? "0 0;30 0;30 20;0 20" : "0 0;30 0;30 20;0 20;0 0.5";
    for (String xy : corners.split(";")) {
      tags.addAll(List.of("10", xy.split(" ")[0], "20", xy.split(" ")[1]));
    }
    tags.addAll(List.of("0", "ENDSEC", "0", "EOF"));
    return Files.write(folder.resolve(name), tags);
  }

  private void trace(Path drawing) {
    window.dialogs().drawing = Optional.of(drawing);
    window.menu("picture.walls");
  }

  /** For the event thread. */
  private int parts() {
    return window.window().job().document().plan().parts().size();
  }

  @Test
  void wallsComeInWithARoofAndAreMovedIntoPlace() throws Exception {
    trace(drawing("survey.dxf", true));
    WindowDriver.until("the walls are there", () -> parts() == 1);
    assertThat(window.plan().parts().get(0).outline().bounds().width()).isEqualTo(360);
    assertThat(window.plan().parts().get(0).outline().bounds().height()).isEqualTo(240);
    assertThat(window.design().surface().planes()).hasSize(4);
    // Once more beside a plan that has walls: picked, and the tool that moves them in hand.
    trace(drawing("survey.dxf", true));
    WindowDriver.until("more walls are there", () -> parts() == 2);
    assertThat(window.window().job().runner().tool()).isEqualTo(Tools.MOVE);
    String fresh = window.plan().parts().get(1).id();
    assertThat(window.window().job().document().selection().parts()).containsExactly(fresh);
    window.show(1, new longpoint.geometry.Point(240, 120));
    window.click(0, 0).move(100, 0).type("40'").enter();
    assertThat(window.plan().parts().get(1).outline().bounds().minX()).isEqualTo(480);
  }

  @Test
  void anOutlineLeftOpenIsRefusedWithThePlaceOfItsGap() throws Exception {
    window.dialogs().gaps = Optional.of(Traced.Gaps.LEFT_OPEN);
    trace(drawing("open.dxf", false));
    WindowDriver.until("the refusal is told", () -> !window.dialogs().told.isEmpty());
    assertThat(window.dialogs().told)
        .contains("open.dxf", "close the gaps")
        .contains("open by 0'-6\": between (0'-0\", 0'-0\") and (0'-0\", 0'-6\")");
    assertThat(window.plan().parts()).isEmpty();
  }

  @Test
  void anOutlineThatIsToBeClosedIsAndItsPlaceIsToldAfterwards() throws Exception {
    window.dialogs().gaps = Optional.of(Traced.Gaps.CLOSED);
    trace(drawing("open.dxf", false));
    WindowDriver.until("the walls are there", () -> parts() == 1);
    assertThat(window.plan().parts().get(0).region().area()).isEqualTo(360 * 240);
    WindowDriver.until("it is told", () -> window.dialogs().told.contains("closed over 0'-6\""));
    window.menu("edit.undo");
    assertThat(window.plan().parts()).isEmpty();
  }

  @Test
  void nothingComesOfAQuestionAboutGapsThatIsLeftUnanswered() throws Exception {
    trace(drawing("open.dxf", false));
    WindowDriver.until("it is asked", () -> window.dialogs().asked == 1);
    assertThat(window.plan().parts()).isEmpty();
    assertThat(window.dialogs().told).isEmpty();
  }

  @Test
  void whatIsNoDrawingIsRefusedInWords() throws Exception {
    trace(Files.writeString(folder.resolve("list.dxf"), "two by sixes\n"));
    WindowDriver.until("the refusal is told", () -> !window.dialogs().told.isEmpty());
    assertThat(window.dialogs().told).contains("list.dxf");
    assertThat(window.plan().parts()).isEmpty();
  }
}
