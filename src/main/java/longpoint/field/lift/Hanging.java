package longpoint.field.lift;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.framing.truss.TrussKind;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.plan.Lift;
import longpoint.units.LengthUnit;

/**
 * Where a section hangs and what its lines carry. What the user leaves open: two places on one
 * truss and four on several, a quarter of the span to either side of the centre of gravity; the
 * hook so high that no line is flatter than 60°.
 */
record Hanging(Point3 hook, List<HangPoint> points, LiftSection.Lines lines) {
  /** Lines to the top chord of a truss make no more than 60° with each other (trade guidance). */
  private static final double STEEP = Math.tan(Math.toRadians(60));

  /** Share of the span from the centre to a place: half the truss between both (trade guidance). */
  private static final double QUARTER = 0.25;

  /** Places keep this share of the span away from a bearing. */
  private static final double FROM_END = 0.05;

  static Hanging of(Picked picked, Lift lift, Point3 centre, double weight, LengthUnit unit) {
    List<Point3> places = places(picked, lift, centre);
    double foot = unit == LengthUnit.INCH ? 12 : 100;
    double within = unit.fromMillimetres(LengthUnit.MM_PER_INCH);
    double highest = places.stream().mapToDouble(Point3::z).max().orElseThrow();
    double top =
        lift.rigging()
            .hook()
            .filter(h -> h > 0 && Double.isFinite(h))
            .map(h -> highest + h)
            .orElseGet(
                () -> highest + Math.ceil(rise(places, centre, highest) / foot - 1e-9) * foot);
    Point3 hook = centre.plan().at(top);
    Optional<double[]> most = Tension.most(weight, hook, places, within);
    List<HangPoint> points = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      Point3 p = places.get(i);
      double line = hook.distance(p);
      double up = hook.z() - p.z();
      double pull = most.isPresent() ? most.get()[i] : 0;
      points.add(
          new HangPoint(
              i + 1,
              p,
              picked.axes().over(p.plan()),
              picked.axes().across(p.plan()),
              line,
              Math.toDegrees(Math.asin(Math.min(1, up / line))),
              pull,
              pull * up / line));
    }
    LiftSection.Lines lines =
        most.isEmpty()
            ? LiftSection.Lines.CANNOT
            : places.size() > 3 ? LiftSection.Lines.ANY_TWO_OR_THREE : LiftSection.Lines.SHARED;
    return new Hanging(hook, points, lines);
  }

  /** Above the highest place, for no line flatter than 60°; never less than a foot or so. */
  private static double rise(List<Point3> places, Point3 centre, double highest) {
    double rise = 1;
    for (Point3 p : places) {
      rise = Math.max(rise, p.z() + STEEP * p.plan().distance(centre.plan()) - highest);
    }
    return rise;
  }

  private static List<Point3> places(Picked picked, Lift lift, Point3 centre) {
    List<Point> given = lift.rigging().hangAt();
    if (given.size() >= 2 && given.size() <= 4) {
      return given.stream().map(p -> onTop(picked, p)).toList();
    }
    int lines = lift.rigging().lines().orElse(picked.trusses().size() == 1 ? 2 : 4);
    if (picked.trusses().size() == 1) {
      return List.of(beside(picked.first(), centre, -1), beside(picked.first(), centre, 1));
    }
    List<Picked.Stood> ends = ends(picked, centre);
    Picked.Stood a = ends.get(0);
    Picked.Stood b = ends.get(1);
    return switch (lines) {
      case 2 -> List.of(beside(a, centre, 0), beside(b, centre, 0));
      case 3 -> List.of(beside(a, centre, -1), beside(a, centre, 1), beside(b, centre, 0));
      default ->
          List.of(
              beside(a, centre, -1),
              beside(a, centre, 1),
              beside(b, centre, 1),
              beside(b, centre, -1));
    };
  }

  /** First and last truss, without gable ends where the centre lies between the others. */
  private static List<Picked.Stood> ends(Picked picked, Point3 centre) {
    List<Picked.Stood> whole =
        picked.trusses().stream()
            .filter(
                t ->
                    t.truss().kind() != TrussKind.GABLE_END
                        && t.truss().kind() != TrussKind.DROPPED_GABLE_END)
            .toList();
    if (whole.size() >= 2) {
      double at = picked.axes().across(centre.plan());
      double near = picked.axes().across(whole.get(0).truss().from());
      double far = picked.axes().across(whole.get(whole.size() - 1).truss().from());
      if (near < at && at < far) {
        return List.of(whole.get(0), whole.get(whole.size() - 1));
      }
    }
    return List.of(picked.first(), picked.last());
  }

  /** On a truss's top chord, a quarter of its span to one side of the centre. */
  private static Point3 beside(Picked.Stood stood, Point3 centre, int side) {
    double span = stood.truss().span();
    Point from = stood.truss().from();
    double v = stood.along().dot(centre.plan().minus(from)) + side * QUARTER * span;
    double kept = Math.max(FROM_END * span, Math.min((1 - FROM_END) * span, v));
    return stood.at(kept).at(stood.topAt(kept));
  }

  /** On the top chord of the truss nearest to it. */
  private static Point3 onTop(Picked picked, Point place) {
    Picked.Stood best = picked.first();
    double least = Double.POSITIVE_INFINITY;
    for (Picked.Stood t : picked.trusses()) {
      double off = Math.abs(t.along().cross(place.minus(t.truss().from())));
      if (off < least) {
        least = off;
        best = t;
      }
    }
    double v = best.along().dot(place.minus(best.truss().from()));
    double low = -best.tailFrom();
    double high = best.truss().span() + best.tailTo();
    double kept = Math.max(low, Math.min(high, v));
    return best.at(kept).at(best.topAt(kept));
  }
}
