package longpoint.desktop.canvas;

import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
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
public final class DrawingCanvas extends FlatSight {
  private static final long serialVersionUID = 1;
  private static final int MARGIN = 22;

  /** Lettering is taken for a box around what is to be in sight this often while it is fitted. */
  private static final int FITS = 3;

  private final transient Frame frame = new Frame();
  private transient Drawing drawing = new Drawing("", List.of());
  private transient ScreenType type;
  private transient Runnable viewListener = () -> {};
  private double letteringZoom = 1;
  private double laidOutFor = 1;
  private int fits = FITS;

  /**
   * @param letters does what a letter stands for elsewhere in the window
   */
  public DrawingCanvas(String name, Predicate<Character> letters) {
    super(name, letters);
  }

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
    setFitted(true);
  }

  /** Units of the drawing to a millimetre of the lettering it has now. */
  public double laidOutFor() {
    return laidOutFor;
  }

  public Drawing drawing() {
    return drawing;
  }

  @Override
  public void show(View view) {
    super.show(view);
    fits = 0;
    viewListener.run();
  }

  @Override
  public void fit() {
    Bounds box = Strokes.of(drawing.marks(), laidOutFor).bounds();
    if (box.isEmpty() || getWidth() == 0) {
      return;
    }
    View whole = whole(box, MARGIN);
    int left = fits;
    if (!whole.equals(view())) {
      show(whole);
    }
    fits = left;
    setFitted(true);
  }

  @Override
  public Optional<String> at(int x, int y) {
    double reach = EditGestures.REACH / view().scale();
    return Pick.at(drawing.marks(), view().toPlan(x, y), reach, unitsPerMm())
        .map(Pick::subject)
        .filter(s -> !s.isEmpty());
  }

  /** Called after every change of view. */
  public void onView(Runnable listener) {
    viewListener = listener;
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
    return type.unitsPerMm(view());
  }

  /** A drawing of one thing alone need not say which thing is picked. */
  private boolean allPicked() {
    return drawing.marks().stream()
        .map(Mark::subject)
        .allMatch(s -> s.isEmpty() || picked().contains(s));
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    frame.paint(
        g,
        new Frame.Content(
            drawing,
            view(),
            getWidth(),
            getHeight(),
            LengthUnit.INCH,
            colours(),
            type,
            FLAT,
            Set.of(),
            Frame.Grid.HIDDEN,
            Optional.empty(),
            Sparing.NONE));
    Frame.smooth(g);
    if (!allPicked()) {
      PickedPaint.paint(drawing.marks(), picked(), g, view(), colours().selection(), laidOutFor);
    }
    frame(g);
    g.dispose();
  }

  private static final java.util.function.ToDoubleFunction<String> FLAT = subject -> 0;
}
