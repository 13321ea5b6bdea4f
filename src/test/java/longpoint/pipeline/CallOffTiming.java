package longpoint.pipeline;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.CancellationException;
import longpoint.packet.Packet;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;

/**
 * Measures how soon work that is called off has ended: {@code CallOffTiming PLAN}. A design and its
 * sheets are called off at 200 moments spread over the whole of the work. Prints the median and the
 * worst, in milliseconds of the clock.
 */
public final class CallOffTiming {
  private static final int RUNS = 200;

  private CallOffTiming() {}

  public static void main(String[] args) throws Exception {
    Plan plan = PlanFile.read(Path.of(args[0])).plan();
    long whole = 0;
    for (int i = 0; i < 4; i++) {
      long start = System.nanoTime();
      work(plan);
      whole = System.nanoTime() - start;
    }
    Random random = new Random(1);
    double[] millis = new double[RUNS];
    for (int i = 0; i < RUNS; i++) {
      long[] ended = new long[1];
      Thread worker =
          new Thread(
              () -> {
                try {
                  work(plan);
                } catch (CancellationException off) {
                  // as it should
                }
                ended[0] = System.nanoTime();
              });
      worker.start();
      Thread.sleep((long) (random.nextDouble() * whole / 1e6));
      long off = System.nanoTime();
      worker.interrupt();
      worker.join();
      millis[i] = Math.max(0, ended[0] - off) / 1e6;
    }
    Arrays.sort(millis);
    System.out.printf(
        Locale.ROOT,
        "%s: %.0f ms to the end; called off it has ended after %.2f (worst %.2f)%n",
        args[0],
        whole / 1e6,
        millis[RUNS / 2],
        millis[RUNS - 1]);
  }

  private static void work(Plan plan) {
    Design design = Pipeline.solve(plan);
    Packet.pages(design, Packet.paperFor(plan.unit()));
  }
}
