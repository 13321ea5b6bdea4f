package longpoint.desktop;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.prefs.Preferences;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.geometry.Ring;
import longpoint.plan.Deck;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;

/** Writes the pictures of the window: {@code Screenshots [folder]}, {@code docs/images} if none. */
public final class Screenshots {
  private Screenshots() {}

  public static void main(String[] args) throws Exception {
    Path folder = Path.of(args.length > 0 ? args[0] : "docs/images");
    Files.createDirectories(folder);
    for (Theme theme : Theme.values()) {
      MainWindow window = open(theme);
      settle(window);
      SwingUtilities.invokeAndWait(
          () -> window.job().runner().select(Selection.of(Ref.side("wing", 1))));
      settle(window);
      write(window, folder.resolve("window-" + theme.name().toLowerCase() + ".png"));
      SwingUtilities.invokeAndWait(() -> window.frame().dispose());
    }
    System.exit(0);
  }

  private static MainWindow open(Theme theme) throws Exception {
    MainWindow[] made = new MainWindow[1];
    SwingUtilities.invokeAndWait(
        () -> {
          Settings settings = new Settings(Preferences.userRoot().node("longpoint-screenshots"));
          settings.setTheme(theme);
          theme.install(15);
          made[0] =
              new MainWindow(
                  new Job(plan()),
                  settings,
                  longpoint.desktop.file.SwingDialogs::new,
                  (d, f) -> List.of());
          made[0].frame().setBounds(0, 0, 1560, 960);
          made[0].frame().setVisible(true);
        });
    return made[0];
  }

  private static Plan plan() {
    Plan empty = Plan.empty(LengthUnit.INCH).withTitle("Kestrel Court garden wing");
    Part main =
        new Part(
            "main",
            "House",
            false,
            Ring.of(0, 0, 480, 0, 480, 336, 0, 336),
            List.of(),
            97.125,
            List.of(
                Edge.eave(Slope.inTwelve(8)),
                Edge.of(EdgeKind.GABLE).withOverhang(12),
                Edge.eave(Slope.inTwelve(8)),
                Edge.of(EdgeKind.GABLE).withOverhang(12)),
            Frame.of(LengthUnit.INCH),
            Deck.of(LengthUnit.INCH),
            Extras.NONE);
    Part wing =
        new Part(
            "wing",
            "Garden wing",
            false,
            Ring.of(168, -144, 312, -144, 312, 0, 168, 0),
            List.of(),
            97.125,
            List.of(
                Edge.of(EdgeKind.GABLE).withOverhang(12),
                Edge.eave(Slope.inTwelve(10)),
                Edge.of(EdgeKind.OPEN),
                Edge.eave(Slope.inTwelve(10))),
            Frame.of(LengthUnit.INCH),
            Deck.of(LengthUnit.INCH),
            Extras.NONE);
    return empty.withPart(main).withPart(wing).withJoins(List.of(Join.overlay("wing", "main")));
  }

  private static void settle(MainWindow window) throws Exception {
    for (int i = 0; i < 60; i++) {
      Thread.sleep(25);
      boolean[] done = new boolean[1];
      SwingUtilities.invokeAndWait(() -> done[0] = window.job().isUpToDate());
      if (done[0] && i > 16) {
        return;
      }
    }
  }

  private static void write(MainWindow window, Path file) throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          JComponent root = window.frame().getRootPane();
          BufferedImage image =
              new BufferedImage(root.getWidth(), root.getHeight(), BufferedImage.TYPE_INT_RGB);
          Graphics2D g = image.createGraphics();
          g.setRenderingHint(
              RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
          root.paint(g);
          g.dispose();
          try {
            ImageIO.write(image, "png", file.toFile());
          } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
          }
        });
  }
}
