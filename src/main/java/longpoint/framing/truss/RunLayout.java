package longpoint.framing.truss;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.framing.Shop;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Bound;
import longpoint.framing.run.Meeting;
import longpoint.framing.run.Mouth;
import longpoint.framing.run.Run;
import longpoint.geometry.Point;
import longpoint.plan.CeilingStretch;
import longpoint.plan.Edge;
import longpoint.plan.Frame;
import longpoint.plan.FrameChoices.Flats;
import longpoint.plan.FrameChoices.Lookout;
import longpoint.plan.Placements;
import longpoint.plan.Problem;
import longpoint.units.Slope;

/**
 * Every truss of one run: end trusses flush inside the end walls' outside faces, or a hip end;
 * between them trusses centred on whole spacings from the start, and what the user put there or
 * left out. A truss over the mouth of a wing hangs on that wing's girder; one that a girder along
 * the ridge crosses hangs on that.
 *
 * @param row the trusses square to the ridge
 * @param trusses all of them, jacks included
 */
public record RunLayout(Run run, Row row, List<Placed> trusses, List<Problem> problems) {
  public RunLayout {
    trusses = List.copyOf(trusses);
    problems = List.copyOf(problems);
  }

  /**
   * @param own what the user put into this run
   * @param meetings of the whole plan
   * @param mouths of the whole plan
   */
  public static RunLayout lay(
      Run run, Placements own, List<Meeting> meetings, List<Mouth> mouths, Shop shop) {
    return new Layer(run, own, meetings, mouths, shop).lay();
  }

