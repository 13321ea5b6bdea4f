package longpoint.framing.gable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longpoint.field.lumber.Cut;
import longpoint.field.lumber.Use;
import longpoint.framing.FramingSet;
import longpoint.framing.Houses;
import longpoint.framing.stick.Rafter;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Frame;
import longpoint.plan.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The wall under the upper ends of a shed's rafters. */
class HighWallTest {
  private static Plan shed(String sides, double rise) {
    return Houses.plan(Houses.framed(Houses.box(sides, rise, 192, 144), Frame.Method.RAFTER, 16));
  }

  /**
   * Run = span less the width of the high plate, 12 ft on 3 1/2 in: 11 ft 8 1/2 in (US Navy
   * NAVEDTRA 14044 vol. 2, sheds). By hand at 3 in 12 that rises 140.5/4 = 35 1/8, less two plates
   * of 1 1/2: studs of 32 1/8; at 16 in along 16 ft, flush at both ends, 13 of them.
   */
  @Test
  void byHand() {
    Design design = Pipeline.solve(shed("eggg", 3));
    HighWall wall = design.framing().highWalls().get(0);
    assertThat(wall.side()).isEqualTo("main/2");
    assertThat(wall.rise()).isEqualTo(35.125, within(1e-9));
    assertThat(wall.stud()).isEqualTo(32.125, within(1e-9));
    assertThat(wall.places()).hasSize(13).startsWith(0.75, 16.0).endsWith(176.0, 191.25);
    assertThat(cut(design, Use.WALL_STUD).count()).isEqualTo(13);
    assertThat(cut(design, Use.WALL_STUD).length()).isEqualTo(32.125, within(1e-9));
    assertThat(cut(design, Use.WALL_PLATE).count()).isEqualTo(2);
    assertThat(cut(design, Use.WALL_PLATE).length()).isEqualTo(192, within(1e-9));
  }

  private static Cut cut(Design design, Use use) {
    return design.lumber().cuts().stream().filter(c -> c.use() == use).findFirst().orElseThrow();
  }

  /** The plate's top lies where the rafter that passes over leaves the same heel as on the low. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 2.5, 4, 8, 12})
  void rafterSitsAlikeOnBothWalls(double rise) {
    FramingSet set = Houses.solve(shed("eggg", rise));
    Rafter rafter = set.rafters().get(0);
    double top = set.highWalls().get(0).rise();
    assertThat(4.5 + rafter.rise() - top).isEqualTo(rafter.seat().get().height(), within(1e-9));
  }

  @Test
  void onlyWhereRaftersSlopeOneWay() {
    assertThat(Houses.solve(shed("egeg", 6)).highWalls()).isEmpty();
    assertThat(Houses.solve(Houses.plan(Houses.box("eggg", 3, 192, 144))).highWalls()).isEmpty();
    // A roof nearly flat: the doubled plate alone takes up the rise, or is too much already.
    HighWall low = Houses.solve(shed("eggg", 0.4)).highWalls().get(0);
    assertThat(low.stud()).isZero();
    assertThat(low.places()).isEmpty();
    assertThat(Houses.solve(shed("eggg", 0.2)).highWalls()).isEmpty();
  }
}
