package longpoint.desktop;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import javax.swing.SwingUtilities;
import longpoint.stop.CalledOff;

/**
 * Works things out off the event thread, one at a time. While it works only the newest request
 * waits; older ones are forgotten, so that a drag never runs behind the pointer. What is being
 * worked on can be called off too: its thread is interrupted, and nothing comes of it.
 *
 * @param <Q> request
 * @param <A> answer
 */
public final class Engine<Q, A> implements AutoCloseable {
  private final Function<Q, A> work;
  private final Consumer<A> answers;
  private final Consumer<Throwable> failures;
  private final Consumer<Q> ends;
  private final AtomicReference<Q> waiting = new AtomicReference<>();

  /** Held while a request is taken up, put down or called off, so that no other one is hit. */
  private final Object turn = new Object();

  private Q inHand;
  private Thread worker;
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
    this(work, answers, failures, request -> {});
  }

  /**
   * As the other.
   *
   * @param ends called on the event thread with a request that was called off
   */
  Engine(Function<Q, A> work, Consumer<A> answers, Consumer<Throwable> failures, Consumer<Q> ends) {
    this.work = work;
    this.answers = answers;
    this.failures = failures;
    this.ends = ends;
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

  /**
   * Calls off what is being worked on.
   *
   * @param which asked whether that is the one
   */
  void callOff(Predicate<Q> which) {
    synchronized (turn) {
      if (inHand != null && which.test(inHand)) {
        worker.interrupt();
      }
    }
  }

  /** Calls off what is being worked on and what waits. */
  void callOff() {
    waiting.set(null);
    callOff(request -> true);
  }

  private void answer() {
    Q request = waiting.getAndSet(null);
    if (request == null) {
      return; // called off while it waited
    }
    synchronized (turn) {
      inHand = request;
      worker = Thread.currentThread();
    }
    try {
      answer(request);
    } finally {
      synchronized (turn) {
        inHand = null;
        Thread.interrupted(); // one that came too late must not hit the next
      }
    }
  }

  private void answer(Q request) {
    try {
      A answer = work.apply(request);
      SwingUtilities.invokeLater(() -> answers.accept(answer));
    } catch (CalledOff off) {
      SwingUtilities.invokeLater(() -> ends.accept(request));
    } catch (RuntimeException | StackOverflowError | AssertionError broken) {
      SwingUtilities.invokeLater(() -> failures.accept(broken));
    }
  }

  @Override
  public void close() {
    thread.shutdownNow();
  }
}
