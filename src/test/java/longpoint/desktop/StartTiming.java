package longpoint.desktop;

import java.awt.Dimension;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.prefs.Preferences;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import longpoint.plan.Plan;
import longpoint.units.LengthUnit;

/**
 * What it takes from nothing to the first window, against an empty window of the same look: each in
 * a program of its own, by turns, so that a busy machine slows both alike. Prints medians and
 * ranges. The program calls itself with {@code empty} or {@code full}.
 */
public final class StartTiming {
  private static final int TURNS = 7;

  private StartTiming() {}

  public static void main(String[] args) throws Exception {
    if (args.length > 0 && (args[0].equals("empty") || args[0].equals("full"))) {
      show(args[0].equals("full"));
      return;
    }
    List<Long> empty = new ArrayList<>();
    List<Long> full = new ArrayList<>();
    run("empty", args); // the first of each fills the disk's memory, and is not counted
    run("full", args);
    for (int i = 0; i < TURNS; i++) {
      empty.add(run("empty", args));
      full.add(run("full", args));
    }
    tell("empty window", empty);
    tell("Longpoint", full);
    System.out.printf("ratio of medians %.2f%n", median(full) / (double) median(empty));
  }

  private static void show(boolean full) throws Exception {
    SwingUtilities.invokeAndWait(full ? StartTiming::longpoint : StartTiming::empty);
    // After everything that was put in line while it opened: it has been painted.
    SwingUtilities.invokeAndWait(() -> {});
    System.exit(0);
  }

  private static void empty() {
    Theme.LIGHT.install(15);
    JFrame frame = new JFrame("empty");
    frame.setSize(new Dimension(1400, 900));
    frame.setVisible(true);
    frame.getRootPane().paintImmediately(0, 0, 1400, 900);
  }

  private static void longpoint() {
    Theme.LIGHT.install(15);
    MainWindow window =
        new MainWindow(
            new Job(Plan.empty(LengthUnit.INCH)),
            new Settings(Preferences.userRoot().node("longpoint-timing-" + UUID.randomUUID())),
            longpoint.desktop.file.SwingDialogs::new,
            (design, request, folder, told) -> List.of(),
            Path.of(System.getProperty("java.io.tmpdir"), "longpoint-timing"));
    window.frame().setSize(new Dimension(1400, 900));
    window.frame().setVisible(true);
    window.frame().getRootPane().paintImmediately(0, 0, 1400, 900);
  }

  /** Milliseconds from asking for the program to its end. */
  private static long run(String what, String[] options) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(System.getProperty("java.home") + File.separator + "bin" + File.separator + "java");
    command.addAll(Arrays.asList(options));
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.addAll(List.of(StartTiming.class.getName(), what));
    long from = System.nanoTime();
    int code = new ProcessBuilder(command).inheritIO().start().waitFor();
    if (code != 0) {
      throw new IllegalStateException(what + " ended with " + code);
    }
    return (System.nanoTime() - from) / 1_000_000;
  }

  private static long median(List<Long> times) {
    return times.stream().sorted().skip(times.size() / 2).findFirst().orElse(0L);
  }

  private static void tell(String what, List<Long> times) {
    Optional<Long> least = times.stream().min(Long::compare);
    Optional<Long> most = times.stream().max(Long::compare);
    System.out.printf(
        "%s: median %d ms (%d to %d)%n", what, median(times), least.orElse(0L), most.orElse(0L));
  }
}
