package longpoint.plan;

import static longpoint.plan.Parts.overhangs;
import static longpoint.plan.Parts.part;
import static longpoint.plan.Parts.plan;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longpoint.geometry.Ring;
import org.junit.jupiter.api.Test;

class PartTest {
  private static final Ring HOUSE = Ring.of(0, 0, 480, 0, 480, 336, 0, 336);
  private static final Ring COURT = Ring.of(100, 100, 100, 200, 200, 200, 200, 100);

  @Test
  void turningRoundKeepsEveryEdgeOnItsSide() {
    Part wrong = part("a", HOUSE.reversed(), COURT.reversed());
    Part right = wrong.rightWayRound();
    assertThat(right.outline().counterClockwise()).isTrue();
    assertThat(right.holes().get(0).counterClockwise()).isFalse();
    assertThat(right.outline().corner(0)).isEqualTo(wrong.outline().corner(0));
    for (int i = 0; i < right.sideCount(); i++) {
      int was = overhangs(right).get(i).intValue();
      assertThat(right.side(i).from()).isEqualTo(wrong.side(was).to());
      assertThat(right.side(i).to()).isEqualTo(wrong.side(was).from());
    }
    assertThat(right.rightWayRound()).isEqualTo(right);
  }

  @Test
  void aRenamedPartKeepsItsJoins() {
    Plan plan =
        plan(part("main", HOUSE), part("wing", HOUSE))
            .withJoins(List.of(Join.overlay("wing", "main")));
    Plan renamed = plan.withPartRenamed("wing", "garden");
    assertThat(renamed.joins()).containsExactly(Join.overlay("garden", "main"));
    assertThat(renamed.part("garden")).isPresent();
    assertThat(renamed.part("wing")).isEmpty();
  }

  @Test
  void freshIdsAreFree() {
    Plan plan = plan(part("wing", HOUSE), part("wing-2", HOUSE));
    assertThat(plan.freshId("wing")).isEqualTo("wing-3");
    assertThat(plan.freshId("porch")).isEqualTo("porch");
  }
}
