package longpoint.framing.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import longpoint.framing.Shop;
import longpoint.framing.run.Meeting.Manner;
import longpoint.geometry.Point;
import longpoint.plan.EdgeKind;
import longpoint.plan.Frame;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.wording.Phrase;

/** Front door of this package: every run of a plan, and where runs of joined parts meet. */
public final class RunFinder {
  /** Sine of the angle by which a wing's ridge may be off square: 1/8 in over a 20 ft wing. */
  private static final double SQUARE = 1.0 / 8 / 240;

  private RunFinder() {}

  public static FoundRuns find(Plan plan) {
    FoundRuns found = new FoundRuns(List.of(), List.of(), List.of(), List.of());
    for (Part part : plan.parts()) {
      if (part.frame().method() != Frame.Method.NONE) {
        found = found.and(PartRuns.find(plan, part));
      }
    }
    found = RunsInSight.of(plan, CrossingRuns.parted(plan, found));
    for (Join join : plan.joins()) {
      found = found.and(joined(plan, join, found.runs()));
    }
    return found;
  }

  private static FoundRuns joined(Plan plan, Join join, List<Run> runs) {
    List<Meeting> meetings = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (Run wing : runs) {
      if (wing.part().id().equals(join.upper())) {
        if (isOpen(wing.end())) {
          add(plan, join, wing, runs, meetings, problems);
        }
        if (isOpen(wing.start())) {
          add(plan, join, wing.reversed(), runs, meetings, problems);
        }
        if (isOpen(wing.low()) || isOpen(wing.high())) {
          first(runs, join, lower -> shed(wing, join, lower)).ifPresent(meetings::add);
        }
      }
    }
    return new FoundRuns(List.of(), meetings, List.of(), problems);
  }

  private static void add(
      Plan plan,
      Join join,
      Run wing,
      List<Run> runs,
      List<Meeting> meetings,
      List<Problem> problems) {
    Optional<Meeting> meeting = first(runs, join, lower -> meeting(plan, join, wing, lower));
    if (meeting.isEmpty()) {
      // Who asked for rafters is not told that trusses are not laid out.
      if (wing.part().frame().method() == Frame.Method.TRUSS) {
        problems.add(notSquare(plan, wing, join));
      }
      meeting = skew(wing, join, runs);
    }
    meeting
        .filter(m -> m.manner() == Manner.THROUGH && !m.endsAtWall() && !framesOpening(m))
        .ifPresent(m -> problems.add(inside(m)));
    meeting.ifPresent(meetings::add);
  }

  /** Rafters are cut and headed off about a dormer; of trusses only their maker knows. */
  private static boolean framesOpening(Meeting m) {
    return m.lower().part().frame().method() == Frame.Method.RAFTER;
  }

  private static Problem inside(Meeting m) {
    return Problem.warning(
        m.upper().part().id(),
        Phrase.of(
            "framing.join.inside", PlaceName.of(m.upper().part()), PlaceName.of(m.lower().part())));
  }

  static boolean isOpen(Bound bound) {
    return bound.kind() == EdgeKind.OPEN && bound.side().isPresent();
  }

  static Optional<Meeting> first(List<Run> runs, Join join, Function<Run, Optional<Meeting>> with) {
    return runs.stream()
        .filter(r -> r.part().id().equals(join.lower()))
        .flatMap(r -> with.apply(r).stream())
        .findFirst();
  }

  /** A shed roof runs on up against the eave plane that climbs the same way. */
  private static Optional<Meeting> shed(Run wing, Join join, Run lower) {
    Point up = wing.axes().along().left().times(isOpen(wing.high()) ? 1 : -1);
    for (Bank bank : Bank.values()) {
      Point inward = inward(lower, bank);
      if (lower.bound(bank).isEave() && inward.dot(up) > 0 && Math.abs(inward.cross(up)) < SQUARE) {
        return Optional.of(new Meeting(wing, lower, bank, 0, 0, 0, shed(wing, join, lower, bank)));
      }
    }
    return Optional.empty();
  }

