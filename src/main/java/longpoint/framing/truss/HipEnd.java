package longpoint.framing.truss;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.framing.rafter.RoofCorner;
import longpoint.framing.rafter.Shortening;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Bound;
import longpoint.framing.run.Run;
import longpoint.geometry.Point;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.PlaceName;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.wording.Phrase;

/**
 * One end of a run where the roof slopes down to the end wall: the places of hip girder and
 * step-downs, and the jacks between the girder and the walls. {@code d} runs in from the end wall,
 * {@code c} across it from the low bearing wall.
 */
final class HipEnd {
  /** Jacks shorter than this many thicknesses are blocks that the crew cuts on site. */
  private static final double SHORTEST_JACK = 4;

  /**
   * The program's set-back keeps this many thicknesses short of the ridge, so that the hip jacks of
   * both corners find room beside each other on the girder.
   */
  private static final double LEAST_FLAT = 4;

  private final Run run;
  private final Bank bank;
  private final Side end;
  private final double spacing;
  private final double thickness;
  private final double setback;

  HipEnd(Run run, Bank bank, double setback) {
    this.run = run;
    this.bank = bank;
    this.end = run.bound(bank).side().orElseThrow();
    this.spacing = run.part().frame().spacing();
    this.thickness = run.part().frame().thickness();
    this.setback = setback;
  }

  Bank bank() {
    return bank;
  }

  /**
   * The user's set-back if it leaves the girder a flat top, else the program's: the largest number
   * of whole spacings that does so and is not over the crew's usual limit.
   *
   * @param limit longest set-back chosen without being asked
   * @return infinite where there is no room for a girder
   */
  static double setback(Run run, Bank bank, double limit) {
    double hipRun = run.hipRun(bank);
    Optional<Double> asked = run.part().frame().hipSetback().filter(d -> d < hipRun);
    if (asked.isPresent()) {
      return asked.get();
    }
    double spacing = run.part().frame().spacing();
    double thickness = run.part().frame().thickness();
    double most = Math.min(limit, hipRun - LEAST_FLAT * thickness);
    if (!run.bound(bank == Bank.START ? Bank.END : Bank.START).isEave()) {
      most = Math.min(most, run.length() - 2 * thickness);
    }
    double spacings = Math.floor(most / spacing);
    return spacings >= 1 ? spacings * spacing : Double.POSITIVE_INFINITY;
  }

  /** Whether an end framed with step-downs has room for its girder. */
  static boolean hasGirder(Run run, Bank bank, double limit) {
    HipEnd hip = new HipEnd(run, bank, setback(run, bank, limit));
    return !hip.standings(Standing.Role.START, 1).isEmpty();
  }

  /** Says so when a hip end is too short for its girder, or for the set-back that was asked. */
  static Optional<Problem> check(Run run, Bank bank, double limit) {
    if (way(run, bank) != Edge.HipEnd.STEPDOWN) {
      return Optional.empty();
    }
    double hipRun = run.hipRun(bank);
    String where = run.bound(bank).side().orElseThrow().id();
    PlaceName name = PlaceName.of(run.part());
    if (setback(run, bank, limit) >= hipRun) {
      return Optional.of(Problem.warning(where, Phrase.of("framing.hip.short", name)));
    }
    return run.part()
        .frame()
        .hipSetback()
        .filter(d -> d >= hipRun)
        .map(d -> Problem.warning(where, Phrase.of("framing.hip.setback", name)));
  }

  /**
   * Stations of hip girder and step-downs, from the end wall in. One that stands under the end of
   * the ridge has a flat of no more than its own thickness and is still a step-down: a common there
   * would stand above the hip's plane by half its thickness times the slope. A supplier may agree
   * to send a common for it; the deck then rides over that much.
   */
  List<Standing> standings(Standing.Role role, int girderPlies) {
    List<Standing> out = new ArrayList<>();
    double hipRun = run.hipRun(bank);
    for (int k = 0;
        setback + k * spacing - thickness / 2 < hipRun && mine(setback + k * spacing);
        k++) {
      int plies = k == 0 ? girderPlies : 1;
      double middle = k == 0 ? girder() : setback + k * spacing;
      out.add(new Standing(u(middle), thickness, plies, role, k));
    }
    return out;
  }

  /** In from the end wall to the middle of the girder: further plies stand behind the first. */
  private double girder() {
    int plies = run.part().frame().choices().girderPlies().orElse(1);
    return setback + (plies - 1) * thickness / 2;
  }

