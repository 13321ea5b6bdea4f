package longpoint.framing.truss;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import longpoint.framing.Shop;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Bound;
import longpoint.framing.run.Meeting;
import longpoint.framing.run.Run;
import longpoint.geometry.Point;
import longpoint.plan.Frame;
import longpoint.plan.FrameChoices;
import longpoint.plan.FrameChoices.Lookout;
import longpoint.plan.Problem;

/**
 * Every truss of one run: end trusses flush inside the end walls' outside faces, or a hip end;
 * between them trusses centred on whole spacings from the start. A truss over the mouth of a wing
 * hangs on that wing's girder and has no tail there; nor has one on the mouth's corner, which would
 * run out along the wing's wall under the wing's roof, nor the wing's last truss under the eave of
 * the roof it comes in to.
 *
 * @param stations of the trusses square to the ridge
 * @param trusses all of them, jacks included
 */
public record RunLayout(Run run, Stations stations, List<Placed> trusses) {
  public RunLayout {
    trusses = List.copyOf(trusses);
  }

  /**
   * @param meetings of the whole plan
   */
  public static RunLayout lay(Run run, List<Meeting> meetings, Shop shop) {
    return new Layer(run, meetings, shop).lay();
  }

  /** Says where a hip end could not be laid out as asked. */
  public static List<Problem> check(Run run, Shop shop) {
    List<Problem> problems = new ArrayList<>();
    for (Bank bank : List.of(Bank.START, Bank.END)) {
      if (run.bound(bank).isEave()) {
        HipEnd.check(run, bank, shop.hipSetback()).ifPresent(problems::add);
      }
    }
    return problems;
  }

  private record Layer(Run run, List<Meeting> meetings, Shop shop) {
    RunLayout lay() {
      List<HipEnd> hips = new ArrayList<>();
      List<Double> near = endStations(Bank.START, hips);
      List<Double> far = new ArrayList<>(endStations(Bank.END, hips));
      Collections.reverse(far);
      double first = run.start().isEave() ? near.get(near.size() - 1) + spacing() : spacing();
      Stations stations = Stations.fill(near, first, far, spacing(), thickness());
      List<Placed> trusses = new ArrayList<>();
      for (double station : stations.all()) {
        trusses.addAll(split(underOther(hang(truss(station, stations)))));
      }
      hips.forEach(hip -> hip.jacks().forEach(jack -> trusses.add(hang(jack))));
      return new RunLayout(run, stations, trusses);
    }

    private Frame frame() {
      return run.part().frame();
    }

    private double spacing() {
      return frame().spacing();
    }

    private Lookout lookout() {
      return frame().choices().lookout().orElse(Lookout.FLAT);
    }

    private double thickness() {
      return frame().thickness();
    }

    /** From the end in. */
    private List<Double> endStations(Bank bank, List<HipEnd> hips) {
      if (run.bound(bank).isEave()) {
        double setback = HipEnd.setback(run, bank, shop.hipSetback());
        HipEnd hip = new HipEnd(run, bank, setback);
        List<Double> stations = hip.stations();
        if (!stations.isEmpty()) {
          hips.add(hip);
          return stations;
        }
      }
      return List.of(bank == Bank.START ? thickness() / 2 : run.length() - thickness() / 2);
    }

    private Placed truss(double station, Stations stations) {
      Section cut = Section.at(run, station, thickness());
      TrussKind kind = kind(station, stations, cut);
      double drop = kind == TrussKind.DROPPED_GABLE_END ? shop.lookoutDepth(lookout()) : 0;
      Profile profile = cut.profile(cut.low().overhang(), cut.high().overhang(), drop);
      if (kind == TrussKind.SCISSOR) {
        profile = scissor(profile, frame().choices());
      }
      return Placed.onWalls(kind, cut, profile);
    }

    private TrussKind kind(double station, Stations stations, Section cut) {
      int fromNear = stations.near().indexOf(station);
      int fromFar = stations.far().size() - 1 - stations.far().indexOf(station);
      if (fromNear >= 0) {
        return endKind(Bank.START, fromNear, cut);
      }
      if (stations.far().contains(station)) {
        return endKind(Bank.END, fromFar, cut);
      }
      return ordinary(cut);
    }

    private TrussKind endKind(Bank bank, int fromEnd, Section cut) {
      Bound end = run.bound(bank);
      return switch (end.kind()) {
        case EAVE -> fromEnd == 0 ? TrussKind.HIP_GIRDER : TrussKind.STEP_DOWN;
        case GABLE -> end.overhang() > 0 ? TrussKind.DROPPED_GABLE_END : TrussKind.GABLE_END;
        case ABUTMENT -> ordinary(cut);
        case OPEN -> isGirder(bank) ? TrussKind.GIRDER : ordinary(cut);
      };
    }

