package longpoint.desktop;

import java.awt.Component;
import java.awt.Window;
import javax.swing.JDialog;
import javax.swing.WindowConstants;
import longpoint.desktop.solid.SolidView;

/** The house from outside, in a small window of its own that stays beside the sheet. */
final class SolidWindow {
  private final SolidView view = new SolidView();
  private final JDialog dialog;
  private final Job job;
  private final Component beside;

  /**
   * @param beside the sheet, in whose lower right corner it opens
   */
  SolidWindow(Window owner, Job job, Component beside) {
    this.job = job;
    this.beside = beside;
    dialog = new JDialog(owner, Texts.of("task.view.solid"));
    dialog.setName("solid.window");
    dialog.setDefaultCloseOperation(WindowConstants.HIDE_ON_CLOSE);
    dialog.add(view);
    dialog.pack();
    view.getAccessibleContext().setAccessibleName(Texts.of("task.view.solid"));
    job.onPicture(this::picture);
  }

  boolean isShown() {
    return dialog.isVisible();
  }

  /** Opens or closes it. */
  void turnOver(Theme theme) {
    if (isShown()) {
      dialog.setVisible(false);
      return;
    }
    view.setColours(theme.canvas());
    view.show(job.picture().design());
    dialog.setLocation(
        beside.getLocationOnScreen().x + beside.getWidth() - dialog.getWidth() - 20,
        beside.getLocationOnScreen().y + beside.getHeight() - dialog.getHeight() - 20);
    dialog.setFocusableWindowState(false); // letters go on to the sheet
    dialog.setVisible(true);
  }

  private void picture() {
    if (isShown()) {
      view.show(job.picture().design());
    }
  }

  void dress(Theme theme) {
    view.setColours(theme.canvas());
  }

  SolidView view() {
    return view;
  }
}
