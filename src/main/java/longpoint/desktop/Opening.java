package longpoint.desktop;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import longpoint.desktop.file.Dialogs;
import longpoint.desktop.file.PacketWriter;

/**
 * Opens the window in stages. The first sight is shown and painted; then come the works behind it
 * and each {@link Stage}, an event apiece, so that nothing the user does waits for long. Whoever
 * presses a key or a button earlier gets the rest of the window at once, and then what he pressed
 * does its thing. For the event thread.
 */
final class Opening {
  private final Function<FirstSight, MainWindow> maker;
  private final FirstSight sight;
  private final Deque<Stage> left = new ArrayDeque<>(List.of(Stage.values()));
  private Optional<EarlyPresses> presses = Optional.empty();
  private Optional<MainWindow> window = Optional.empty();
  private final List<Consumer<MainWindow>> withWorks = new ArrayList<>();
  private final List<Consumer<MainWindow>> atLast = new ArrayList<>();

  /**
   * @param maker makes the works of the window behind its first sight
   */
  Opening(Settings settings, Function<FirstSight, MainWindow> maker) {
    this.maker = maker;
    sight = new FirstSight(settings, this::whole);
  }

  /** A window with everything in it from the first, which does not show yet. */
  static MainWindow atOnce(
      Job job,
      Settings settings,
      Function<JFrame, Dialogs> dialogs,
      PacketWriter packets,
      Path draftFolder) {
    Opening opening =
        new Opening(
            settings, sight -> new MainWindow(sight, job, settings, dialogs, packets, draftFolder));
    return opening.whole();
  }

  FirstSight sight() {
    return sight;
  }

  /** Has something done as soon as the works behind the window are there. */
  void onWorks(Consumer<MainWindow> work) {
    withWorks.add(work);
  }

  /** Has something done once the window is whole, as an event of its own. */
  void onWhole(Consumer<MainWindow> work) {
    atLast.add(work);
  }

  /** Shows the first sight, and the rest after it. */
  void show() {
    presses = Optional.of(new EarlyPresses());
    Toolkit.getDefaultToolkit().getSystemEventQueue().push(presses.get());
    sight
        .canvas()
        .onFirstPaint(
            () -> {
              EarlyWork.beginStages();
              SwingUtilities.invokeLater(this::goOn);
            });
    sight.frame().setVisible(true);
  }

  private void goOn() {
    if (!isWhole()) {
      step();
      SwingUtilities.invokeLater(this::goOn);
    }
  }

  boolean isWhole() {
    return window.isPresent() && left.isEmpty();
  }

  private void step() {
    if (window.isEmpty()) {
      MainWindow made = maker.apply(sight);
      window = Optional.of(made);
      withWorks.forEach(w -> w.accept(made));
      return;
    }
    left.remove().of(window.get());
    if (left.isEmpty()) {
      presses.ifPresent(EarlyPresses::done);
      atLast.forEach(w -> SwingUtilities.invokeLater(() -> w.accept(window.get())));
    }
  }

  /** The window with everything in it, made now if it is not there yet. */
  MainWindow whole() {
    while (!isWhole()) {
      step();
    }
    sight.frame().validate();
    return window.get();
  }

  /** Makes the window whole before the first press of anything reaches it. */
  private final class EarlyPresses extends EventQueue {
    private static final Set<Integer> PRESSES =
        Set.of(KeyEvent.KEY_PRESSED, MouseEvent.MOUSE_PRESSED, WindowEvent.WINDOW_CLOSING);

    @Override
    protected void dispatchEvent(AWTEvent event) {
      if (PRESSES.contains(event.getID())) {
        whole();
      }
      super.dispatchEvent(event);
    }

    void done() {
      pop();
    }
  }
}
