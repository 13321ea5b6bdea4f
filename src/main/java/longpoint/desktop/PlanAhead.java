package longpoint.desktop;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import longpoint.planfile.Opened;
import longpoint.planfile.PlanFile;

/**
 * The plan the program was started with, read while the toolkit and the look are loaded: its walls
 * are to be seen first. A disk that takes its time, or a file that cannot be read, holds up no
 * window: then the plan is opened in the ordinary way once the window is whole.
 */
final class PlanAhead {
  /** The longest that the first sight waits for the plan. */
  private static final int PATIENCE_MILLIS = 400;

  private final Path path;
  private final FutureTask<Opened> reading;

  /** Begins to read. */
  PlanAhead(Path path) {
    this.path = path;
    reading = new FutureTask<>(() -> PlanFile.read(path));
    Thread thread = new Thread(reading, "plan ahead");
    thread.setDaemon(true);
    thread.start();
  }

  Path path() {
    return path;
  }

  /** The plan, if it can be had while the first sight waits. */
  Optional<Opened> soon() {
    try {
      return Optional.of(reading.get(PATIENCE_MILLIS, TimeUnit.MILLISECONDS));
    } catch (ExecutionException | TimeoutException e) {
      return Optional.empty();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
  }
}
