package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.AbstractButton;
import javax.swing.JList;
import longpoint.editor.Houses;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.plan.Handling;
import longpoint.plan.Lift;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Loads, weights, restraint and sections to hoist, typed in the side panel and told there. */
class HandlingWindowTest {
  private WindowDriver window;

  @BeforeEach
  void open() {
    window = new WindowDriver(Houses.house());
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  private void press(String button) {
    AbstractButton found = window.find(button, AbstractButton.class);
    WindowDriver.onEvents(
        () -> {
          found.doClick();
          return null;
        });
    window.untilSolved();
  }

  private List<String> figures() {
    JList<?> list = window.find("figures", JList.class);
    return WindowDriver.onEvents(
        () -> {
          List<String> rows = new ArrayList<>();
          for (int i = 0; i < list.getModel().getSize(); i++) {
            rows.add(String.valueOf(list.getModel().getElementAt(i)));
          }
          return rows;
        });
  }

  @Test
  void loadsAreTypedAndToldByWalls() {
    assertThat(figures()).noneMatch(r -> r.contains("never a design"));
    press("fold.loads");
    window.fill("deadLoad", "15").untilSolved();
    window.fill("snowLoad", "40").untilSolved();
    press("deadOn.slope");
    Handling.Loads loads = window.plan().handling().loads();
    assertThat(loads.dead()).contains(15.0);
    assertThat(loads.snow()).contains(40.0);
    assertThat(loads.deadOn()).isEqualTo(Handling.Loads.DeadOn.SLOPE);
    assertThat(loads.live()).isEmpty();
    assertThat(figures()).anyMatch(r -> r.contains("never a design"));
    assertThat(figures()).anyMatch(r -> r.contains("lb/ft"));
    window.fill("deadLoad", "").untilSolved();
    window.fill("snowLoad", "").untilSolved();
    assertThat(window.plan().handling().loads().any()).isFalse();
  }

  @Test
  void weightsAndRestraintComeFromTheSupplier() {
    press("fold.weights");
    press("fold.restraint");
    window.fill("trussWeights", "T1 145; GE1 160").untilSolved();
    window.fill("restraintRows", "6'").untilSolved();
    assertThat(window.plan().handling().weights().trusses())
        .isEqualTo(Map.of("T1", 145.0, "GE1", 160.0));
    assertThat(window.plan().handling().restraint().rows()).contains(72.0);
    assertThat(figures()).anyMatch(r -> r.contains("supplier rules"));
  }

  @Test
  void aSectionToHoistIsTypedInTheFrame() {
    String part = window.plan().parts().get(0).id();
    WindowDriver.onEvents(
        () -> {
          window.window().job().runner().select(Selection.of(Ref.part(part)));
          return null;
        });
    window.push("fold.frame.more");
    window.fill("lifts", "0..8' + deck + ladders; 16'").untilSolved();
    List<Lift> lifts = window.plan().parts().get(0).frame().placements().lifts();
    assertThat(lifts).hasSize(2);
    assertThat(lifts.get(0).also()).containsExactly(Lift.Also.DECK, Lift.Also.LADDERS);
    assertThat(window.design().aids().lifts().sections()).hasSize(2);
    assertThat(figures()).anyMatch(r -> r.contains("a rigger decides"));
  }
}
