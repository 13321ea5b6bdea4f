package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.swing.JButton;
import javax.swing.JFrame;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.framing.Houses;
import longpoint.framing.run.RunProposal.Reason;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussKind;
import longpoint.geometry.Point;
import longpoint.plan.CeilingStretch;
import longpoint.plan.Extras;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.PlacedTruss;
import longpoint.plan.PlacedTruss.Kind;
import longpoint.plan.Placements;
import longpoint.plan.Plan;
import longpoint.plan.RunChoices;
import longpoint.units.Slope;
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

  /** What a typed list cannot show of its entries is not lost when the list is typed over. */
  @Test
  void keysNotKnownHereOutliveRetyping() throws Exception {
    Part main = WING.part("main").orElseThrow();
    Placements placed =
        new Placements(
            List.of(
                new PlacedTruss(at(60, 20), Optional.empty(), Kind.TRUSS, 1, note("extra")),
                new PlacedTruss(at(126, 30), Optional.empty(), Kind.GIRDER, 2, note("first")),
                new PlacedTruss(at(330, 40), Optional.empty(), Kind.GIRDER, 2, note("second")),
                new PlacedTruss(
                    at(240, 100), Optional.of(at(312, 100)), Kind.GIRDER, 1, note("along"))),
            List.of(at(408, 50)),
            List.of(new CeilingStretch(at(1, 5), at(50, 6), Slope.inTwelve(3), note("den"))));
    Plan plan = WING.withPart(main.withFrame(main.frame().withPlacements(placed)));
    try (WindowDriver window = new WindowDriver(plan)) {
      select(window, "main");
      window.push("fold.frame.more");
      // The first girder gets a ply, the second moves, a third comes first.
      window.fill("placedGirders", "6'; 10'6 x3; 28'");
      window.fill("placedTrusses", "5'");
      window.fill("crossGirders", "8'4: 20'..26' x2");
      window.fill("leftOut", "34'; 36'");
      window.fill("ceilings", "1\"..50\": 4/12");
      Placements now = part(window, "main").frame().placements();
      assertThat(now.trusses())
          .containsExactlyInAnyOrder(
              placed.trusses().get(0),
              new PlacedTruss(at(72, 40), Optional.empty(), Kind.GIRDER, 2, note("second")),
              new PlacedTruss(at(126, 30), Optional.empty(), Kind.GIRDER, 3, note("first")),
              PlacedTruss.girder(at(336, 168), 2),
              new PlacedTruss(
                  at(240, 100), Optional.of(at(312, 100)), Kind.GIRDER, 2, note("along")));
      assertThat(now.leftOut()).containsExactly(at(408, 50), at(432, 168));
      assertThat(now.ceilings())
          .containsExactly(new CeilingStretch(at(1, 5), at(50, 6), Slope.inTwelve(4), note("den")));
    }
  }

  private static Point at(double x, double y) {
    return new Point(x, y);
  }

  private static Extras note(String text) {
    return new Extras(Map.of("note", '"' + text + '"'));
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
      window.push("fold.frame.more");
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