  /** How the user wants an end framed. */
  static Edge.HipEnd way(Run run, Bank bank) {
    Side end = run.bound(bank).side().orElseThrow();
    return run.part().edges().get(end.index()).hip().orElse(Edge.HipEnd.STEPDOWN);
  }

  /** Whether this end's plane, not the other end's, is the lower one at that distance in. */
  private boolean mine(double d) {
    Bound other = bank == Bank.START ? run.end() : run.start();
    if (!other.isEave()) {
      return d < run.length();
    }
    double there = run.heightOn(other.side().orElseThrow(), u(d), run.width() / 2);
    double here = run.heightOn(end, u(d), run.width() / 2);
    return here < there || (here <= there && bank == Bank.START);
  }

  /** Every jack of this end. */
  List<Placed> jacks() {
    List<Placed> jacks = new ArrayList<>(endJacks());
    for (Bank side : List.of(Bank.LOW, Bank.HIGH)) {
      if (run.bound(side).isEave()) {
        jacks.addAll(sideJacks(side));
        jacks.add(hipJack(side));
      }
    }
    return jacks;
  }

  private double face() {
    return setback - thickness / 2;
  }

  private double u(double d) {
    return bank == Bank.START ? d : run.length() - d;
  }

  private double endHeight() {
    return end.heel();
  }

  private double endSlope() {
    return end.slope().ratio();
  }

  /** How far across from a side wall the hip line is, d in from the end wall. */
  private double hipC(Side side, double d) {
    return (endHeight() + endSlope() * d - side.heel()) / side.slope().ratio();
  }

  private double hipD(Side side, double c) {
    return (side.heel() + side.slope().ratio() * c - endHeight()) / endSlope();
  }

  /** Jacks square to the end wall: to the girder in the middle, to the hip jacks in the corners. */
  private List<Placed> endJacks() {
    List<Double> near = corner(run.low());
    if (run.low().kind() == EdgeKind.GABLE) {
      // Flush on the wall that runs up beside it, for the edge of the deck.
      near.add(thickness / 2);
    }
    List<Double> far = new ArrayList<>();
    corner(run.high()).forEach(c -> far.add(0, run.width() - c));
    if (!near.isEmpty()) {
      // In the middle of a narrow end the jacks of both corners would want one place.
      far.removeIf(c -> c - near.get(near.size() - 1) < thickness);
    }
    double first = near.isEmpty() ? spacing : near.get(near.size() - 1) + spacing;
    first = Math.rint(first / spacing) * spacing;
    List<Double> to = far.isEmpty() ? List.of(run.width() - thickness / 2) : far;
    List<Placed> jacks = new ArrayList<>();
    for (double c : Stations.fill(near, first, to, spacing, thickness).all()) {
      if (c < run.width() - thickness || run.high().kind() == EdgeKind.GABLE) {
        endJack(c).ifPresent(jacks::add);
      }
    }
    return jacks;
  }

  /** Places along the end wall, from a corner, of jacks that the hip cuts short. */
  private List<Double> corner(Bound wall) {
    List<Double> places = new ArrayList<>();
    if (wall.isEave()) {
      Side side = wall.side().orElseThrow();
      if (hipD(side, 0) > 0) {
        places.add(thickness / 2);
      }
      for (int k = 1; meetsHip(side, k * spacing) && k * spacing < run.width() / 2; k++) {
        places.add(k * spacing);
      }
    }
    return places;
  }

  /**
   * Whether the hip jack, not the girder, stops a jack of the end wall. The hip jack comes to the
   * girder at a slant and takes up room there on both sides of its middle; a jack that would stand
   * in its wood is cut to its face like those before it, so that no two hangers share one place
   * (common practice; where the supplier gives one hanger for the two, his detail rules). Left out
   * it would leave two spacings of deck without support, moved it would be off the panel's joints.
   */
  private boolean meetsHip(Side side, double across) {
    return across < hipC(side, face()) + halfHipAlongGirder(side) + thickness / 2;
  }

  /** Half the hip jack's thickness seen along the girder. */
  private double halfHipAlongGirder(Side side) {
    RoofCorner hip = RoofCorner.square(side.slope().ratio(), endSlope());
    return Shortening.against(thickness, 90 - hip.planAngleA());
  }

