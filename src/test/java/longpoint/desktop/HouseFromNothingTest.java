package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.packet.Packet;
import longpoint.pipeline.Design;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.surface.LineKind;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A house drawn in the real window, by mouse and typed lengths, and its roof with it. */
class HouseFromNothingTest {
  /** Plan figures of what was drawn are exact; roof figures come from coordinates near 500. */
  private static final double CLOSE = 1e-6;

  /**
   * Length of a common rafter over its run at 10 in 12: √(10² + 12²)/12. The table on a framing
   * square has 15.62 inches of rafter to each foot of run.
   */
  private static final double TEN_IN_TWELVE = 15.6205 / 12;

  /** A mouse points at whole pixels; here 1 1/2 of them to the inch. */
  private static final double PIXEL = 1;

  @TempDir Path folder;
  private WindowDriver window;

  @BeforeEach
  void open() {
    window = new WindowDriver(Plan.empty(LengthUnit.INCH), Packet::write);
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  private WindowDriver drawHouse() {
    window.type("r").click(0, 0).move(200, 140).type("40' x 28'").enter();
    window.type("s").escape().escape();
    return window;
  }

  @Test
  void typedSizeMakesTheHouseExact() {
    drawHouse();
    Part house = window.plan().parts().get(0);
    assertThat(house.outline().bounds().width()).isEqualTo(480);
    assertThat(house.outline().bounds().height()).isEqualTo(336);
    // Gable roof: the ridge runs over the whole length and both rake overhangs.
    List<RoofLine> ridges = lines(window.design(), LineKind.RIDGE);
    assertThat(ridges).hasSize(1);
    assertThat(ridges.get(0).length()).isCloseTo(480 + 2 * 16, within(CLOSE));
    assertThat(ridges.get(0).from().y()).isCloseTo(168, within(CLOSE));
  }

  @Test
  void wallsTypedLargerThanTheSheetComeIntoSight() {
    window.type("r").click(0, 0).move(200, 140).type("140' x 90'").enter();
    window.design();
    WindowDriver.until(
        "the whole house shows",
        () ->
            window.window().canvas().view().scale() < 1 && window.window().canvas().isAllInSight());
  }

  @Test
  void aGableMadeAnEaveGetsTwoHipsAtHalfTheCorner() {
    drawHouse();
    window.click(480, 168).push("kind.eave");
    assertThat(window.plan().parts().get(0).edges().get(1).kind()).isEqualTo(EdgeKind.EAVE);
    List<RoofLine> hips = lines(window.design(), LineKind.HIP);
    assertThat(hips).hasSize(2);
    for (RoofLine hip : hips) {
      // Between equal slopes a hip halves the corner of the walls (common practice).
      double across = Math.abs(hip.to().x() - hip.from().x());
      assertThat(across).isCloseTo(Math.abs(hip.to().y() - hip.from().y()), within(CLOSE));
      // Half the house's depth and the reach of the eave: 16 overhang and 1 1/2 fascia.
      assertThat(across).isCloseTo(168 + 17.5, within(CLOSE));
    }
    window.push("kind.gable");
    assertThat(lines(window.design(), LineKind.HIP)).isEmpty();
  }

  @Test
  void aTypedSlopeTiltsItsPlane() {
    drawHouse();
    window.click(240, 0).fill("slope", "10/12");
    RoofPlane south = window.design().surface().plane("main/0").orElseThrow();
    assertThat(south.slope()).isCloseTo(10 / 12.0, within(CLOSE));
    assertThat(south.area() / south.planArea()).isCloseTo(TEN_IN_TWELVE, within(1e-4));
    assertThat(window.textOf("slope")).isEqualTo("10/12");
  }

  @Test
  void aSlopeThatCannotBeReadSaysWhyAndChangesNothing() {
    drawHouse();
    window.click(240, 0).fill("slope", "steep");
    assertThat(window.textOf("slope")).isEqualTo("steep");
    longpoint.desktop.panel.Words words =
        window.find("slope.wrong", longpoint.desktop.panel.Words.class);
    assertThat(WindowDriver.onEvents(words::isVisible)).isTrue();
    assertThat(WindowDriver.onEvents(words::getText)).contains("8/12");
    assertThat(window.plan().parts().get(0).edges().get(0).slope()).isEmpty();
  }

  @Test
  void aWingPulledOutOfAWallMeetsTheHouseInTwoValleys() {
    drawHouse();
    window.show(1.5, new longpoint.geometry.Point(240, 60));
    window.type("a").move(168, 0).press(168, 0).dragTo(220, -60).dragTo(260, -80);
    window.type("12' x 10'").enter();
    window.type("s");
    Plan plan = window.plan();
    assertThat(plan.parts()).hasSize(2);
    assertThat(plan.joins()).hasSize(1);
    Part wing = plan.parts().get(1);
    assertThat(wing.outline().bounds().width()).isEqualTo(144);
    assertThat(wing.outline().bounds().height()).isEqualTo(120);
    assertThat(lines(window.design(), LineKind.VALLEY)).hasSize(2);
  }

  @Test
  void roofLinesFollowACornerWhileItIsDragged() {
    drawHouse();
    Plan before = window.plan();
    window.show(1.5, new Point(300, 240)); // all of the drag on the sheet
    window.move(480, 336).press(480, 336).dragTo(500, 350).dragTo(540, 396);
    // The button is still down: the settled plan stands, the roof shows the preview.
    assertThat(window.plan()).isEqualTo(before);
    Plan shown = window.shownPlan();
    assertThat(shown).isNotEqualTo(before);
    Design during = window.design();
    assertThat(during.plan()).isEqualTo(shown);
    assertThat(during.surface().lines()).isNotEmpty();
    assertThat(reach(during)).isGreaterThan(540 - PIXEL);
    window.release(540, 396);
    assertThat(window.plan()).isEqualTo(shown);
    Bounds after = window.plan().parts().get(0).outline().bounds();
    assertThat(after.maxX()).isCloseTo(540, within(PIXEL));
    assertThat(after.maxY()).isCloseTo(396, within(PIXEL));
  }

  @Test
  void escapePutsADraggedCornerBack() {
    drawHouse();
    Plan before = window.plan();
    window.show(1.5, new Point(300, 240));
    window.move(480, 336).press(480, 336).dragTo(540, 396).escape();
    assertThat(window.shownPlan()).isEqualTo(before);
    window.release(540, 396);
    assertThat(window.plan()).isEqualTo(before);
  }

  @Test
  void everythingCanBeTakenBackAndDoneAgain() {
    drawHouse();
    window.click(480, 168).push("kind.eave").fill("slope", "10/12").fill("overhang", "2'");
    Plan last = window.plan();
    assertThat(window.window().job().document().done()).hasSize(4);
    for (int i = 0; i < 4; i++) {
      window.control(KeyEvent.VK_Z);
    }
    assertThat(window.plan().parts()).isEmpty();
    assertThat(window.window().job().document().undoName()).isEmpty();
    for (int i = 0; i < 4; i++) {
      window.stroke(KeyEvent.VK_Z, InputEvent.CTRL_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK);
    }
    assertThat(window.plan()).isEqualTo(last);
  }

  @Test
  void aTypedLengthMovesTheEndThatWasChosen() {
    drawHouse();
    window.click(240, 0).push("givesWay.start").fill("length", "36'");
    assertThat(window.plan().parts().get(0).outline().bounds().width()).isEqualTo(432);
    assertThat(window.plan().parts().get(0).outline().bounds().maxX()).isEqualTo(480);
    window.push("givesWay.finish").fill("length", "11m");
    double inches = 11_000 / 25.4; // the international inch of 1959 is 25.4 mm exactly
    assertThat(window.plan().parts().get(0).outline().bounds().width())
        .isCloseTo(inches, within(CLOSE));
    assertThat(window.plan().parts().get(0).outline().bounds().minX()).isEqualTo(48);
  }

  @Test
  void aSavedPlanComesBackTheSame() throws Exception {
    drawHouse();
    window.click(480, 168).push("kind.eave");
    Plan drawn = window.plan();
    Path file = folder.resolve("house.json");
    window.dialogs().save = Optional.of(file);
    assertThat(window.window().job().document().isDirty()).isTrue();
    window.control(KeyEvent.VK_S);
    assertThat(window.window().job().document().isDirty()).isFalse();
    assertThat(file).exists();

    window.menu("file.new.mm");
    assertThat(window.plan()).isEqualTo(Plan.empty(LengthUnit.MILLIMETRE));
    window.dialogs().open = Optional.of(file);
    window.control(KeyEvent.VK_O);
    assertThat(window.plan()).isEqualTo(drawn);
    assertThat(lines(window.design(), LineKind.HIP)).hasSize(2);
    assertThat(Files.list(folder)).hasSize(1);
  }

  @Test
  void thePacketHoldsTheDrawingsOfWhatWasDrawn() throws Exception {
    drawHouse();
    window.fill("title", "Corran Street house");
    Path to = folder.resolve("packet");
    window.dialogs().folder = Optional.of(to);
    window.menu("file.packet");
    WindowDriver.until("the packet is told of", () -> !window.dialogs().told.isEmpty());
    List<String> names;
    try (Stream<Path> files = Files.list(to)) {
      names = files.map(f -> f.getFileName().toString()).sorted().toList();
    }
    assertThat(names).anyMatch(n -> n.endsWith(".svg")).anyMatch(n -> n.endsWith(".dxf"));
    assertThat(window.dialogs().told).contains(to.toString());
    Path saved = to.resolve("Corran-Street-house-plan.json");
    assertThat(PlanFile.read(saved).plan()).isEqualTo(window.plan());
  }

  private static List<RoofLine> lines(Design design, LineKind kind) {
    return design.surface().lines().stream().filter(l -> l.kind() == kind).toList();
  }

  private static double reach(Design design) {
    return design.surface().lines().stream()
        .mapToDouble(l -> Math.max(l.from().x(), l.to().x()))
        .max()
        .orElse(0);
  }
}
