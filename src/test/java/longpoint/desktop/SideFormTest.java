package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.JList;
import longpoint.desktop.panel.Figure;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.framing.Houses;
import longpoint.plan.InLine;
import longpoint.plan.Join;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import org.junit.jupiter.api.Test;

/** The side panel as the selection goes from one thing to the next. */
class SideFormTest {
  private static final Plan WING = Houses.gardenWing(Join.Method.OVERLAY);

  private static void select(WindowDriver window, Ref... refs) {
    WindowDriver.onEvents(
        () -> {
          window.window().job().runner().select(new Selection(List.of(refs)));
          return null;
        });
    WindowDriver.onEvents(() -> null); // the panel follows a moment later
  }

  private static boolean isOpen(WindowDriver window, String fold) {
    return WindowDriver.onEvents(() -> window.find(fold, AbstractButton.class).isSelected());
  }

  @Test
  void aHeadingOpenedForOnePartIsOpenForTheNext() throws Exception {
    try (WindowDriver window = new WindowDriver(WING)) {
      select(window, Ref.part("main"));
      assertThat(isOpen(window, "fold.frame.more")).isFalse();
      window.push("fold.frame.more");
      select(window, Ref.side("main", 0));
      select(window, Ref.part("wing"));
      assertThat(isOpen(window, "fold.frame.more")).isTrue();
      window.push("fold.frame.more");
      select(window, Ref.part("main"));
      assertThat(isOpen(window, "fold.frame.more")).isFalse();
    }
  }

  @Test
  void whatBecomesOfAPlaneInLineWithAnotherIsSaidForSeveralSidesAtOnce() throws Exception {
    try (WindowDriver window = new WindowDriver(WING)) {
      select(window, Ref.side("main", 0), Ref.side("main", 2));
      window.push("inLine.goes-on");
      for (int side : new int[] {0, 2}) {
        assertThat(window.plan().part("main").orElseThrow().edges().get(side).inLine())
            .contains(InLine.GOES_ON);
      }
      window.push("inLine.by-length");
      assertThat(window.plan().part("main").orElseThrow().edges().get(0).inLine())
          .isEqualTo(Optional.empty());
      window.menu("edit.undo");
      assertThat(window.plan().part("main").orElseThrow().edges().get(2).inLine())
          .contains(InLine.GOES_ON);
    }
  }

  @Test
  void aLengthIsTypedAndBothEndsGiveWayByHalf() throws Exception {
    try (WindowDriver window = new WindowDriver(WING)) {
      select(window, Ref.side("wing", 0));
      window.push("givesWay.both");
      window.fill("length", "12' + 2' 6");
      assertThat(window.plan().part("wing").orElseThrow().outline().bounds().minX()).isEqualTo(153);
      assertThat(window.plan().part("wing").orElseThrow().outline().bounds().maxX()).isEqualTo(327);
    }
  }

  @Test
  void aGableWallShowsItsRakes() throws Exception {
    try (WindowDriver window = new WindowDriver(WING)) {
      window.untilSolved();
      select(window, Ref.side("main", 1));
      JList<?> list = window.find("figures", JList.class);
      List<String> rows =
          WindowDriver.onEvents(
              () ->
                  IntStream.range(0, list.getModel().getSize())
                      .mapToObj(i -> ((Figure) list.getModel().getElementAt(i)).name())
                      .toList());
      assertThat(rows).containsExactly("Rakes", "2 × Rake");
    }
  }

  @Test
  void theProblemOfWhatIsPickedStandsOutInTheList() throws Exception {
    try (WindowDriver window = new WindowDriver(WING)) {
      select(window, Ref.side("main", 0));
      window.fill("overhang", "9'");
      window.untilSolved();
      select(window, Ref.part("wing"));
      JList<?> list = window.find("problems", JList.class);
      assertThat(WindowDriver.onEvents(list::isSelectionEmpty)).isTrue();
      select(window, Ref.side("main", 0));
      Problem picked = (Problem) WindowDriver.onEvents(list::getSelectedValue);
      assertThat(picked.where()).isEqualTo("main/0");
    }
  }
}
