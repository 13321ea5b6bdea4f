package longpoint.field.lift;

import java.util.ArrayList;
import java.util.List;
import longpoint.plan.Problem;
import longpoint.units.LengthUnit;
import longpoint.wording.Phrase;

/** What a section calls for besides what every lift does. */
final class LiftCautions {
  /** Sling angles under 45° are warned of, under 60° told (US Navy NAVEDTRA 14080; trade). */
  private static final double FLAT = 45;

  private static final double LOW = 60;

  /** Degrees that rounding may take off an angle made to be 60. */
  private static final double ROUNDING = 1e-6;

  /** Trusses over 30 ft hang from a spreader bar, from 60 ft on under an engineer's plan. */
  private static final double SPREADER_FT = 30;

  private static final double LONG_FT = 60;
  private static final double MM_PER_FOOT = 12 * LengthUnit.MM_PER_INCH;

  private LiftCautions() {}

  static List<Phrase> of(LiftSection section, Picked picked, LengthUnit unit) {
    List<Phrase> cautions = new ArrayList<>();
    if (section.lines() == LiftSection.Lines.CANNOT) {
      cautions.add(Phrase.of("field.lift.cannot", section.name()));
    }
    double flattest = section.flattest();
    if (flattest < FLAT - ROUNDING) {
      cautions.add(Phrase.of("field.lift.flat", section.name(), (int) Math.floor(flattest)));
    } else if (flattest < LOW - ROUNDING) {
      cautions.add(Phrase.of("field.lift.low", (int) Math.floor(flattest)));
    }
    double lowest = section.points().stream().mapToDouble(p -> p.at().z()).min().orElse(0);
    if (section.centre().z() >= lowest) {
      cautions.add(Phrase.of("field.lift.top", section.name()));
    }
    if (section.lines() == LiftSection.Lines.ANY_TWO_OR_THREE) {
      cautions.add(Phrase.of("field.lift.four"));
    }
    if (picked.trusses().size() == 1) {
      cautions.add(Phrase.of("field.lift.single"));
    } else if (section.points().size() == 2) {
      cautions.add(Phrase.of("field.lift.two"));
    }
    double longest =
        picked.trusses().stream().mapToDouble(t -> t.truss().span()).max().orElseThrow();
    double feet = unit.toMillimetres(longest) / MM_PER_FOOT;
    if (feet >= LONG_FT) {
      cautions.add(Phrase.of("field.lift.long"));
    } else if (feet > SPREADER_FT) {
      cautions.add(Phrase.of("field.lift.spreader"));
    }
    if (section.pieces().stream().anyMatch(p -> p.from() == LiftPiece.WeightFrom.LUMBER)) {
      cautions.add(Phrase.of("field.lift.estimate"));
    }
    return cautions;
  }

  /** Those that must be put right before the section leaves the ground. */
  static List<Problem> problems(LiftSection section) {
    List<String> serious = List.of("field.lift.cannot", "field.lift.flat", "field.lift.top");
    return section.cautions().stream()
        .filter(c -> serious.contains(c.key()))
        .map(c -> Problem.warning(section.part(), c))
        .toList();
  }
}
