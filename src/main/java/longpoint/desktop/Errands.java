package longpoint.desktop;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import javax.swing.SwingWorker;
import longpoint.desktop.panel.StatusLine;

/**
 * Runs one errand at a time off the event thread, shows it in the status line and lets it be called
 * off. Nothing of one that was called off is told on.
 */
public final class Errands {
  private final StatusLine status;
  private Optional<Running<?>> running = Optional.empty();

  Errands(StatusLine status) {
    this.status = status;
  }

  /** Whether one is under way. */
  public boolean busy() {
    return running.isPresent();
  }

  /**
   * Runs an errand, unless one is under way. For the event thread.
   *
   * @param words what is going on
   * @param done given what came of it, on the event thread
   * @param failed given what went wrong, on the event thread
   */
  public <T> void run(
      String words, Errand<T> errand, Consumer<T> done, Consumer<Throwable> failed) {
    if (busy()) {
      return;
    }
    Running<T> worker = new Running<>(errand, done, failed);
    running = Optional.of(worker);
    status.work(words, 0, 0, this::callOff);
    worker.execute();
  }

  /** Calls off what is under way. */
  public void callOff() {
    running.ifPresent(r -> r.cancel(true));
  }

  private final class Running<T> extends SwingWorker<T, String> {
    private final Errand<T> errand;
    private final Consumer<T> well;
    private final Consumer<Throwable> failed;

    Running(Errand<T> errand, Consumer<T> well, Consumer<Throwable> failed) {
      this.errand = errand;
      this.well = well;
      this.failed = failed;
    }

    @Override
    protected T doInBackground() throws Exception {
      return errand.run(this::step);
    }

    private void step(String words, int done, int of) {
      if (isCancelled()) {
        throw new CancellationException();
      }
      SwingUtilities.invokeLater(
          () -> {
            if (running.orElse(null) == this) {
              status.work(words, done, of, Errands.this::callOff);
            }
          });
    }

    @Override
    protected void done() {
      running = Optional.empty();
      status.rest();
      try {
        well.accept(get());
      } catch (CancellationException calledOff) {
        status.state(Texts.of("state.calledOff"));
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      } catch (ExecutionException e) {
        failed.accept(e.getCause());
      }
    }
  }
}