    private boolean isGirder(Bank end) {
      return meetings.stream().anyMatch(m -> m.needsGirder() && m.isAt(run, end));
    }

    private TrussKind ordinary(Section cut) {
      if (!cut.low().isEave() || !cut.high().isEave()) {
        return TrussKind.MONO;
      }
      return frame().choices().ceiling().isPresent() ? TrussKind.SCISSOR : TrussKind.COMMON;
    }

    /**
     * Bottom chord up from both bearings at the ceiling's slope, as far as it stays under the top.
     */
    private static Profile scissor(Profile level, FrameChoices choices) {
      double slope = choices.ceiling().orElseThrow().ratio();
      double middle = level.span() / 2;
      return new Profile(
          level.span(),
          level.top(),
          List.of(new Point(0, 0), new Point(middle, slope * middle), new Point(level.span(), 0)));
    }

    /**
     * Hangs a truss on the girders of the wings over whose mouths it has no wall, and cuts it off
     * at the wall where it stands on the corner of such a mouth.
     */
    private Placed hang(Placed truss) {
      Placed hung = truss;
      for (Meeting m : meetings) {
        if (m.lower().id().equals(run.id()) && m.needsGirder()) {
          if (overMouth(m, hung.from(), -shop.mark())) {
            hung = hung.hungFrom(carrier(m, hung.from()));
          } else if (overMouth(m, hung.from(), thickness() / 2)) {
            hung = hung.withoutTailFrom();
          }
          if (overMouth(m, hung.to(), -shop.mark())) {
            hung = hung.hungTo(carrier(m, hung.to()));
          } else if (overMouth(m, hung.to(), thickness() / 2)) {
            hung = hung.withoutTailTo();
          }
        }
      }
      return hung;
    }

    /**
     * A wing's girder, or its last truss where it is laid over, stands along the wall of the roof
     * beneath, whose eave passes over its ends if the plates are level: cut plumb at the wall
     * wherever that eave goes on past the wing. An end in line with the lower roof's own end wall
     * keeps its tail, for there the eave turns the corner.
     */
    private Placed underOther(Placed truss) {
      Placed cut = truss;
      for (Meeting m : meetings) {
        if (m.takesValleyTrusses() && m.endsAtWall() && isAtMouth(m, truss) && eaveIsLevel(m)) {
          cut = goesOnPast(m, cut.from()) ? cut.withoutTailFrom() : cut;
          cut = goesOnPast(m, cut.to()) ? cut.withoutTailTo() : cut;
        }
      }
      return cut;
    }

    private boolean isAtMouth(Meeting m, Placed truss) {
      return m.isAt(run, Bank.END) && run.length() - truss.station() < thickness()
          || m.isAt(run, Bank.START) && truss.station() < thickness();
    }

    /** Whether the lower roof has an eave over the wing's last truss, at its height. */
    private boolean eaveIsLevel(Meeting m) {
      return m.lower().bound(m.bank()).overhang() > thickness()
          && Math.abs(m.lower().plate() - run.plate()) < shop.mark();
    }

    private boolean goesOnPast(Meeting m, Point end) {
      double along = along(m, end);
      boolean bearing = m.bank() == Bank.LOW || m.bank() == Bank.HIGH;
      double length = bearing ? m.lower().length() : m.lower().width();
      return along > shop.mark() && along < length - shop.mark();
    }

    /** Place along the wall of the lower run that a wing comes in over. */
    private static double along(Meeting m, Point p) {
      boolean bearing = m.bank() == Bank.LOW || m.bank() == Bank.HIGH;
      return bearing ? m.lower().axes().u(p) : m.lower().axes().v(p);
    }

    /**
     * Whether an end lies on the line of a mouth.
     *
     * @param beside how far past the corners of the mouth still counts; negative for that far
     *     inside, as a truss centred on the corner still has half its thickness on the wall
     */
    private boolean overMouth(Meeting m, Point end, double beside) {
      double u = run.axes().u(end);
      double v = run.axes().v(end);
      double off =
          switch (m.bank()) {
            case LOW -> v;
            case HIGH -> v - run.width();
            case START -> u;
            case END -> u - run.length();
          };
      double along = along(m, end);
      return Math.abs(off) < shop.mark() && along > m.from() - beside && along < m.to() + beside;
    }

    private static Placed.Carrier carrier(Meeting m, Point end) {
      Run wing = m.upper();
      double girder = wing.length() - wing.part().frame().thickness() / 2;
      return new Placed.Carrier(wing.id(), wing.axes().at(girder, wing.axes().v(end)));
    }

    private List<Placed> split(Placed truss) {
      return TallTruss.split(truss, frame().choices().haul().orElse(shop.haul()), shop.flat());
    }
  }
}
