package longpoint.stop;

import java.util.concurrent.CancellationException;

/**
 * Ends work that nobody waits for any more. Whoever wants it to end interrupts the thread it runs
 * on; the work asks in every loop that can last, and ends here, with nothing half made kept.
 *
 * <p>The interrupt is what the platform has for this: it stops waiting and writing too, and a stage
 * needs no word about who runs it. The thread stays interrupted, so that whatever is tried instead
 * ends as well.
 */
public final class CalledOff extends CancellationException {
  private static final long serialVersionUID = 1;

  private CalledOff() {
    super("called off");
  }

  /**
   * Goes on, unless this thread has been interrupted.
   *
   * @throws CalledOff if it has
   */
  public static void check() {
    if (Thread.currentThread().isInterrupted()) {
      throw new CalledOff();
    }
  }
}
