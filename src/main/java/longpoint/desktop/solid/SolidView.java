package longpoint.desktop.solid;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import longpoint.desktop.canvas.CanvasColours;
import longpoint.sheets.solid.RoofSolid;

/**
 * The house to turn: by dragging, by the arrow keys, or to a view that has a name. Never waits for
 * anything: whoever has a newer house sets it. For the event thread only.
 */
public final class SolidView extends JComponent {
  private static final long serialVersionUID = 1;

  /** From here on a screen's pixels are so small that one a pixel is fine enough. */
  private static final double SMALL_PIXELS = 1.5;

  /** Share of the view that the house takes up. */
  private static final double FILL = 0.84;

  /** Share it may grow to while it is turned. */
  private static final double TURNING = 0.96;

  private transient SolidScene scene = SolidScene.EMPTY;
  private transient CanvasColours colours = CanvasColours.light();
  private transient Stand stand = Stand.START;
  private transient DepthImage image = new DepthImage(1, 1, 1);
  private transient SolidPickListener picks = (subject, how) -> {};
  private boolean fitted = true;

  /**
   * @param letters does what a letter stands for elsewhere in the window; says whether there was
   *     one
   */
  public SolidView(Predicate<Character> letters) {
    setName("solid");
    setOpaque(true);
    setFocusable(true);
    setPreferredSize(new Dimension(560, 460));
    setMinimumSize(new Dimension(200, 150));
    new SolidHand(this, letters).take();
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            if (fitted) {
              fit();
            }
          }
        });
    addFocusListener(
        new FocusListener() {
          @Override
          public void focusGained(FocusEvent e) {
            repaint();
          }

          @Override
          public void focusLost(FocusEvent e) {
            repaint();
          }
        });
  }

  /** Shows another house from where one stands; the first one, or one elsewhere, as a whole. */
  public void show(RoofSolid house) {
    boolean first = scene.house().faces().isEmpty();
    scene = scene.with(house);
    if (first) {
      fit();
    }
    repaint();
  }

  /** Subjects that stand out. */
  public void setPicked(Set<String> subjects) {
    if (!subjects.equals(scene.picked())) {
      scene = scene.withPicked(subjects);
      repaint();
    }
  }

  public void setColours(CanvasColours colours) {
    this.colours = colours;
    repaint();
  }

  public boolean shows(SolidLayer layer) {
    return scene.shows(layer);
  }

  public Set<SolidLayer> shown() {
    return scene.shown();
  }

  /** Shows these layers and no others. */
  public void setShown(Set<SolidLayer> layers) {
    scene = new SolidScene(scene.house(), layers, scene.picked());
    repaint();
  }

  /** Told what is clicked. */
  public void onPick(SolidPickListener picks) {
    this.picks = picks;
  }

  public void look(Stand.Named view) {
    stand = stand.from(view);
    fit();
  }

  public Stand stand() {
    return stand;
  }

  /** Moves by hand: from now on the house is left where it is put. */
  void move(Stand to) {
    fitted = false;
    stand = to;
    repaint();
  }

  /** Turns by hand; a house that was shown as a whole steps back as far as it must to stay so. */
  void turn(Stand to) {
    stand = fitted ? Fitting.kept(to, scene.house(), room(TURNING)) : to;
    repaint();
  }

  /** The whole house in the view. */
  public void fit() {
    fitted = true;
    if (getWidth() > 0) {
      stand = Fitting.filled(stand, scene.house(), room(FILL));
    }
    repaint();
  }

  private Dimension room(double share) {
    return new Dimension((int) (share * getWidth()), (int) (share * getHeight()));
  }

  /** What is seen at a place of the view. */
  public Optional<String> at(int x, int y) {
    return SolidPick.at(scene, new Projection(stand, 1, getWidth(), getHeight()), x + 0.5, y + 0.5);
  }

  void pick(int x, int y, SolidPickListener.How how) {
    picks.picked(at(x, y), how);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    AffineTransform screen = g.getTransform();
    double dense = screen.getScaleX();
    BufferedImage picture = paint(dense);
    g.drawImage(picture, AffineTransform.getScaleInstance(1 / dense, 1 / dense), null);
    CompassRose.paint(g, stand, getHeight(), colours);
    if (isFocusOwner()) {
      g.setColor(colours.selection());
      g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
    }
    g.dispose();
  }

  /**
   * Paints a frame from nothing.
   *
   * @param dense screen pixels to a pixel of the window
   */
  public BufferedImage paint(double dense) {
    int w = (int) Math.max(1, Math.ceil(getWidth() * dense));
    int h = (int) Math.max(1, Math.ceil(getHeight() * dense));
    int fine = dense >= SMALL_PIXELS ? 1 : 2;
    if (!image.fits(w, h, fine)) {
      image = new DepthImage(w, h, fine);
    }
    SolidPainter.paint(image, scene, stand.looking(stand.scale() * dense, stand.centre()), colours);
    return image.shown();
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext =
          new AccessibleJComponent() {
            private static final long serialVersionUID = 1;

            @Override
            public AccessibleRole getAccessibleRole() {
              return AccessibleRole.CANVAS;
            }
          };
    }
    return accessibleContext;
  }
}
