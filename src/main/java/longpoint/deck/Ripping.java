package longpoint.deck;

import java.util.Optional;
import longpoint.plan.Deck;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.Problem;
import longpoint.surface.RoofPlane;
import longpoint.units.LengthFigure;
import longpoint.units.LengthUnit;
import longpoint.wording.Phrase;

/**
 * How wide the first course of a plane is: what the user says; else whole sheets; but where the
 * program looks for the fewest sheets and whole ones would leave a sliver at the top, three
 * quarters.
 */
final class Ripping {
  private Ripping() {}

  static CourseLines of(Part part, RoofPlane plane, Ground ground) {
    CourseLines whole = CourseLines.whole(ground);
    Optional<Double> own = part.edges().get(plane.edge()).firstCourse();
    Optional<Double> said = own.isPresent() ? own : part.deck().firstCourse();
    if (said.isPresent()) {
      return whole.with(said.get());
    }
    boolean least = Sheathing.start(part, plane) == Deck.Start.LEAST;
    return least && whole.endInSliver() ? whole.better().orElse(whole) : whole;
  }

  /** A last course that is a sliver over more than one sheet, with a first course that cures it. */
  static Optional<Problem> said(Sheathing.Choice choice, PlaceName wall, LengthUnit unit) {
    CourseLines lines = choice.lines();
    double along =
        choice.strips().stream()
            .filter(s -> s.course() == lines.count())
            .mapToDouble(s -> s.bounds().width())
            .sum();
    Optional<CourseLines> better = lines.better();
    if (!lines.endInSliver() || along <= lines.panel().length() || better.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        Problem.warning(
            choice.ground().plane().id(),
            Phrase.of(
                "deck.lastCourse",
                wall,
                new LengthFigure(lines.last(), unit),
                new LengthFigure(better.get().first(), unit),
                new LengthFigure(better.get().last(), unit))));
  }
}
