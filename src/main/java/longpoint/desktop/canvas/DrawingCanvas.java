package longpoint.desktop.canvas;

import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import longpoint.drawing.Drawing;
import longpoint.drawing.Mark;
import longpoint.drawing.Pick;
import longpoint.drawing.Strokes;
import longpoint.geometry.Bounds;
import longpoint.units.LengthUnit;

/**
 * A drawing to look at: the same marks and colours as on the sheet one draws on, without its grid
 * and rulers. Lettering keeps its size; whoever laid it out is told when the zoom changes. For the
 * event thread only.
 */
public final class DrawingCanvas extends JComponent implements DrawingHand.Held {
  private static final long serialVersionUID = 1;
  private static final int MARGIN = 22;

  /** Lettering is taken for a box around what is to be in sight this often while it is fitted. */
  private static final int FITS = 3;

  private final transient Frame frame = new Frame();
  private transient Drawing drawing = new Drawing("", List.of());
  private transient View view = new View(2, 0, 0);
  private transient CanvasColours colours = CanvasColours.light();
  private transient ScreenType type;
  private transient Set<String> picked = Set.of();
  private transient BiConsumer<Optional<String>, MouseEvent> picks = (subject, e) -> {};
  private transient Runnable viewListener = () -> {};
  private double letteringZoom = 1;
  private double laidOutFor = 1;
  private int fits = FITS;

  /**
   * @param letters does what a letter stands for elsewhere in the window
   */
  public DrawingCanvas(String name, Predicate<Character> letters) {
    setName(name);
    setOpaque(true);
    setPreferredSize(new Dimension(560, 460));
    setMinimumSize(new Dimension(200, 150));
    DrawingHand.on(this, letters);
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            if (fits > 0 || fitted) {
              fit();
            }
          }
        });
  }

  private boolean fitted = true;

  /**
   * Shows other marks.
   *
   * @param unitsPerMm what their lettering was laid out for
   */
  public void show(Drawing drawing, double unitsPerMm) {
    this.drawing = drawing;
    this.laidOutFor = unitsPerMm;
    if (fits > 0) {
      int left = fits - 1;
      fit();
      fits = left;
    }
    repaint();
  }

  /** Another thing altogether: all of it in sight once its marks come. */
  public void startOver() {
    fits = FITS;
    fitted = true;
  }

  /** Units of the drawing to a millimetre of the lettering it has now. */
  public double laidOutFor() {
    return laidOutFor;
  }

  public Drawing drawing() {
    return drawing;
  }

  @Override
  public View view() {
    return view;
  }

  @Override
  public void show(View view) {
    this.view = view;
    fits = 0;
    fitted = false;
    viewListener.run();
    repaint();
  }

  @Override
  public void fit() {
    Bounds box = Strokes.of(drawing.marks(), laidOutFor).bounds();
    if (box.isEmpty() || getWidth() == 0) {
      return;
    }
    Rectangle window = new Rectangle(getWidth(), getHeight());
    window.grow(-MARGIN, -MARGIN);
    View whole = View.fit(box, window);
    int left = fits;
    if (!whole.equals(view)) {
      show(whole);
    }
    fits = left;
    fitted = true;
  }

  @Override
  public void clicked(MouseEvent e) {
    picks.accept(at(e.getX(), e.getY()), e);
  }

  /** What is seen at a place. */
  public Optional<String> at(int x, int y) {
    double reach = EditGestures.REACH / view.scale();
    return Pick.at(drawing.marks(), view.toPlan(x, y), reach, unitsPerMm())
        .map(Pick::subject)
        .filter(s -> !s.isEmpty());
  }

  /** Told what is clicked: its subject, or empty for the ground. */
  public void onPick(BiConsumer<Optional<String>, MouseEvent> picks) {
    this.picks = picks;
  }

  /** Called after every change of view. */
  public void onView(Runnable listener) {
    viewListener = listener;
  }

  /** Subjects that stand out. */
  public void setPicked(Set<String> subjects) {
    if (!subjects.equals(picked)) {
      picked = Set.copyOf(subjects);
      repaint();
    }
  }

  public void setColours(CanvasColours colours) {
    this.colours = colours;
    repaint();
  }

  /** Larger lettering for eyes that ask for it; 1 is the ordinary size. */
  public void setLetteringZoom(double zoom) {
    letteringZoom = zoom;
    setFont(getFont());
  }

  @Override
  public void setFont(Font font) {
    super.setFont(font);
    type = font == null ? null : new ScreenType(font, letteringZoom);
    repaint();
  }

  /** Plan units to a millimetre of lettering at the present zoom. */
  public double unitsPerMm() {
    return type.unitsPerMm(view);
  }

  @Override
  public void restoreCursor() {
    setCursor(Cursor.getDefaultCursor());
  }

  /** A drawing of one thing alone need not say which thing is picked. */
  private boolean allPicked() {
    return drawing.marks().stream()
        .map(Mark::subject)
        .allMatch(s -> s.isEmpty() || picked.contains(s));
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    frame.paint(
        g,
        new Frame.Content(
            drawing,
            view,
            getWidth(),
            getHeight(),
            LengthUnit.INCH,
            colours,
            type,
            FLAT,
            Set.of(),
            Frame.Grid.HIDDEN,
            Optional.empty(),
            Sparing.NONE));
    Frame.smooth(g);
    if (!allPicked()) {
      PickedPaint.paint(drawing.marks(), picked, g, view, colours.selection(), laidOutFor);
    }
    if (isFocusOwner()) {
      Color c = colours.selection();
      g.setColor(c);
      g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
    }
    g.dispose();
  }

  private static final java.util.function.ToDoubleFunction<String> FLAT = subject -> 0;

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
