package longpoint.framing.truss;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import longpoint.framing.run.Run;
import longpoint.geometry.Point;
import longpoint.plan.Lift;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.PlacePoint;
import longpoint.plan.Placements;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.wording.Phrase;

/** Shares out what the user put into a part among the part's runs. */
public final class OwnPlaces {
  private OwnPlaces() {}

  /**
   * What belongs to one run: every place that lies in it, or nearer to it than to any other run of
   * its part.
   *
   * @param runs of the whole plan
   */
  public static Placements of(Run run, List<Run> runs) {
    Placements all = run.part().frame().placements();
    return new Placements(
        all.trusses().stream().filter(t -> owns(run, t.at(), runs)).toList(),
        all.leftOut().stream().filter(p -> owns(run, p, runs)).toList(),
        all.ceilings().stream().filter(c -> owns(run, c.from().toward(c.to(), 0.5), runs)).toList(),
        all.lifts().stream().filter(l -> owns(run, place(l), runs)).toList());
  }

  private static Point place(Lift lift) {
    return lift.stretch()
        .map(s -> s.from().toward(s.to(), 0.5))
        .or(() -> lift.trusses().stream().findFirst())
        .orElse(new Point(0, 0));
  }

  private static boolean owns(Run run, Point place, List<Run> runs) {
    Run best = run;
    for (Run other : runs) {
      if (other.part().id().equals(run.part().id())
          && (away(other, place) < away(best, place)
              || (away(other, place) == away(best, place)
                  && runs.indexOf(other) < runs.indexOf(best)))) {
        best = other;
      }
    }
    return best == run;
  }

  /** How far outside a run's rectangle a place lies; 0 inside. */
  private static double away(Run run, Point place) {
    double u = run.axes().u(place);
    double v = run.axes().v(place);
    return Math.hypot(
        Math.max(0, Math.max(-u, u - run.length())), Math.max(0, Math.max(-v, v - run.width())));
  }

  /**
   * Places that nothing can stand at: outside the part, or in one that has no trusses.
   *
   * @param runs those laid out with trusses
   */
  public static List<Problem> check(Plan plan, List<Run> runs) {
    List<Problem> problems = new ArrayList<>();
    for (Part part : plan.parts()) {
      Placements placed = part.frame().placements();
      List<Run> own = runs.stream().filter(r -> r.part().id().equals(part.id())).toList();
      List<Point> places = new ArrayList<>(placed.leftOut());
      placed.trusses().forEach(t -> places.add(t.at()));
      placed.ceilings().forEach(c -> places.add(c.from().toward(c.to(), 0.5)));
      if (part.existing() || places.isEmpty()) {
        continue;
      }
      if (own.isEmpty()) {
        problems.add(
            Problem.warning(part.id(), Phrase.of("framing.placed.idle", PlaceName.of(part))));
      } else {
        places.stream()
            .filter(p -> isOutside(p, own))
            .forEach(p -> problems.add(outside(part, p, inside(p, own))));
      }
    }
    return problems;
  }

  private static Problem outside(Part part, Point place, Point inside) {
    return Problem.warning(
        part.id(),
        Phrase.of(
            "framing.placed.outside",
            PlaceName.of(part),
            PlacePoint.of(place),
            PlacePoint.of(inside)));
  }

  /** The nearest place within the walls, a spacing in from the ends where there is that much. */
  private static Point inside(Point place, List<Run> runs) {
    Run run = Collections.min(runs, Comparator.comparingDouble(r -> away(r, place)));
    double in = Math.min(run.part().frame().spacing(), run.length() / 2);
    double u = Math.max(in, Math.min(run.length() - in, run.axes().u(place)));
    return run.axes().at(u, Math.max(0, Math.min(run.width(), run.axes().v(place))));
  }

  static boolean isOutside(Point place, List<Run> runs) {
    return runs.stream().allMatch(r -> away(r, place) > r.part().frame().spacing());
  }
}
