package longpoint.desktop;

import java.awt.Dimension;
import java.awt.Window;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import longpoint.Longpoint;

/**
 * What it takes from nothing to the first window, against an empty window of the same look: each in
 * a program of its own, by turns, so that a busy machine slows both alike. The program is started
 * as its user starts it, and the clock stops when all of the window has been painted. Prints
 * medians and ranges, of the clock and of the processor's time. The program calls itself with
 * {@code empty} or {@code full}.
 */
public final class StartTiming {
  private static final int TURNS = 9;

  private StartTiming() {}

  public static void main(String[] args) throws Exception {
    if (args.length > 0 && (args[0].equals("empty") || args[0].equals("full"))) {
      show(args[0].equals("full"));
      return;
    }
    Path home = Files.createTempDirectory("longpoint-timing");
    Times empty = new Times();
    Times full = new Times();
    run("empty", args, home, new Times()); // fills the disk's memory, and is not counted
    run("full", args, home, new Times());
    for (int i = 0; i < TURNS; i++) {
      run("empty", args, home, empty);
      run("full", args, home, full);
    }
    tell("empty window", empty);
    tell("Longpoint", full);
    System.out.printf(
        "ratio of medians %.2f, of processor time %.2f%n",
        median(full.clock) / (double) median(empty.clock),
        median(full.processor) / (double) median(empty.processor));
  }

  private record Times(List<Long> clock, List<Long> processor) {
    Times() {
      this(new ArrayList<>(), new ArrayList<>());
    }
  }

  private static void show(boolean full) throws Exception {
    if (full) {
      Longpoint.main(new String[0]);
    } else {
      SwingUtilities.invokeAndWait(StartTiming::empty);
    }
    SwingUtilities.invokeAndWait(StartTiming::paint);
    System.out.println(
        "painted " + ProcessHandle.current().info().totalCpuDuration().get().toMillis());
    System.in.read(); // until it is stopped
    System.exit(0);
  }

  private static void empty() {
    Theme.LIGHT.install(15);
    JFrame frame = new JFrame("empty");
    frame.setSize(new Dimension(1560, 960));
    frame.setVisible(true);
  }

  private static void paint() {
    for (Window window : Window.getWindows()) {
      if (window instanceof JFrame frame && frame.isShowing()) {
        frame.getRootPane().paintImmediately(0, 0, frame.getWidth(), frame.getHeight());
      }
    }
  }

  /** Milliseconds from asking for the program to its whole window. */
  private static void run(String what, String[] options, Path home, Times times) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(System.getProperty("java.home") + File.separator + "bin" + File.separator + "java");
    command.addAll(Arrays.asList(options));
    // A user who has never used the program, and nothing of whoever measures.
    command.add("-Duser.home=" + home);
    command.add("-Djava.util.prefs.userRoot=" + home);
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.addAll(List.of(StartTiming.class.getName(), what));
    ProcessBuilder builder =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT);
    builder.environment().remove("XDG_STATE_HOME");
    long from = System.nanoTime();
    Process process = builder.start();
    try (BufferedReader says =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      String line = says.readLine();
      long millis = (System.nanoTime() - from) / 1_000_000;
      if (line == null || !line.startsWith("painted ")) {
        throw new IOException(what + " said " + line);
      }
      times.clock.add(millis);
      times.processor.add(Long.parseLong(line.substring("painted ".length())));
    } finally {
      process.destroyForcibly().waitFor();
    }
  }

  private static long median(List<Long> times) {
    return times.stream().sorted().skip(times.size() / 2).findFirst().orElse(0L);
  }

  private static void tell(String what, Times times) {
    System.out.printf(
        "%s: median %d ms (%d to %d), %d ms of the processor%n",
        what,
        median(times.clock),
        times.clock.stream().mapToLong(t -> t).min().orElse(0),
        times.clock.stream().mapToLong(t -> t).max().orElse(0),
        median(times.processor));
  }
}
