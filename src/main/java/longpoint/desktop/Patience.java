package longpoint.desktop;

import javax.swing.Timer;
import longpoint.desktop.panel.StatusLine;
import longpoint.pipeline.Pipeline;

/**
 * Shows what the engine is at when that takes longer than a moment, how far it has come, and lets
 * it be called off. A roof that is there at once shows nothing, so that nothing flickers.
 */
final class Patience {
  private static final int A_MOMENT_MILLIS = 500;
  private static final int AGAIN_MILLIS = 150;

  private final Job job;
  private final Errands errands;
  private final StatusLine status;
  private final Timer timer = new Timer(AGAIN_MILLIS, e -> tell());
  private boolean telling;

  Patience(Job job, Errands errands, StatusLine status) {
    this.job = job;
    this.errands = errands;
    this.status = status;
    timer.setInitialDelay(A_MOMENT_MILLIS);
  }

  /** Follows the engine. For the event thread. */
  void follow() {
    if (!job.isUpToDate()) {
      if (!timer.isRunning()) {
        timer.start();
      }
      return;
    }
    timer.stop();
    if (telling && !errands.busy()) {
      status.rest();
    }
    telling = false;
  }

  private void tell() {
    if (job.runner().previewing() || errands.busy()) {
      return; // a roof follows the pointer; an errand says what it is at itself
    }
    telling = true;
    String words = job.stage().map(Errand.Watch::words).orElseGet(() -> Texts.of("state.working"));
    int done = job.stage().map(Pipeline.Stage::ordinal).orElse(0);
    int of = job.stage().isPresent() ? Pipeline.Stage.values().length : 0;
    status.work(words, done, of, job::callOff);
  }

  /**
   * Calls off what is shown to take its time, an errand or the engine.
   *
   * @return whether there was anything
   */
  boolean callOff() {
    if (errands.busy()) {
      errands.callOff();
      return true;
    }
    if (telling) {
      job.callOff();
      return true;
    }
    return false;
  }

  void close() {
    timer.stop();
  }
}
