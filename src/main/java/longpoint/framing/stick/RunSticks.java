package longpoint.framing.stick;

import java.util.ArrayList;
import java.util.List;
import longpoint.framing.rafter.RoofCorner;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Bound;
import longpoint.framing.run.Meeting;
import longpoint.framing.run.Mouth;
import longpoint.framing.run.Run;
import longpoint.framing.stick.Stick.Joint;
import longpoint.geometry.Point;
import longpoint.plan.Side;

/**
 * Commons, hip jacks, hips and ridge of one run. Rafters stand on the spacing from the start of
 * every eave wall, flush at the ends of a gable; a rafter that a hip cuts off is a jack.
 */
final class RunSticks {
  private final Run run;
  private final List<Meeting> meetings;
  private final List<Mouth> mouths;
  private final double spacing;
  private final double thickness;
  private final List<Stick> sticks = new ArrayList<>();

  private RunSticks(Run run, List<Meeting> meetings, List<Mouth> mouths) {
    this.mouths = mouths.stream().filter(m -> m.run().equals(run.id())).toList();
    this.run = run;
    this.meetings = meetings;
    this.spacing = run.part().frame().spacing();
    this.thickness = run.part().frame().thickness();
  }

  static List<Stick> lay(Run run, List<Meeting> meetings, List<Mouth> mouths) {
    RunSticks layer = new RunSticks(run, meetings, mouths);
    for (Bank bank : Bank.values()) {
      if (run.bound(bank).isEave()) {
        layer.alongWall(bank);
      }
    }
    layer.hips();
    layer.ridge();
    return layer.sticks;
  }

  /**
   * Rafters of one hip end of a run that otherwise has trusses: both hips, their jacks, and commons
   * of the end wall, up to the face of the girder at the end of the ridge.
   *
   * @param end START or END, an eave
   */
  static List<Stick> hipEnd(Run run, Bank end) {
    RunSticks layer = new RunSticks(run, List.of(), List.of());
    Side wall = run.bound(end).side().orElseThrow();
    for (double station : stations(run, end)) {
      layer.addRafter(end, wall, station, Joint.NONE);
    }
    for (Bank bearing : List.of(Bank.LOW, Bank.HIGH)) {
      if (run.bound(bearing).isEave()) {
        Side side = run.bound(bearing).side().orElseThrow();
        for (int k = 1; k * layer.spacing < run.hipRun(end) - layer.thickness / 2; k++) {
          double in = k * layer.spacing;
          double u = end == Bank.START ? in : run.length() - in;
          layer.addRafter(bearing, side, u, new Joint(layer.thickness, 90));
        }
        // Its long point lies on the girder's face, where the cheeks of both hips meet.
        layer.hip(end, wall, bearing, 0);
      }
    }
    return layer.sticks;
  }

  /** Stations along a wall, rising, from the start of the run or from its low side. */
  static List<Double> stations(Run run, Bank bank) {
    double thickness = run.part().frame().thickness();
    boolean bearing = bank == Bank.LOW || bank == Bank.HIGH;
    double length = bearing ? run.length() : run.width();
    Bound first = bearing ? run.start() : run.low();
    Bound last = bearing ? run.end() : run.high();
    List<Double> stations = new ArrayList<>();
    if (!first.isEave()) {
      stations.add(thickness / 2);
    }
    double spacing = run.part().frame().spacing();
    double limit = length - (last.isEave() ? 0 : thickness * 3 / 2);
    for (int k = 1; k * spacing < limit; k++) {
      stations.add(k * spacing);
    }
    if (!last.isEave()) {
      stations.add(length - thickness / 2);
    }
    return stations;
  }

  private void alongWall(Bank bank) {
    Side wall = run.bound(bank).side().orElseThrow();
    for (double station : stations(run, bank)) {
      if (meetings.stream().noneMatch(m -> overMouth(m, bank, station))) {
        addRafter(bank, wall, station, overlap() > 0 ? Joint.NONE : new Joint(thickness, 90));
      }
    }
  }

  private boolean overMouth(Meeting m, Bank bank, double station) {
    return m.lower().id().equals(run.id())
        && m.bank() == bank
        && m.needsGirder()
        && station > m.from()
        && station < m.to();
  }

