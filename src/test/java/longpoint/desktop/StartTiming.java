package longpoint.desktop;

import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import java.awt.Color;
import java.awt.Font;
import java.awt.Rectangle;
import java.awt.Robot;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;

/**
 * What it takes from nothing to the first window, against an empty window of the same look: each in
 * a program of its own, out of the same jar, by turns, so that a busy machine slows both alike. The
 * clock is this program's, and so are the eyes: it looks at the screen until what belongs there is
 * there. For the empty window that is its own ground; for Longpoint first the card on its sheet
 * (with a plan the menus, painted with its walls), then every neighbour of the sheet as it looks
 * once all has come to rest. Prints medians and ranges, of the clock and of the processor's time.
 *
 * <p>Its arguments go to the programs' JVM, but one that ends in {@code .json}, which is opened,
 * and one that ends in {@code .png}, where the first sight is kept as a picture. It needs a screen
 * of 1600 by 1000 with nothing else on it.
 */
public final class StartTiming {
  private static final int TURNS = 11;
  private static final Path JAR = Path.of("target", "longpoint.jar");
  private static final Rectangle WINDOW = new Rectangle(20, 20, 1560, 960);
  private static final long LONGEST = TimeUnit.SECONDS.toNanos(20);
  private static final Color GROUND = new Color(0xC0FFEE);

  private final Robot robot = new Robot();
  private final Path home = Files.createTempDirectory("longpoint-timing");
  private final List<String> options = new ArrayList<>();
  private final List<String> plan = new ArrayList<>();
  private String picture = "";

  private StartTiming(String[] args) throws Exception {
    for (String arg : args) {
      if (arg.endsWith(".json")) {
        plan.add(arg);
      } else if (arg.endsWith(".png")) {
        picture = arg;
      } else if (!arg.isBlank()) {
        options.add(arg);
      }
    }
  }

  public static void main(String[] args) throws Exception {
    if (args.length > 0 && args[0].equals("empty")) {
      SwingUtilities.invokeAndWait(StartTiming::empty);
    } else if (args.length > 0 && args[0].equals("settings")) {
      Settings settings = Settings.ofUser();
      settings.setWindow(WINDOW);
      settings.setFollowing(false);
      settings.close();
    } else {
      new StartTiming(args).measure();
    }
  }

  private static void empty() {
    // As anybody would dress a window in this look.
    FlatInterFont.installLazy();
    FlatLaf.registerCustomDefaultsSource("longpoint.desktop");
    FlatLaf.setPreferredFontFamily(FlatInterFont.FAMILY);
    FlatLaf.setPreferredSemiboldFontFamily(FlatInterFont.FAMILY_SEMIBOLD);
    UIManager.put("defaultFont", new Font(FlatInterFont.FAMILY, Font.PLAIN, 15));
    FlatLightLaf.setup();
    JFrame frame = new JFrame("empty");
    frame.getContentPane().setBackground(GROUND); // not what the screen itself fills it with
    frame.setBounds(WINDOW);
    frame.setVisible(true);
  }

  private void measure() throws Exception {
    if (!Files.exists(JAR)) {
      throw new IOException("there is no " + JAR + ": run  mvn -q -DskipTests package");
    }
    robot.mouseMove(0, 0);
    start("empty", "settings").process.waitFor();
    Look settled = settled();
    Look ground = at(new Rectangle(WINDOW.width / 2, WINDOW.height / 2, 120, 16));
    Arrays.fill(ground.of[0], GROUND.getRGB());
    Times empty = new Times();
    Times first = new Times();
    Times whole = new Times();
    for (int i = 0; i <= TURNS; i++) { // the first turn fills the disk's memory, and does not count
      await(start("empty", "empty"), i, List.of(ground), List.of(empty));
      await(
          start("full"),
          i,
          List.of(plan.isEmpty() ? settled.part(0, 1) : settled.part(1, 2), settled.part(1, 99)),
          List.of(first, whole));
    }
    empty.tell("empty window");
    first.tell("first sight of Longpoint");
    whole.tell("whole window");
    System.out.printf(
        "first sight %.2f times an empty window, whole window %.2f; of processor time %.2f, %.2f%n",
        Times.median(first.clock) / (double) Times.median(empty.clock),
        Times.median(whole.clock) / (double) Times.median(empty.clock),
        Times.median(first.processor) / (double) Times.median(empty.processor),
        Times.median(whole.processor) / (double) Times.median(empty.processor));
    System.exit(0);
  }

