package longpoint.desktop.file;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import longpoint.desktop.Job;
import longpoint.desktop.Texts;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFileException;
import longpoint.planfile.Recovery;

/**
 * Keeps a draft of the plan while it is not saved, a moment after each change and off the event
 * thread, and offers at the start what a crash left behind. When no draft can be kept that is said
 * once, and the work goes on.
 */
public final class Drafts implements AutoCloseable {
  /** A change is kept when no other has followed it for so long, in milliseconds. */
  private static final int REST = 1500;

  private final Job job;
  private final Recovery recovery;
  private final Consumer<String> trouble;
  private final ExecutorService writer =
      Executors.newSingleThreadExecutor(
          r -> {
            Thread t = new Thread(r, "drafts");
            t.setDaemon(true);
            return t;
          });
  private final Timer rest = new Timer(REST, e -> keep());
  private Optional<Recovery.Draft> draft = Optional.empty();
  private Plan seen;
  private boolean told;

  /**
   * @param trouble told in words when drafts cannot be kept
   */
  public Drafts(Job job, Path folder, Consumer<String> trouble) {
    this.job = job;
    this.recovery = new Recovery(folder);
    this.trouble = trouble;
    this.seen = job.document().plan();
    rest.setRepeats(false);
    job.document().onChange(this::changed);
  }

  private void changed() {
    if (!job.document().isDirty()) {
      rest.stop();
      seen = job.document().plan();
      draft.ifPresent(d -> inBackground(d::clear));
    } else if (job.document().plan() != seen) {
      seen = job.document().plan();
      rest.restart();
    }
  }

  /** Keeps the plan now; waiting for the rest is what the timer is for. */
  void keep() {
    Plan plan = job.document().plan();
    Optional<Path> file = job.file();
    inBackground(() -> open().keep(plan, file));
  }

  /** Runs on the writer's thread only. */
  private Recovery.Draft open() throws PlanFileException {
    if (draft.isEmpty()) {
      draft = Optional.of(recovery.draft());
    }
    return draft.get();
  }

  private interface Work {
    void run() throws PlanFileException;
  }

  private void inBackground(Work work) {
    if (writer.isShutdown()) {
      return;
    }
    writer.execute(
        () -> {
          try {
            work.run();
          } catch (PlanFileException e) {
            SwingUtilities.invokeLater(() -> tell(e.message(Texts.language())));
          }
        });
  }

  private void tell(String words) {
    if (!told) {
      told = true;
      trouble.accept(words);
    }
  }

  /**
   * Offers each draft that was left behind until one is opened.
   *
   * @param dialogs asks what to do with it
   * @return whether one was opened
   */
  public boolean offer(Dialogs dialogs) {
    try {
      for (Recovery.Left left : recovery.left()) {
        switch (dialogs.leftDraft(left.plan().title())) {
          case OPEN -> {
            job.recover(left.plan(), left.file());
            // Kept under the new draft's own name before the old one goes.
            inBackground(
                () -> {
                  open().keep(left.plan(), left.file());
                  recovery.forget(left);
                });
            return true;
          }
          case FORGET -> recovery.forget(left);
          case LATER -> {}
        }
      }
    } catch (PlanFileException e) {
      tell(e.message(Texts.language()));
    }
    return false;
  }

  /** The window closes on purpose: nothing is left behind. */
  @Override
  public void close() {
    rest.stop();
    draft.ifPresent(d -> inBackground(d::close));
    writer.shutdown();
  }
}
