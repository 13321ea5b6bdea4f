package longpoint.desktop.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Window;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.SwingUtilities;
import longpoint.desktop.WindowDriver;
import longpoint.geometry.Point;
import longpoint.tracing.Gap;
import longpoint.tracing.Traced;
import longpoint.units.LengthUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The question about walls that are not closed, as it stands on the screen. */
class GapQuestionTest {
  private static final Traced OPEN =
      new Traced(
          List.of(),
          List.of(new Gap("WALL", new Point(0, 0), new Point(0, 6))),
          List.of(List.of(new Point(0, 6), new Point(0, 240), new Point(360, 240))),
          List.of());

  @ParameterizedTest
  @CsvSource({"close, CLOSED", "leave, LEFT_OPEN", "stay,"})
  void everyButtonGivesItsAnswer(String button, Traced.Gaps answer) throws Exception {
    WindowDriver.needDisplay();
    CompletableFuture<Optional<Traced.Gaps>> given = new CompletableFuture<>();
    SwingUtilities.invokeLater(
        () -> {
          WindowDriver.dress();
          given.complete(TracingDialog.gaps(null, OPEN, LengthUnit.INCH));
        });
    WindowDriver.until("it is asked", () -> dialog().isPresent());
    WindowDriver.onEvents(
        () -> {
          JDialog asked = dialog().orElseThrow();
          assertThat(WindowDriver.find(asked, "gaps.sketch", GapSketch.class)).isNotNull();
          WindowDriver.find(asked, "question." + button, JButton.class).doClick(0);
          return null;
        });
    assertThat(given.get(10, TimeUnit.SECONDS)).isEqualTo(Optional.ofNullable(answer));
  }

  private static Optional<JDialog> dialog() {
    return Stream.of(Window.getWindows())
        .filter(w -> w.isShowing() && w instanceof JDialog && "question".equals(w.getName()))
        .map(JDialog.class::cast)
        .findFirst();
  }
}