  /** What some places of the screen look like. */
  private record Look(List<Rectangle> places, int[][] of) {
    Look part(int from, int to) {
      int end = Math.min(to, places.size());
      return new Look(places.subList(from, end), Arrays.copyOfRange(of, from, end));
    }
  }

  private Look at(Rectangle... places) {
    List<Rectangle> onScreen = new ArrayList<>();
    for (Rectangle place : places) {
      onScreen.add(
          new Rectangle(WINDOW.x + place.x, WINDOW.y + place.y, place.width, place.height));
    }
    return new Look(onScreen, onScreen.stream().map(this::seen).toArray(int[][]::new));
  }

  private int[] seen(Rectangle place) {
    return robot
        .createScreenCapture(place)
        .getRGB(0, 0, place.width, place.height, null, 0, place.width);
  }

  private boolean shows(Look look) {
    for (int i = 0; i < look.places.size(); i++) {
      if (!Arrays.equals(seen(look.places.get(i)), look.of[i])) {
        return false;
      }
    }
    return true;
  }

  /** The window as it is in the end: the middle of the sheet first, then its neighbours. */
  private Look settled() throws Exception {
    Run run = start("full");
    TimeUnit.SECONDS.sleep(6);
    // Small, so that looking does not hold up what is looked at.
    Look look =
        at(
            new Rectangle(330, 343, 120, 16), // the card's title
            new Rectangle(10, 6, 120, 16), // menus
            new Rectangle(30, 40, 50, 40), // the first tool
            new Rectangle(30, 790, 50, 30), // the last tool
            new Rectangle(1020, 44, 100, 20), // the last button of the header
            new Rectangle(1200, 50, 60, 16), // the form's title
            new Rectangle(1260, 410, 200, 16), // one of its fields
            new Rectangle(1195, 895, 100, 20), // problems
            new Rectangle(16, 930, 200, 20)); // status
    if (Arrays.stream(look.of[1]).distinct().count() < 2) {
      throw new IOException("no menus show: is something else on the screen?");
    }
    run.end();
    return look;
  }

  private Run start(String what, String... args) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(System.getProperty("java.home") + File.separator + "bin" + File.separator + "java");
    command.addAll(options);
    // A user who has never used the program but to put its window here.
    command.add("-Duser.home=" + home);
    command.add("-Djava.util.prefs.userRoot=" + home);
    if (what.equals("full")) {
      command.addAll(List.of("-jar", JAR.toString()));
      command.addAll(plan);
    } else {
      command.add("-cp");
      command.add(JAR + File.pathSeparator + Path.of("target", "test-classes"));
      command.add(StartTiming.class.getName());
      command.addAll(List.of(args));
    }
    ProcessBuilder builder = new ProcessBuilder(command).inheritIO();
    builder.environment().remove("XDG_STATE_HOME");
    long from = System.nanoTime();
    return new Run(builder.start(), from);
  }

  private record Run(Process process, long from) {
    void end() throws Exception {
      process.destroyForcibly().waitFor();
      TimeUnit.MILLISECONDS.sleep(150); // its window goes
    }
  }

  /** Waits for looks to show, one after the other, and ends the program. */
  private void await(Run run, int turn, List<Look> looks, List<Times> times) throws Exception {
    for (int i = 0; i < looks.size(); i++) {
      while (!shows(looks.get(i))) {
        if (!run.process.isAlive() || System.nanoTime() - run.from > LONGEST) {
          throw new IOException("it never showed: look " + i);
        }
        TimeUnit.MICROSECONDS.sleep(1500);
      }
      if (turn > 0) {
        times.get(i).add(run);
      } else if (i == 0 && looks.size() > 1 && !picture.isEmpty()) {
        ImageIO.write(robot.createScreenCapture(WINDOW), "png", new File(picture));
      }
    }
    run.end();
  }

  private record Times(List<Long> clock, List<Long> processor) {
    Times() {
      this(new ArrayList<>(), new ArrayList<>());
    }

    void add(Run run) {
      clock.add((System.nanoTime() - run.from) / 1_000_000);
      processor.add(run.process.info().totalCpuDuration().map(Duration::toMillis).orElse(0L));
    }

    static long median(List<Long> times) {
      return times.stream().sorted().skip(times.size() / 2).findFirst().orElse(0L);
    }

    void tell(String what) {
      System.out.printf(
          "%s: median %d ms (%d to %d), %d ms of the processor%n",
          what, median(clock), Collections.min(clock), Collections.max(clock), median(processor));
    }
  }
}