  /** Only a front that stands in the roof of rafters itself has an opening cut for it. */
  private static Manner shed(Run wing, Join join, Run lower, Bank bank) {
    Point front = wing.axes().at(0, isOpen(wing.high()) ? 0 : wing.width());
    boolean inside = depth(lower, bank, front) > 2 * lower.part().frame().thickness();
    boolean rafters =
        lower.part().frame().method() == Frame.Method.RAFTER
            && wing.part().frame().method() == Frame.Method.RAFTER;
    return join.method() == Join.Method.THROUGH && inside && rafters
        ? Manner.SHED_THROUGH
        : Manner.SHED;
  }

  /**
   * Where the end of a wing comes in square over a run.
   *
   * @param wing turned so that its END faces the run
   */
  static Optional<Meeting> meeting(Plan plan, Join join, Run wing, Run lower) {
    double same = Shop.of(plan.unit()).mark();
    Point mouth = wing.axes().at(wing.length(), wing.width() / 2);
    for (Bank bank : Bank.values()) {
      Point inward = inward(lower, bank);
      double depth = depth(lower, bank, mouth);
      double along = PartRuns.along(lower, bank, mouth);
      double reach = bank == Bank.LOW || bank == Bank.HIGH ? lower.length() : lower.width();
      double across = bank == Bank.LOW || bank == Bank.HIGH ? lower.width() : lower.length();
      boolean square =
          Math.abs(inward.cross(wing.axes().along())) < SQUARE
              && inward.dot(wing.axes().along()) > 0;
      if (square && depth > -same && depth < across && along > 0 && along < reach) {
        double a = PartRuns.along(lower, bank, wing.axes().at(wing.length(), 0));
        double b = PartRuns.along(lower, bank, wing.axes().at(wing.length(), wing.width()));
        return Optional.of(
            new Meeting(wing, lower, bank, Math.min(a, b), Math.max(a, b), depth, manner(join)));
      }
    }
    return Optional.empty();
  }

  /** The eave of the lower part that the wing's ridge climbs most directly from. */
  private static Optional<Meeting> skew(Run wing, Join join, List<Run> runs) {
    Optional<Meeting> best = Optional.empty();
    double most = SQUARE;
    for (Run lower : runs) {
      for (Bank bank : Bank.values()) {
        double towards = inward(lower, bank).dot(wing.axes().along());
        if (lower.part().id().equals(join.lower())
            && lower.bound(bank).isEave()
            && towards > most) {
          most = towards;
          best = Optional.of(new Meeting(wing, lower, bank, 0, 0, 0, Manner.SKEW));
        }
      }
    }
    return best;
  }

  private static Manner manner(Join join) {
    if (join.method() == Join.Method.THROUGH) {
      return Manner.THROUGH;
    }
    return join.madeFor() == Join.MadeFor.DECK ? Manner.OVERLAY_DECK : Manner.OVERLAY_FRAME;
  }

  private static Point inward(Run run, Bank bank) {
    Point along = run.axes().along();
    return switch (bank) {
      case LOW -> along.left();
      case HIGH -> along.left().times(-1);
      case START -> along;
      case END -> along.times(-1);
    };
  }

  private static double depth(Run run, Bank bank, Point p) {
    return switch (bank) {
      case LOW -> run.axes().v(p);
      case HIGH -> run.width() - run.axes().v(p);
      case START -> run.axes().u(p);
      case END -> run.length() - run.axes().u(p);
    };
  }

  private static Problem notSquare(Plan plan, Run wing, Join join) {
    return Problem.warning(
        wing.end().side().orElseThrow().id(),
        Phrase.of(
            "framing.join.notSquare",
            PlaceName.of(wing.part()),
            PlaceName.part(join.lower()).in(plan)));
  }
}
