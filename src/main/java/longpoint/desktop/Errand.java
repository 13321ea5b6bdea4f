package longpoint.desktop;

import java.util.concurrent.CancellationException;

/**
 * Work that takes its time, done off the event thread.
 *
 * @param <T> what comes of it
 */
@FunctionalInterface
public interface Errand<T> {
  /** Told how far the work has come; this is where it stops when it has been called off. */
  interface Watch {
    /**
     * @param words what is being done, a few of them
     * @throws CancellationException when the user has called the work off
     */
    void step(String words);
  }

  /**
   * Does the work.
   *
   * @throws Exception with words for the user
   */
  T run(Watch watch) throws Exception;
}
