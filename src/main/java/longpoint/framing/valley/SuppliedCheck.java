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
      said(site, placed, wing, laid(layout, supplied, placed), unit)
          .ifPresent(p -> problems.add(warning(where, p)));
    }
  }

  /** How long the layout makes the chord of the same number, if it has as many. */
  private static Optional<Double> laid(
      ValleyLayout layout, List<SuppliedSet.Placed> supplied, SuppliedSet.Placed placed) {
    return supplied.size() == layout.trusses().size()
        ? Optional.of(layout.trusses().get(placed.truss().number() - 1).length())
        : Optional.empty();
  }

  private static Problem warning(String where, Phrase wrong) {
    boolean laid = wrong.key().equals("framing.chords.gap") && wrong.parts().size() == 5;
    return laid
        ? new Problem(Problem.Level.WARNING, where, wrong, wrong.under("framing.chords.gap.laid"))
        : Problem.warning(where, wrong);
  }

  private static Optional<Phrase> said(
      ValleySite site,
      SuppliedSet.Placed placed,
      PlaceName wing,
      Optional<Double> laid,
      LengthUnit unit) {
    int number = placed.truss().number();
    if (!SuppliedSet.stands(site, placed.truss())) {
      LengthFigure chord = new LengthFigure(placed.truss().length(), unit);
      return Optional.of(Phrase.of("framing.chords.off", number, wing, chord));
    }
    LengthFigure gap = new LengthFigure(placed.gap(), unit);
    LengthFigure expected = new LengthFigure(placed.expected(), unit);
    if (!placed.differs()) {
      return Optional.empty();
    }
    return Optional.of(
        laid.map(l -> new LengthFigure(l, unit))
            .map(l -> Phrase.of("framing.chords.gap", number, wing, gap, expected, l))
            .orElseGet(() -> Phrase.of("framing.chords.gap", number, wing, gap, expected)));
  }
}
