package longpoint.framing.gable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longpoint.framing.FramingSet;
import longpoint.framing.Houses;
import longpoint.framing.truss.TrussKind;
import longpoint.plan.FrameChoices;
import longpoint.plan.Part;
import org.junit.jupiter.api.Test;

class LadderTest {
  private static List<Ladder> ladders(Part part) {
    return Houses.solve(Houses.plan(part)).ladders();
  }

  /**
   * By hand: 28 ft span, 8 in 12, 16 in eave overhang, 12 in rake; first bay 21 3/4 clear. Rake
   * (168 + 16) × 14.4222 / 12; lookout 21.75 + 1.5 + 12 − 1.5; flat lookouts lower the gable truss
   * 1 1/2 in square to the slope.
   */
  @Test
  void ladderByHand() {
    Ladder ladder = ladders(Houses.box("egeg", 8, 480, 336)).get(0);
    assertThat(ladder.rakeLength()).isEqualTo(184 * 14.4222 / 12, within(0.001));
    assertThat(ladder.lookoutLength()).isEqualTo(33.75);
    assertThat(ladder.drop()).isEqualTo(1.5 * 14.4222 / 12, within(1e-5));
    assertThat(ladder.plumbCut()).isEqualTo(90 - 33.6901, within(1e-4));
    assertThat(ladder.lookouts().subList(0, 3)).containsExactly(20.0, 44.0, 68.0);
    assertThat(ladder.blocks().subList(0, 2)).containsExactly(20.0, 20.5);
    assertThat(ladder.blockBevel()).isEqualTo(45);
    assertThat(ladder.review()).isEmpty();
  }

  @Test
  void fourLaddersOneForEachRake() {
    assertThat(ladders(Houses.box("egeg", 8, 480, 336)))
        .extracting(l -> l.side() + " " + l.rake())
        .containsExactlyInAnyOrder("main/1 LEFT", "main/1 RIGHT", "main/3 LEFT", "main/3 RIGHT");
  }

  /** On edge the gable truss drops 3 1/2 in square to the slope, and lookouts are 1 1/2 wide. */
  @Test
  void lookoutsOnEdge() {
    Part part = Houses.box("egeg", 9, 480, 336);
    Part edge =
        part.withFrame(
            part.frame().withChoices(FrameChoices.NONE.withLookout(FrameChoices.Lookout.EDGE)));
    FramingSet set = Houses.solve(Houses.plan(edge));
    assertThat(set.ladders().get(0).drop()).isEqualTo(3.5 * 1.25, within(1e-5));
    assertThat(set.ladders().get(0).blocks().get(1)).isEqualTo(22.5);
    double dropped =
        set.marks().stream()
            .filter(m -> m.kind() == TrussKind.DROPPED_GABLE_END)
            .findFirst()
            .orElseThrow()
            .height();
    double common =
        set.marks().stream()
            .filter(m -> m.kind() == TrussKind.COMMON)
            .findFirst()
            .orElseThrow()
            .height();
    assertThat(common - dropped).isEqualTo(3.5 * 1.25, within(1e-9));
  }

  /** Back-span at least the overhang: rule of thumb among framers; 24 in and over is reviewed. */
  @Test
  void longOverhangsAreFlagged() {
    Part part = Houses.box("egeg", 8, 480, 336);
    Part far = part.withEdge(1, part.edges().get(1).withOverhang(26));
    assertThat(ladders(far))
        .filteredOn(l -> l.side().equals("main/1"))
        .allSatisfy(
            l -> {
              assertThat(l.review()).hasSize(2);
            });
    assertThat(ladders(far))
        .filteredOn(l -> l.side().equals("main/3"))
        .allMatch(l -> l.review().isEmpty());
  }

  /** US Navy NAVEDTRA 14044 vol. 2: 24 in on centre, 6 in 12: 12 in from stud to stud. */
  @Test
  void studsOfAGable() {
    GableStuds studs = new GableStuds(288, 0.5, 24, 0);
    assertThat(studs.difference()).isEqualTo(12);
    assertThat(studs.toMiddle()).containsExactly(12.0, 24.0, 36.0, 48.0, 60.0, 72.0);
    // 16 in on centre: 8 in.
    assertThat(new GableStuds(288, 0.5, 16, 0).difference()).isEqualTo(8);
  }

  /** R. Hunter, Basic Carpentry Techniques: 150 in 250, 600 mm: 360; at 1200 mm in: 720. */
  @Test
  void studsOfAGableInMillimetres() {
    GableStuds studs = new GableStuds(6000, 150 / 250.0, 600, 0);
    assertThat(studs.difference()).isEqualTo(360, within(1e-9));
    assertThat(studs.height(1200)).isEqualTo(720, within(1e-9));
  }
}
