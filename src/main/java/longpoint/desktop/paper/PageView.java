package longpoint.desktop.paper;

import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Transparency;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.function.Predicate;
import longpoint.desktop.canvas.FlatSight;
import longpoint.desktop.canvas.PickedPaint;
import longpoint.desktop.canvas.View;
import longpoint.drawing.Page;
import longpoint.drawing.Pick;
import longpoint.geometry.Bounds;

/**
 * A sheet of paper to look at, black on white in any look, since that is how it is printed. The
 * marks are kept as an image until the view changes. For the event thread only.
 */
public final class PageView extends FlatSight {
  private static final long serialVersionUID = 1;
  private static final int MARGIN = 16;

  /** How near a click must come to a stroke, pixels. */
  private static final double REACH = 8;

  private transient Optional<Page> page = Optional.empty();
  private transient Kept kept;
  private String waiting = "";

  /** An image of the paper and what it shows. */
  private record Kept(
      Page page, View view, int width, int height, double dense, BufferedImage image) {
    boolean shows(Page wanted, View under, int w, int h, double pixels) {
      return page == wanted && view.equals(under) && width == w && height == h && dense == pixels;
    }
  }

  /**
   * @param letters does what a letter stands for elsewhere in the window
   */
  public PageView(Predicate<Character> letters) {
    super("page", letters);
  }

  /** Says in a few words why there is no page. */
  public void say(String words) {
    waiting = words;
    repaint();
  }

  /** Shows a page; one of another size as a whole. */
  public void show(Optional<Page> page) {
    boolean sameSize =
        this.page.isPresent()
            && page.isPresent()
            && this.page.get().widthMm() == page.get().widthMm()
            && this.page.get().heightMm() == page.get().heightMm();
    this.page = page;
    if (!sameSize || isFitted()) {
      fit();
    }
    repaint();
  }

  public Optional<Page> page() {
    return page;
  }

  @Override
  public void fit() {
    if (page.isPresent() && getWidth() > 0) {
      show(whole(new Bounds(0, 0, page.get().widthMm(), page.get().heightMm()), MARGIN));
    }
    setFitted(true);
  }

  /** As wide as the view, from the top of the page. */
  public void fitWidth() {
    if (page.isPresent() && getWidth() > 0) {
      double scale = (getWidth() - 2.0 * MARGIN) / page.get().widthMm();
      show(new View(scale, MARGIN, MARGIN + scale * page.get().heightMm()));
    }
  }

  /** As large as on paper, if the screen says truly how fine it is. */
  public void fullSize() {
    double perMm = getToolkit().getScreenResolution() / 25.4;
    zoom(perMm / view().scale());
  }

  @Override
  public Optional<String> at(int x, int y) {
    return page.flatMap(p -> Pick.at(p.marks(), view().toPlan(x, y), REACH / view().scale(), 1))
        .map(Pick::subject)
        .filter(s -> !s.isEmpty());
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setColor(colours().gridStrong());
    g.fillRect(0, 0, getWidth(), getHeight());
    if (page.isPresent()) {
      paint(g, page.get());
    } else {
      g.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
      g.setColor(colours().rulerText());
      int wide = g.getFontMetrics().stringWidth(waiting);
      g.drawString(waiting, (getWidth() - wide) / 2, getHeight() / 2);
    }
    frame(g);
    g.dispose();
  }

  private void paint(Graphics2D g, Page shown) {
    AffineTransform screen = g.getTransform();
    double dense = screen.getScaleX();
    if (kept == null || !kept.shows(shown, view(), getWidth(), getHeight(), dense)) {
      kept = new Kept(shown, view(), getWidth(), getHeight(), dense, image(g, shown, dense));
    }
    // In device pixels, so that a scaled screen gets every pixel of the image unblurred.
    g.setTransform(new AffineTransform(1, 0, 0, 1, screen.getTranslateX(), screen.getTranslateY()));
    g.drawImage(kept.image(), 0, 0, null);
    g.setTransform(screen);
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    PickedPaint.paint(shown.marks(), picked(), g, view(), new Color(0xE69F00), 1);
  }

  private BufferedImage image(Graphics2D screen, Page shown, double dense) {
    int w = Math.max(1, (int) Math.ceil(getWidth() * dense));
    int h = Math.max(1, (int) Math.ceil(getHeight() * dense));
    BufferedImage image =
        screen.getDeviceConfiguration().createCompatibleImage(w, h, Transparency.OPAQUE);
    Graphics2D g = image.createGraphics();
    g.scale(dense, dense);
    g.setColor(colours().gridStrong());
    g.fillRect(0, 0, getWidth(), getHeight());
    double scale = view().scale();
    double left = view().originX();
    double top = view().originY() - scale * shown.heightMm();
    Rectangle paper =
        new Rectangle(
            (int) Math.round(left),
            (int) Math.round(top),
            (int) Math.round(scale * shown.widthMm()),
            (int) Math.round(scale * shown.heightMm()));
    g.setColor(new Color(0, 0, 0, 40));
    g.fillRect(paper.x + 3, paper.y + 3, paper.width, paper.height);
    g.setColor(Color.WHITE);
    g.fill(paper);
    g.translate(left, top);
    PagePainter.paint(shown, g, scale);
    g.dispose();
    return image;
  }
}
