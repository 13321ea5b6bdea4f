package longpoint.desktop;

import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import longpoint.desktop.canvas.CanvasColours;
import longpoint.desktop.solid.SolidLayer;
import longpoint.desktop.solid.SolidView;
import longpoint.desktop.solid.Stand;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.planfile.PlanFile;
import longpoint.sheets.solid.RoofSolid;

/**
 * Measures a frame of the house at 800 × 600: {@code SolidTiming PLAN [PICTURE]}. Prints the median
 * and the range of 60 frames, after 60 that do not count, in milliseconds of processor time, which
 * a busy machine does not spoil; then writes the last frame if asked. Needs no display.
 */
public final class SolidTiming {
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
  private static final int WARM = 60;
  private static final int RUNS = 60;

  private SolidTiming() {}

  public static void main(String[] args) throws Exception {
    Design design = Pipeline.solve(PlanFile.read(Path.of(args[0])).plan());
    System.out.println(args[0]);
    time("faces", () -> RoofSolid.of(design.plan(), design.surface()));
    RoofSolid house = RoofSolid.of(design.plan(), design.surface());
    RoofSolid framed = house.with(design.framing(), design.surface());
    System.out.printf("  %d faces, %d edges%n", framed.faces().size(), framed.edges().size());
    SolidView view = new SolidView(letter -> false);
    view.setSize(new Dimension(800, 600));
    for (Set<SolidLayer> shown :
        java.util.List.of(SolidLayer.AT_FIRST, EnumSet.allOf(SolidLayer.class))) {
      view.setShown(shown);
      view.show(framed);
      view.look(Stand.Named.CORNER);
      int[] frames = {0};
      time("frame of " + shown, () -> paint(view, frames[0]++));
    }
    if (args.length > 1) {
      for (boolean dark : new boolean[] {false, true}) {
        view.setColours(dark ? CanvasColours.dark() : CanvasColours.light());
        for (Stand.Named from : Stand.Named.values()) {
          for (Set<SolidLayer> shown :
              java.util.List.of(SolidLayer.AT_FIRST, EnumSet.allOf(SolidLayer.class))) {
            view.setShown(shown);
            view.look(from);
            String name = from + (dark ? "-dark" : "-light") + shown.size();
            javax.imageio.ImageIO.write(
                view.paint(1), "png", Path.of(args[1], name + ".png").toFile());
          }
        }
      }
    }
  }

  /** Alternately the corner and the plan, so that no frame is like the one before. */
  private static void paint(SolidView view, int frame) {
    view.look(frame % 2 == 0 ? Stand.Named.CORNER : Stand.Named.PLAN);
    BufferedImage picture = view.paint(1);
    if (picture.getRGB(400, 300) == picture.getRGB(0, 0)) {
      throw new AssertionError("nothing in the middle of the picture");
    }
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
