package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import longpoint.desktop.action.Task;
import longpoint.plan.Plan;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Commands are found and reached by keys, in both languages. */
class CommandsTest {
  private final Locale before = Locale.getDefault();

  @AfterEach
  void speakAsBefore() {
    Locale.setDefault(before);
  }

  private static WindowDriver window(String language) {
    Locale.setDefault(Locale.forLanguageTag(language));
    return new WindowDriver(Plan.empty(LengthUnit.INCH));
  }

  /** Every menu and every item has a letter, no two of one menu the same. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "fr"})
  void everyMenuItemHasALetterOfItsOwn(String language) throws Exception {
    try (WindowDriver window = window(language)) {
      WindowDriver.onEvents(
          () -> {
            JMenuBar bar = window.window().frame().getJMenuBar();
            List<JMenu> menus =
                IntStream.range(0, bar.getMenuCount()).mapToObj(bar::getMenu).toList();
            assertLetters("bar", menus);
            menus.forEach(CommandsTest::assertInside);
            return null;
          });
    }
  }

  private static void assertInside(JMenu menu) {
    List<JMenuItem> items =
        IntStream.range(0, menu.getItemCount())
            .mapToObj(menu::getItem)
            .filter(Objects::nonNull)
            .toList();
    assertLetters(menu.getText(), items);
    items.stream()
        .filter(JMenu.class::isInstance)
        .map(JMenu.class::cast)
        .forEach(CommandsTest::assertInside);
  }

  private static void assertLetters(String where, List<? extends JMenuItem> items) {
    Map<Integer, String> taken = new HashMap<>();
    for (JMenuItem item : items) {
      String name = where + ": " + item.getText();
      assertThat(item.getMnemonic()).as(name).isBetween((int) 'A', (int) 'Z');
      assertThat(item.getText().toUpperCase(Locale.ROOT).indexOf(item.getMnemonic()))
          .as(name)
          .isNotNegative();
      assertThat(taken.putIfAbsent(item.getMnemonic(), name)).as(name).isNull();
    }
  }

  /** Enter does what is on top: the command so named, not one whose tip happens to say the word. */
  @ParameterizedTest
  @CsvSource({
    "en,print,file.print",
    "en,sheets,beside.sheets",
    "en,lists,beside.lists",
    "en,copy,edit.copy",
    "en,save,file.save",
    "en,about,help.licences",
    "fr,imprimer,file.print",
    "fr,echelle,picture.scale",
    "fr,a propos,help.licences",
    "fr,enregistrer,file.save"
  })
  void theCommandSoNamedStandsFirst(String language, String typed, String id) throws Exception {
    try (WindowDriver window = window(language)) {
      List<Task> found = WindowDriver.onEvents(() -> window.window().catalogue().matching(typed));
      assertThat(found).isNotEmpty();
      assertThat(found.get(0).id()).endsWith(id);
    }
  }
}
