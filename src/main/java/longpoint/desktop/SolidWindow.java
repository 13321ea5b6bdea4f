package longpoint.desktop;

import java.awt.Window;
import javax.swing.JDialog;
import javax.swing.WindowConstants;
import longpoint.desktop.solid.SolidView;

/** The house from outside, in a small window of its own that stays beside the sheet. */
final class SolidWindow {
  private final SolidView view = new SolidView();
  private final JDialog dialog;
  private final Job job;

  SolidWindow(Window owner, Job job) {
    this.job = job;
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
    Window owner = dialog.getOwner();
    dialog.setLocation(
        owner.getX() + 130, owner.getY() + owner.getHeight() - dialog.getHeight() - 60);
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
