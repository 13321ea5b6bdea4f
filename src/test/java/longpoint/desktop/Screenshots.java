package longpoint.desktop;

import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Window;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.JFrame;
import longpoint.desktop.canvas.PickListener;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.units.LengthUnit;

/**
 * Writes the pictures of the window that the README and the manual show. From the project's folder:
 *
 * <pre>{@code
 * xvfb-run -a -s "-screen 0 1600x1000x24" mvn -q test-compile exec:exec \
 *     -Dmain=longpoint.desktop.Screenshots -Dargs=docs/images
 * }</pre>
 */
public final class Screenshots {
  private static final Path SAMPLES = Path.of("sample-plans");

  private final Path folder;
  private Theme theme = Theme.LIGHT;

  private Screenshots(Path folder) {
    this.folder = folder;
  }

  public static void main(String[] args) throws Exception {
    Path folder = Path.of(args.length > 0 ? args[0] : "docs/images");
    Files.createDirectories(folder);
    Screenshots shots = new Screenshots(folder);
    for (Theme theme : Theme.values()) {
      shots.theme = theme;
      String name = theme.name().toLowerCase(Locale.ROOT);
      shots.wing("window-" + name);
    }
    shots.theme = Theme.LIGHT;
    WindowDriver.onEvents(
        () -> {
          Theme.LIGHT.install(15);
          return null;
        });
    shots.drawing("drawing");
    shots.frame("trusses");
    shots.solid("house");
    shots.finder("finder");
    shots.start("start");
    shots.beside("truss", "tolverby-cabin", "beside.outline", "T1");
    shots.beside("flat", "sable-lane-garden-wing", "beside.flat", "wing/1");
    shots.beside("sheets", "marrowgate-bungalow", "beside.sheets", "");
    shots.theme = Theme.DARK;
    shots.beside("lists-dark", "heronsmere-lodge", "beside.lists", "hall/0");
    System.exit(0);
  }

  /** The garden wing with a wall picked. */
  private void wing(String name) throws Exception {
    try (WindowDriver window = sample("sable-lane-garden-wing")) {
      select(window, 1, 1);
      write(window, name);
    }
  }

  /** The house from outside, beside the sheet. */
  private void solid(String name) throws Exception {
    try (WindowDriver window = sample("sable-lane-garden-wing")) {
      WindowDriver.onEvents(
          () -> {
            window.window().catalogue().task("beside.house").perform();
            return null;
          });
      write(window, name);
    }
  }

  /** An empty sheet. */
  private void start(String name) throws Exception {
    try (WindowDriver window = new WindowDriver(Plan.empty(LengthUnit.INCH))) {
      write(window, name);
    }
  }

  /** A view beside the plan with something picked. */
  private void beside(String name, String sample, String task, String picked) throws Exception {
    try (WindowDriver window = sample(sample)) {
      window.untilSolved();
      window.menu(task);
      WindowDriver.onEvents(
          () -> {
            window
                .window()
                .picks()
                .pick(Optional.of(picked).filter(id -> !id.isEmpty()), PickListener.How.ALONE);
            return null;
          });
      WindowDriver.onEvents(
          () -> {
            window.window().canvas().fit();
            return null;
          });
      Thread.sleep(3000); // sheets are laid out in their own time
      write(window, name);
    }
  }

  /** A whole house picked, with its trusses. */
  private void frame(String name) throws Exception {
    try (WindowDriver window = sample("heronsmere-lodge")) {
      WindowDriver.onEvents(
          () -> {
            window.window().catalogue().task("view.frame").perform();
            return null;
          });
      write(window, name);
    }
  }

  /** In the middle of typing a size. */
  private void drawing(String name) throws Exception {
    try (WindowDriver window = new WindowDriver(Plan.empty(LengthUnit.INCH))) {
      window.type("r").click(60, 30).move(300, 190).type("26' 6 x 1");
      write(window, name);
    }
  }

  private void finder(String name) throws Exception {
    try (WindowDriver window = sample("tolverby-cabin")) {
      WindowDriver.onEvents(
          () -> {
            window.window().finder().open();
            return null;
          });
      write(window, name);
    }
  }

  private WindowDriver sample(String name) throws Exception {
    Path file = SAMPLES.resolve(name + ".json");
    WindowDriver window = new WindowDriver(PlanFile.read(file).plan());
    WindowDriver.onEvents(
        () -> {
          window.window().appearance().setTheme(theme);
          window.window().frame().setSize(1560, 960);
          window.window().frame().validate();
          window.window().canvas().fit();
          return null;
        });
    Thread.sleep(600);
    WindowDriver.onEvents(
        () -> {
          window.window().canvas().fit();
          return null;
        });
    return window;
  }

  private static void select(WindowDriver window, int part, int side) {
    WindowDriver.onEvents(
        () -> {
          String id = window.window().job().document().plan().parts().get(part).id();
          window.window().job().runner().select(Selection.of(Ref.side(id, side)));
          return null;
        });
  }

  private void write(WindowDriver window, String name) throws Exception {
    Thread.sleep(2500); // lettering is laid out anew when a zoom has come to rest
    window.untilSolved();
    Thread.sleep(200);
    BufferedImage image = WindowDriver.onEvents(() -> paint(window.window().frame()));
    try {
      ImageIO.write(image, "png", folder.resolve(name + ".png").toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The window and whatever stands over it. */
  private static BufferedImage paint(JFrame frame) {
    JComponent root = frame.getRootPane();
    BufferedImage image =
        new BufferedImage(root.getWidth(), root.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    root.paint(g);
    for (Window over : frame.getOwnedWindows()) {
      if (over.isShowing()) {
        Component at = over;
        Graphics2D own =
            (Graphics2D)
                g.create(
                    at.getX() - root.getLocationOnScreen().x,
                    at.getY() - root.getLocationOnScreen().y,
                    at.getWidth(),
                    at.getHeight());
        over.paint(own);
        own.dispose();
      }
    }
    g.dispose();
    return image;
  }
}
