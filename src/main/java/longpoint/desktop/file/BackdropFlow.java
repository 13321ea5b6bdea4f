package longpoint.desktop.file;

import java.nio.file.Path;
import java.util.Locale;
import java.util.function.Supplier;
import longpoint.desktop.Errands;
import longpoint.desktop.Job;
import longpoint.desktop.Texts;
import longpoint.desktop.Trouble;
import longpoint.editor.MarkupCommands;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.editor.tools.PictureTools;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.picture.PictureException;
import longpoint.picture.PictureFile;
import longpoint.plan.Backdrop;
import longpoint.plan.EncodedImage;
import longpoint.plan.Extras;

/** The path of a picture from a file to behind the plan. */
public final class BackdropFlow {
  private static final double HALF = 0.5;

  private final Job job;
  private final Dialogs dialogs;
  private final Supplier<Bounds> seen;
  private final Errands errands;

  /**
   * @param seen the piece of plan in sight, which a new picture fills
   * @param errands runs what takes its time
   */
  public BackdropFlow(Job job, Dialogs dialogs, Supplier<Bounds> seen, Errands errands) {
    this.job = job;
    this.dialogs = dialogs;
    this.seen = seen;
    this.errands = errands;
  }

  /** Whether a file's name is that of a picture rather than of a plan. */
  public static boolean isPicture(Path file) {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    return name.matches(".*\\.(png|jpe?g|pdf)");
  }

  /** Asks which picture and lays it behind the plan. */
  public void load() {
    dialogs
        .pictureToOpen(job.file().map(p -> p.toAbsolutePath().getParent()))
        .ifPresent(this::load);
  }

  /** Lays a picture behind the plan, off the event thread; the sheet stays free meanwhile. */
  public void load(Path file) {
    String name = file.getFileName().toString();
    errands.run(
        Texts.of("state.picture"),
        progress -> PictureFile.read(file),
        image -> lay(image, name),
        why -> dialogs.tell(Texts.of("tell.noPicture", name), words(why)));
  }

  private static String words(Throwable why) {
    return why instanceof PictureException e
        ? Texts.of("picture.wrong." + e.reason().name().toLowerCase(Locale.ROOT))
        : Trouble.words(why);
  }

  /** In the middle of what is in sight; a picture that lay there gives its place to the new one. */
  private void lay(EncodedImage image, String name) {
    Bounds window = seen.get();
    double scale = Math.min(window.width() / image.width(), window.height() / image.height());
    Point half = new Point(image.width(), image.height()).times(scale / 2);
    Backdrop fresh =
        new Backdrop(
            name,
            image,
            window.middle().minus(half),
            scale,
            0,
            HALF,
            Backdrop.State.LOOSE,
            Extras.NONE);
    job.runner().apply(MarkupCommands.backdrop(fresh));
    job.runner().select(Selection.of(new Ref.OfBackdrop()));
    job.runner().choose(PictureTools.SCALE);
  }
}
