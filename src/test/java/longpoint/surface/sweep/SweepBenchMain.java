package longpoint.surface.sweep;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Times the sweep on outline files and prints a line for each: {@code
 * file,n,holes,reps,median_us,min_us,nodes,status}.
 *
 * <p>Arguments: {@code -t seconds} to spend on each file (1 if left out), then .poly files; with
 * {@code -w} before them the speeds are read from the .w file beside each. Times are those of the
 * working thread, so that a busy machine does not count; the answer is looked at outside the timed
 * loop, and every result has been proved by the sweep itself.
 */
public final class SweepBenchMain {
  private SweepBenchMain() {}

  public static void main(String[] args) {
    double seconds = 1;
    boolean weighted = false;
    List<Path> files = new ArrayList<>();
    for (int i = 0; i < args.length; i++) {
      switch (args[i]) {
        case "-t" -> seconds = Double.parseDouble(args[++i]);
        case "-w" -> weighted = true;
        default -> files.add(Path.of(args[i]));
      }
    }
    System.out.println("file,n,holes,reps,median_us,min_us,nodes,status");
    for (Path file : files) {
      if (Files.isReadable(file)) {
        time(weighted ? Outline.weighted(file) : Outline.even(file), seconds);
      } else {
        System.out.println(file.getFileName() + ",0,0,0,,,,unreadable");
      }
    }
  }

  private static void time(Outline outline, double seconds) {
    var threads = java.lang.management.ManagementFactory.getThreadMXBean();
    List<Double> micros = new ArrayList<>();
    long begun = System.nanoTime();
    SweepResult result = null;
    // Small outlines are timed many at once: the clock's own grain is some microseconds.
    int batch = Math.max(1, 2000 / outline.speeds().length);
    while (micros.size() < 3
        || (System.nanoTime() - begun < seconds * 1e9 && micros.size() < 20000)) {
      long before = threads.getCurrentThreadCpuTime();
      for (int i = 0; i < batch; i++) {
        result = outline.solve();
      }
      micros.add((threads.getCurrentThreadCpuTime() - before) / 1e3 / batch);
    }
    double[] sorted = micros.stream().mapToDouble(d -> d).sorted().toArray();
    String nodes = "";
    String status;
    if (result instanceof SweepResult.Solved solved) {
      nodes = Integer.toString(solved.nodes().size() - outline.speeds().length);
      long moving = Arrays.stream(outline.speeds()).filter(s -> s > 0).count();
      status = solved.faces().size() == moving ? "ok" : "faces!=" + solved.faces().size();
    } else {
      status = result.toString().replace(',', ' ');
    }
    System.out.printf(
        Locale.ROOT,
        "%s,%d,%d,%d,%.2f,%.2f,%s,%s%n",
        outline.name(),
        outline.speeds().length,
        outline.rings().size() - 1,
        micros.size() * batch,
        sorted[sorted.length / 2],
        sorted[0],
        nodes,
        status);
  }
}