  private double shortening(Side side) {
    RoofCorner hip = RoofCorner.square(endSlope(), side.slope().ratio());
    return Shortening.against(thickness, 90 - hip.planAngleA());
  }

  private Optional<Placed> endJack(double c) {
    double length = face();
    TrussKind kind = TrussKind.JACK;
    Optional<Placed.Carrier> carrier = Optional.of(carrier(c));
    for (Bank bankOfSide : List.of(Bank.LOW, Bank.HIGH)) {
      Bound wall = run.bound(bankOfSide);
      if (wall.isEave()) {
        Side side = wall.side().orElseThrow();
        double across = bankOfSide == Bank.LOW ? c : run.width() - c;
        if (meetsHip(side, across)) {
          double toHip = hipD(side, across) - shortening(side);
          // Its near edge may meet the hip jack where its middle would just pass it.
          toHip = toHip < length ? toHip : hipD(side, across - thickness / 2) - shortening(side);
          if (toHip < length) {
            length = toHip;
            kind = TrussKind.CORNER_JACK;
            carrier = Optional.empty();
          }
        }
      }
    }
    return length < SHORTEST_JACK * thickness
        ? Optional.empty()
        : Optional.of(jack(kind, end, c, at(0, c), at(length, c), length, carrier));
  }

  private Placed.Carrier carrier(double c) {
    return new Placed.Carrier(run.id(), at(girder(), c));
  }

  /** Jacks square to a side wall, from the wall to the hip jack. */
  private List<Placed> sideJacks(Bank bankOfSide) {
    Side side = run.bound(bankOfSide).side().orElseThrow();
    List<Placed> jacks = new ArrayList<>();
    for (double d : sideStations(side)) {
      double length = hipC(side, d) - halfHipAlongGirder(side);
      if (length >= SHORTEST_JACK * thickness) {
        boolean low = bankOfSide == Bank.LOW;
        Point from = at(d, low ? 0 : run.width());
        Point to = at(d, low ? length : run.width() - length);
        jacks.add(jack(TrussKind.CORNER_JACK, side, u(d), from, to, length, Optional.empty()));
      }
    }
    return jacks;
  }

  /** In from the end wall; the first on the wall itself where the hip comes down beside it. */
  private List<Double> sideStations(Side side) {
    List<Double> stations = new ArrayList<>();
    if (hipC(side, 0) > 0) {
      stations.add(thickness / 2);
    }
    for (int k = 1; k * spacing + thickness / 2 <= face(); k++) {
      stations.add(k * spacing);
    }
    return stations;
  }

  private Placed hipJack(Bank bankOfSide) {
    Side side = run.bound(bankOfSide).side().orElseThrow();
    boolean low = bankOfSide == Bank.LOW;
    double across = hipC(side, face());
    double c = low ? across : run.width() - across;
    // With unequal heels the hip comes down beside the corner, on the wall of the higher one.
    double footC = Math.max(0, hipC(side, 0));
    double footD = footC > 0 ? 0 : Math.max(0, hipD(side, 0));
    Point from = at(footD, low ? footC : run.width() - footC);
    Point to = at(face(), c);
    double length = from.distance(to);
    double heel = endHeight() + endSlope() * footD;
    double slope = (endHeight() + endSlope() * face() - heel) / length;
    double alongD = (face() - footD) / length;
    double alongC = (across - footC) / length;
    double tail = Math.min((footD + end.overhang()) / alongD, (footC + side.overhang()) / alongC);
    Profile profile =
        Profile.level(
            length,
            List.of(
                new Point(-tail, heel - slope * tail), new Point(length, heel + slope * length)));
    return new Placed(
        TrussKind.HIP_JACK,
        1,
        run,
        u(0),
        from,
        to,
        run.plate(),
        profile,
        Optional.empty(),
        Optional.of(carrier(c)));
  }

  private Placed jack(
      TrussKind kind,
      Side eave,
      double station,
      Point from,
      Point to,
      double length,
      Optional<Placed.Carrier> carrier) {
    double slope = eave.slope().ratio();
    double tail = eave.overhang();
    Profile profile =
        Profile.level(
            length,
            List.of(
                new Point(-tail, eave.heel() - slope * tail),
                new Point(length, eave.heel() + slope * length)));
    return new Placed(
        kind, 1, run, station, from, to, run.plate(), profile, Optional.empty(), carrier);
  }

  private Point at(double d, double c) {
    return run.axes().at(u(d), c);
  }
}
