package longpoint.desktop.solid;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Arrays;

/**
 * A picture in which every pixel knows how near it is to the eye, so that hidden surfaces hide
 * whatever the order of painting. Painted finer than it is shown and averaged, which smooths every
 * edge. Made once and used for frame after frame.
 */
final class DepthImage {
  private final int fine;
  private final int width;
  private final int height;
  private final int[] pixels;
  private final float[] nearness;
  private final BufferedImage shown;
  private double[] crossings = new double[64];

  /**
   * @param width of the picture shown, pixels
   * @param fine painted pixels to one shown, each way: 1 or 2
   */
  DepthImage(int width, int height, int fine) {
    this.fine = fine;
    this.width = width * fine;
    this.height = height * fine;
    pixels = new int[this.width * this.height];
    nearness = new float[this.width * this.height];
    shown = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
  }

  boolean fits(int width, int height, int fine) {
    return shown.getWidth() == width && shown.getHeight() == height && this.fine == fine;
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  int fine() {
    return fine;
  }

  /** One colour, infinitely far away. */
  void clear(int rgb) {
    Arrays.fill(pixels, rgb);
    Arrays.fill(nearness, Float.NEGATIVE_INFINITY);
  }

  /** Paints a shape wherever nothing stands nearer. */
  void fill(FlatShape shape, int rgb) {
    fill(shape, rgb, 1);
  }

  /** Paints every other pixel of a shape, like a screen door: half of what is behind shows. */
  void veil(FlatShape shape, int rgb) {
    fill(shape, rgb, 2);
  }

  private void fill(FlatShape shape, int rgb, int every) {
    int last = bottom(shape);
    for (int y = top(shape); y <= last; y++) {
      int spans = spans(shape, y);
      for (int k = 0; k + 1 < spans; k += 2) {
        int from = from(crossings[k]);
        from += (from + y) % every;
        int to = to(crossings[k + 1]);
        int at = y * width + from;
        double near = shape.near(from + 0.5, y + 0.5);
        double by = shape.byX() * every;
        for (int x = from; x <= to; x += every, at += every, near += by) {
          if (near > nearness[at]) {
            nearness[at] = (float) near;
            pixels[at] = rgb;
          }
        }
      }
    }
  }

  /** Paints a shape onto the ground, behind everything. */
  void stain(FlatShape shape, int rgb) {
    int last = bottom(shape);
    for (int y = top(shape); y <= last; y++) {
      int spans = spans(shape, y);
      for (int k = 0; k + 1 < spans; k += 2) {
        int from = from(crossings[k]);
        int to = to(crossings[k + 1]);
        if (from <= to) {
          Arrays.fill(pixels, y * width + from, y * width + to + 1, rgb);
        }
      }
    }
  }

  private int top(FlatShape shape) {
    double low = Double.MAX_VALUE;
    for (double[] c : shape.rings()[0]) {
      low = Math.min(low, c[1]);
    }
    return (int) Math.max(0, Math.ceil(low - 0.5));
  }

  private int bottom(FlatShape shape) {
    double high = -Double.MAX_VALUE;
    for (double[] c : shape.rings()[0]) {
      high = Math.max(high, c[1]);
    }
    return (int) Math.min(height - 1, Math.floor(high - 0.5));
  }

  private int spans(FlatShape shape, int y) {
    if (crossings.length < shape.corners()) {
      crossings = new double[shape.corners()];
    }
    int count = shape.crossings(y + 0.5, crossings);
    Arrays.sort(crossings, 0, count);
    return count;
  }

  private static int from(double x) {
    return (int) Math.max(0, Math.ceil(x - 0.5));
  }

  private int to(double x) {
    return (int) Math.min(width - 1, Math.floor(x - 0.5));
  }

  /**
   * Draws a line wherever its middle is not hidden. A face painted later on the same place hides
   * it.
   *
   * @param a x, y and nearness of one end
   * @param thick pixels across
   * @param rgb its colour
   * @param behind how far it may lie behind what stands there and still be seen, pixels
   */
  void line(double[] a, double[] b, double thick, int rgb, double behind) {
    double dx = b[0] - a[0];
    double dy = b[1] - a[1];
    boolean flat = Math.abs(dx) >= Math.abs(dy);
    double length = Math.max(Math.abs(dx), Math.abs(dy));
    if (length == 0) {
      return;
    }
    // A slanting line is widened along its short axis so that it is as thick as a straight one.
    double across = thick * Math.hypot(dx, dy) / length;
    int main = flat ? 0 : 1;
    double[] low = a[main] <= b[main] ? a : b;
    double[] high = low == a ? b : a;
    int end = (int) Math.min((flat ? width : height) - 1, Math.floor(high[main] - 0.5));
    for (int m = (int) Math.max(0, Math.ceil(low[main] - 0.5)); m <= end; m++) {
      double share = (m + 0.5 - low[main]) / (high[main] - low[main]);
      double other = low[1 - main] + (high[1 - main] - low[1 - main]) * share;
      double near = low[2] + (high[2] - low[2]) * share;
      int middle = (int) Math.floor(other);
      if (flat ? hidden(m, middle, near + behind) : hidden(middle, m, near + behind)) {
        continue;
      }
      int from = (int) Math.ceil(other - across / 2 - 0.5);
      int to = (int) Math.ceil(other + across / 2 - 0.5) - 1;
      for (int o = from; o <= to; o++) {
        dot(flat ? m : o, flat ? o : m, (float) (near - behind), rgb);
      }
    }
  }

  private boolean hidden(int x, int y, double near) {
    return x < 0 || y < 0 || x >= width || y >= height || nearness[y * width + x] > near;
  }

  private void dot(int x, int y, float near, int rgb) {
    if (x >= 0 && y >= 0 && x < width && y < height) {
      int at = y * width + x;
      pixels[at] = rgb;
      nearness[at] = Math.max(nearness[at], near);
    }
  }

  /** The picture as it is shown. */
  BufferedImage shown() {
    int[] out = ((DataBufferInt) shown.getRaster().getDataBuffer()).getData();
    if (fine == 1) {
      System.arraycopy(pixels, 0, out, 0, out.length);
      return shown;
    }
    int w = shown.getWidth();
    for (int y = 0; y < shown.getHeight(); y++) {
      int upper = 2 * y * width;
      for (int x = 0; x < w; x++, upper += 2) {
        out[y * w + x] =
            between(
                between(pixels[upper], pixels[upper + 1]),
                between(pixels[upper + width], pixels[upper + width + 1]));
      }
    }
    return shown;
  }

  /** Halfway between two colours, all three channels at once. */
  private static int between(int a, int b) {
    return (a & b) + (((a ^ b) & 0xFEFEFE) >> 1);
  }
}
