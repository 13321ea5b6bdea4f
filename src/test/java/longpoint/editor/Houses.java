package longpoint.editor;

import java.util.List;
import longpoint.geometry.Ring;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Join;
import longpoint.plan.Plan;
import longpoint.plan.Reshape;
import longpoint.units.LengthUnit;

/** Plans for tests, in inches. */
public final class Houses {
  private Houses() {}

  public static Plan empty() {
    return Plan.empty(LengthUnit.INCH);
  }

  /** 480 by 336, eaves south and north. */
  public static Plan house() {
    Ring outline = Ring.of(0, 0, 480, 0, 480, 336, 0, 336);
    return empty().withPart(NewPart.gabled(empty(), "main", outline));
  }

  /** The house with a wing 144 wide and deep on its south wall. */
  public static Plan winged() {
    Plan house = house();
    List<EdgeKind> kinds = List.of(EdgeKind.GABLE, EdgeKind.EAVE, EdgeKind.OPEN, EdgeKind.EAVE);
    Ring outline = Ring.of(168, -144, 312, -144, 312, 0, 168, 0);
    return house
        .withPart(NewPart.of(house, "wing", outline, kinds))
        .withJoins(List.of(Join.overlay("wing", "main")));
  }

  /** The house with a courtyard 96 square. */
  public static Plan courtyard() {
    Ring hole = Ring.of(192, 120, 288, 120, 288, 216, 192, 216);
    return house().withPart(Reshape.addHole(house().parts().get(0), hole, Edge.of(EdgeKind.EAVE)));
  }
}
