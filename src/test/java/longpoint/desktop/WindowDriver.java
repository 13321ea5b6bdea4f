package longpoint.desktop;

import java.awt.AWTError;
import java.awt.Component;
import java.awt.Container;
import java.awt.GraphicsEnvironment;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.nio.file.Path;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.function.BooleanSupplier;
import java.util.prefs.Preferences;
import javax.swing.AbstractButton;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import longpoint.desktop.canvas.PlanCanvas;
import longpoint.desktop.file.PacketWriter;
import longpoint.geometry.Point;
import longpoint.pipeline.Design;
import longpoint.plan.Plan;

/**
 * A real window, driven as a person drives it: by mouse and keys on the sheet, by fields, menus and
 * buttons. Events go to the component itself, so that no window manager and no keyboard focus is
 * needed. Without a display it fails with a sentence that says what to do.
 */
public final class WindowDriver implements AutoCloseable {
  private static final long PATIENCE_MILLIS = 20_000;

  private final Preferences preferences =
      Preferences.userRoot().node("longpoint-test-" + UUID.randomUUID());
  private final ScriptedDialogs dialogs = new ScriptedDialogs();
  private final MainWindow window;
  private final SheetEvents events;
  private static boolean dressed;

  WindowDriver(Plan plan) {
    this(plan, (design, request, folder, written) -> java.util.List.of());
  }

  WindowDriver(Plan plan, PacketWriter packets) {
    this(
        plan,
        packets,
        Path.of(System.getProperty("java.io.tmpdir"), "longpoint-" + UUID.randomUUID()));
  }

  /**
   * @param drafts folder for drafts of unsaved plans
   */
  WindowDriver(Plan plan, PacketWriter packets, Path drafts) {
    needDisplay();
    window =
        onEvents(
            () -> {
              dress();
              MainWindow made =
                  Opening.atOnce(
                      new Job(plan), new Settings(preferences), f -> dialogs, packets, drafts);
              made.frame().setBounds(0, 0, 1400, 900);
              made.frame().setVisible(true);
              return made;
            });
    events = new SheetEvents(window.canvas());
    until("the sheet shows", () -> window.canvas().isShowing() && window.canvas().getWidth() > 0);
    untilSolved();
    // A fixed view, so that a test's figures do not hang on the window's size.
    show(1.5, new Point(240, 120));
  }

  public static void needDisplay() {
    String cure =
        "These tests drive a real window and need a display: run  xvfb-run -a mvn -B verify"
            + "  (Debian package xvfb), or set DISPLAY.";
    try {
      if (GraphicsEnvironment.isHeadless()) {
        throw new AssertionError(cure);
      }
      GraphicsEnvironment.getLocalGraphicsEnvironment().getDefaultScreenDevice();
    } catch (AWTError | NoClassDefFoundError e) {
      throw new AssertionError(cure, e);
    }
  }

  /** The window's look, which dialogs need too. For the event thread. */
  public static void dress() {
    if (!dressed) {
      Theme.LIGHT.install(15);
      dressed = true;
    }
  }

  // What the window holds

  MainWindow window() {
    return window;
  }

  ScriptedDialogs dialogs() {
    return dialogs;
  }

  Plan plan() {
    return onEvents(() -> window.job().document().plan());
  }

  /** The plan as it shows in the middle of a gesture. */
  Plan shownPlan() {
    return onEvents(() -> window.job().runner().shown());
  }

  Design design() {
    untilSolved();
    return onEvents(() -> window.job().picture().design());
  }

  void untilSolved() {
    until("the roof is worked out", () -> window.job().isUpToDate());
  }

  /** Puts a place of the plan in the middle of the sheet. */
  void show(double pixelsPerUnit, Point middle) {
    onEvents(
        () -> {
          PlanCanvas c = window.canvas();
          c.show(
              new longpoint.desktop.canvas.View(pixelsPerUnit, 0, 0)
                  .centred(middle, c.getWidth(), c.getHeight()));
          return null;
        });
  }

  // The mouse on the sheet

  WindowDriver move(double x, double y) {
    return mouse(MouseEvent.MOUSE_MOVED, x, y, 0, 0, 0);
  }

  WindowDriver press(double x, double y) {
    return mouse(
        MouseEvent.MOUSE_PRESSED, x, y, InputEvent.BUTTON1_DOWN_MASK, MouseEvent.BUTTON1, 1);
  }

  WindowDriver dragTo(double x, double y) {
    return mouse(MouseEvent.MOUSE_DRAGGED, x, y, InputEvent.BUTTON1_DOWN_MASK, 0, 0);
  }

  WindowDriver release(double x, double y) {
    return mouse(MouseEvent.MOUSE_RELEASED, x, y, 0, MouseEvent.BUTTON1, 1);
  }

  WindowDriver click(double x, double y) {
    return move(x, y).press(x, y).release(x, y);
  }

  /** Twice in the same place; the first click is an ordinary one. */
  WindowDriver doubleClick(double x, double y) {
    click(x, y);
    mouse(MouseEvent.MOUSE_PRESSED, x, y, InputEvent.BUTTON1_DOWN_MASK, MouseEvent.BUTTON1, 2);
    return mouse(MouseEvent.MOUSE_RELEASED, x, y, 0, MouseEvent.BUTTON1, 2);
  }

