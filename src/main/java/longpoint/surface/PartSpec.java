package longpoint.surface;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;
import longpoint.units.LengthUnit;

/**
 * All that one part's own roof depends on. Equal specs have equal roofs, which is what lets a part
 * that did not change keep its roof while another is dragged.
 *
 * @param unit for the figures in messages
 * @param origin a whole-numbered point near the part; the rings are measured from it, so that a
 *     plan far from its datum loses no figures
 * @param rings the sides, ring by ring, with walls measured from the origin
 * @param runOn how far open sides are moved out to find what they meet, ≥ 0
 */
record PartSpec(String part, LengthUnit unit, Point origin, List<List<Side>> rings, double runOn) {
  PartSpec {
    rings = List.copyOf(rings);
  }

  /**
   * The spec of a part.
   *
   * @param across extent of the whole plan; open sides run on at least that far
   */
  static PartSpec of(Plan plan, Part part, double across) {
    Point first = part.outline().corner(0);
    Point origin = new Point(Math.floor(first.x()), Math.floor(first.y()));
    List<List<Side>> rings = new ArrayList<>();
    int index = 0;
    for (Ring ring : part.rings()) {
      List<Side> sides = new ArrayList<>();
      for (int i = 0; i < ring.size(); i++) {
        sides.add(Sides.moved(plan.side(part, index++), -origin.x(), -origin.y()));
      }
      rings.add(List.copyOf(sides));
    }
    boolean open = part.edges().stream().anyMatch(e -> e.kind() == EdgeKind.OPEN);
    // A power of two, so that dragging some other part seldom changes it.
    double runOn = open && across > 0 ? Math.pow(2, Math.ceil(Math.log(across) / Math.log(2))) : 0;
    return new PartSpec(part.id(), plan.unit(), origin, rings, runOn);
  }

  List<Side> sides() {
    return rings.stream().flatMap(List::stream).toList();
  }
}
