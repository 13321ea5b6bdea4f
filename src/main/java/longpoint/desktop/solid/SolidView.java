package longpoint.desktop.solid;

import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import javax.swing.SwingUtilities;
import longpoint.desktop.canvas.Hand;
import longpoint.desktop.canvas.LookedAt;
import longpoint.sheets.solid.RoofSolid;

/**
 * The house to turn: by dragging, by the arrow keys, or to a view that has a name. Never waits for
 * anything: whoever has a newer house sets it. For the event thread only.
 */
public final class SolidView extends LookedAt {
  private static final long serialVersionUID = 1;

  /** From here on a screen's pixels are so small that one a pixel is fine enough. */
  private static final double SMALL_PIXELS = 1.5;

  private static final double DEGREES_PER_PIXEL = 0.45;
  private static final double DEGREES_PER_KEY = 7.5;
  private static final double PIXELS_PER_KEY = 32;
  private static final double ZOOM_PER_CLICK = 1.15;

  /** Share of the view that the house takes up. */
  private static final double FILL = 0.84;

  /** Share it may grow to while it is turned. */
  private static final double TURNING = 0.96;

  private double north;
  private transient RoofSolid house = RoofSolid.NONE;
  private transient Set<SolidLayer> shown = SolidLayer.AT_FIRST;
  private transient Stand stand = Stand.START;
  private transient DepthImage image = new DepthImage(1, 1, 1);

  /**
   * @param letters does what a letter stands for elsewhere in the window; says whether there was
   *     one
   */
  public SolidView(Predicate<Character> letters) {
    super("solid", letters);
  }

  /** Shows another house from where one stands; the first one, or one elsewhere, as a whole. */
  /**
   * @param degrees from up the sheet to north, clockwise
   */
  public void setNorth(double degrees) {
    north = degrees;
    repaint();
  }

  public void show(RoofSolid house) {
    boolean first = this.house.faces().isEmpty();
    this.house = house;
    if (first) {
      fit();
    }
    repaint();
  }

  public boolean shows(SolidLayer layer) {
    return shown.contains(layer);
  }

  public Set<SolidLayer> shown() {
    return shown;
  }

  /** Shows these layers and no others. */
  public void setShown(Set<SolidLayer> layers) {
    shown = Set.copyOf(layers);
    repaint();
  }

  public void look(Stand.Named view) {
    stand = stand.from(view);
    fit();
  }

  /**
   * Looks from the corner that is on one side of the house.
   *
   * @param x across the sheet, toward that side
   * @param y up the sheet
   */
  public void lookFromCornerToward(double x, double y) {
    stand = stand.fromCornerToward(x, y);
    fit();
  }

  public Stand stand() {
    return stand;
  }

  /** Turns it; with Shift, or by another button than the first, moves it. */
  @Override
  public Cursor drag(MouseEvent e, int right, int down) {
    if (e.isShiftDown() || !SwingUtilities.isLeftMouseButton(e)) {
      move(stand.panned(right, down));
      return Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR);
    }
    turn(stand.turned(right * DEGREES_PER_PIXEL, down * DEGREES_PER_PIXEL));
    return Cursor.getDefaultCursor();
  }

  @Override
  public void step(Hand.Way way, int right, int down) {
    switch (way) {
      case PLAIN -> turn(stand.turned(right * DEGREES_PER_KEY, down * DEGREES_PER_KEY));
      case SHIFTED -> move(stand.panned(right * PIXELS_PER_KEY, down * PIXELS_PER_KEY));
    }
  }

  @Override
  public void wheel(MouseWheelEvent e) {
    double factor = Math.pow(ZOOM_PER_CLICK, -e.getPreciseWheelRotation());
    move(stand.zoomed(factor, e.getX() - getWidth() / 2.0, e.getY() - getHeight() / 2.0));
  }

  @Override
  public void zoom(double factor) {
    move(stand.zoomed(factor, 0, 0));
  }

  /** Moves by hand: from now on the house is left where it is put. */
  private void move(Stand to) {
    setFitted(false);
    stand = to;
    repaint();
  }

  /** Turns by hand; a house that was shown as a whole steps back as far as it must to stay so. */
  private void turn(Stand to) {
    stand = isFitted() ? Fitting.kept(to, house, room(TURNING)) : to;
    repaint();
  }

  /** The whole house in the view. */
  @Override
  public void fit() {
    setFitted(true);
    if (getWidth() > 0) {
      stand = Fitting.filled(stand, house, room(FILL));
    }
    repaint();
  }

  private Dimension room(double share) {
    return new Dimension((int) (share * getWidth()), (int) (share * getHeight()));
  }

  @Override
  public Optional<String> at(int x, int y) {
    return SolidPick.at(
        scene(), new Projection(stand, 1, getWidth(), getHeight()), x + 0.5, y + 0.5);
  }

  private SolidScene scene() {
    return new SolidScene(house, shown, picked());
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    AffineTransform screen = g.getTransform();
    double dense = screen.getScaleX();
    BufferedImage picture = paint(dense);
    g.drawImage(picture, AffineTransform.getScaleInstance(1 / dense, 1 / dense), null);
    CompassRose.paint(g, stand, north, getHeight(), colours());
    frame(g);
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
    SolidPainter.paint(
        image, scene(), stand.looking(stand.scale() * dense, stand.centre()), colours());
    return image.shown();
  }
}