  /** The second button, which opens a menu. */
  WindowDriver secondButton(double x, double y) {
    move(x, y);
    onEvents(
        () -> {
          events.menu(new Point(x, y));
          return null;
        });
    return this;
  }

  /** The middle button held and moved, in pixels. */
  WindowDriver dragSheet(int dx, int dy) {
    onEvents(
        () -> {
          events.dragSheet(dx, dy);
          return null;
        });
    return this;
  }

  /** The wheel turned over a place of the plan; away from the user is negative. */
  WindowDriver wheel(double x, double y, int clicks) {
    onEvents(
        () -> {
          events.wheel(new Point(x, y), clicks);
          return null;
        });
    return this;
  }

  private WindowDriver mouse(int id, double x, double y, int held, int button, int clicks) {
    onEvents(
        () -> {
          events.mouse(id, new Point(x, y), held, button, clicks);
          return null;
        });
    return this;
  }

  // The keyboard on the sheet

  /** Types characters, as figures or as letters of tools. */
  WindowDriver type(String text) {
    for (char ch : text.toCharArray()) {
      key(KeyEvent.KEY_TYPED, KeyEvent.VK_UNDEFINED, 0, ch);
    }
    return this;
  }

  WindowDriver enter() {
    return stroke(KeyEvent.VK_ENTER, 0);
  }

  WindowDriver escape() {
    return stroke(KeyEvent.VK_ESCAPE, 0);
  }

  WindowDriver control(int keyCode) {
    return stroke(keyCode, InputEvent.CTRL_DOWN_MASK);
  }

  WindowDriver stroke(int keyCode, int held) {
    key(KeyEvent.KEY_PRESSED, keyCode, held, KeyEvent.CHAR_UNDEFINED);
    return key(KeyEvent.KEY_RELEASED, keyCode, held, KeyEvent.CHAR_UNDEFINED);
  }

  private WindowDriver key(int id, int keyCode, int held, char ch) {
    onEvents(
        () -> {
          events.key(id, keyCode, held, ch);
          return null;
        });
    return this;
  }

  // Around the sheet

  /** Types into a field and confirms with Enter. */
  WindowDriver fill(String field, String text) {
    onEvents(
        () -> {
          JTextField f = find(field, JTextField.class);
          f.setText(text);
          f.postActionEvent();
          return null;
        });
    return this;
  }

  String textOf(String field) {
    return onEvents(() -> find(field, JTextField.class).getText());
  }

  /** Presses a button by its name. */
  WindowDriver push(String button) {
    onEvents(
        () -> {
          find(button, AbstractButton.class).doClick(0);
          return null;
        });
    return this;
  }

  /** Chooses an item of the menus by the id of its task. */
  WindowDriver menu(String task) {
    onEvents(
        () -> {
          JMenuItem item = null;
          for (int i = 0; i < window.frame().getJMenuBar().getMenuCount() && item == null; i++) {
            item =
                find(
                    window.frame().getJMenuBar().getMenu(i).getPopupMenu(),
                    "menu." + task,
                    JMenuItem.class);
          }
          if (item == null) {
            throw new AssertionError("no menu item for " + task);
          }
          item.doClick(0);
          return null;
        });
    return this;
  }

  <C extends Component> C find(String name, Class<C> kind) {
    C found = find(window.frame(), name, kind);
    if (found == null) {
      throw new AssertionError("no " + kind.getSimpleName() + " named " + name + " in the window");
    }
    return found;
  }

  public static <C extends Component> C find(Container in, String name, Class<C> kind) {
    for (Component c : in.getComponents()) {
      if (kind.isInstance(c) && name.equals(c.getName())) {
        return kind.cast(c);
      }
      Container inner =
          c instanceof JMenu menu ? menu.getPopupMenu() : c instanceof Container all ? all : null;
      if (inner != null) {
        C found = find(inner, name, kind);
        if (found != null) {
          return found;
        }
      }
    }
    return null;
  }

  // Threads

  public static <T> T onEvents(Callable<T> work) {
    FutureTask<T> task = new FutureTask<>(work);
    try {
      SwingUtilities.invokeAndWait(task);
      return task.get();
    } catch (java.util.concurrent.ExecutionException e) {
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw new AssertionError(e.getCause());
    } catch (InterruptedException | java.lang.reflect.InvocationTargetException e) {
      throw new AssertionError(e);
    }
  }

  /** Waits for something the window does in its own time. */
  public static void until(String what, BooleanSupplier on) {
    long end = System.currentTimeMillis() + PATIENCE_MILLIS;
    while (!onEvents(on::getAsBoolean)) {
      if (System.currentTimeMillis() > end) {
        throw new AssertionError("waited in vain: " + what);
      }
      try {
        Thread.sleep(10);
      } catch (InterruptedException e) {
        throw new AssertionError(e);
      }
    }
  }

  @Override
  public void close() throws java.util.prefs.BackingStoreException {
    onEvents(
        () -> {
          window.job().close();
          for (Window w : Window.getWindows()) {
            if (w == window.frame() || w.getOwner() == window.frame()) {
              w.dispose();
            }
          }
          return null;
        });
    preferences.removeNode();
  }
}
