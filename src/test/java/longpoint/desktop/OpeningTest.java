package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.prefs.Preferences;
import javax.swing.AbstractButton;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import longpoint.desktop.panel.Header;
import longpoint.desktop.panel.SidePanel;
import longpoint.desktop.panel.StartCard;
import longpoint.desktop.panel.StatusLine;
import longpoint.desktop.panel.ToolStrip;
import longpoint.editor.tools.Tools;
import longpoint.plan.Plan;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How the window opens: what is seen first stays where it is, and no early press is lost. */
class OpeningTest {
  private final Locale before = Locale.getDefault();
  private final Preferences preferences =
      Preferences.userRoot().node("longpoint-test-" + UUID.randomUUID());
  private final ScriptedDialogs dialogs = new ScriptedDialogs();
  private Opening opening;

  @BeforeEach
  void dress() {
    WindowDriver.needDisplay();
    WindowDriver.onEvents(
        () -> {
          Theme.LIGHT.install(15);
          return null;
        });
  }

  @AfterEach
  void putAway() throws Exception {
    Locale.setDefault(before);
    WindowDriver.onEvents(
        () -> {
          opening.whole().job().close();
          frame().dispose();
          Theme.LIGHT.install(15);
          return null;
        });
    preferences.removeNode();
  }

  private void open(Plan plan) {
    opening =
        new Opening(
            new Settings(preferences),
            sight ->
                new MainWindow(
                    sight,
                    new Job(plan),
                    new Settings(preferences),
                    f -> dialogs,
                    (design, request, folder, written) -> List.of(),
                    Path.of(System.getProperty("java.io.tmpdir"), "lp-" + UUID.randomUUID())));
    frame().setBounds(0, 0, 1400, 900);
  }

  private JFrame frame() {
    return opening.sight().frame();
  }

  private Rectangle onRoot(Component component) {
    return SwingUtilities.convertRectangle(
        component.getParent(), component.getBounds(), frame().getRootPane());
  }

  private <C extends Component> C find(String name, Class<C> kind) {
    return WindowDriver.find(frame(), name, kind);
  }

  private Component find(Class<?> kind) {
    return found(frame().getContentPane(), kind);
  }

  private static Component found(java.awt.Container in, Class<?> kind) {
    for (Component c : in.getComponents()) {
      if (kind.isInstance(c)) {
        return c;
      }
      Component inner = c instanceof java.awt.Container k ? found(k, kind) : null;
      if (inner != null) {
        return inner;
      }
    }
    return null;
  }

  @ParameterizedTest
  @CsvSource({"en, 12", "en, 15", "en, 18", "en, 24", "fr, 12", "fr, 15", "fr, 18", "fr, 24"})
  void whatComesLaterMovesNothingAndHasRoom(String language, int textSize) {
    Locale.setDefault(Locale.forLanguageTag(language));
    WindowDriver.onEvents(
        () -> {
          Theme.LIGHT.install(textSize);
          open(Plan.empty(LengthUnit.INCH));
          opening.sight().offer();
          frame().setVisible(true); // in one event, so that no stage comes between
          frame().validate();
          Rectangle sheet = onRoot(opening.sight().canvas());
          Rectangle card = onRoot(find("start", StartCard.class));
          Rectangle menus = onRoot(frame().getJMenuBar());
          opening.whole();
          frame().validate();
          assertThat(onRoot(opening.sight().canvas())).isEqualTo(sheet);
          assertThat(onRoot(find("start", StartCard.class))).isEqualTo(card);
          assertThat(onRoot(frame().getJMenuBar())).isEqualTo(menus);
          find("status.callOff", AbstractButton.class).setVisible(true); // as high as it gets
          for (Class<? extends Component> kind : List.of(Header.class, StatusLine.class)) {
            assertThat(find(kind).getHeight() - find(kind).getPreferredSize().height)
                .as("%s in its place", kind.getSimpleName())
                .isBetween(0, 2);
          }
          Dimension tools = find(ToolStrip.class).getPreferredSize();
          assertThat(find(ToolStrip.class).getWidth() - tools.width).isNotNegative();
          assertThat(find(SidePanel.class).getWidth()).isEqualTo(SidePanel.width());
          return null;
        });
  }

  @Test
  void aClickOnTheCardBeforeTheRestIsThereDoesItsThing() {
    WindowDriver.onEvents(
        () -> {
          open(Plan.empty(LengthUnit.INCH));
          opening.sight().offer();
          opening.show();
          frame().validate();
          AbstractButton rectangle = find("start.tool.rectangle", AbstractButton.class);
          Point at = SwingUtilities.convertPoint(rectangle, 20, 10, frame());
          int held = InputEvent.BUTTON1_DOWN_MASK;
          post(new MouseEvent(frame(), MouseEvent.MOUSE_MOVED, 1, 0, at.x, at.y, 0, false));
          post(mouse(MouseEvent.MOUSE_PRESSED, held, at));
          post(mouse(MouseEvent.MOUSE_RELEASED, 0, at));
          return null;
        });
    WindowDriver.until(
        "the tool is in hand", () -> opening.whole().job().runner().tool() == Tools.RECTANGLE);
  }

  private MouseEvent mouse(int id, int held, Point at) {
    return new MouseEvent(frame(), id, 2, held, at.x, at.y, 1, false, MouseEvent.BUTTON1);
  }

  @Test
  void aKeyOrAWishToCloseFindsTheWindowWhole() {
    for (int id : List.of(KeyEvent.KEY_PRESSED, WindowEvent.WINDOW_CLOSING)) {
      boolean[] whole = {true, false};
      WindowDriver.onEvents(
          () -> {
            open(Plan.empty(LengthUnit.INCH));
            opening.show();
            whole[0] = opening.isWhole();
            post(
                id == KeyEvent.KEY_PRESSED
                    ? new KeyEvent(opening.sight().canvas(), id, 1, 0, KeyEvent.VK_R, 'r')
                    : new WindowEvent(frame(), id));
            EventQueue.invokeLater(() -> whole[1] = opening.isWhole());
            return null;
          });
      WindowDriver.onEvents(() -> null);
      assertThat(whole).containsExactly(false, true);
      if (id == KeyEvent.KEY_PRESSED) {
        WindowDriver.onEvents(
            () -> {
              opening.whole().job().close();
              frame().dispose();
              return null;
            });
      }
    }
    assertThat(frame().isDisplayable()).isFalse();
  }

  private static void post(java.awt.AWTEvent event) {
    Toolkit.getDefaultToolkit().getSystemEventQueue().postEvent(event);
  }

  @Test
  void wallsOfAPlanAreSeenFirst() {
    Plan plan = Samples.read("sable-lane-garden-wing").plan();
    WindowDriver.onEvents(
        () -> {
          open(plan);
          opening.sight().show(plan);
          frame().setVisible(true);
          frame().validate();
          return null;
        });
    int sides = plan.parts().stream().mapToInt(p -> p.sideCount()).sum();
    WindowDriver.onEvents(
        () -> {
          assertThat(opening.sight().canvas().drawing().marks()).hasSize(sides);
          assertThat(opening.sight().canvas().isAllInSight()).isTrue();
          assertThat(frame().getTitle()).startsWith(plan.title());
          return null;
        });
  }

  @Test
  void aPlanThatCannotBeReadHoldsUpNothing() throws Exception {
    PlanAhead none = new PlanAhead(Path.of("no", "such", "plan.json"));
    assertThat(none.soon()).isEqualTo(Optional.empty());
    WindowDriver.onEvents(
        () -> {
          open(Plan.empty(LengthUnit.INCH));
          return null;
        });
  }
}
