package longpoint.desktop.canvas;

import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Insets;
import java.awt.Point;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javax.swing.JPanel;
import javax.swing.ToolTipManager;
import longpoint.drawing.Drawing;
import longpoint.geometry.Bounds;
import longpoint.plan.Backdrop;
import longpoint.units.LengthUnit;

/**
 * The sheet. Shows a {@link Drawing} under a {@link View}; moves and zooms by itself; hands every
 * other gesture on. Never waits for anything: whoever has a new drawing sets it. For the event
 * thread only.
 */
public final class PlanCanvas extends JPanel implements Movable {
  private static final long serialVersionUID = 1;

  private static final double KEY_ZOOM = 1.25;

  private final transient Frame frame = new Frame();
  private final transient Navigation navigation = new Navigation(this);
  private final Set<String> hiddenLayers = new HashSet<>();
  private transient Drawing drawing = new Drawing("", List.of());
  private transient SheetRoom room = SheetRoom.AT_FIRST;
  private transient View view = new View(2, 0, 0);
  private transient CanvasColours colours = CanvasColours.light();
  private transient ScreenType type;
  private double letteringZoom = 1;
  private transient ToDoubleFunction<String> shade = subject -> 0;
  private transient OverPaint over = (g, v, c) -> {};
  private transient Gestures gestures;
  private transient Function<Point, Optional<String>> tips = at -> Optional.empty();
  private transient Optional<BackdropPainter> backdrop = Optional.empty();
  private transient Runnable viewListener = () -> {};
  private transient Runnable fitListener = () -> {};
  private LengthUnit unit = LengthUnit.INCH;
  private Frame.Grid grid = Frame.Grid.SHOWN;
  private Cursor toolCursor = Cursor.getPredefinedCursor(Cursor.CROSSHAIR_CURSOR);
  private Point pointer;
  private transient Optional<Runnable> firstPaint = Optional.empty();
  private boolean fitted;
  private View allInSight;

