package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JTable;
import longpoint.desktop.view.Showing;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A French window says nothing that is not French, and has room for what it says. */
class FrenchWindowTest {
  private static final Path RESOURCES = Path.of("src/main/resources/longpoint");
  private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");

  /** Marks, units and kinds of file. */
  private static final Pattern MARK = Pattern.compile("\\p{Lu}+[a-z]?|mm|px|html|br");

  private final Locale before = Locale.getDefault();

  @BeforeEach
  void speakFrench() {
    Locale.setDefault(Locale.FRANCE);
  }

  @AfterEach
  void speakAsBefore() {
    Locale.setDefault(before);
  }

  @Test
  void everyWordIsFrenchAndNoneIsClipped() throws Exception {
    Plan plan = Samples.read("fernholt-garage").plan();
    Set<String> known = vocabulary();
    plan.parts().forEach(p -> known.addAll(words(p.name() + " " + p.id())));
    known.addAll(words(plan.title()));
    Set<String> foreign = new TreeSet<>();
    Set<String> clipped = new TreeSet<>();
    try (WindowDriver window = new WindowDriver(plan)) {
      window.design();
      Part part = plan.parts().get(0);
      List<Selection> picks = new ArrayList<>(List.of(Selection.NONE));
      picks.add(Selection.of(Ref.part(part.id())));
      picks.add(Selection.of(Ref.side(part.id(), 0)));
      picks.add(Selection.of(Ref.side(part.id(), 1)));
      picks.add(Selection.of(Ref.side(part.id(), 2), Ref.side(part.id(), 3)));
      for (Selection pick : picks) {
        WindowDriver.onEvents(
            () -> {
              window.window().job().runner().select(pick);
              return null;
            });
        window.untilSolved();
        look(window, known, foreign, clipped);
      }
      for (Showing one : Showing.values()) {
        window.menu("beside." + one.key());
        window.untilSolved();
        look(window, known, foreign, clipped);
      }
    }
    assertThat(foreign).isEmpty();
    // A title of the user's own is cut at its end where the window is narrow; its tip has it whole.
    clipped.removeIf(c -> c.startsWith("[" + plan.title()));
    assertThat(clipped).isEmpty();
  }

  private static void look(
      WindowDriver window, Set<String> known, Set<String> foreign, Set<String> clipped) {
    WindowDriver.onEvents(
        () -> {
          window.window().frame().validate();
          walk(window.window().frame(), known, foreign, clipped);
          return null;
        });
  }

  private static void walk(
      Container in, Set<String> known, Set<String> foreign, Set<String> clipped) {
    for (Component c : in.getComponents()) {
      said(c)
          .forEach(
              text -> {
                for (String word : words(text)) {
                  if (!known.contains(word) && !MARK.matcher(word).matches()) {
                    foreign.add(word + " in: " + text);
                  }
                }
              });
      boolean picture =
          c instanceof AbstractButton button
              && (button.getText() == null || button.getText().isEmpty())
              && button.getName() != null
              && !button.getName().contains(".Button");
      if (picture && ((AbstractButton) c).getToolTipText() == null) {
        foreign.add("no tip: " + c.getName());
      }
      if (c.isShowing() && isClipped(c)) {
        clipped.add(said(c) + " " + c.getWidth() + " of " + c.getPreferredSize().width);
      }
      if (c instanceof JMenuBar bar) {
        for (int i = 0; i < bar.getMenuCount(); i++) {
          walk(bar.getMenu(i).getPopupMenu(), known, foreign, clipped);
        }
      }
      if (c instanceof JMenu menu) {
        walk(menu.getPopupMenu(), known, foreign, clipped);
      }
      if (c instanceof Container inner && !(c instanceof JComboBox<?>)) {
        walk(inner, known, foreign, clipped);
      }
    }
  }

  /** Text that is shown on it, told of it, or read out. */
  private static List<String> said(Component c) {
    List<String> said = new ArrayList<>();
    if (c instanceof JLabel label) {
      said.add(label.getText());
    }
    if (c instanceof AbstractButton button) {
      said.add(button.getText());
    }
    if (c instanceof JTable table) {
      for (int i = 0; i < table.getColumnCount(); i++) {
        said.add(table.getColumnName(i));
      }
    }
    if (c instanceof JComponent shown) {
      // The key after it is named by the toolkit.
      said.add(
          shown.getToolTipText() == null
              ? ""
              : shown.getToolTipText().replaceAll("  \\(.*\\)$", ""));
    }
    if (c.getName() != null && c.getAccessibleContext() != null) {
      said.add(c.getAccessibleContext().getAccessibleName());
    }
    said.removeIf(t -> t == null || t.isBlank());
    return said;
  }

  /** Lettering on one line that is wider than what shows it. */
  private static boolean isClipped(Component c) {
    boolean lettered =
        c instanceof JLabel label && label.getText() != null && !label.getText().startsWith("<html")
            || c instanceof AbstractButton button
                && button.getText() != null
                && !button.getText().isEmpty();
    return lettered && c.getWidth() < c.getPreferredSize().width - 1;
  }

  private static List<String> words(String text) {
    return WORD.matcher(text.replaceAll("<[^>]*>|&[a-z]+;", " "))
        .results()
        .map(m -> m.group())
        .toList();
  }

  private static Set<String> vocabulary() throws IOException {
    Set<String> known = new HashSet<>(Set.of("Longpoint", "Ctrl"));
    try (Stream<Path> files = Files.walk(RESOURCES)) {
      for (Path bundle : files.filter(f -> f.endsWith("Messages_fr.properties")).toList()) {
        Properties texts = new Properties();
        texts.load(Files.newBufferedReader(bundle));
        for (Object text : texts.values()) {
          for (String word : words(text.toString())) {
            known.add(word);
            known.add(word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
            known.add(word.substring(0, 1).toLowerCase(Locale.ROOT) + word.substring(1));
          }
        }
      }
    }
    return known;
  }
}
