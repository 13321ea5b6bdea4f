package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JProgressBar;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.Deck;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import org.junit.jupiter.api.Test;

/** Working out a plan that takes its time is shown, and ends when it is told to. */
class LongWorkTest {
  /** The largest sample many times over, with the fewest sheets searched for: many seconds. */
  private static Plan estate() throws Exception {
    Plan lodge = PlanFile.read(Path.of("sample-plans", "heronsmere-lodge.json")).plan();
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      Point by = new Point(4000 * i, 0);
      for (Part part : lodge.parts()) {
        Ring outline = moved(part.outline(), by);
        List<Ring> holes = part.holes().stream().map(h -> moved(h, by)).toList();
        Deck deck = part.deck().withStart(Deck.Start.LEAST);
        parts.add(
            part.withId(part.id() + i).withShape(outline, holes, part.edges()).withDeck(deck));
      }
    }
    return lodge.withJoins(List.of()).withParts(parts);
  }

  private static Ring moved(Ring ring, Point by) {
    return new Ring(ring.points().stream().map(p -> p.plus(by)).toList());
  }

  private static boolean offered(WindowDriver window) {
    return window.find("status.callOff", JButton.class).isShowing();
  }

  private static void open(WindowDriver window, Plan plan) {
    WindowDriver.onEvents(
        () -> {
          window.window().job().open(plan, java.util.Optional.empty(), List.of());
          return null;
        });
  }

  @Test
  void itSaysHowFarItIsAndStopsByButtonAndByEscape() throws Exception {
    try (WindowDriver window = new WindowDriver(Plan.empty(longpoint.units.LengthUnit.INCH))) {
      open(window, estate());
      WindowDriver.until("stopping is offered", () -> offered(window));
      WindowDriver.until(
          "it says what it is at",
          () ->
              window
                      .find("status.work", JLabel.class)
                      .getText()
                      .equals(Texts.of("state.stage.DECK"))
                  && !window.find("status.bar", JProgressBar.class).isIndeterminate());
      window.push("status.callOff");
      WindowDriver.until("it has stopped", () -> window.window().job().isCalledOff());
      assertThat(WindowDriver.onEvents(() -> offered(window))).isFalse();
      assertThat(WindowDriver.onEvents(() -> window.window().job().isSketch())).isTrue();

      window.menu("view.solve");
      WindowDriver.until("it goes on", () -> offered(window));
      window.escape();
      WindowDriver.until("it has stopped again", () -> window.window().job().isCalledOff());

      // The engine is free: a small plan is worked out at once.
      open(window, PlanFile.read(Path.of("sample-plans", "tolverby-cabin.json")).plan());
      window.untilSolved();
      assertThat(window.design().deck().planes()).isNotEmpty();
    }
  }

  @Test
  void aChangeDoesNotWaitForTheEndOfTheLastOne() throws Exception {
    try (WindowDriver window = new WindowDriver(Plan.empty(longpoint.units.LengthUnit.INCH))) {
      open(window, estate());
      WindowDriver.until(
          "the deck is being laid",
          () ->
              window
                  .window()
                  .job()
                  .stage()
                  .equals(java.util.Optional.of(longpoint.pipeline.Pipeline.Stage.DECK)));
      Plan cabin = PlanFile.read(Path.of("sample-plans", "tolverby-cabin.json")).plan();
      open(window, cabin);
      window.untilSolved();
      assertThat(WindowDriver.onEvents(() -> window.window().job().picture().design().plan()))
          .isSameAs(cabin);
    }
  }
}
