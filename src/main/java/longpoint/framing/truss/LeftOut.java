package longpoint.framing.truss;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import longpoint.framing.run.Run;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.PlaceName;
import longpoint.plan.PlacePoint;
import longpoint.plan.Problem;
import longpoint.wording.Phrase;

/**
 * Trusses of a run without those that the user leaves out: for every place the truss nearest to it,
 * not further than half a spacing. A girder stays, for others hang on it.
 *
 * @param trusses those that stay, in the order given
 */
record LeftOut(List<Placed> trusses, List<Problem> problems) {
  static LeftOut of(Run run, List<Placed> laid, List<Point> places) {
    List<Placed> stay = new ArrayList<>(laid);
    List<Problem> problems = new ArrayList<>();
    double within = run.part().frame().spacing() / 2;
    for (Point place : places) {
      Optional<Placed> nearest =
          stay.stream()
              .filter(t -> away(t, place) <= within)
              .min(Comparator.comparingDouble(t -> away(t, place)));
      if (nearest.isEmpty() && OwnPlaces.isOutside(place, List.of(run))) {
        continue; // which is said elsewhere
      }
      if (nearest.isEmpty()) {
        problems.add(none(run, stay, place));
      } else if (carries(nearest.get())) {
        problems.add(
            Problem.warning(
                run.part().id(),
                Phrase.of(
                    "framing.leftOut.girder", PlaceName.of(run.part()), PlacePoint.of(place))));
      } else {
        stay.remove(nearest.get());
      }
    }
    return new LeftOut(stay, problems);
  }

  /** The row without those of which no piece is left. */
  Row rest(Row row) {
    Row rest = row;
    for (Standing s : row.standings()) {
      boolean stands =
          trusses.stream().anyMatch(t -> t.kind().squareToRidge() && t.station() == s.station());
      rest = stands ? rest : rest.without(s.station());
    }
    return rest;
  }

  private static double away(Placed truss, Point place) {
    return new Segment(truss.from(), truss.to()).distance(place);
  }

  private static boolean carries(Placed truss) {
    return switch (truss.kind()) {
      case GIRDER, HIP_GIRDER, CROSS_GIRDER -> true;
      default -> false;
    };
  }

  /** Says so, and where the nearest truss stands that can be left out. */
  private static Problem none(Run run, List<Placed> stay, Point place) {
    PlaceName part = PlaceName.of(run.part());
    PlacePoint at = PlacePoint.of(place);
    Optional<Point> truss =
        stay.stream()
            .filter(t -> t.kind().squareToRidge() && !carries(t))
            .min(Comparator.comparingDouble(t -> away(t, place)))
            .map(t -> t.from().toward(t.to(), 0.5));
    if (truss.isEmpty()) {
      return Problem.warning(run.part().id(), Phrase.of("framing.leftOut.none", part, at));
    }
    Phrase wrong = Phrase.of("framing.leftOut.none", part, at, PlacePoint.of(truss.get()));
    return new Problem(
        Problem.Level.WARNING, run.part().id(), wrong, wrong.under("framing.leftOut.none.nearest"));
  }
}
