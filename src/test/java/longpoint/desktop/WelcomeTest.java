package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import longpoint.desktop.panel.StartCard;
import longpoint.desktop.view.Showing;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;

/**
 * The first minutes with the window: what an empty sheet offers, and what every control is called.
 */
class WelcomeTest {
  @Test
  void theSamplesOfTheProgramAreThoseOfTheProject() throws Exception {
    try (Stream<Path> files = Files.list(Path.of("sample-plans"))) {
      assertThat(Samples.NAMES)
          .containsExactlyInAnyOrderElementsOf(
              files
                  .map(f -> f.getFileName().toString())
                  .filter(n -> n.endsWith(".json"))
                  .map(n -> n.replace(".json", ""))
                  .toList());
    }
    for (String name : Samples.NAMES) {
      assertThat(Samples.read(name).plan())
          .isEqualTo(PlanFile.read(Path.of("sample-plans", name + ".json")).plan());
      assertThat(Samples.words(name)).isNotBlank();
    }
  }

  @Test
  void anEmptySheetOffersASampleWhichOpensWithoutAFile() throws Exception {
    try (WindowDriver window = new WindowDriver(Plan.empty(LengthUnit.INCH))) {
      assertThat(window.find("start", StartCard.class).isVisible()).isTrue();
      window.push("start.sample.tolverby-cabin");
      assertThat(window.plan()).isEqualTo(Samples.read("tolverby-cabin").plan());
      assertThat(window.window().job().file()).isEmpty();
      WindowDriver.until("the card has gone", () -> !hasCard(window));
    }
  }

  @Test
  void theCardGoesWhenAToolIsTakenAndComesBackWithTheEmptySheet() throws Exception {
    try (WindowDriver window = new WindowDriver(Plan.empty(LengthUnit.INCH))) {
      window.push("start.tool.rectangle");
      WindowDriver.until("the card has gone", () -> !hasCard(window));
      window.click(0, 0).move(200, 140).type("28' x 20'").enter();
      assertThat(window.plan().parts()).hasSize(1);
      window.menu("edit.undo");
      window.type("s");
      WindowDriver.until("the card is back", () -> hasCard(window));
    }
  }

  private static boolean hasCard(WindowDriver window) {
    return WindowDriver.find(window.window().frame(), "start", StartCard.class) != null;
  }

  @Test
  void everyControlOfTheWindowHasANameForThoseWhoCannotSeeIt() throws Exception {
    Plan plan = Samples.read("tolverby-cabin").plan();
    try (WindowDriver window = new WindowDriver(plan)) {
      window.design();
      List<String> nameless = new ArrayList<>();
      for (Showing one : Showing.values()) {
        if (!window.window().beside().shows(one)) {
          window.menu("beside." + one.key());
        }
        WindowDriver.onEvents(
            () -> {
              nameless(window.window().frame(), nameless);
              return null;
            });
      }
      assertThat(nameless).isEmpty();
    }
  }

  private static void nameless(Container in, List<String> found) {
    for (Component c : in.getComponents()) {
      boolean control =
          c instanceof AbstractButton
              || c instanceof JTextComponent
              || c instanceof JTable
              || c instanceof JList<?>
              || c instanceof JComboBox<?>
              || c.getAccessibleContext() != null
                  && c.getAccessibleContext().getAccessibleRole() == AccessibleRole.CANVAS;
      boolean ours = c.getName() != null && !c.getName().contains(".Button");
      if (control && ours && !hasName(c)) {
        found.add(c.getClass().getSimpleName() + " " + c.getName());
      }
      if (c instanceof Container inner && !(c instanceof JComboBox<?>)) {
        nameless(inner, found);
      }
    }
  }

  private static boolean hasName(Component c) {
    String name = c.getAccessibleContext().getAccessibleName();
    return name != null && !name.isBlank();
  }

  @Test
  void whatADesktopSaysOfItsLookIsUnderstood() {
    assertThat(SystemLook.meaning("    AppsUseLightTheme    REG_DWORD    0x0"))
        .contains(Theme.DARK);
    assertThat(SystemLook.meaning("    AppsUseLightTheme    REG_DWORD    0x1"))
        .contains(Theme.LIGHT);
    assertThat(SystemLook.meaning("Dark\n")).contains(Theme.DARK);
    assertThat(SystemLook.meaning("The domain/default pair of (x, y) does not exist"))
        .contains(Theme.LIGHT);
    assertThat(SystemLook.meaning("'prefer-dark'")).contains(Theme.DARK);
    assertThat(SystemLook.meaning("'default'")).contains(Theme.LIGHT);
    assertThat(SystemLook.meaning("No such schema")).isEmpty();
  }
}
