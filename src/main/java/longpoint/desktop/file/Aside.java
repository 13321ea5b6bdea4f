package longpoint.desktop.file;

import java.awt.EventQueue;
import java.awt.SecondaryLoop;
import java.awt.Toolkit;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import longpoint.planfile.PlanFileException;

/**
 * Reads and writes plans on a thread of their own while the caller waits and the window goes on: a
 * disk or a network folder may take its time. As with a dialog, events are handled meanwhile.
 */
final class Aside {
  private Aside() {}

  /** What is done with a file. */
  @FunctionalInterface
  interface Work<T> {
    T run() throws PlanFileException;
  }

  static <T> T call(Work<T> work) throws PlanFileException {
    if (!EventQueue.isDispatchThread()) {
      return work.run();
    }
    SecondaryLoop loop = Toolkit.getDefaultToolkit().getSystemEventQueue().createSecondaryLoop();
    FutureTask<T> task = new FutureTask<>(work::run);
    Thread thread =
        new Thread(
            () -> {
              task.run();
              while (!loop.exit()) {
                Thread.onSpinWait(); // it has not been entered yet
              }
            },
            "plan file");
    thread.start();
    loop.enter();
    return result(task);
  }

  private static <T> T result(FutureTask<T> task) throws PlanFileException {
    try {
      return task.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof PlanFileException trouble) {
        throw trouble;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
