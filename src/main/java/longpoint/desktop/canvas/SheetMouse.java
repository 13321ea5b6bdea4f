package longpoint.desktop.canvas;

import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import javax.swing.SwingUtilities;
import javax.swing.event.MouseInputAdapter;

/** Hands what the mouse does on the sheet to its navigation, or else to whoever draws. */
final class SheetMouse extends MouseInputAdapter {
  private final PlanCanvas canvas;
  private final Navigation navigation;
  private final EdgePan edge;

  SheetMouse(PlanCanvas canvas, Navigation navigation) {
    this.canvas = canvas;
    this.navigation = navigation;
    this.edge = new EdgePan(canvas, e -> canvas.gestures().pointer(e, canvas.view()));
  }

  @Override
  public void mousePressed(MouseEvent e) {
    canvas.requestFocusInWindow();
    take(e);
  }

  @Override
  public void mouseReleased(MouseEvent e) {
    take(e);
  }

  @Override
  public void mouseMoved(MouseEvent e) {
    take(e);
  }

  @Override
  public void mouseDragged(MouseEvent e) {
    take(e);
  }

  @Override
  public void mouseExited(MouseEvent e) {
    canvas.setPointer(null);
  }

  @Override
  public void mouseWheelMoved(MouseWheelEvent e) {
    navigation.wheel(e);
  }

  private void take(MouseEvent e) {
    canvas.setPointer(e.getPoint());
    Gestures gestures = canvas.gestures();
    if (!navigation.takes(e) && gestures != null) {
      if (e.isPopupTrigger()) {
        gestures.menu(e, canvas.view());
      } else if (e.getID() == MouseEvent.MOUSE_MOVED || SwingUtilities.isLeftMouseButton(e)) {
        gestures.pointer(e, canvas.view());
        edge.follow(e);
      }
    }
    canvas.repaint();
  }
}
