package longpoint.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import longpoint.geometry.Point;
import longpoint.plan.Part;
import longpoint.plan.PlacePoint;
import longpoint.plan.PlacedTruss;
import longpoint.plan.Placements;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.RunChoices;
import longpoint.wording.Language;
import longpoint.wording.Phrase;

/**
 * Cures of a truss, a girder or a gap in the row that was put where it cannot be: put at the
 * nearest place where it can, which the problem names, or taken away.
 */
final class PlacedCures {
  private final Plan plan;
  private final Part part;
  private final Point at;

  /** Where it might be instead, in order; may be none. */
  private final List<Point> better;

  private final List<Cure> cures = new ArrayList<>();

  private PlacedCures(Plan plan, Part part, List<Point> places) {
    this.plan = plan;
    this.part = part;
    this.at = places.get(0);
    this.better = places.subList(1, places.size());
  }

  static List<Cure> of(Plan plan, Part part, Problem problem) {
    List<Point> places = PlacePoint.named(problem.wrong());
    if (!(problem.wrong() instanceof Phrase wrong) || places.isEmpty()) {
      return List.of();
    }
    PlacedCures all = new PlacedCures(plan, part, places);
    switch (wrong.key()) {
      case "framing.placed.taken", "framing.placed.outside" -> {
        all.moved();
        all.takenAway("place");
      }
      case "framing.crossGirder.bearing" -> {
        all.hung();
        all.takenAway("place");
      }
      case "framing.leftOut.none" -> {
        all.leftOutElsewhere();
        all.takenAway("gap");
      }
      case "framing.leftOut.girder" -> all.takenAway("gap");
      case "framing.through.none" -> all.through();
      default -> {
        // About something else.
      }
    }
    return all.cures;
  }

  private void add(String key, UnaryOperator<Placements> edit, Object... parts) {
    Command command =
        PartCommands.frame(
            plan, List.of(part.id()), f -> f.withPlacements(edit.apply(f.placements())));
    cures.add(Cures.named(key, command, parts));
  }

  private void moved() {
    if (better.size() == 1) {
      Point to = better.get(0);
      String place = PlacePoint.of(to, plan.unit()).in(Language.ofDesktop());
      add("place.move", p -> trusses(p, t -> shifted(t, to)), place, part.name());
      add("gap.move", p -> gaps(p, Optional.of(to)), place);
    }
  }

  private void leftOutElsewhere() {
    if (!better.isEmpty()) {
      String place = PlacePoint.of(better.get(0), plan.unit()).in(Language.ofDesktop());
      add("gap.move", p -> gaps(p, Optional.of(better.get(0))), place);
    }
  }

  private void hung() {
    if (better.size() == 2) {
      add(
          "place.hang",
          p ->
              trusses(
                  p,
                  t ->
                      new PlacedTruss(
                          better.get(0),
                          Optional.of(better.get(1)),
                          t.kind(),
                          t.plies(),
                          t.extras())));
    }
  }

  private void takenAway(String what) {
    add(
        what + ".away",
        p -> {
          Placements rest = gaps(p, Optional.empty());
          return rest.withTrusses(rest.trusses().stream().filter(t -> !t.at().equals(at)).toList())
              .withCeilings(
                  rest.ceilings().stream()
                      .filter(c -> !c.from().toward(c.to(), 0.5).equals(at))
                      .toList());
        },
        part.name());
  }

  private void through() {
    Command free =
        PartCommands.frame(
            plan,
            List.of(part.id()),
            f -> {
              RunChoices runs = f.choices().runs();
              return f.withChoices(
                  f.choices()
                      .withRuns(new RunChoices(runs.layoutFrom(), Optional.empty(), runs.legs())));
            });
    cures.add(Cures.cure("through", free, part.name()));
  }

  private PlacedTruss shifted(PlacedTruss truss, Point to) {
    Point by = to.minus(truss.at());
    return new PlacedTruss(
        to, truss.to().map(p -> p.plus(by)), truss.kind(), truss.plies(), truss.extras());
  }

  private Placements trusses(Placements in, UnaryOperator<PlacedTruss> edit) {
    return in.withTrusses(
        in.trusses().stream().map(t -> t.at().equals(at) ? edit.apply(t) : t).toList());
  }

  private Placements gaps(Placements in, Optional<Point> instead) {
    List<Point> gaps = new ArrayList<>();
    for (Point gap : in.leftOut()) {
      if (gap.equals(at)) {
        instead.ifPresent(gaps::add);
      } else {
        gaps.add(gap);
      }
    }
    return in.withLeftOut(gaps);
  }
}
