package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.FocusTraversalPolicy;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JFrame;
import longpoint.desktop.view.Showing;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.plan.Plan;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever the Tab key comes to says what it is, and what can be done with it (Web Content
 * Accessibility Guidelines 2.1, 4.1.2 name, role, value; W3C, from memory).
 */
class ByKeyboardTest {
  private final Locale before = Locale.getDefault();

  @AfterEach
  void speakAsBefore() {
    Locale.setDefault(before);
  }

  /** Every stop of the Tab key, once round the window. */
  private static Set<Component> stops(JFrame frame) {
    Set<Component> stops = new LinkedHashSet<>();
    FocusTraversalPolicy policy = frame.getFocusTraversalPolicy();
    Component at = policy.getFirstComponent(frame);
    while (at != null && stops.add(at)) {
      Container root = at.getFocusCycleRootAncestor();
      at = root.getFocusTraversalPolicy().getComponentAfter(root, at);
    }
    return stops;
  }

  private static void look(WindowDriver window, Set<String> nameless, Set<String> silent) {
    WindowDriver.onEvents(
        () -> {
          for (Component stop : stops(window.window().frame())) {
            AccessibleContext tells = ((Accessible) stop).getAccessibleContext();
            String who = stop.getClass().getSimpleName() + " " + stop.getName();
            if (tells.getAccessibleName() == null || tells.getAccessibleName().isBlank()) {
              nameless.add(who);
            }
            String tip = stop instanceof JComponent c ? c.getToolTipText() : null;
            boolean worded =
                stop instanceof AbstractButton b && b.getText() != null && !b.getText().isEmpty();
            boolean told = tells.getAccessibleDescription() != null || tip != null || worded;
            if (!told) {
              silent.add(who);
            }
          }
          return null;
        });
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "fr"})
  void everyStopOfTheTabKeySaysWhatItIs(String language) throws Exception {
    Locale.setDefault(Locale.forLanguageTag(language));
    Plan plan = Samples.read("sable-lane-garden-wing").plan();
    Set<String> nameless = new TreeSet<>();
    Set<String> silent = new TreeSet<>();
    try (WindowDriver window = new WindowDriver(plan)) {
      window.design();
      List<Selection> picks = new ArrayList<>(List.of(Selection.NONE));
      plan.parts().forEach(p -> picks.add(Selection.of(Ref.part(p.id()))));
      picks.add(Selection.of(Ref.side(plan.parts().get(0).id(), 0)));
      picks.add(Selection.of(Ref.side(plan.parts().get(0).id(), 1)));
      for (Selection pick : picks) {
        WindowDriver.onEvents(
            () -> {
              window.window().job().runner().select(pick);
              return null;
            });
        window.untilSolved();
        look(window, nameless, silent);
      }
      for (Showing one : Showing.values()) {
        window.menu("beside." + one.key());
        look(window, nameless, silent);
      }
    }
    assertThat(nameless).as("without a name").isEmpty();
    assertThat(silent).as("without a word of what it does").isEmpty();
  }
}
