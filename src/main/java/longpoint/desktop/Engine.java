package longpoint.desktop;

import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.SwingUtilities;

/**
 * Works things out off the event thread, one at a time. While it works only the newest request
 * waits; older ones are forgotten, so that a drag never runs behind the pointer.
 *
 * @param <Q> request
 * @param <A> answer
 */
public final class Engine<Q, A> implements AutoCloseable {
  private final Function<Q, A> work;
  private final Consumer<A> answers;
  private final Consumer<Throwable> failures;
  private final AtomicReference<Q> waiting = new AtomicReference<>();
  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(
          r -> {
            Thread t = new Thread(r, "engine");
            t.setDaemon(true);
            return t;
          });

  /**
   * @param work runs on the engine's own thread
   * @param answers called on the event thread
   * @param failures called on the event thread when the work breaks, which is a bug in it
   */
  public Engine(Function<Q, A> work, Consumer<A> answers, Consumer<Throwable> failures) {
    this.work = work;
    this.answers = answers;
    this.failures = failures;
  }

  /** Asks; an earlier request still waiting is dropped. */
  public void ask(Q request) {
    if (waiting.getAndSet(request) == null && !thread.isShutdown()) {
      thread.execute(this::answer);
    }
  }

  /** What to do with a break nobody can do anything about: it shows up as any bug does. */
  public static void bug(Throwable broken) {
    throw new IllegalStateException(broken);
  }

  /** The request that waits while another is worked on. */
  Optional<Q> waiting() {
    return Optional.ofNullable(waiting.get());
  }

  private void answer() {
    Q request = waiting.getAndSet(null);
    try {
      A answer = work.apply(request);
      SwingUtilities.invokeLater(() -> answers.accept(answer));
    } catch (RuntimeException | StackOverflowError | AssertionError broken) {
      SwingUtilities.invokeLater(() -> failures.accept(broken));
    }
  }

  @Override
  public void close() {
    thread.shutdownNow();
  }
}
