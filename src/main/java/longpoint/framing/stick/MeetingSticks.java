package longpoint.framing.stick;

import java.util.ArrayList;
import java.util.List;
import longpoint.framing.rafter.RoofCorner;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Bound;
import longpoint.framing.run.Meeting;
import longpoint.framing.run.Run;
import longpoint.framing.stick.Stick.Joint;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.plan.Frame;
import longpoint.plan.Side;

/**
 * Rafters where a wing comes in over a plane of another run. Over a deck: the wing's rafters stand
 * on the deck where its frame planes meet it. Framed through: two valley rafters, of which the
 * first goes on to the main ridge when the wing is lower, and jacks on both roofs.
 *
 * <p>Every end is where two planes are equally high along a line, so a wing at any angle works.
 */
final class MeetingSticks {
  /** A plane this close to level along a ridge meets it beyond any building. */
  private static final double LEAST_CLIMB = 1e-3;

  private final Meeting meeting;
  private final Run wing;
  private final Plane under;
  private final Plane frame;
  private final double thickness;
  private final List<Stick> sticks = new ArrayList<>();

  private MeetingSticks(Meeting meeting, Side side) {
    this.meeting = meeting;
    this.wing = meeting.upper();
    this.frame = side.framePlane();
    this.thickness = wing.part().frame().thickness();
    this.under = meeting.beneath();
  }

  static List<Stick> lay(Meeting meeting) {
    Bound bound = meeting.lower().bound(meeting.bank());
    if (!bound.isEave()) {
      return List.of();
    }
    MeetingSticks layer = new MeetingSticks(meeting, bound.side().orElseThrow());
    if (meeting.manner() == Meeting.Manner.SHED) {
      layer.shedRafters();
      return layer.sticks;
    }
    if (!layer.meets()) {
      return List.of();
    }
    layer.wingRafters();
    layer.ridge();
    if (layer.through() && layer.wing.low().isEave() && layer.wing.high().isEave()) {
      layer.valleys();
    }
    return layer.sticks;
  }

  /** Over mono trusses: from the open side up to the deck. */
  private void shedRafters() {
    double on = meeting.shedRun();
    if (wing.part().frame().method() != Frame.Method.TRUSS || on < thickness) {
      return;
    }
    boolean up = wing.low().isEave();
    Side eave = (up ? wing.low() : wing.high()).side().orElseThrow();
    for (double u : RunSticks.stations(wing, up ? Bank.LOW : Bank.HIGH)) {
      Point foot = wing.axes().at(u, up ? wing.width() : 0);
      Point head = wing.axes().at(u, up ? wing.width() + on : -on);
      sticks.add(
          new Stick(
              RafterKind.COMMON,
              wing.part().id(),
              wing.id(),
              foot,
              head,
              eave.slope().ratio(),
              0,
              Joint.NONE,
              Joint.NONE,
              0));
    }
  }

  private boolean through() {
    return meeting.manner() == Meeting.Manner.THROUGH;
  }

  /** Whether the plane beneath climbs along the wing's ridge and starts out below it. */
  private boolean meets() {
    Point along = wing.axes().along();
    double climb = under.a() * along.x() + under.b() * along.y();
    return climb > LEAST_CLIMB && apexU() > wing.length() + thickness;
  }

  /** Where the wing's ridge line comes to the plane beneath, u in the wing's axes. */
  private double apexU() {
    double here = under.heightAt(wing.axes().at(wing.length(), wing.ridgeV()));
    Point along = wing.axes().along();
    double climb = under.a() * along.x() + under.b() * along.y();
    return wing.length() + (wing.ridgeHeight() - here) / climb;
  }

  private void wingRafters() {
    double spacing = wing.part().frame().spacing();
    for (int k = 1; wing.length() + k * spacing < apexU(); k++) {
      for (Bank bank : List.of(Bank.LOW, Bank.HIGH)) {
        if (wing.bound(bank).isEave()) {
          wingRafter(bank, wing.length() + k * spacing);
        }
      }
    }
  }

  private void wingRafter(Bank bank, double u) {
    Side eave = wing.bound(bank).side().orElseThrow();
    Point head = wing.axes().at(u, wing.ridgeV());
    Point fall = wing.axes().along().left().times(bank == Bank.LOW ? -1 : 1);
    double room = wing.ridgeHeight() - under.heightAt(head);
    double closing = eave.slope().ratio() + under.a() * fall.x() + under.b() * fall.y();
    if (room > 0 && closing > 0) {
      add(
          RafterKind.VALLEY_JACK,
          head.plus(fall.times(room / closing)),
          head,
          eave.slope().ratio());
    }
  }

