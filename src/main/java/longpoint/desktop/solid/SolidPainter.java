package longpoint.desktop.solid;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Arrays;
import java.util.List;
import longpoint.desktop.canvas.CanvasColours;
import longpoint.drawing.Ink;
import longpoint.geometry.Point3;
import longpoint.sheets.Layers;
import longpoint.surface.RoofLine;

/**
 * Paints a scene pixel by pixel, the nearest face winning: a depth buffer, filled face by face
 * along scan lines. Seen without perspective a flat face's depth changes evenly over the screen, so
 * that faces with holes need no cutting up.
 */
final class SolidPainter {
  /** A line is painted when it lies no farther than this behind the face there, in pixels. */
  private static final double LINE_BIAS = 3;

  /** A face seen so nearly from its edge has no width worth a pixel. */
  private static final double EDGE_ON = 1e-9;

  private static final double SHADOW = 0.62;

  private final BufferedImage image;
  private final int[] pixels;
  private final double[] depth;
  private final int width;
  private final int height;
  private final Stand stand;
  private final CanvasColours colours;

  private SolidPainter(int width, int height, Stand stand, CanvasColours colours) {
    this.width = width;
    this.height = height;
    this.stand = stand;
    this.colours = colours;
    image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    depth = new double[width * height];
    Arrays.fill(pixels, colours.ground().getRGB());
    Arrays.fill(depth, Double.NEGATIVE_INFINITY);
  }

  static BufferedImage paint(
      SolidScene scene, int width, int height, Stand stand, CanvasColours colours) {
    SolidPainter painter = new SolidPainter(width, height, stand, colours);
    scene.faces().forEach(painter::face);
    scene.lines().forEach(painter::line);
    return painter.image;
  }

  private void face(Face face) {
    double[][][] rings = face.rings().stream().map(this::projected).toArray(double[][][]::new);
    double[] normal = normal(rings[0]);
    if (Math.abs(normal[2]) < EDGE_ON) {
      return;
    }
    int rgb = lit(face, normal);
    double[] p = rings[0][0];
    double low = Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    for (double[][] ring : rings) {
      for (double[] c : ring) {
        low = Math.min(low, c[1]);
        high = Math.max(high, c[1]);
      }
    }
    double[] crossings = new double[Arrays.stream(rings).mapToInt(r -> r.length).sum()];
    for (int y = Math.max(0, (int) low); y <= Math.min(height - 1, (int) high); y++) {
      int count = crossings(rings, y + 0.5, crossings);
      Arrays.sort(crossings, 0, count);
      for (int k = 0; k + 1 < count; k += 2) {
        int to = (int) Math.min(width - 1, Math.floor(crossings[k + 1] - 0.5));
        for (int x = (int) Math.max(0, Math.ceil(crossings[k] - 0.5)); x <= to; x++) {
          double near =
              p[2] - (normal[0] * (x + 0.5 - p[0]) + normal[1] * (y + 0.5 - p[1])) / normal[2];
          int at = y * width + x;
          if (near > depth[at]) {
            depth[at] = near;
            pixels[at] = rgb;
          }
        }
      }
    }
  }

  private double[][] projected(List<Point3> ring) {
    double[][] out = new double[ring.size()][3];
    for (int i = 0; i < out.length; i++) {
      stand.project(ring.get(i), out[i]);
    }
    return out;
  }

  /** Newell's sum over the corners, which no three corners in a line can spoil. */
  private static double[] normal(double[][] ring) {
    double[] n = new double[3];
    for (int i = 0; i < ring.length; i++) {
      double[] a = ring[i];
      double[] b = ring[(i + 1) % ring.length];
      n[0] += (a[1] - b[1]) * (a[2] + b[2]);
      n[1] += (a[2] - b[2]) * (a[0] + b[0]);
      n[2] += (a[0] - b[0]) * (a[1] + b[1]);
    }
    return n;
  }

  private static int crossings(double[][][] rings, double y, double[] out) {
    int count = 0;
    for (double[][] ring : rings) {
      for (int i = 0; i < ring.length; i++) {
        double[] a = ring[i];
        double[] b = ring[(i + 1) % ring.length];
        if (a[1] > y != b[1] > y) {
          out[count++] = a[0] + (b[0] - a[0]) * ((y - a[1]) / (b[1] - a[1]));
        }
      }
    }
    return count;
  }

  /** Light comes from the upper left, over the shoulder of whoever looks. */
  private int lit(Face face, double[] normal) {
    double length =
        Math.sqrt(normal[0] * normal[0] + normal[1] * normal[1] + normal[2] * normal[2]);
    double toEye = Math.signum(normal[2]) / length;
    double light = (-0.45 * normal[0] - 0.6 * normal[1] + 0.66 * normal[2]) * toEye;
    double share = SHADOW + (1 - SHADOW) * Math.max(0, Math.min(1, light));
    Color base =
        switch (face.kind()) {
          case ROOF -> colours.solidRoof();
          case WALL -> colours.solidWall();
        };
    return (int) (base.getRed() * share) << 16
        | (int) (base.getGreen() * share) << 8
        | (int) (base.getBlue() * share);
  }

  private void line(RoofLine line) {
    double[] a = new double[3];
    double[] b = new double[3];
    stand.project(line.from(), a);
    stand.project(line.to(), b);
    Ink ink = Layers.of(line.kind()).ink();
    int rgb = colours.of(ink).getRGB();
    int steps = (int) Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1])) + 1;
    if (steps > 4 * (width + height)) {
      return;
    }
    for (int i = 0; i <= steps; i++) {
      double share = i / (double) steps;
      double near = a[2] + (b[2] - a[2]) * share;
      int x = (int) Math.floor(a[0] + (b[0] - a[0]) * share);
      int y = (int) Math.floor(a[1] + (b[1] - a[1]) * share);
      for (int dx = -1; dx <= 1; dx++) {
        for (int dy = -1; dy <= 1; dy++) {
          dot(x + dx, y + dy, near, rgb);
        }
      }
    }
  }

  private void dot(int x, int y, double near, int rgb) {
    if (x >= 0 && y >= 0 && x < width && y < height) {
      int at = y * width + x;
      if (near > depth[at] - LINE_BIAS) {
        pixels[at] = rgb;
      }
    }
  }
}