  public PlanCanvas() {
    setOpaque(true);
    setFocusable(true);
    setFocusTraversalKeysEnabled(false); // Tab goes down through what is under the pointer
    setPreferredSize(new Dimension(900, 650));
    setMinimumSize(new Dimension(200, 150));
    restoreCursor();
    enableEvents(java.awt.AWTEvent.KEY_EVENT_MASK);
    SheetMouse mouse = new SheetMouse(this, navigation);
    addMouseListener(mouse);
    addMouseMotionListener(mouse);
    addMouseWheelListener(mouse);
    addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent e) {
            navigation.forgetKeys();
          }
        });
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            // What was all in sight stays so; a view the user chose stays as chosen.
            if (getWidth() > 0 && (!fitted || view.equals(allInSight))) {
              fit();
            }
          }
        });
  }

  /** Shows other marks under the same view. */
  public void show(Drawing drawing, LengthUnit unit) {
    this.drawing = drawing;
    this.unit = unit;
    repaint();
  }

  /**
   * How light falls on the tints.
   *
   * @param shade subject of a tint to −1 (in shadow) … 1 (in the light)
   */
  public void setShade(ToDoubleFunction<String> shade) {
    this.shade = shade;
    repaint();
  }

  /**
   * Shows a picture behind the plan.
   *
   * @param sizes the picture unpacked, largest first; none when it cannot be
   * @param unseen what to say where a picture cannot be shown
   */
  public void setBackdrop(Optional<Backdrop> picture, List<BufferedImage> sizes, String unseen) {
    Optional<BackdropPainter> changed = BackdropPainter.of(picture, sizes, unseen);
    if (!changed.equals(backdrop)) {
      backdrop = changed;
      repaint();
    }
  }

  public Drawing drawing() {
    return drawing;
  }

  /**
   * What {@link #fit} brings into sight.
   *
   * @param extent walls and roof; an empty box gives a room-sized sheet
   * @param lettering pixels that dimensions and words reach beyond it, at any zoom
   */
  public void setExtent(Bounds extent, Insets lettering) {
    room = new SheetRoom(extent, lettering);
  }

  @Override
  public View view() {
    return view;
  }

  /** The piece of plan in sight. */
  public Bounds seen() {
    return view.seen(getWidth(), getHeight());
  }

  @Override
  public void show(View view) {
    this.view = view;
    fitted = true;
    viewListener.run();
    repaint();
  }

  /** Everything in sight. */
  public void fit() {
    if (getWidth() > 0) {
      allInSight = room.whole(getWidth(), getHeight(), unit);
      show(allInSight);
      fitListener.run();
    } else {
      fitted = false;
    }
  }

  /** Whether walls, roof and their lettering show whole. */
  public boolean isAllInSight() {
    return room.isWhole(view, getWidth(), getHeight());
  }

  /** Whether a box and lettering that reaches so many pixels beyond it show whole as it is. */
  public boolean shows(Bounds extent, Insets lettering) {
    return new SheetRoom(extent, lettering).isWhole(view, getWidth(), getHeight());
  }

  /** A box in sight, with what stands around it. */
  public void fit(Bounds box) {
    show(room.around(box, getWidth(), getHeight()));
  }

  public void zoomIn() {
    zoom(KEY_ZOOM);
  }

  public void zoomOut() {
    zoom(1 / KEY_ZOOM);
  }

  /** About the pointer when it is over the sheet, else about the middle. */
  private void zoom(double factor) {
    Point at = pointer != null ? pointer : new Point(getWidth() / 2, getHeight() / 2);
    show(view.zoomed(factor, at.x, at.y));
  }

  /** Brings a place of the plan to the middle. */
  public void centre(longpoint.geometry.Point place) {
    show(view.centred(place, getWidth(), getHeight()));
  }

  public void setColours(CanvasColours colours) {
    this.colours = colours;
    repaint();
  }

  public CanvasColours colours() {
    return colours;
  }

  /** Larger lettering for eyes that ask for it; 1 is the ordinary size. */
  public void setLetteringZoom(double zoom) {
    letteringZoom = zoom;
    setFont(getFont());
    repaint();
  }

  @Override
  public void setFont(java.awt.Font font) {
    super.setFont(font);
    type = font == null ? null : new ScreenType(font, letteringZoom);
  }

  /** Pixels to a millimetre of lettering. */
  public double pixelsPerMm() {
    return type.pixels(1);
  }

  /** Plan units to a millimetre of lettering at the present zoom. */
  public double unitsPerMm() {
    return type.unitsPerMm(view);
  }

  /** Millimetres that lettering may stand off the house and still be seen beside all of it. */
  public double aroundMm() {
    return SheetRoom.aroundPixels(getWidth()) / pixelsPerMm();
  }

  public void setGestures(Gestures gestures) {
    this.gestures = gestures;
  }

  public void setOverPaint(OverPaint over) {
    this.over = over;
    repaint();
  }

  /** Called after every change of view. */
  public void onView(Runnable listener) {
    viewListener = listener;
  }

  /** Called once, in the event that paints the sheet for the first time. */
  public void onFirstPaint(Runnable listener) {
    firstPaint = Optional.of(listener);
  }

  /** Called after everything was brought into sight. */
  public void onFit(Runnable listener) {
    fitListener = listener;
  }

  public boolean isLayerShown(String name) {
    return !hiddenLayers.contains(name);
  }

  public void setLayerShown(String name, boolean shown) {
    if (shown) {
      hiddenLayers.remove(name);
    } else {
      hiddenLayers.add(name);
    }
    repaint();
  }

  public boolean isGridShown() {
    return grid == Frame.Grid.SHOWN;
  }

  public void setGridShown(boolean shown) {
    grid = shown ? Frame.Grid.SHOWN : Frame.Grid.HIDDEN;
    repaint();
  }

  /** The pointer's shape whenever the sheet is not being moved. */
  public void setToolCursor(Cursor cursor) {
    if (!cursor.equals(toolCursor)) {
      toolCursor = cursor;
      restoreCursor();
    }
  }

  @Override
  public void restoreCursor() {
    setCursor(toolCursor);
  }

  void setPointer(Point pointer) {
    this.pointer = pointer;
    repaint();
  }

  Gestures gestures() {
    return gestures;
  }

  /** What a tool tip says of a place of the sheet; nothing where empty. */
  public void setTips(Function<Point, Optional<String>> tips) {
    this.tips = tips;
    ToolTipManager.sharedInstance().registerComponent(this);
  }

  @Override
  public String getToolTipText(MouseEvent e) {
    return tips.apply(e.getPoint()).orElse(null);
  }

  /** Where the pointer is, on the sheet; null outside. */
  public Point pointer() {
    return pointer;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    frame.paint(g, content());
    Frame.smooth(g);
    over.paint(g, view, colours);
    new GridPainter(view, getWidth(), getHeight(), unit, colours)
        .rulers(g, getFont().deriveFont(getFont().getSize2D() - 2.5f), pointer);
    g.dispose();
    firstPaint.ifPresent(Runnable::run);
    firstPaint = Optional.empty();
  }

  /** Paints a whole frame from nothing, as after a change of plan; for measuring. */
  public void paintAfresh(Graphics2D g) {
    Frame.draw(g, content());
    over.paint(g, view, colours);
  }

  private Frame.Content content() {
    return new Frame.Content(
        drawing,
        view,
        getWidth(),
        getHeight(),
        unit,
        colours,
        type,
        shade,
        hiddenLayers,
        grid,
        backdrop,
        Sparing.of(room.extent(), view));
  }

  @Override
  protected void processKeyEvent(KeyEvent e) {
    boolean typing = gestures != null && gestures.typing();
    if (!typing && navigation.takes(e)) {
      e.consume();
    } else if (e.getID() != KeyEvent.KEY_RELEASED && gestures != null && gestures.key(e)) {
      e.consume();
    } else if (e.getID() == KeyEvent.KEY_PRESSED && SheetKeys.take(this, e)) {
      e.consume();
    }
    super.processKeyEvent(e);
  }
}
