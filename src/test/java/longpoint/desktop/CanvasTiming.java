package longpoint.desktop;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import longpoint.desktop.canvas.CanvasColours;
import longpoint.desktop.canvas.PlanCanvas;
import longpoint.geometry.Point;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.sheets.PlanView;
import longpoint.surface.Roof;

/**
 * Measures what a frame of the sheet costs on a plan: {@code CanvasTiming PLAN}. Prints the median
 * and the range of 60 runs, after 20 that do not count, in milliseconds of processor time, which a
 * busy machine does not spoil. Needs a display.
 */
public final class CanvasTiming {
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
  private static final int WARM = 20;
  private static final int RUNS = 60;

  private CanvasTiming() {}

  public static void main(String[] args) throws Exception {
    Plan plan = PlanFile.read(Path.of(args[0])).plan();
    System.out.println(args[0]);
    try (WindowDriver window = new WindowDriver(plan)) {
      PlanCanvas canvas = window.window().canvas();
      BufferedImage image = new BufferedImage(1920, 1080, BufferedImage.TYPE_INT_RGB);
      WindowDriver.onEvents(
          () -> {
            canvas.setSize(1920, 1080);
            canvas.fit();
            window.window().catalogue().task("view.frame").perform();
            Graphics2D g = image.createGraphics();
            g.setClip(0, 0, 1920, 1080);
            time("frame afresh (plan or view changed)", () -> canvas.paintAfresh(g));
            System.out.printf(
                Locale.ROOT,
                "  %d marks, %.0f %% of the frame painted%n",
                canvas.drawing().marks().size(),
                100 * painted(image));
            time("frame kept (pointer moved)", () -> canvas.paint(g));
            return null;
          });
      drag(window);
      double mm = WindowDriver.onEvents(canvas::unitsPerMm);
      time("roof", () -> Roof.solve(plan));
      time("whole pipeline", () -> Pipeline.solve(plan));
      var surface = Roof.solve(plan);
      time("lay out the drawing", () -> PlanView.of(plan, surface, mm).drawing());
    }
    System.exit(0);
  }

  /**
   * A corner dragged to and fro with trusses shown. Two frames come of each step: the walls follow
   * at once, and the roof when it has been worked out, with everything beside the sheet.
   */
  private static void drag(WindowDriver window) {
    Point corner = window.plan().parts().get(0).side(0).from();
    long events = WindowDriver.onEvents(() -> Thread.currentThread().getId());
    double[] walls = new double[RUNS];
    double[] roof = new double[RUNS];
    window.move(corner.x(), corner.y()).press(corner.x(), corner.y());
    for (int i = -WARM; i < RUNS; i++) {
      double off = 12 + 24 * Math.floorMod(i, 3);
      long start = THREADS.getThreadCpuTime(events);
      window.dragTo(corner.x() - off, corner.y() - off);
      painted();
      long between = THREADS.getThreadCpuTime(events);
      window.untilSolved();
      painted();
      long end = THREADS.getThreadCpuTime(events);
      if (i >= 0) {
        walls[i] = (between - start) / 1e6;
        roof[i] = (end - between) / 1e6;
      }
    }
    window.escape().release(corner.x(), corner.y());
    print("dragging: walls follow, a frame", walls);
    print("dragging: roof follows, panels and a frame", roof);
  }

  /** The window has painted what it had to: that comes after what changed it. */
  private static void painted() {
    for (int i = 0; i < 3; i++) {
      WindowDriver.onEvents(() -> null);
    }
  }

  /** Share of pixels that are not the sheet's ground: an empty frame would be quick to paint. */
  private static double painted(BufferedImage image) {
    int ground = CanvasColours.light().ground().getRGB();
    int[] pixels =
        image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    return Arrays.stream(pixels).filter(p -> p != ground).count() / (double) pixels.length;
  }

  private static void time(String what, Runnable work) {
    for (int i = 0; i < WARM; i++) {
      work.run();
    }
    double[] millis = new double[RUNS];
    for (int i = 0; i < RUNS; i++) {
      long start = THREADS.getCurrentThreadCpuTime();
      work.run();
      millis[i] = (THREADS.getCurrentThreadCpuTime() - start) / 1e6;
    }
    print(what, millis);
  }

  private static void print(String what, double[] millis) {
    Arrays.sort(millis);
    System.out.printf(
        Locale.ROOT,
        "  %-40s %6.2f  (%.2f to %.2f)%n",
        what,
        millis[RUNS / 2],
        millis[0],
        millis[RUNS - 1]);
  }
}
