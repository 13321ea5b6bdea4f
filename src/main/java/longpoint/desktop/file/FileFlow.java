package longpoint.desktop.file;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import javax.swing.SwingWorker;
import longpoint.desktop.Job;
import longpoint.desktop.Settings;
import longpoint.desktop.Texts;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
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
  private final PacketWriter packets;
  private final Runnable opened;
  private final Consumer<String> progress;

  /**
   * @param opened called when another plan has been opened
   * @param progress told what is going on in a few words, empty when it is done
   */
  public FileFlow(
      Job job,
      Settings settings,
      Dialogs dialogs,
      PacketWriter packets,
      Runnable opened,
      Consumer<String> progress) {
    this.job = job;
    this.settings = settings;
    this.dialogs = dialogs;
    this.packets = packets;
    this.opened = opened;
    this.progress = progress;
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

  private void read(Path path) {
    try {
      Opened found = PlanFile.read(path);
      boolean own = found.source() == Opened.Source.PLAN;
      job.open(found.plan(), own ? Optional.of(path) : Optional.empty(), found.notes());
      settings.addRecent(path);
      opened.run();
    } catch (PlanFileException e) {
      dialogs.tell(Texts.of("tell.notOpened", path.getFileName()), e.getMessage());
    }
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
      PlanFile.write(plan, path);
    } catch (PlanFileException e) {
      dialogs.tell(Texts.of("tell.notSaved"), e.getMessage());
      return false;
    }
    job.saved(plan, path);
    settings.addRecent(path);
    return true;
  }

  /** A file name made of the title: letters, digits and hyphens only. */
  private Path suggested() {
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

  /** Asks for a folder and writes the packet there, off the event thread. */
  public void packet() {
    Path beside = job.file().orElseGet(this::suggested).toAbsolutePath();
    String name = beside.getFileName().toString().replaceAll("\\.json$", "");
    dialogs
        .packetFolder(beside.resolveSibling(name + "-" + Texts.of("file.packet")))
        .ifPresent(this::writePacket);
  }

  private void writePacket(Path folder) {
    Plan plan = job.document().plan();
    progress.accept(Texts.of("state.packet"));
    new SwingWorker<List<Path>, Void>() {
      @Override
      protected List<Path> doInBackground() throws IOException {
        Design design = Pipeline.solve(plan);
        return packets.write(design, folder);
      }

      @Override
      protected void done() {
        progress.accept("");
        try {
          dialogs.tell(
              Texts.of("tell.packet"), Texts.of("tell.packet.words", get().size(), folder));
        } catch (InterruptedException e) {
          Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
          dialogs.tell(Texts.of("tell.noPacket"), String.valueOf(e.getCause().getMessage()));
        }
      }
    }.execute();
  }
}