  /**
   * From the wall up to the first other plane, or to the ridge.
   *
   * @param atRidge what it meets there
   */
  private void addRafter(Bank bank, Side wall, double station, Joint atRidge) {
    double reach = reach(bank);
    Joint head = atRidge;
    RafterKind kind = RafterKind.COMMON;
    boolean bearing = bank == Bank.LOW || bank == Bank.HIGH;
    for (Bank end : bearing ? List.of(Bank.START, Bank.END) : List.of(Bank.LOW, Bank.HIGH)) {
      if (run.bound(end).isEave()) {
        Side other = run.bound(end).side().orElseThrow();
        double length = bearing ? run.length() : run.width();
        boolean first = end == Bank.START || end == Bank.LOW;
        double away = first ? station : length - station;
        double hip =
            (other.heel() + other.slope().ratio() * away - wall.heel()) / wall.slope().ratio();
        if (hip < reach - thickness / 2) {
          reach = hip;
          kind = RafterKind.HIP_JACK;
          RoofCorner corner = RoofCorner.square(wall.slope().ratio(), other.slope().ratio());
          head = new Joint(thickness, 90 - corner.planAngleA());
        }
      }
    }
    if (reach - head.shortening() > thickness) {
      sticks.add(
          new Stick(
              kind,
              run.part().id(),
              run.id(),
              at(bank, station, 0),
              at(bank, station, reach),
              wall.slope().ratio(),
              isOpen(at(bank, station, 0)) ? 0 : wall.overhang(),
              Joint.NONE,
              head,
              0));
    }
  }

  /** Whether a rafter stands where a part laid over this roof has its mouth. */
  private boolean isOpen(Point foot) {
    return mouths.stream().anyMatch(m -> m.holds(foot, thickness / 2));
  }

  /** Plan distance from a wall to the ridge above it. */
  private double reach(Bank bank) {
    return switch (bank) {
      case LOW -> run.ridgeV() + overlap();
      case HIGH -> run.width() - run.ridgeV() + overlap();
      case START, END -> run.hipRun(bank);
    };
  }

  /** How far a shed roof runs on over its open side until it meets the deck beyond. */
  private double overlap() {
    return meetings.stream()
        .filter(m -> m.upper().id().equals(run.id()) && m.manner() == Meeting.Manner.SHED)
        .mapToDouble(Meeting::shedRun)
        .findFirst()
        .orElse(0);
  }

  private Point at(Bank bank, double along, double in) {
    return switch (bank) {
      case LOW -> run.axes().at(along, in);
      case HIGH -> run.axes().at(along, run.width() - in);
      case START -> run.axes().at(in, along);
      case END -> run.axes().at(run.length() - in, along);
    };
  }

  private void hips() {
    for (Bank end : List.of(Bank.START, Bank.END)) {
      for (Bank bearing : List.of(Bank.LOW, Bank.HIGH)) {
        if (run.bound(end).isEave() && run.bound(bearing).isEave()) {
          hip(end, run.bound(end).side().orElseThrow(), bearing, thickness);
        }
      }
    }
  }

  private void hip(Bank end, Side endWall, Bank bearing, double against) {
    Side wall = run.bound(bearing).side().orElseThrow();
    RoofCorner corner = RoofCorner.square(wall.slope().ratio(), endWall.slope().ratio());
    double in = run.hipRun(end);
    Point foot = at(end, bearing == Bank.LOW ? 0 : run.width(), 0);
    Point head = at(end, run.ridgeV(), in);
    sticks.add(
        new Stick(
            RafterKind.HIP,
            run.part().id(),
            run.id(),
            foot,
            head,
            (run.ridgeHeight() - wall.plateHeight() - wall.heel()) / foot.distance(head),
            Math.hypot(wall.overhang(), endWall.overhang()),
            Joint.NONE,
            new Joint(against, corner.planAngleA()),
            corner.drop(thickness)));
  }

  private void ridge() {
    double from = run.start().isEave() ? run.hipRun(Bank.START) : -run.start().overhang();
    double to = run.length() - (run.end().isEave() ? run.hipRun(Bank.END) : -run.end().overhang());
    if (run.low().isEave() && run.high().isEave() && to - from > thickness) {
      sticks.add(
          new Stick(
              RafterKind.RIDGE,
              run.part().id(),
              run.id(),
              run.axes().at(from, run.ridgeV()),
              run.axes().at(to, run.ridgeV()),
              0,
              0,
              Joint.NONE,
              Joint.NONE,
              0));
    }
  }
}
