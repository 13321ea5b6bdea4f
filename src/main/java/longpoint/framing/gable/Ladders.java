package longpoint.framing.gable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.framing.Shop;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Bound;
import longpoint.framing.run.Meeting;
import longpoint.framing.run.Run;
import longpoint.framing.truss.Row;
import longpoint.framing.truss.Standing;
import longpoint.geometry.Point;
import longpoint.plan.Defaults;
import longpoint.plan.EdgeKind;
import longpoint.plan.FrameChoices.Lookout;
import longpoint.plan.FrameChoices.LookoutPlaces;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.wording.Phrase;

/** Ladders for every gable end of a run that overhangs. */
public final class Ladders {
  /** Lower end of a block, cut back to leave a path for air (common practice). */
  private static final double BLOCK_BEVEL = 45;

  private Ladders() {}

  /** Says so when lookouts would overlap; then there are no ladders. */
  public static List<Problem> check(Plan plan, Shop shop) {
    return plan.parts().stream()
        .filter(p -> plan.defaults().lookoutSpacing() <= shop.lookoutWidth(lookout(p)))
        .map(p -> Problem.warning(p.id(), Phrase.of("framing.ladder.close", PlaceName.of(p))))
        .toList();
  }

  private static Lookout lookout(Part part) {
    return part.frame().choices().lookout().orElse(Lookout.FLAT);
  }

  /**
   * @param row the run's trusses or rafters
   * @param meetings of the whole plan
   */
  public static List<Ladder> of(
      Run run, Row row, List<Meeting> meetings, Defaults defaults, Shop shop) {
    List<Ladder> ladders = new ArrayList<>();
    if (defaults.lookoutSpacing() <= shop.lookoutWidth(lookout(run.part()))) {
      return ladders;
    }
    for (Bank end : List.of(Bank.START, Bank.END)) {
      Bound wall = run.bound(end);
      if (wall.kind() == EdgeKind.GABLE && wall.overhang() > 0 && row.standings().size() > 1) {
        for (Bank bearing : List.of(Bank.LOW, Bank.HIGH)) {
          if (run.bound(bearing).isEave()) {
            double bay = firstBay(run, end, row);
            double rake =
                Math.min(rakeRun(run, bearing, meetings), clear(run, end, bearing, meetings));
            if (!(rake > 0)) {
              continue;
            }
            ladders.add(ladder(run, end, bearing, rake, bay, defaults, shop));
          }
        }
      }
    }
    return ladders;
  }

  /** Outside wall face to the near face of the first truss in from it. */
  private static double firstBay(Run run, Bank end, Row row) {
    List<Standing> all = row.standings();
    return end == Bank.START ? all.get(1).near() : run.length() - all.get(all.size() - 2).far();
  }

  /** Plan run of a rake from its tail to its top: a ridge, a far overhang, or the deck beyond. */
  private static double rakeRun(Run run, Bank bearing, List<Meeting> meetings) {
    Bound far = run.bound(bearing == Bank.LOW ? Bank.HIGH : Bank.LOW);
    double half = bearing == Bank.LOW ? run.ridgeV() : run.width() - run.ridgeV();
    double past = far.isEave() ? 0 : far.overhang();
    for (Meeting m : meetings) {
      if (m.manner().isShed() && m.upper().id().equals(run.id())) {
        past = m.shedRun();
      }
    }
    return run.bound(bearing).overhang() + half + past;
  }

  /** Plan run of a rake from its tail up to where it runs into the roof below. */
  private static double clear(Run run, Bank end, Bank bearing, List<Meeting> meetings) {
    double u = end == Bank.START ? 0 : run.length();
    boolean low = bearing == Bank.LOW;
    Point foot = run.axes().at(u, low ? 0 : run.width());
    Point top = run.axes().at(u, run.ridgeV());
    Side eave = run.bound(bearing).side().orElseThrow();
    double clear = Double.POSITIVE_INFINITY;
    for (Meeting m : meetings) {
      if (m.upper().id().equals(run.id()) && m.lower().bound(m.bank()).isEave()) {
        double below = eave.framePlane().heightAt(foot) - m.beneath().heightAt(foot);
        double above = eave.framePlane().heightAt(top) - m.beneath().heightAt(top);
        if (below <= 0) {
          return 0;
        }
        if (above < below) {
          double share = below / (below - above);
          clear = Math.min(clear, eave.overhang() + share * foot.distance(top));
        }
      }
    }
    return clear;
  }

  private static Ladder ladder(
      Run run,
      Bank end,
      Bank bearing,
      double rakeRun,
      double backSpan,
      Defaults defaults,
      Shop shop) {
    Side gable = run.bound(end).side().orElseThrow();
    Side eave = run.bound(bearing).side().orElseThrow();
    double slope = eave.slope().ratio();
    double steep = Math.sqrt(1 + slope * slope);
    double length = rakeRun * steep;
    Lookout lookout = lookout(run.part());
    double width = shop.lookoutWidth(lookout);
    double fly = run.part().frame().thickness();
    Rungs rungs = rungs(run, length, width, eave, defaults);
    return new Ladder(
        run.part().id(),
        run.id(),
        gable.id(),
        rake(end, bearing),
        length,
        90 - eave.slope().degrees(),
        rungs.lookouts(),
        backSpan + gable.overhang() - fly,
        width,
        shop.lookoutDepth(lookout) * steep,
        rungs.blocks(),
        BLOCK_BEVEL,
        backSpan,
        gable.overhang(),
        review(gable.overhang(), backSpan, shop));
  }

  private static Rungs rungs(Run run, double length, double width, Side eave, Defaults defaults) {
    double first = defaults.lookoutFirst();
    double spacing = defaults.lookoutSpacing();
    double sheet = run.part().deck().sheetWidth();
    boolean bySheets =
        run.part().frame().choices().lookoutPlaces().equals(Optional.of(LookoutPlaces.SHEETS));
    if (bySheets && sheet > 0) {
      // Sheets start at the outer edge of the fascia, one fascia's thickness past the tail.
      double below = eave.fascia() * Math.hypot(1, eave.slope().ratio());
      return Rungs.underSheets(length, first, spacing, width, sheet, below);
    }
    return Rungs.spaced(length, first, spacing, width);
  }

  /** Facing the start wall from outside the low side is on the right hand. */
  private static Ladder.Rake rake(Bank end, Bank bearing) {
    boolean right = (end == Bank.START) == (bearing == Bank.LOW);
    return right ? Ladder.Rake.RIGHT : Ladder.Rake.LEFT;
  }

  private static List<Phrase> review(double overhang, double backSpan, Shop shop) {
    List<Phrase> review = new ArrayList<>();
    if (overhang > backSpan) {
      review.add(Phrase.of("framing.ladder.reach"));
    }
    if (overhang > shop.rakeReview()) {
      review.add(Phrase.of("framing.ladder.overhang"));
    }
    return review;
  }
}