  /** A jack between a valley or a deck and a ridge. */
  private void add(RafterKind kind, Point foot, Point head, double slope) {
    if (foot.distance(head) < thickness) {
      return;
    }
    Joint atFoot = through() ? new Joint(thickness, jackAngle(foot, head)) : Joint.NONE;
    if (foot.distance(head) - atFoot.shortening() - thickness / 2 > thickness) {
      sticks.add(
          new Stick(
              kind,
              wing.part().id(),
              wing.id(),
              foot,
              head,
              slope,
              0,
              atFoot,
              new Joint(thickness, 90),
              0));
    }
  }

  /** Angle in plan between a jack and the valley at its foot. */
  private double jackAngle(Point foot, Point head) {
    boolean low = wing.axes().v(foot) < wing.ridgeV();
    Point valley = apex().minus(corner(low ? Bank.LOW : Bank.HIGH)).unit();
    Point jack = head.minus(foot).unit();
    double cos = Math.min(1, Math.abs(jack.dot(valley)));
    return Math.toDegrees(Math.acos(cos));
  }

  private Point apex() {
    return wing.axes().at(apexU(), wing.ridgeV());
  }

  /** Where a valley starts: the wing's eave plane at its wall, level with the plane beneath. */
  private Point corner(Bank bank) {
    return wing.axes().at(wing.length(), bank == Bank.LOW ? 0 : wing.width());
  }

  private void ridge() {
    Point from = wing.axes().at(wing.length(), wing.ridgeV());
    if (apexU() - wing.length() > thickness) {
      sticks.add(
          new Stick(
              RafterKind.RIDGE,
              wing.part().id(),
              wing.id(),
              from,
              apex(),
              0,
              0,
              Joint.NONE,
              Joint.NONE,
              0));
    }
  }

  private void valleys() {
    double mainSlope = frame.slope();
    double mainRidge = meeting.lower().ridgeHeight();
    boolean lower = wing.ridgeHeight() < mainRidge - thickness;
    for (Bank bank : List.of(Bank.LOW, Bank.HIGH)) {
      Side eave = wing.bound(bank).side().orElseThrow();
      Point foot = corner(bank);
      double share =
          lower && bank == Bank.LOW
              ? (mainRidge - frame.heightAt(foot)) / (wing.ridgeHeight() - frame.heightAt(foot))
              : 1;
      Point head = foot.toward(apex(), share);
      double run = foot.distance(head);
      RoofCorner corner = RoofCorner.square(eave.slope().ratio(), mainSlope);
      double toRidge = lower && bank == Bank.LOW ? corner.planAngleB() : corner.planAngleA();
      sticks.add(
          new Stick(
              RafterKind.VALLEY,
              wing.part().id(),
              wing.id(),
              foot,
              head,
              (frame.heightAt(head) - frame.heightAt(foot)) / run,
              0,
              Joint.NONE,
              new Joint(thickness, lower && bank == Bank.HIGH ? 90 : toRidge),
              0));
    }
    mainJacks(lower);
  }

  /** Jacks of the main roof over the mouth, from the valleys up. */
  private void mainJacks(boolean lower) {
    Run main = meeting.lower();
    Side side = main.bound(meeting.bank()).side().orElseThrow();
    double ridgeIn = (main.ridgeHeight() - side.plateHeight() - side.heel()) / frame.slope();
    for (double station : RunSticks.stations(main, meeting.bank())) {
      if (station > meeting.from() && station < meeting.to()) {
        mainJack(station, ridgeIn, lower);
      }
    }
  }

  private void mainJack(double station, double ridgeIn, boolean lower) {
    Run main = meeting.lower();
    Point wall =
        switch (meeting.bank()) {
          case LOW -> main.axes().at(station, 0);
          case HIGH -> main.axes().at(station, main.width());
          case START -> main.axes().at(0, station);
          case END -> main.axes().at(main.length(), station);
        };
    Point up = wing.axes().along();
    double v = wing.axes().v(wall);
    boolean lowSide = v <= wing.ridgeV();
    double foot = valleyIn(lowSide ? Bank.LOW : Bank.HIGH, wall);
    Point from = wall.plus(up.times(foot));
    double supporting = valleyIn(Bank.LOW, wall);
    if (lower && !lowSide && supporting < ridgeIn) {
      // The supporting valley runs on above the wing's ridge and cuts this line in two.
      add(RafterKind.CRIPPLE, from, wall.plus(up.times(supporting)), frame.slope());
      from = wall.plus(up.times(supporting));
    }
    add(RafterKind.VALLEY_JACK, from, wall.plus(up.times(ridgeIn)), frame.slope());
  }

  /** Plan distance up the main plane from its wall to a valley's line. */
  private double valleyIn(Bank bank, Point wall) {
    Point corner = corner(bank);
    Point valley = apex().minus(corner);
    Point along = wing.axes().along();
    double across = wing.axes().v(wall) - wing.axes().v(corner);
    double rise = valley.dot(along) / valley.dot(along.left());
    return across * rise + along.dot(corner.minus(wall));
  }
}
