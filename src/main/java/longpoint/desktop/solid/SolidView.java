package longpoint.desktop.solid;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.RenderingHints;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.image.BufferedImage;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.event.MouseInputAdapter;
import longpoint.desktop.canvas.CanvasColours;
import longpoint.geometry.Point3;
import longpoint.pipeline.Design;

/**
 * The house to turn with the mouse: drag turns and tilts it, the wheel brings it nearer, a double
 * click shows all of it again. Follows the plan while it is drawn.
 */
public final class SolidView extends JPanel {
  private static final long serialVersionUID = 1;

  /** Painted at twice the size and brought down, which smooths every edge. */
  private static final int FINE = 2;

  private static final double DEGREES_PER_PIXEL = 0.5;
  private static final double ZOOM_PER_CLICK = 1.15;

  /** Share of the window that the house takes up. */
  private static final double FILL = 0.82;

  private transient SolidScene scene = new SolidScene(List.of(), List.of());
  private transient CanvasColours colours = CanvasColours.light();
  private double turn = -30;
  private double tilt = 32;
  private double zoom = 1;
  private transient Point drag;

  public SolidView() {
    setName("solid");
    setBorder(BorderFactory.createLineBorder(Color.GRAY));
    setPreferredSize(new Dimension(500, 360));
    Mouse mouse = new Mouse();
    addMouseListener(mouse);
    addMouseMotionListener(mouse);
    addMouseWheelListener(mouse);
  }

  public void show(Design design) {
    scene = SolidScene.of(design);
    repaint();
  }

  public void setColours(CanvasColours colours) {
    this.colours = colours;
    repaint();
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    int w = Math.max(1, getWidth() * FINE);
    int h = Math.max(1, getHeight() * FINE);
    BufferedImage image = SolidPainter.paint(scene, w, h, stand(w, h), colours);
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.drawImage(image, 0, 0, getWidth(), getHeight(), null);
    g.dispose();
  }

  /** The whole house in the window, whichever way it is turned, times the zoom. */
  private Stand stand(int w, int h) {
    double[] low = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    double[] high = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
    for (Face face : scene.faces()) {
      for (Point3 p : face.rings().get(0)) {
        double[] at = {p.x(), p.y(), p.z()};
        for (int i = 0; i < 3; i++) {
          low[i] = Math.min(low[i], at[i]);
          high[i] = Math.max(high[i], at[i]);
        }
      }
    }
    if (low[0] > high[0]) {
      return new Stand(turn, tilt, 1, new Point3(0, 0, 0), w / 2.0, h / 2.0);
    }
    Point3 centre =
        new Point3((low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2);
    Stand plain = new Stand(turn, tilt, 1, centre, 0, 0);
    double across = 1;
    double up = 1;
    double[] out = new double[3];
    for (Face face : scene.faces()) {
      for (Point3 p : face.rings().get(0)) {
        plain.project(p, out);
        across = Math.max(across, Math.abs(out[0]));
        up = Math.max(up, Math.abs(out[1]));
      }
    }
    double scale = FILL * zoom * Math.min(w / 2.0 / across, h / 2.0 / up);
    return new Stand(turn, tilt, scale, centre, w / 2.0, h / 2.0);
  }

  private final class Mouse extends MouseInputAdapter {
    @Override
    public void mousePressed(MouseEvent e) {
      drag = e.getPoint();
      if (e.getClickCount() == 2) {
        zoom = 1;
        repaint();
      }
    }

    @Override
    public void mouseDragged(MouseEvent e) {
      turn += (e.getX() - drag.x) * DEGREES_PER_PIXEL;
      tilt = Math.max(0, Math.min(90, tilt + (e.getY() - drag.y) * DEGREES_PER_PIXEL));
      drag = e.getPoint();
      repaint();
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent e) {
      zoom =
          Math.max(
              0.2, Math.min(20, zoom * Math.pow(ZOOM_PER_CLICK, -e.getPreciseWheelRotation())));
      repaint();
    }
  }
}
