package longpoint.desktop;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import longpoint.desktop.view.Showing;
import longpoint.planfile.PlanFile;

/**
 * The longest event while views are switched, first and later times, and what of ours it was at. By
 * hand, see DEVELOPERS.md.
 */
public final class ViewTiming {
  private static final int ROUNDS = 4;
  private static final long SETTLED_MILLIS = 2500;

  /** Looks at what an event is doing once it lasts this long. */
  private static final long LONG_NANOS = 30_000_000;

  private static final ThreadMXBean CPU = ManagementFactory.getThreadMXBean();
  private static volatile long began;
  private static double longest;
  private static double busiest;
  private static final Map<String, Integer> SEEN = new ConcurrentHashMap<>();

  private ViewTiming() {}

  /**
   * @param args a plan
   */
  public static void main(String[] args) throws Exception {
    try (WindowDriver window = new WindowDriver(PlanFile.read(Path.of(args[0])).plan())) {
      window.untilSolved();
      Thread events = WindowDriver.onEvents(Thread::currentThread);
      Toolkit.getDefaultToolkit().getSystemEventQueue().push(new Timed());
      Thread look = new Thread(() -> look(events));
      look.setDaemon(true);
      look.start();
      for (int round = 1; round <= ROUNDS; round++) {
        for (Showing one : Showing.values()) {
          longest = 0;
          busiest = 0;
          SEEN.clear();
          window.menu("beside." + one.key());
          Thread.sleep(SETTLED_MILLIS);
          System.out.printf(
              "round %d %-8s longest event %6.1f ms, CPU %6.1f ms%n", round, one, longest, busiest);
          new TreeMap<>(SEEN)
              .entrySet().stream()
                  .sorted((a, b) -> b.getValue() - a.getValue())
                  .limit(5)
                  .forEach(e -> System.out.printf("      %4d %s%n", e.getValue(), e.getKey()));
        }
      }
    }
    System.exit(0);
  }

  private static void look(Thread events) {
    while (true) {
      long start = began;
      if (start != 0 && System.nanoTime() - start > LONG_NANOS) {
        List<StackTraceElement> stack = List.of(events.getStackTrace());
        stack.stream()
            .filter(f -> f.getClassName().startsWith("longpoint."))
            .limit(1)
            .forEach(
                f ->
                    SEEN.merge(
                        f.getClassName() + "." + f.getMethodName() + " < " + stack.get(0),
                        1,
                        Integer::sum));
      }
      try {
        Thread.sleep(1);
      } catch (InterruptedException e) {
        return;
      }
    }
  }

  private static final class Timed extends EventQueue {
    @Override
    protected void dispatchEvent(AWTEvent event) {
      long work = CPU.getCurrentThreadCpuTime();
      began = System.nanoTime();
      super.dispatchEvent(event);
      longest = Math.max(longest, (System.nanoTime() - began) / 1e6);
      busiest = Math.max(busiest, (CPU.getCurrentThreadCpuTime() - work) / 1e6);
      began = 0;
    }
  }
}