  private record Layer(
      Run run, Placements own, List<Meeting> meetings, List<Mouth> mouths, Shop shop) {
    RunLayout lay() {
      RowLayout rows = new RowLayout(run, meetings, shop);
      Row row = rows.lay(own.trusses().stream().filter(t -> !runsAlong(t.at(), t.to())).toList());
      List<Problem> problems = new ArrayList<>(rows.problems());
      for (Bank bank : List.of(Bank.START, Bank.END)) {
        if (run.bound(bank).isEave()) {
          HipEnd.check(run, bank, shop.hipSetback()).ifPresent(problems::add);
        }
      }
      Hanging hanging = new Hanging(run, meetings, mouths, shop);
      List<Placed> laid = new ArrayList<>();
      row.standings().forEach(s -> laid.add(hanging.hang(truss(s))));
      rows.hips().forEach(hip -> hip.jacks().forEach(jack -> laid.add(hanging.hang(jack))));
      CrossGirders crossing = new CrossGirders(run, shop, laid);
      own.trusses().stream()
          .filter(t -> runsAlong(t.at(), t.to()))
          .forEach(t -> crossing.put(t.at(), t.to().orElseThrow(), t.plies()));
      problems.addAll(crossing.problems());
      LeftOut left = LeftOut.of(run, crossing.trusses(), own.leftOut());
      problems.addAll(left.problems());
      TallTruss tall = TallTruss.over(left.trusses(), frame().choices().haul(), shop);
      List<Placed> trusses = new ArrayList<>();
      for (Placed truss : left.trusses()) {
        trusses.addAll(tall.split(hanging.underOther(truss)));
      }
      return new RunLayout(run, left.rest(row), trusses, problems);
    }

    /** Whether two bearings lie along the ridge rather than across it. */
    private boolean runsAlong(Point at, Optional<Point> to) {
      return to.filter(t -> alongRidge(t.minus(at))).isPresent();
    }

    private boolean alongRidge(Point way) {
      return Math.abs(run.axes().along().dot(way)) > Math.abs(run.axes().along().cross(way));
    }

    private Frame frame() {
      return run.part().frame();
    }

    private Lookout lookout() {
      return frame().choices().lookout().orElse(Lookout.FLAT);
    }

    private Placed truss(Standing standing) {
      Section cut = Section.at(run, standing.station(), standing.width());
      TrussKind kind = kind(standing, cut);
      double drop = kind == TrussKind.DROPPED_GABLE_END ? shop.lookoutDepth(lookout()) : 0;
      Profile profile =
          cut.profile(cut.low().overhang(), cut.high().overhang(), drop, flatDrop(standing, kind));
      if (takesCeiling(kind) || standing.role() == Standing.Role.PLACED_GIRDER) {
        profile = ceiling(standing).map(profile::scissor).orElse(profile);
      }
      return Placed.onWalls(kind, standing.plies(), cut, profile);
    }

    /** A gable end follows the ceiling of the trusses beside it (common practice). */
    private static boolean takesCeiling(TrussKind kind) {
      return kind == TrussKind.SCISSOR
          || kind == TrussKind.GABLE_END
          || kind == TrussKind.DROPPED_GABLE_END;
    }

    /** By how much the level tops of a hip end are held under the frame, square to its slope. */
    private double flatDrop(Standing standing, TrussKind kind) {
      boolean onWall = standing.fromEnd() == 0 && kind == TrussKind.STEP_DOWN;
      boolean flat = kind == TrussKind.STEP_DOWN && !onWall || kind == TrussKind.HIP_GIRDER;
      return flat && frame().choices().flats().equals(Optional.of(Flats.LOW)) ? shop.flat() : 0;
    }

    private TrussKind kind(Standing standing, Section cut) {
      return switch (standing.role()) {
        case START -> endKind(Bank.START, standing, cut);
        case END -> endKind(Bank.END, standing, cut);
        case LAYOUT, PLACED -> inHip(standing) ? TrussKind.STEP_DOWN : ordinary(standing, cut);
        case PLACED_GIRDER -> TrussKind.GIRDER;
      };
    }

    private TrussKind endKind(Bank bank, Standing standing, Section cut) {
      Bound end = run.bound(bank);
      return switch (end.kind()) {
        case EAVE -> hipKind(bank, standing, cut);
        case GABLE -> end.overhang() > 0 ? TrussKind.DROPPED_GABLE_END : TrussKind.GABLE_END;
        case ABUTMENT -> ordinary(standing, cut);
        case OPEN ->
            RowLayout.isGirder(run, bank, meetings) ? TrussKind.GIRDER : ordinary(standing, cut);
      };
    }

    private TrussKind hipKind(Bank bank, Standing standing, Section cut) {
      return switch (HipEnd.way(run, bank)) {
        case STEPDOWN ->
            standing.fromEnd() == 0 && HipEnd.hasGirder(run, bank, shop.hipSetback())
                ? TrussKind.HIP_GIRDER
                : TrussKind.STEP_DOWN;
        case RAFTERS -> TrussKind.GIRDER;
        case NONE -> ordinary(standing, cut);
      };
    }

    /** Whether a truss away from the ends stands under the plane of a hip end. */
    private boolean inHip(Standing standing) {
      return inHip(Bank.START, standing.near()) || inHip(Bank.END, run.length() - standing.far());
    }

    private boolean inHip(Bank bank, double in) {
      return run.bound(bank).isEave()
          && HipEnd.way(run, bank) == Edge.HipEnd.STEPDOWN
          && in < run.hipRun(bank);
    }

    private TrussKind ordinary(Standing standing, Section cut) {
      if (!cut.low().isEave() || !cut.high().isEave()) {
        return TrussKind.MONO;
      }
      return ceiling(standing).isPresent() ? TrussKind.SCISSOR : TrussKind.COMMON;
    }

    /** Slope of the bottom chord: of the last stretch the truss stands in, else of the part. */
    private Optional<Double> ceiling(Standing standing) {
      Optional<Slope> slope = frame().choices().ceiling();
      for (CeilingStretch stretch : own.ceilings()) {
        double a = run.axes().u(stretch.from());
        double b = run.axes().u(stretch.to());
        if (Math.min(a, b) <= standing.station() && standing.station() <= Math.max(a, b)) {
          slope = Optional.of(stretch.slope());
        }
      }
      return slope.map(Slope::ratio).filter(ratio -> ratio > 0);
    }
  }
}
