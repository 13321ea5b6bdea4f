package longpoint.framing.stick;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Bound;
import longpoint.framing.run.Meeting;
import longpoint.framing.run.Mouth;
import longpoint.framing.run.Run;
import longpoint.framing.stick.Joint.Face;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.plan.Side;
import longpoint.units.LengthUnit;

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
  private final LengthUnit unit;
  private final List<Stick> sticks = new ArrayList<>();

  private RunSticks(Run run, List<Meeting> meetings, List<Mouth> mouths, LengthUnit unit) {
    this.unit = unit;
    this.mouths = mouths.stream().filter(m -> m.run().equals(run.id())).toList();
    this.run = run;
    this.meetings = meetings;
    this.spacing = run.part().frame().spacing();
    this.thickness = run.part().frame().thickness();
  }

  static List<Stick> lay(Run run, List<Meeting> meetings, List<Mouth> mouths, LengthUnit unit) {
    RunSticks layer = new RunSticks(run, meetings, mouths, unit);
    for (Bank bank : Bank.values()) {
      if (run.bound(bank).isEave()) {
        layer.alongWall(bank);
      }
    }
    layer.hips();
    layer.ridge();
    return OverRoof.clear(layer.sticks, run, meetings);
  }

  /**
   * Rafters of one hip end of a run that otherwise has trusses: both hips, their jacks, and commons
   * of the end wall, up to the face of the girder at the end of the ridge.
   *
   * @param end START or END, an eave
   */
  static List<Stick> hipEnd(Run run, Bank end, LengthUnit unit) {
    RunSticks layer = new RunSticks(run, List.of(), List.of(), unit);
    Side wall = run.bound(end).side().orElseThrow();
    for (double station : new RunMarks(run, List.of()).along(end)) {
      layer.addRafter(end, wall, station, Joint.square(Bearing.GIRDER, 0));
    }
    for (Bank bearing : List.of(Bank.LOW, Bank.HIGH)) {
      if (run.bound(bearing).isEave()) {
        Side side = run.bound(bearing).side().orElseThrow();
        for (int k = 1; k * layer.spacing < run.hipRun(end) - layer.thickness / 2; k++) {
          double in = k * layer.spacing;
          double u = end == Bank.START ? in : run.length() - in;
          layer.addRafter(bearing, side, u, Joint.square(Bearing.RIDGE, layer.thickness / 2));
        }
        layer.hip(end, bearing).ifPresent(hip -> layer.sticks.add(layer.toGirder(hip)));
      }
    }
    return layer.sticks;
  }

  /** Into the corner of the girder's face and the common in the middle, or the other hip. */
  private Stick toGirder(Stick hip) {
    Point across = run.axes().along().left();
    Point along = run.axes().along();
    boolean common =
        sticks.stream()
            .anyMatch(
                s ->
                    s.kind() == RafterKind.COMMON
                        && s.head().distance(hip.head()) < thickness / 2
                        && Math.abs(s.up().unit().dot(along)) > 0.9);
    Point side = across.times(Math.signum(hip.up().times(-1).dot(across)));
    Point middle = hip.head().plus(side.times(common ? thickness / 2 : 0));
    return hip.withHead(
        Joint.into(
            Bearing.GIRDER,
            hip.head(),
            hip.up(),
            thickness,
            List.of(new Face(hip.head(), across), new Face(middle, along))));
  }

  private void alongWall(Bank bank) {
    Side wall = run.bound(bank).side().orElseThrow();
    for (double station : new RunMarks(run, meetings).along(bank)) {
      if (meetings.stream().noneMatch(m -> overMouth(m, bank, station))) {
        addRafter(bank, wall, station, top(bank));
      }
    }
  }

  /** What a rafter comes to that no hip cuts off. */
  private Joint top(Bank bank) {
    Bound far = run.bound(bank == Bank.LOW ? Bank.HIGH : Bank.LOW);
    if (!RunMarks.isBearing(bank) || far.isEave()) {
      return Joint.square(Bearing.RIDGE, thickness / 2);
    }
    return switch (far.kind()) {
      case GABLE -> Joint.WALL;
      case ABUTMENT -> Joint.square(Bearing.LEDGER, thickness);
      case OPEN -> overlap() != 0 ? shedTop() : Joint.NONE;
      case EAVE -> Joint.NONE;
    };
  }

  /** On the deck, or against the header of its opening. */
  private Joint shedTop() {
    boolean through =
        meetings.stream()
            .anyMatch(
                m ->
                    m.upper().id().equals(run.id())
                        && m.manner() == Meeting.Manner.SHED_THROUGH
                        && Opening.of(m).isPresent());
    return through ? Joint.square(Bearing.HEADER, thickness / 2) : Joint.square(Bearing.DECK, 0);
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
    String row = "";
    boolean bearing = RunMarks.isBearing(bank);
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
          row = bank + "-" + end;
          Point up = at(bank, station, 1).minus(at(bank, station, 0));
          head = Joint.against(Bearing.HIP, thickness, up, up, hipLine(wall, other));
        }
      }
    }
    if (kind == RafterKind.COMMON && head.on() == Bearing.WALL) {
      reach -= run.part().frame().choices().sticks().plateWidth(unit);
    }
    if (reach - head.off() > thickness) {
      Point foot = at(bank, station, 0);
      Stick rafter =
          Stick.of(
                  kind,
                  run.part().id(),
                  run.id(),
                  foot,
                  at(bank, station, reach),
                  wall.slope().ratio())
              .withTail(isOpen(foot) ? 0 : wall.overhang())
              .withFoot(Joint.WALL)
              .withHead(head)
              .withHeel(wall.heel())
              .withRow(row);
      sticks.add(head.on() == Bearing.WALL ? overWall(rafter, bank) : rafter);
    }
  }

  /** A shed's rafter runs on over the plate of its high wall and out to the edge of the roof. */
  private Stick overWall(Stick rafter, Bank bank) {
    Bound high = run.bound(bank == Bank.LOW ? Bank.HIGH : Bank.LOW);
    double plate = run.part().frame().choices().sticks().plateWidth(unit);
    return rafter.withOver(plate + high.overhang());
  }

  /** Direction in plan of the line where two eave planes are equally high, away from the walls. */
  static Point hipLine(Side one, Side other) {
    Point a = one.wall().direction().left().times(one.slope().ratio());
    Point b = other.wall().direction().left().times(other.slope().ratio());
    Point line = a.minus(b).left();
    return line.dot(a) >= 0 ? line : line.times(-1);
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
        .filter(m -> m.upper().id().equals(run.id()) && m.manner().isShed())
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
          hip(end, bearing).ifPresent(sticks::add);
        }
      }
    }
  }

  /**
   * The hip between an end wall and a bearing wall. It starts where its line first passes over a
   * wall: the corner, unless one heel is higher than the other.
   */
  private Optional<Stick> hip(Bank end, Bank bearing) {
    Side one = run.bound(bearing).side().orElseThrow();
    Side other = run.bound(end).side().orElseThrow();
    Point head = at(end, run.ridgeV(), run.hipRun(end));
    Point line = hipLine(one, other);
    double back =
        Math.min(inward(one, head) / climb(one, line), inward(other, head) / climb(other, line));
    if (!(back > 0) || !Double.isFinite(back)) {
      return Optional.empty();
    }
    Point foot = head.minus(line.times(back));
    Plane plane = one.framePlane();
    double height = plane.heightAt(foot) - one.plateHeight();
    double run = foot.distance(head);
    double tail = Math.min(tail(one, foot, line), tail(other, foot, line));
    return Optional.of(
        Stick.of(
                RafterKind.HIP,
                this.run.part().id(),
                this.run.id(),
                foot,
                head,
                (plane.heightAt(head) - plane.heightAt(foot)) / run)
            .withTail(Math.max(0, tail))
            .withFoot(Joint.hipFascia(line, one.wall().direction(), other.wall().direction()))
            .withHead(Joint.square(Bearing.NOTHING, 0))
            .withFalls(Stick.Falls.beside(line, plane, other.framePlane()))
            .withHeel(height));
  }

  private static double inward(Side side, Point p) {
    return side.wall().offset(p);
  }

  private static double climb(Side side, Point line) {
    return side.wall().direction().cross(line);
  }

  /** Plan length from the foot of a hip to where the tails of one wall end. */
  private static double tail(Side side, Point foot, Point line) {
    double sine = climb(side, line.unit());
    return (side.overhang() + inward(side, foot)) / sine;
  }

  private void ridge() {
    double from = run.start().isEave() ? run.hipRun(Bank.START) : -run.start().overhang();
    double to = run.length() - (run.end().isEave() ? run.hipRun(Bank.END) : -run.end().overhang());
    if (run.low().isEave() && run.high().isEave() && to - from > 3 * thickness) {
      sticks.add(
          Stick.of(
              RafterKind.RIDGE,
              run.part().id(),
              run.id(),
              run.axes().at(from, run.ridgeV()),
              run.axes().at(to, run.ridgeV()),
              0));
    }
  }
}
