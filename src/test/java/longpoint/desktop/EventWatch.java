package longpoint.desktop;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.stream.IntStream;

/**
 * Watches the event thread: looks at its stack every millisecond for work that has no business
 * there, and takes the time of every event. A look finds whatever lasts; it never finds what is not
 * there.
 */
final class EventWatch implements AutoCloseable {
  /** Where work begins that may last: solving, laying out, reading and writing, unpacking. */
  private static final Map<String, Set<String>> HEAVY =
      Map.ofEntries(
          Map.entry("longpoint.pipeline.Pipeline", Set.of("solve", "sketch")),
          Map.entry("longpoint.surface.Roof", Set.of("solve")),
          Map.entry("longpoint.framing.Framing", Set.of("solve")),
          Map.entry("longpoint.deck.Sheathing", Set.of("lay")),
          Map.entry("longpoint.field.lumber.Lumber", Set.of("of")),
          Map.entry("longpoint.sheets.SheetSet", Set.of("of")),
          Map.entry("longpoint.sheets.PlanView", Set.of("of", "onScreen", "within")),
          Map.entry("longpoint.packet.Packet", Set.of("write", "pages")),
          Map.entry("longpoint.packet.FiguresText", Set.of("of", "tables", "listings")),
          Map.entry("longpoint.planfile.PlanFile", Set.of("read", "write", "bytes")),
          Map.entry("longpoint.planfile.Recovery$Draft", Set.of("keep")),
          Map.entry("longpoint.picture.PictureFile", Set.of("read")),
          Map.entry("longpoint.picture.Unpacking", Set.of("sizes")),
          Map.entry("longpoint.export.PdfWriter", Set.of("write")),
          Map.entry("longpoint.export.DxfWriter", Set.of("write")),
          Map.entry("longpoint.tracing.CadDrawing", Set.of("read")),
          Map.entry("javax.imageio.ImageIO", Set.of("read", "write")));

  /**
   * By the number of an event, who of the window was at work in it, and how often that was seen.
   */
  private final Map<Integer, Map<String, Integer>> lookedAt = new ConcurrentHashMap<>();

  private final Set<String> offences = new ConcurrentSkipListSet<>();
  private final Thread events = WindowDriver.onEvents(Thread::currentThread);
  private final Timed queue = new Timed();
  private final Thread watcher = new Thread(this::watch, "watch");

  EventWatch() {
    Toolkit.getDefaultToolkit().getSystemEventQueue().push(queue);
    watcher.setDaemon(true);
    watcher.start();
  }

  /** Takes the time of each event while it is the queue. */
  private static final class Timed extends EventQueue {
    private double[] millis = new double[1024];
    private volatile int count;

    @Override
    protected void dispatchEvent(AWTEvent event) {
      long start = System.nanoTime();
      super.dispatchEvent(event);
      if (count == millis.length) {
        millis = Arrays.copyOf(millis, 2 * count);
      }
      millis[count] = (System.nanoTime() - start) / 1e6;
      count++;
    }

    @Override
    protected void pop() {
      super.pop();
    }
  }

  private void watch() {
    while (!Thread.currentThread().isInterrupted()) {
      int event = queue.count;
      List<StackTraceElement> stack = List.of(events.getStackTrace());
      if (event == queue.count) {
        lookedAt
            .computeIfAbsent(event, e -> new ConcurrentHashMap<>())
            .merge(own(stack), 1, Integer::sum);
      }
      for (StackTraceElement frame : stack) {
        if (HEAVY.getOrDefault(frame.getClassName(), Set.of()).contains(frame.getMethodName())) {
          offences.add(frame.getClassName() + "." + frame.getMethodName() + " in " + own(stack));
        }
      }
      try {
        Thread.sleep(1);
      } catch (InterruptedException e) {
        return;
      }
    }
  }

  /** Who in the window called it. */
  private static String own(List<StackTraceElement> stack) {
    return stack.stream()
        .filter(f -> f.getClassName().startsWith("longpoint.desktop."))
        .findFirst()
        .map(StackTraceElement::toString)
        .orElse("no class of the window");
  }

  /** Work that was seen on the event thread, and who called it. */
  Set<String> offences() {
    return new TreeSet<>(offences);
  }

  /** Middle, hundredth-longest and longest event so far, in words; nothing to hold a test to. */
  String times() {
    return WindowDriver.onEvents(
        () -> {
          double[] sorted = Arrays.copyOf(queue.millis, queue.count);
          Arrays.sort(sorted);
          return String.format(
              Locale.ROOT,
              "%d events, middle %.2f ms, one in a hundred over %.1f, longest %.1f%s",
              sorted.length,
              sorted[sorted.length / 2],
              sorted[sorted.length * 99 / 100],
              sorted[sorted.length - 1],
              longest());
        });
  }

  /** The longest events, and who was mostly at work in each. */
  private String longest() {
    StringBuilder words = new StringBuilder();
    IntStream.range(0, queue.count)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> -queue.millis[i]))
        .limit(6)
        .forEach(
            i ->
                words.append(
                    String.format(
                        Locale.ROOT, "%n  %.1f ms: %s", queue.millis[i], lookedAt.get(i))));
    return words.toString();
  }

  @Override
  public void close() {
    watcher.interrupt();
    WindowDriver.onEvents(
        () -> {
          queue.pop();
          return null;
        });
  }
}
