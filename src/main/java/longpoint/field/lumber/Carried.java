package longpoint.field.lumber;

import java.util.ArrayList;
import java.util.List;
import longpoint.framing.FramingSet;
import longpoint.framing.stick.Rafter;
import longpoint.framing.truss.Truss;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/** Where along a row of boards the frame stands that carries it. */
final class Carried {
  /** Sine of the least angle between a row and what carries it. */
  private static final double ACROSS = 0.1;

  private Carried() {}

  /**
   * Places along a row where a part's trusses and rafters cross it or end within reach of it.
   *
   * @param row in plan
   * @param reach from the end of a truss or rafter to the row, ≥ 0
   */
  static List<Double> along(Segment row, FramingSet framing, String part, double reach) {
    List<Double> places = new ArrayList<>();
    for (Truss t : framing.trusses()) {
      if (t.part().equals(part)) {
        add(places, row, new Segment(t.from(), t.to()), reach);
      }
    }
    for (Rafter r : framing.rafters()) {
      if (r.part().equals(part) && !r.kind().isLevel()) {
        r.places().forEach(p -> add(places, row, p, reach));
      }
    }
    return places;
  }

  private static void add(List<Double> places, Segment row, Segment member, double reach) {
    if (row.length() == 0 || member.length() == 0) {
      return;
    }
    Point along = row.direction();
    double sine = along.cross(member.direction());
    if (Math.abs(sine) < ACROSS) {
      return;
    }
    double place = member.from().minus(row.from()).cross(member.direction()) / sine;
    Point at = row.from().plus(along.times(place));
    if (place > 0 && place < row.length() && member.distance(at) <= reach) {
      places.add(place);
    }
  }
}
