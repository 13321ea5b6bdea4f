package longpoint.framing.truss;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.framing.Shop;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Meeting;
import longpoint.framing.run.Run;
import longpoint.framing.truss.Standing.Role;
import longpoint.geometry.Point;
import longpoint.plan.Edge;
import longpoint.plan.PlaceName;
import longpoint.plan.PlacePoint;
import longpoint.plan.PlacedTruss;
import longpoint.plan.Problem;
import longpoint.wording.Phrase;

/**
 * Where the trusses square to the ridge of one run stand. Steps: both ends, the layout between them
 * on the grid from the start, then what the user put there: an ordinary truss that would stand in
 * its wood gives way.
 */
final class RowLayout {
  private final Run run;
  private final List<Meeting> meetings;
  private final Shop shop;
  private final double spacing;
  private final double thickness;
  private final List<HipEnd> hips = new ArrayList<>();
  private final List<Standing> row = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  RowLayout(Run run, List<Meeting> meetings, Shop shop) {
    this.run = run;
    this.meetings = meetings;
    this.shop = shop;
    this.spacing = run.part().frame().spacing();
    this.thickness = run.part().frame().thickness();
  }

  /** Hip ends of step-down trusses, whose jacks are still to be laid. */
  List<HipEnd> hips() {
    return hips;
  }

  List<Problem> problems() {
    return problems;
  }

  Row lay(List<PlacedTruss> placed) {
    List<Standing> near = endStandings(Bank.START);
    List<Standing> far = endStandings(Bank.END);
    row.addAll(near);
    far.stream().filter(f -> near.stream().noneMatch(f::overlaps)).forEach(row::add);
    fill(near, far);
    run.extensions().forEach(this::sides);
    for (PlacedTruss truss : placed) {
      put(truss);
    }
    return new Row(row);
  }

  /** From the end in. */
  private List<Standing> endStandings(Bank bank) {
    Role role = bank == Bank.START ? Role.START : Role.END;
    if (run.bound(bank).isEave()) {
      Edge.HipEnd way = HipEnd.way(run, bank);
      if (way != Edge.HipEnd.STEPDOWN) {
        int plies = way == Edge.HipEnd.RAFTERS ? plies() : 1;
        return List.of(atRidgeEnd(bank, role, plies));
      }
      HipEnd hip = new HipEnd(run, bank, HipEnd.setback(run, bank, shop.hipSetback()));
      List<Standing> standings = hip.standings(role, plies());
      if (!standings.isEmpty()) {
        hips.add(hip);
        return standings;
      }
    }
    int plies = isGirder(run, bank, meetings) ? plies() : 1;
    double in = plies * thickness / 2;
    double station = bank == Bank.START ? in : run.length() - in;
    return List.of(new Standing(station, thickness, plies, role, 0));
  }

  /**
   * The outer face where the hip reaches the ridge; in the middle of a hip at both ends so short
   * that it has no ridge.
   */
  private Standing atRidgeEnd(Bank bank, Role role, int plies) {
    double in = run.hipRun(bank) + plies * thickness / 2;
    Bank other = bank == Bank.START ? Bank.END : Bank.START;
    double room = run.bound(other).isEave() ? run.hipRun(other) : 0;
    double most = (run.hipRun(bank) + run.length() - room) / 2;
    double d = Math.max(plies * thickness / 2, Math.min(in, most));
    double station = bank == Bank.START ? d : run.length() - d;
    return new Standing(station, thickness, plies, role, 0);
  }

  private int plies() {
    return run.part().frame().choices().girderPlies().orElse(1);
  }

  /** Whether the truss at an end carries trusses of the run that this one comes in to. */
  static boolean isGirder(Run run, Bank end, List<Meeting> meetings) {
    return meetings.stream().anyMatch(m -> m.needsGirder() && m.isAt(run, end));
  }

