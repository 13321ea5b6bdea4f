package longpoint.desktop;

import java.util.concurrent.CancellationException;
import longpoint.pipeline.Pipeline;

/**
 * Work that takes its time, done off the event thread. It is called off by an interrupt, as all
 * work of the engine is.
 *
 * @param <T> what comes of it
 */
@FunctionalInterface
public interface Errand<T> {
  /** Told how far the work has come; this is where it stops when it has been called off. */
  @FunctionalInterface
  interface Watch {
    /**
     * @param words what is being done, a few of them
     * @param done how much of it, at most {@code of}
     * @param of how much there is; 0 if nobody can say
     * @throws CancellationException when the user has called the work off
     */
    void step(String words, int done, int of);

    /** As the other, where nobody can say how much there is. */
    default void step(String words) {
      step(words, 0, 0);
    }

    /** A stage of working out a plan has begun. */
    default void stage(Pipeline.Stage stage) {
      step(words(stage), stage.ordinal(), Pipeline.Stage.values().length);
    }

    /** What a stage is called while it lasts. */
    static String words(Pipeline.Stage stage) {
      return Texts.of("state.stage." + stage);
    }
  }

  /**
   * Does the work.
   *
   * @throws Exception with words for the user
   */
  T run(Watch watch) throws Exception;
}
