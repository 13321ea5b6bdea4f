package longpoint.desktop;

import java.util.concurrent.CompletableFuture;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import longpoint.desktop.canvas.PlanCanvas;

/** How the window looks: light or dark, as the desktop or not, and how large its lettering is. */
final class Appearance {
  /** Size of lettering, in points, that the sheet's own sizes are made for. */
  private static final double USUAL_TEXT = 15;

  private final JFrame frame;
  private final PlanCanvas canvas;
  private final Job job;
  private final Settings settings;
  private final Beside beside;
  private final Welcome welcome;
  private final Runnable changed;

  /**
   * @param changed called when the look's own switches stand otherwise
   */
  Appearance(
      JFrame frame,
      PlanCanvas canvas,
      Job job,
      Settings settings,
      Beside beside,
      Welcome welcome,
      Runnable changed) {
    this.changed = changed;
    this.frame = frame;
    this.canvas = canvas;
    this.job = job;
    this.settings = settings;
    this.beside = beside;
    this.welcome = welcome;
  }

  /** 1 for ordinary eyes, more for larger letters. */
  static double lettering(Settings settings) {
    return settings.textSize() / USUAL_TEXT;
  }

  /** Takes a look for good; the desktop's own is not followed any more. */
  void setTheme(Theme theme) {
    settings.setFollowing(false);
    wear(theme);
  }

  /** Takes the look of the desktop, now and at every start, or keeps the one there is. */
  void follow(boolean following) {
    settings.setFollowing(following);
    if (following) {
      followDesktop();
    }
    changed.run();
  }

  /** At the start: takes the look of the desktop where that has been chosen. */
  void followIfAsked() {
    if (settings.following()) {
      followDesktop();
    }
  }

  /** Asks the desktop, which takes a moment, and takes its look if it says. */
  private void followDesktop() {
    CompletableFuture.supplyAsync(SystemLook::ask)
        .thenAccept(
            look ->
                look.filter(l -> l != settings.theme())
                    .ifPresent(l -> SwingUtilities.invokeLater(() -> wear(l))));
  }

  private void wear(Theme theme) {
    settings.setTheme(theme);
    theme.install(settings.textSize());
    dress();
  }

  void setTextSize(int points) {
    settings.setTextSize(points);
    settings.theme().install(settings.textSize());
    dress();
  }

  private void dress() {
    SwingUtilities.updateComponentTreeUI(frame);
    canvas.setFont(UIManager.getFont("defaultFont"));
    canvas.setColours(settings.theme().canvas());
    canvas.setLetteringZoom(lettering(settings));
    beside.dress(settings.theme().canvas(), lettering(settings));
    welcome.dress();
    job.letterFor(new Job.Lettering(canvas.unitsPerMm(), canvas.aroundMm()));
    frame.revalidate();
    changed.run();
  }
}
