package longpoint.framing.valley;

import java.util.List;
import java.util.Optional;
import longpoint.framing.run.Meeting;
import longpoint.plan.PlaceName;
import longpoint.plan.Problem;
import longpoint.units.LengthFigure;
import longpoint.units.LengthUnit;
import longpoint.wording.Phrase;

/** What a crew should be told about a supplier's list of valley trusses before it climbs up. */
final class SuppliedCheck {
  private SuppliedCheck() {}

  static void check(
      Meeting m,
      ValleyLayout layout,
      List<SuppliedSet.Placed> supplied,
      LengthUnit unit,
      List<Problem> problems) {
    if (supplied.isEmpty()) {
      return;
    }
    String where = m.upper().part().id();
    PlaceName wing = PlaceName.of(m.upper().part());
    if (supplied.size() != layout.trusses().size()) {
      problems.add(
          Problem.warning(
              where,
              Phrase.of("framing.chords.count", supplied.size(), wing, layout.trusses().size())));
    }
    ValleySite site = ValleySets.site(m);
    for (SuppliedSet.Placed placed : supplied) {
      said(site, placed, wing, unit).ifPresent(p -> problems.add(Problem.warning(where, p)));
    }
  }

  private static Optional<Phrase> said(
      ValleySite site, SuppliedSet.Placed placed, PlaceName wing, LengthUnit unit) {
    int number = placed.truss().number();
    if (!SuppliedSet.stands(site, placed.truss())) {
      LengthFigure chord = new LengthFigure(placed.truss().length(), unit);
      return Optional.of(Phrase.of("framing.chords.off", number, wing, chord));
    }
    LengthFigure gap = new LengthFigure(placed.gap(), unit);
    LengthFigure expected = new LengthFigure(placed.expected(), unit);
    return placed.differs()
        ? Optional.of(Phrase.of("framing.chords.gap", number, wing, gap, expected))
        : Optional.empty();
  }
}
