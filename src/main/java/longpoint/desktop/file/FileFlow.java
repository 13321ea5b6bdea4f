package longpoint.desktop.file;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longpoint.desktop.Job;
import longpoint.desktop.Samples;
import longpoint.desktop.Settings;
import longpoint.desktop.Texts;
import longpoint.plan.Plan;
import longpoint.planfile.Opened;
import longpoint.planfile.PlanFile;
import longpoint.planfile.PlanFileException;
import longpoint.units.LengthUnit;

/** The paths a plan takes between window and disk. */
public final class FileFlow {
  private final Job job;
  private final Settings settings;
  private final Dialogs dialogs;
  private final Runnable opened;

  /**
   * @param opened called when another plan has been opened
   */
  public FileFlow(Job job, Settings settings, Dialogs dialogs, Runnable opened) {
    this.job = job;
    this.settings = settings;
    this.dialogs = dialogs;
    this.opened = opened;
  }

  /** Starts an empty plan. */
  public void start(LengthUnit unit) {
    if (mayLeave()) {
      job.open(Plan.empty(unit), Optional.empty(), List.of());
      opened.run();
    }
  }

  /** Asks which plan and opens it. */
  public void open() {
    if (mayLeave()) {
      dialogs.planToOpen(near()).ifPresent(this::read);
    }
  }

  /** Opens a plan that has been chosen already: from the recent ones, or dropped on the window. */
  public void open(Path path) {
    if (mayLeave()) {
      read(path);
    }
  }

  /** Opens a sample that comes with the program; saving it asks where. */
  public void sample(String name) {
    if (mayLeave()) {
      try {
        Opened found = Aside.call(() -> Samples.read(name));
        job.open(found.plan(), Optional.empty(), found.notes());
        opened.run();
      } catch (PlanFileException e) {
        throw new IllegalStateException("a sample that comes with the program", e);
      }
    }
  }

  private void read(Path path) {
    Plan before = job.document().plan();
    try {
      Opened found = Aside.call(() -> PlanFile.read(path));
      if (job.document().plan() != before && !mayLeave()) {
        return; // drawn on while the disk took its time
      }
      take(path, found);
    } catch (PlanFileException e) {
      dialogs.tell(Texts.of("tell.notOpened", path.getFileName()), e.message(Texts.language()));
    }
  }

  /** Goes on with a plan that has been read already. */
  public void take(Path path, Opened found) {
    boolean own = found.source() == Opened.Source.PLAN;
    job.open(found.plan(), own ? Optional.of(path) : Optional.empty(), found.notes());
    settings.addRecent(path);
    opened.run();
  }

  /**
   * Saves to the plan's own file, or asks where.
   *
   * @return whether the plan is on the disk now
   */
  public boolean save() {
    return job.file().map(this::write).orElseGet(this::saveAs);
  }

  /** Asks where, and saves there. */
  public boolean saveAs() {
    return dialogs.planToSave(job.file().orElseGet(this::suggested)).map(this::write).orElse(false);
  }

  private boolean write(Path path) {
    Plan plan = job.document().plan();
    try {
      Aside.call(
          () -> {
            PlanFile.write(plan, path);
            return path;
          });
    } catch (PlanFileException e) {
      dialogs.tell(Texts.of("tell.notSaved"), e.message(Texts.language()));
      return false;
    }
    job.saved(plan, path);
    settings.addRecent(path);
    return true;
  }

  /** A file name made of the title: letters, digits and hyphens only. */
  public Path suggested() {
    String title = job.document().plan().title().strip().toLowerCase(Locale.ROOT);
    String name = title.replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
    Path folder = near().orElse(Path.of(System.getProperty("user.home")));
    return folder.resolve((name.isEmpty() ? Texts.of("file.untitled") : name) + ".json");
  }

  private Optional<Path> near() {
    return job.file()
        .or(() -> settings.recent().stream().findFirst())
        .map(p -> p.toAbsolutePath().getParent());
  }

  /** Whether the plan may be left: it is saved, or the user said what to do with it. */
  public boolean mayLeave() {
    if (!job.document().isDirty()) {
      return true;
    }
    return switch (dialogs.unsaved(job.title())) {
      case SAVE -> save();
      case DISCARD -> true;
      case STAY -> false;
    };
  }
}
