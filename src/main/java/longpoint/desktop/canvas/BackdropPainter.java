package longpoint.desktop.canvas;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Composite;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import longpoint.drawing.Ink;
import longpoint.geometry.Point;
import longpoint.plan.Backdrop;

/**
 * Paints the picture behind the plan, as sharp as the zoom allows, from the smallest of its sizes
 * that is large enough.
 *
 * @param picture where it lies
 * @param sizes the picture unpacked, each half as large as the one before; empty when it cannot be
 */
record BackdropPainter(Backdrop picture, List<BufferedImage> sizes, String unseen) {
  /** Nothing to see when hidden. */
  static Optional<BackdropPainter> of(
      Optional<Backdrop> picture, List<BufferedImage> sizes, String unseen) {
    return picture
        .filter(p -> p.state() != Backdrop.State.HIDDEN)
        .map(p -> new BackdropPainter(p, sizes, unseen));
  }

  void paint(Graphics2D g, View view, CanvasColours colours) {
    if (sizes.isEmpty()) {
      cross(g, view, colours);
      return;
    }
    double pixels = picture.scale() * view.scale();
    int level = 0;
    while (level + 1 < sizes.size() && pixels * (1 << (level + 1)) <= 1) {
      level++;
    }
    BufferedImage image = sizes.get(level);
    AffineTransform place =
        AffineTransform.getTranslateInstance(view.x(picture.at()), view.y(picture.at()));
    place.rotate(-Math.toRadians(picture.degrees()));
    place.scale(
        picture.width() * view.scale() / image.getWidth(),
        picture.height() * view.scale() / image.getHeight());
    place.translate(0, -image.getHeight());
    Composite full = g.getComposite();
    g.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, (float) picture.strength()));
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.drawImage(image, place, null);
    g.setComposite(full);
  }

  /** Where a picture would be that cannot be shown. */
  private void cross(Graphics2D g, View view, CanvasColours colours) {
    List<Point> corners = picture.corners();
    Path2D shape = new Path2D.Double();
    for (int i : new int[] {0, 1, 2, 3, 0, 2, 1, 3}) {
      Point p = corners.get(i);
      if (i == 0 && shape.getCurrentPoint() == null) {
        shape.moveTo(view.x(p), view.y(p));
      } else {
        shape.lineTo(view.x(p), view.y(p));
      }
    }
    g.setColor(colours.of(Ink.HIDDEN));
    g.setStroke(new BasicStroke(1));
    g.draw(shape);
    Point middle = picture.bounds().middle();
    g.drawString(unseen, (float) view.x(middle), (float) view.y(middle));
  }
}
