package longpoint.desktop.canvas;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.EnumSet;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import longpoint.editor.Event;
import longpoint.editor.Modifier;
import longpoint.editor.Pointer;
import longpoint.editor.Selection;
import longpoint.editor.ToolRunner;
import longpoint.editor.ToolState;
import longpoint.plan.Plan;

/**
 * Turns what the mouse and the keyboard do on the sheet into what the editor understands. A figure
 * begins with a digit, a point, a sign or a bracket; letters only ever go on with one, so that a
 * single letter can pick up a tool. Where a tool wants words, every character is part of them.
 */
public final class EditGestures implements Gestures {
  /** How near the pointer must come to something to be on it, in pixels: a thumb's worth. */
  public static final double REACH = 10;

  private static final String BEGINS_A_FIGURE = "0123456789.,(";

  private final ToolRunner runner;
  private final Predicate<Character> letters;
  private final BiConsumer<MouseEvent, View> menu;
  private final BooleanSupplier callOff;
  private final Runnable keyed;

  /**
   * @param letters picks up a tool by its letter; says whether there was one
   * @param menu shows the menu of the second button
   * @param callOff calls off what takes its time, which Escape does first; says whether there was
   *     anything
   * @param keyed called after keys have pointed or drawn
   */
  public EditGestures(
      ToolRunner runner,
      Predicate<Character> letters,
      BiConsumer<MouseEvent, View> menu,
      BooleanSupplier callOff,
      Runnable keyed) {
    this.callOff = callOff;
    this.keyed = keyed;
    this.runner = runner;
    this.letters = letters;
    this.menu = menu;
  }

  @Override
  public void pointer(MouseEvent e, View view) {
    Pointer at =
        new Pointer(
            view.toPlan(e.getX(), e.getY()), REACH / view.scale(), held(e.getModifiersEx()));
    switch (e.getID()) {
      case MouseEvent.MOUSE_MOVED -> runner.handle(new Event.Moved(at));
      case MouseEvent.MOUSE_DRAGGED -> runner.handle(new Event.Dragged(at));
      case MouseEvent.MOUSE_PRESSED -> runner.handle(new Event.Pressed(at));
      case MouseEvent.MOUSE_RELEASED -> {
        runner.handle(new Event.Released(at));
        if (e.getClickCount() == 2) {
          runner.handle(new Event.DoubleClicked(at));
        }
      }
      default -> {}
    }
  }

  @Override
  public boolean key(KeyEvent e) {
    if (e.getID() == KeyEvent.KEY_TYPED) {
      return typed(e);
    }
    Event.Key key =
        switch (e.getKeyCode()) {
          case KeyEvent.VK_ENTER -> Event.Key.ENTER;
          case KeyEvent.VK_ESCAPE -> Event.Key.ESCAPE;
          case KeyEvent.VK_BACK_SPACE -> Event.Key.BACKSPACE;
          case KeyEvent.VK_DELETE -> Event.Key.DELETE;
          case KeyEvent.VK_UP, KeyEvent.VK_KP_UP -> Event.Key.UP;
          case KeyEvent.VK_DOWN, KeyEvent.VK_KP_DOWN -> Event.Key.DOWN;
          case KeyEvent.VK_LEFT, KeyEvent.VK_KP_LEFT -> Event.Key.LEFT;
          case KeyEvent.VK_RIGHT, KeyEvent.VK_KP_RIGHT -> Event.Key.RIGHT;
          case KeyEvent.VK_TAB -> Event.Key.TAB;
          case KeyEvent.VK_PAGE_DOWN -> Event.Key.NEXT;
          case KeyEvent.VK_PAGE_UP -> Event.Key.PREVIOUS;
          default -> null;
        };
    boolean newLine = key == Event.Key.ENTER && e.isShiftDown() && runner.wantsWords();
    if (newLine && e.getID() == KeyEvent.KEY_PRESSED) {
      return runner.type("\n");
    }
    if (key == null || e.getID() != KeyEvent.KEY_PRESSED || e.isControlDown()) {
      return false;
    }
    if (key == Event.Key.ESCAPE && !runner.previewing() && callOff.getAsBoolean()) {
      return true;
    }
    Now before = Now.of(runner);
    runner.handle(new Event.Pressing(key, held(e.getModifiersEx())));
    return follow(!MAY_BE_IDLE.contains(key) || !before.equals(Now.of(runner)));
  }

  /** What was pointed at or drawn by keys is to be seen. */
  private boolean follow(boolean taken) {
    if (taken) {
      keyed.run();
    }
    return taken;
  }

  /** Keys that mean something else where whoever draws has no use for them. */
  private static final Set<Event.Key> MAY_BE_IDLE =
      EnumSet.of(Event.Key.UP, Event.Key.DOWN, Event.Key.LEFT, Event.Key.RIGHT, Event.Key.TAB);

  /** What a key may have changed. */
  private record Now(ToolState state, Plan plan, Selection selection, String status) {
    static Now of(ToolRunner runner) {
      return new Now(
          runner.state(), runner.document().plan(), runner.document().selection(), runner.status());
    }
  }

  private boolean typed(KeyEvent e) {
    char c = e.getKeyChar();
    if (Character.isISOControl(c) || e.isControlDown() || e.isMetaDown() || e.isAltDown()) {
      return false;
    }
    boolean begun = !runner.entry().isEmpty() || runner.wantsWords();
    boolean begins = BEGINS_A_FIGURE.indexOf(c) >= 0 || c == '-' && runner.wantsAngle();
    if (runner.wantsText() && (begun || begins)) {
      return follow(runner.type(String.valueOf(c)));
    }
    if (Character.isDigit(c) && !runner.document().selection().isEmpty()) {
      return runner.type(String.valueOf(c)); // which says where figures can be typed
    }
    return letters.test(c);
  }

  @Override
  public boolean typing() {
    return !runner.entry().isEmpty() || runner.wantsWords();
  }

  @Override
  public boolean engaged() {
    return runner.engaged();
  }

  @Override
  public void menu(MouseEvent e, View view) {
    menu.accept(e, view);
  }

  private static Set<Modifier> held(int modifiers) {
    Set<Modifier> held = EnumSet.noneOf(Modifier.class);
    if ((modifiers & InputEvent.SHIFT_DOWN_MASK) != 0) {
      held.add(Modifier.SHIFT);
    }
    if ((modifiers & InputEvent.ALT_DOWN_MASK) != 0) {
      held.add(Modifier.ALT);
    }
    if ((modifiers & (InputEvent.CTRL_DOWN_MASK | InputEvent.META_DOWN_MASK)) != 0) {
      held.add(Modifier.CONTROL);
    }
    return held;
  }
}
