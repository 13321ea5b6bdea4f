package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.imageio.ImageIO;
import longpoint.plan.Backdrop;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A picture laid behind the plan in the real window. */
class BackdropWindowTest {
  @TempDir Path folder;
  private WindowDriver window;
  private Path picture;

  @BeforeEach
  void open() throws Exception {
    window = new WindowDriver(Plan.empty(LengthUnit.INCH));
    BufferedImage image = new BufferedImage(400, 300, BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.BLUE);
    g.fillRect(0, 0, 400, 300);
    g.dispose();
    picture = folder.resolve("survey.png");
    ImageIO.write(image, "png", picture.toFile());
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  private Backdrop backdrop() {
    return window.plan().markup().backdrop().orElseThrow();
  }

  /** For the event thread. */
  private boolean laid() {
    return window.window().job().document().plan().markup().backdrop().isPresent();
  }

  private void load(Path file) {
    window.dialogs().picture = Optional.of(file);
    window.menu("picture.load");
  }

  /** For the event thread. */
  private boolean blueInTheMiddle() {
    var canvas = window.window().canvas();
    BufferedImage seen =
        new BufferedImage(canvas.getWidth(), canvas.getHeight(), BufferedImage.TYPE_INT_RGB);
    canvas.paint(seen.createGraphics());
    Plan plan = window.window().job().document().plan();
    var middle = plan.markup().backdrop().orElseThrow().bounds().middle();
    // A little off the middle, clear of the lines of the grid.
    int x = (int) canvas.view().x(middle) + 3;
    int y = (int) canvas.view().y(middle) + 3;
    Color c = new Color(seen.getRGB(x, y));
    return c.getBlue() > c.getRed() + 60;
  }

  @Test
  void itIsLoadedScaledByTwoPointsSeenSavedAndOpenedAgain() throws Exception {
    load(picture);
    WindowDriver.until("the picture lies there", this::laid);
    WindowDriver.until("the picture shows", this::blueInTheMiddle);
    // The tool for its scale is in hand already: two points on the sheet and a length.
    window.click(100, 100).click(300, 100).type("40'").enter();
    double factor = 480 / 200.0;
    assertThat(backdrop().scale()).isPositive();
    Plan scaled = window.plan();
    window.control(KeyEvent.VK_Z);
    double before = backdrop().scale();
    // A mouse points at whole pixels: two thirds of an inch in 200 at this zoom.
    assertThat(scaled.markup().backdrop().orElseThrow().scale() / before)
        .isCloseTo(factor, within(factor * 0.01));
    Path file = folder.resolve("traced.json");
    window.dialogs().save = Optional.of(file);
    window.control(KeyEvent.VK_S);
    assertThat(PlanFile.read(file).plan()).isEqualTo(window.plan());
    window.menu("file.new.in");
    assertThat(window.plan().markup().backdrop()).isEmpty();
    window.dialogs().open = Optional.of(file);
    window.control(KeyEvent.VK_O);
    WindowDriver.until("the picture shows again", this::blueInTheMiddle);
  }

  @Test
  void hiddenItIsNotSeenAndStaysInThePlan() {
    load(picture);
    WindowDriver.until("the picture lies there", this::laid);
    WindowDriver.until("the picture shows", this::blueInTheMiddle);
    window.push("backdropState.hidden");
    assertThat(WindowDriver.onEvents(this::blueInTheMiddle)).isFalse();
    assertThat(backdrop().name()).isEqualTo("survey.png");
    window.push("strength.1.0").push("backdropState.locked");
    assertThat(WindowDriver.onEvents(this::blueInTheMiddle)).isTrue();
    assertThat(backdrop().strength()).isEqualTo(1);
  }

  @Test
  void aBadPictureIsRefusedInWordsAndNothingChanges() throws Exception {
    Plan before = window.plan();
    load(Files.writeString(folder.resolve("list.pdf"), "two by sixes"));
    WindowDriver.until("the refusal is told", () -> !window.dialogs().told.isEmpty());
    assertThat(window.dialogs().told).contains("list.pdf").contains("JPEG");
    assertThat(window.plan()).isSameAs(before);
  }
}
