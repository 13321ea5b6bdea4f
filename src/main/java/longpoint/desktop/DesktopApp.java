package longpoint.desktop;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.SwingUtilities;
import longpoint.desktop.file.PacketWriter;
import longpoint.desktop.file.Places;
import longpoint.desktop.file.SwingDialogs;
import longpoint.plan.Plan;
import longpoint.planfile.Opened;
import longpoint.units.LengthUnit;

/** Front door of the window. */
public final class DesktopApp {
  private DesktopApp() {}

  /**
   * Opens the window and returns when it shows; the program then lives until the window is closed.
   *
   * @param plan file to open, if any; one that cannot be read is said so in the window
   * @param packets writes what goes out
   * @throws NoDisplayException when there is no screen, with a sentence for the user
   */
  public static void open(Optional<Path> plan, PacketWriter packets) throws NoDisplayException {
    EarlyWork.begin();
    Optional<PlanAhead> ahead = plan.map(PlanAhead::new);
    needDisplay();
    EarlyWork.beginPainting();
    onEventThread(() -> start(ahead, packets));
  }

  /** A display that is named but dead throws AWTError, no display HeadlessException. */
  private static void needDisplay() throws NoDisplayException {
    try {
      if (GraphicsEnvironment.isHeadless()) {
        throw new HeadlessException();
      }
      GraphicsEnvironment.getLocalGraphicsEnvironment().getDefaultScreenDevice();
    } catch (AWTError | HeadlessException | NoClassDefFoundError | UnsatisfiedLinkError e) {
      throw new NoDisplayException(e);
    }
  }

  private static void start(Optional<PlanAhead> ahead, PacketWriter packets) {
    Settings settings = Settings.ofUser();
    settings.theme().install(settings.textSize());
    Optional<Opened> plan = ahead.flatMap(PlanAhead::soon);
    Opening opening =
        new Opening(
            settings,
            sight ->
                new MainWindow(
                    sight,
                    new Job(plan.map(Opened::plan).orElse(Plan.empty(LengthUnit.INCH))),
                    settings,
                    SwingDialogs::new,
                    packets,
                    Places.drafts()));
    if (plan.isPresent()) {
      opening.sight().show(plan.get().plan());
      opening.onWorks(window -> window.files().take(ahead.get().path(), plan.get()));
    } else if (ahead.isPresent()) {
      opening.onWhole(window -> window.files().open(ahead.get().path()));
    } else {
      opening.sight().offer();
      opening.onWhole(window -> window.drafts().offer(window.dialogs()));
    }
    opening.onWhole(window -> window.appearance().followIfAsked());
    opening.show();
  }

  private static void onEventThread(Runnable work) {
    try {
      SwingUtilities.invokeAndWait(work);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (InvocationTargetException e) {
      throw new IllegalStateException(e.getCause());
    }
  }
}
