package longpoint.framing.valley;

import java.util.List;
import longpoint.framing.Shop;
import longpoint.framing.run.Axes;
import longpoint.framing.run.Meeting;
import longpoint.framing.run.Run;
import longpoint.geometry.Point;
import longpoint.plan.PlaceName;
import longpoint.plan.Problem;
import longpoint.units.LengthFigure;
import longpoint.units.LengthUnit;
import longpoint.wording.Phrase;

/** What a crew should be told about a valley set that has odd trusses. */
final class SetCheck {
  /** How far a chord may run out past the plane beneath, in truss thicknesses. */
  private static final double PAST = 1;

  private SetCheck() {}

  /**
   * @param axes of the set
   */
  static void check(
      Meeting m, Axes axes, List<ValleyTruss> trusses, LengthUnit unit, List<Problem> problems) {
    Shop shop = Shop.of(unit);
    PlaceName wing = PlaceName.of(m.upper().part());
    String where = m.upper().part().id();
    for (ValleyTruss t : trusses) {
      if (t.length() < shop.valley() || t.height() < shop.edge()) {
        problems.add(
            Problem.note(
                where,
                Phrase.of(
                    "framing.valley.small",
                    t.number(),
                    wing,
                    new LengthFigure(t.length(), unit),
                    new LengthFigure(t.height(), unit))));
      }
    }
    long past = trusses.stream().filter(t -> reachesPast(m, axes, t, shop.mark())).count();
    if (past > 0) {
      problems.add(
          Problem.warning(
              where,
              Phrase.of("framing.valley.past", (int) past, wing, PlaceName.of(m.lower().part()))));
    }
  }

  private static boolean reachesPast(Meeting m, Axes axes, ValleyTruss t, double same) {
    double room = PAST * m.upper().part().frame().thickness();
    return isPast(m, axes.at(t.x(), t.left() - room), same)
        || isPast(m, axes.at(t.x(), room - t.right()), same);
  }

  /** Whether a place lies over a hip of the run beneath, or out past its end. */
  private static boolean isPast(Meeting m, Point p, double same) {
    Run lower = m.lower();
    double u = lower.axes().u(p);
    double v = lower.axes().v(p);
    double on = lower.bound(m.bank()).side().orElseThrow().framePlane().heightAt(p);
    boolean outside =
        u < -lower.start().overhang()
            || u > lower.length() + lower.end().overhang()
            || v < -lower.low().overhang()
            || v > lower.width() + lower.high().overhang();
    return outside || lower.heightAt(u, v) < on - same;
  }
}
