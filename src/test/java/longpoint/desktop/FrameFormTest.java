package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import javax.swing.JButton;
import javax.swing.JFrame;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.framing.Houses;
import longpoint.framing.run.RunProposal.Reason;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussKind;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.RunChoices;
import org.junit.jupiter.api.Test;

/** What a person says about a frame in the side panel, and what the frame then is. */
class FrameFormTest {
  private static final Plan WING = Houses.gardenWing(Join.Method.OVERLAY);

  /** Two legs of one width and height, the longer one upright. */
  private static final Plan ELL =
      Houses.plan(
          Houses.part(
              "main", 97.125, "eeeege", 8, 0, 0, 480, 0, 480, 288, 288, 288, 288, 720, 0, 720));

  private static void select(WindowDriver window, String part) {
    WindowDriver.onEvents(
        () -> {
          window.window().job().runner().select(new Selection(List.of(Ref.part(part))));
          return null;
        });
  }

  private static Part part(WindowDriver window, String id) {
    return window.plan().part(id).orElseThrow();
  }

  @Test
  void placesAreTypedAsStations() throws Exception {
    try (WindowDriver window = new WindowDriver(WING)) {
      select(window, "main");
      window.push("fold.frame.more");
      window.fill("placedGirders", "10'6 x3; 30'");
      window.fill("placedTrusses", "5'");
      window.fill("leftOut", "8'");
      window.fill("ceilings", "12'..18': 4/12");
      window.fill("crossGirders", "8'4: 20'..26' x1");
      window.untilSolved();
      assertThat(window.textOf("placedGirders")).isEqualTo("10'-6\" x3; 30'-0\" x2");
      List<Truss> main =
          window.design().framing().trusses().stream()
              .filter(t -> t.part().equals("main"))
              .toList();
      assertThat(main).anyMatch(t -> t.plies() == 3 && Math.abs(t.station() - 126) < 1e-9);
      assertThat(main).anyMatch(t -> t.kind() == TrussKind.CROSS_GIRDER);
      assertThat(main).noneMatch(t -> t.station() == 96);
      assertThat(main).anyMatch(t -> t.station() == 60);
      assertThat(main.stream().filter(t -> t.kind() == TrussKind.SCISSOR)).hasSize(4);
      picture(window, "frame-form");
      window.fill("placedGirders", "");
      assertThat(part(window, "main").frame().placements().trusses()).hasSize(2);
    }
  }

  @Test
  void aListOfChordsIsPasted() throws Exception {
    try (WindowDriver window = new WindowDriver(WING)) {
      select(window, "wing");
      window.fill("chords", "V1: 9'-2\"\nV2: 5'-1 3/8\"");
      window.untilSolved();
      assertThat(window.plan().joins().get(0).chords()).containsExactly(110.0, 61.375);
      assertThat(window.design().framing().valleySets().get(0).supplied()).hasSize(2);
      window.push("mouthTails.on");
      assertThat(window.plan().joins().get(0).tails()).isEqualTo(Join.MouthTails.ON);
      picture(window, "chords-form");
      window.fill("chords", "");
      assertThat(window.plan().joins().get(0).chords()).isEmpty();
    }
  }

  @Test
  void aProposalIsTurnedRoundAndDown() throws Exception {
    try (WindowDriver window = new WindowDriver(ELL)) {
      select(window, "main");
      picture(window, "legs");
      window.push("legs.turn");
      window.untilSolved();
      var turned = window.design().framing().proposals().get(0);
      assertThat(turned.reason()).isEqualTo(Reason.CHOSEN);
      assertThat(turned.at().x()).isGreaterThan(288);
      assertThat(window.design().framing().tapes().get(0).length()).isEqualTo(480, within(1e-9));
      window.push("legs.decline");
      window.untilSolved();
      assertThat(window.design().framing().trusses()).isEmpty();
      assertThat(window.design().framing().rafters()).isNotEmpty();
      assertThat(part(window, "main").frame().choices().runs().legs())
          .contains(RunChoices.Legs.WHOLE);
      window.push("legs.accept");
      window.untilSolved();
      assertThat(window.design().framing().trusses()).isNotEmpty();
      assertThat(window.find("legs.accept", JButton.class).isEnabled()).isFalse();
    }
  }

  @Test
  void theLayoutStartsFromTheOtherEnd() throws Exception {
    try (WindowDriver window = new WindowDriver(WING)) {
      select(window, "main");
      window.push("layoutFrom.east");
      assertThat(part(window, "main").frame().choices().runs().layoutFrom().get(0).x())
          .isEqualTo(480);
      window.push("layoutFrom.west");
      assertThat(part(window, "main").frame().choices().runs().layoutFrom()).hasSize(1);
      assertThat(part(window, "main").frame().choices().runs().layoutFrom().get(0).x())
          .isEqualTo(0);
    }
  }

  /** For a look by hand: set {@code longpoint.pictures} to a folder. */
  private static void picture(WindowDriver window, String name) throws IOException {
    String folder = System.getProperty("longpoint.pictures");
    if (folder != null) {
      JFrame frame = window.window().frame();
      BufferedImage image = new BufferedImage(1400, 900, BufferedImage.TYPE_INT_RGB);
      WindowDriver.onEvents(
          () -> {
            frame.validate();
            frame.getRootPane().paint(image.createGraphics());
            return null;
          });
      ImageIO.write(image, "png", new File(folder, name + ".png"));
    }
  }
}
