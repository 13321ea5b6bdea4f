package longpoint.plan;

import java.util.ArrayList;
import java.util.List;
import longpoint.units.LengthUnit;
import longpoint.wording.Phrase;

/** Whether the figures about what is bought can be meant. */
final class BuyingCheck {
  private final LengthUnit unit;
  private final List<Problem> problems = new ArrayList<>();

  private BuyingCheck(LengthUnit unit) {
    this.unit = unit;
  }

  static List<Problem> check(Plan plan) {
    Buying b = plan.buying();
    BuyingCheck check = new BuyingCheck(plan.unit());
    check.between("waste", b.roofingWaste(), 0, 1);
    check.between("bundles", b.bundlesPerSquare(), Double.MIN_VALUE, 100);
    check.between("roll", b.underlayRoll(), Double.MIN_VALUE, 1e12);
    check.inches("nails", b.nails().edge(), 1, 48);
    check.inches("nails", b.nails().field(), 1, 48);
    check.inches("kerf", b.boards().kerf(), 0, 1);
    b.boards().lengths().forEach(l -> check.inches("lengths", l, 11, 1200));
    check.widths(b.boards());
    return check.problems.stream().distinct().toList();
  }

  private void widths(Buying.Boards b) {
    double[] all = {
      b.blocking(), b.rafter(), b.hip(), b.ridge(), b.fascia(), b.rake(), b.rakeThickness()
    };
    for (double size : all) {
      inches("widths", size, 0.25, 36);
    }
  }

  private void inches(String what, double length, double least, double most) {
    between(what, unit.toMillimetres(length) / LengthUnit.MM_PER_INCH, least, most);
  }

  private void between(String what, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      problems.add(Problem.warning("plan", Phrase.of("plan.buying." + what)));
    }
  }
}
