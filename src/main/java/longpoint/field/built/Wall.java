package longpoint.field.built;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.PlanDimension.Corner;

/**
 * A wall with the corners at its ends.
 *
 * @param side number of the side in its part
 */
record Wall(String part, int side, Corner from, Corner to, Segment line) {
  /** Every wall of a plan, part by part. */
  static List<Wall> all(Plan plan) {
    List<Wall> all = new ArrayList<>();
    for (Part part : plan.parts()) {
      all.addAll(of(part));
    }
    return all;
  }

  static List<Wall> of(Part part) {
    List<Wall> walls = new ArrayList<>();
    int first = 0;
    for (Ring ring : part.rings()) {
      for (int i = 0; i < ring.size(); i++) {
        walls.add(
            new Wall(
                part.id(),
                first + i,
                new Corner(part.id(), first + i),
                new Corner(part.id(), first + (i + 1) % ring.size()),
                ring.side(i)));
      }
      first += ring.size();
    }
    return walls;
  }
}
