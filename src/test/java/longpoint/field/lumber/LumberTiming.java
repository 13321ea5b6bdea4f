package longpoint.field.lumber;

import java.nio.file.Path;
import java.util.Arrays;
import longpoint.framing.Framing;
import longpoint.framing.FramingSet;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.surface.Roof;
import longpoint.surface.RoofSurface;

/** What the cut and stock lists of a plan cost, by hand: median of warm runs in milliseconds. */
final class LumberTiming {
  private LumberTiming() {}

  public static void main(String[] files) throws Exception {
    for (String file : files) {
      Plan plan = PlanFile.read(Path.of(file)).plan();
      RoofSurface surface = Roof.solve(plan);
      FramingSet framing = Framing.solve(plan, surface);
      double[] times = new double[31];
      Lumber lumber = Lumber.NONE;
      for (int i = 0; i < times.length; i++) {
        long start = System.nanoTime();
        lumber = Lumber.of(plan, surface, framing, LumberChoices.of(plan.unit()));
        times[i] = (System.nanoTime() - start) / 1e6;
      }
      double first = times[0];
      Arrays.sort(times, 5, times.length);
      System.out.printf(
          "%s: %d kinds of piece, median %.2f ms, first %.1f%n",
          file, lumber.cuts().size(), times[5 + (times.length - 5) / 2], first);
    }
  }
}