  /** Carries the grid on until the next would stand in the wood of the far end. */
  private void fill(List<Standing> near, List<Standing> far) {
    Standing last = near.get(near.size() - 1);
    double limit = far.get(far.size() - 1).near() - thickness / 2;
    double origin =
        hips.stream().anyMatch(h -> h.bank() == Bank.START)
            ? HipEnd.setback(run, Bank.START, shop.hipSetback())
            : 0;
    double from = last.far() + thickness / 2;
    double clear = limit;
    Optional<Double> behind = behindHip(far, from);
    if (behind.isPresent()) {
      clear = behind.get() - thickness;
      row.add(Standing.ordinary(behind.get(), thickness));
    }
    for (int k = 1; origin + k * spacing <= clear; k++) {
      if (origin + k * spacing >= from) {
        row.add(Standing.ordinary(origin + k * spacing, thickness));
      }
    }
  }

  /**
   * The first ordinary truss behind the step-downs of the far end, one spacing from the last of
   * them, so that the odd bay falls between trusses that are alike and not under the hip.
   */
  private Optional<Double> behindHip(List<Standing> far, double from) {
    if (hips.stream().noneMatch(h -> h.bank() == Bank.END)) {
      return Optional.empty();
    }
    double place = far.get(far.size() - 1).station() - spacing;
    return Optional.of(place).filter(p -> p >= from);
  }

  /** Over both side walls of a stretch whose bearing wall stands further out. */
  private void sides(Run.Extension e) {
    for (double station : new double[] {e.from() + thickness / 2, e.to() - thickness / 2}) {
      Standing side = Standing.ordinary(station, thickness);
      if (row.stream().noneMatch(s -> s.overlaps(side) && s.holdsAnEnd())) {
        row.removeIf(side::overlaps);
        row.add(side);
      }
    }
  }

  private void put(PlacedTruss placed) {
    boolean girder = placed.kind() == PlacedTruss.Kind.GIRDER;
    double half = placed.plies() * thickness / 2;
    double asked = run.axes().u(placed.at());
    if (asked < -spacing || asked > run.length() + spacing || 2 * half > run.length()) {
      return; // outside the part, which is said elsewhere
    }
    double station = Math.max(half, Math.min(asked, run.length() - half));
    Standing put =
        new Standing(
            station, thickness, placed.plies(), girder ? Role.PLACED_GIRDER : Role.PLACED, -1);
    Optional<Standing> fixed =
        row.stream().filter(put::overlaps).filter(s -> s.holdsAnEnd() || isPlaced(s)).findFirst();
    if (fixed.isPresent()) {
      problems.add(taken(placed, put));
      return;
    }
    row.removeIf(put::overlaps);
    row.add(put);
  }

  /** Says so, and where the nearest room for it is. */
  private Problem taken(PlacedTruss placed, Standing put) {
    PlaceName part = PlaceName.of(run.part());
    PlacePoint at = PlacePoint.of(placed.at());
    Optional<Point> room = room(put).map(u -> run.axes().at(u, run.axes().v(placed.at())));
    if (room.isEmpty()) {
      return Problem.warning(run.part().id(), Phrase.of("framing.placed.taken", part, at));
    }
    Phrase wrong = Phrase.of("framing.placed.taken", part, at, PlacePoint.of(room.get()));
    return new Problem(
        Problem.Level.WARNING, run.part().id(), wrong, wrong.under("framing.placed.taken.room"));
  }

  /** The nearest station beside what stands fast where a truss as wide has room. */
  private Optional<Double> room(Standing put) {
    double half = put.width() / 2;
    List<Standing> fast = row.stream().filter(s -> s.holdsAnEnd() || isPlaced(s)).toList();
    return fast.stream()
        .flatMap(s -> Stream.of(s.near() - half, s.far() + half))
        .filter(u -> u >= half && u <= run.length() - half)
        .filter(
            u -> {
              Standing there = new Standing(u, thickness, put.plies(), put.role(), put.fromEnd());
              return fast.stream().noneMatch(there::overlaps);
            })
        .min(Comparator.comparingDouble(u -> Math.abs(u - put.station())));
  }

  private static boolean isPlaced(Standing s) {
    return s.role() == Role.PLACED || s.role() == Role.PLACED_GIRDER;
  }
}
