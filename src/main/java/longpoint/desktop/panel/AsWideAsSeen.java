package longpoint.desktop.panel;

import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.Scrollable;

/** What scrolls up and down only: long words never push it past the edge of what is seen. */
final class AsWideAsSeen extends JPanel implements Scrollable {
  private static final long serialVersionUID = 1;
  private static final int STEP = 24;

  AsWideAsSeen() {
    setOpaque(false);
  }

  @Override
  public Dimension getPreferredScrollableViewportSize() {
    return getPreferredSize();
  }

  @Override
  public int getScrollableUnitIncrement(Rectangle seen, int orientation, int direction) {
    return STEP;
  }

  @Override
  public int getScrollableBlockIncrement(Rectangle seen, int orientation, int direction) {
    return Math.max(STEP, seen.height - STEP);
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return true;
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return false;
  }
}
