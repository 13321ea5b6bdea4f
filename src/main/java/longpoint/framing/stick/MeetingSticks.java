package longpoint.framing.stick;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Bound;
import longpoint.framing.run.Meeting;
import longpoint.framing.run.Run;
import longpoint.framing.stick.Joint.Face;
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

  /** From the end of the wing's walls to the first rafter beyond. */
  private double first;

  private MeetingSticks(Meeting meeting, Side side) {
    this.meeting = meeting;
    this.wing = meeting.upper();
    this.frame = side.framePlane();
    this.thickness = wing.part().frame().thickness();
    this.under = meeting.beneath();
  }

  /**
   * @param runs as they are laid out; the meeting's own may be turned round
   * @param opening of a dormer in the roof beneath
   * @param cut stations of the rafters beneath that the valleys cut
   */
  static List<Stick> lay(
      Meeting meeting, List<Run> runs, Optional<Opening> opening, List<Double> cut) {
    Bound bound = meeting.lower().bound(meeting.bank());
    if (!bound.isEave()) {
      return List.of();
    }
    MeetingSticks layer = new MeetingSticks(meeting, bound.side().orElseThrow());
    layer.first = layer.first(runs);
    if (meeting.manner().isShed()) {
      layer.shedRafters();
      return layer.sticks;
    }
    if (!layer.meets()) {
      return List.of();
    }
    if (layer.runsOn()) {
      layer.wingRafters();
      layer.ridge();
    }
    if (layer.through() && layer.wing.low().isEave() && layer.wing.high().isEave()) {
      layer.sticks.addAll(layer.valleys().lay());
      layer.mainJacks(opening, cut);
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
    for (double u : RunMarks.stations(wing, up ? Bank.LOW : Bank.HIGH)) {
      Point foot = wing.axes().at(u, up ? wing.width() : 0);
      Point head = wing.axes().at(u, up ? wing.width() + on : -on);
      sticks.add(
          Stick.of(RafterKind.COMMON, wing.part().id(), wing.id(), foot, head, eave.slope().ratio())
              .withFoot(Joint.WALL)
              .withHead(Joint.square(Bearing.DECK, 0)));
    }
  }

  private boolean through() {
    return meeting.manner() == Meeting.Manner.THROUGH;
  }

  /** Whether the plane beneath climbs along the wing's ridge and starts out below it. */
  private boolean meets() {
    Point along = wing.axes().along();
    double climb = under.a() * along.x() + under.b() * along.y();
    return climb > LEAST_CLIMB && apexU() > thickness;
  }

  /** Whether the wing's roof runs on past the end of its walls. */
  private boolean runsOn() {
    return apexU() > wing.length() + thickness;
  }

  /** Where the wing's ridge line comes to the plane beneath, u in the wing's axes. */
  private double apexU() {
    double here = under.heightAt(wing.axes().at(wing.length(), wing.ridgeV()));
    Point along = wing.axes().along();
    double climb = under.a() * along.x() + under.b() * along.y();
    return wing.length() + (wing.ridgeHeight() - here) / climb;
  }

  /** The layout goes on beyond the mouth as it came. */
  private double first(List<Run> runs) {
    double spacing = wing.part().frame().spacing();
    boolean fromStart =
        runs.stream()
            .filter(r -> r.id().equals(wing.id()))
            .allMatch(r -> meeting.isAt(r, Bank.END));
    double past = fromStart ? spacing - wing.length() % spacing : spacing;
    return past < thickness ? past + spacing : past;
  }

  private void wingRafters() {
    double spacing = wing.part().frame().spacing();
    for (int k = 0; wing.length() + first + k * spacing < apexU(); k++) {
      for (Bank bank : List.of(Bank.LOW, Bank.HIGH)) {
        if (wing.bound(bank).isEave()) {
          wingRafter(bank, wing.length() + first + k * spacing);
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
      Point foot = head.plus(fall.times(room / closing));
      double slope = eave.slope().ratio();
      Point up = head.minus(foot);
      Joint atFoot = through() ? onValley(bank, up.times(-1), up) : Joint.onDeck(under, up, slope);
      add(RafterKind.VALLEY_JACK, foot, head, slope, atFoot, ridgeTop(), "wing-" + bank);
    }
  }

  private Joint ridgeTop() {
    return Joint.square(Bearing.RIDGE, thickness / 2);
  }

  /** Against the valley that starts at one side of the mouth. */
  private Joint onValley(Bank bank, Point out, Point up) {
    return Joint.against(Bearing.VALLEY, thickness, out, up, apex().minus(corner(bank)));
  }

  /** A jack between a valley or a deck and a ridge. */
  private void add(
      RafterKind kind,
      Point foot,
      Point head,
      double slope,
      Joint atFoot,
      Joint atHead,
      String row) {
    if (foot.distance(head) - atFoot.off() - atHead.off() > thickness) {
      sticks.add(
          Stick.of(kind, wing.part().id(), wing.id(), foot, head, slope)
              .withFoot(atFoot)
              .withHead(atHead)
              .withRow(meeting.lower().id() + "-" + row));
    }
  }

  private Point apex() {
    return wing.axes().at(apexU(), wing.ridgeV());
  }

  /** Where a valley starts: over the wing's wall, level with the plane beneath. */
  private Point corner(Bank bank) {
    double v = bank == Bank.LOW ? 0 : wing.width();
    Point end = wing.axes().at(wing.length(), v);
    Side eave = wing.bound(bank).side().orElseThrow();
    Point along = wing.axes().along();
    double climb = under.a() * along.x() + under.b() * along.y();
    double room = eave.plateHeight() + eave.heel() - under.heightAt(end);
    return end.plus(along.times(room / climb));
  }

  /** From the mouth to the valleys, or to the deck; one board with the ridge of the wing itself. */
  private void ridge() {
    Point from = wing.axes().at(wing.length(), wing.ridgeV());
    if (apexU() - wing.length() > thickness) {
      sticks.add(
          Stick.of(RafterKind.RIDGE, wing.part().id(), wing.id(), from, apex(), 0)
              .withHead(ridgeEnd()));
    }
  }

  private Joint ridgeEnd() {
    boolean valleys = through() && wing.low().isEave() && wing.high().isEave();
    // A level board that comes to the slope of a deck is cut along that slope.
    return valleys ? valleys().ridgeEnd() : Joint.square(Bearing.DECK, 0);
  }

  private ValleyRafters valleys() {
    return new ValleyRafters(meeting, apex(), corner(Bank.LOW), corner(Bank.HIGH));
  }

  /** Jacks of the main roof over the mouth, from the valleys up. */
  private void mainJacks(Optional<Opening> opening, List<Double> cut) {
    Run main = meeting.lower();
    Side side = main.bound(meeting.bank()).side().orElseThrow();
    double ridgeIn = (main.ridgeHeight() - side.plateHeight() - side.heel()) / frame.slope();
    Optional<Double> header = opening.filter(Opening::hasUpperHeader).map(Opening::top);
    Joint top = header.map(h -> Joint.square(Bearing.HEADER, thickness / 2)).orElse(ridgeTop());
    for (double station : cut) {
      if (station > meeting.from() && station < meeting.to()) {
        mainJack(station, header.orElse(ridgeIn), top);
      }
    }
  }

  private void mainJack(double station, double topIn, Joint atTop) {
    Run main = meeting.lower();
    Point wall =
        switch (meeting.bank()) {
          case LOW -> main.axes().at(station, 0);
          case HIGH -> main.axes().at(station, main.width());
          case START -> main.axes().at(0, station);
          case END -> main.axes().at(main.length(), station);
        };
    Point up = wing.axes().along();
    Bank near = wing.axes().v(wall) <= wing.ridgeV() ? Bank.LOW : Bank.HIGH;
    Point from = wall.plus(up.times(valleyIn(near, wall)));
    Joint foot = foot(near, from, up);
    double hipIn = hipIn(station);
    if (hipIn < topIn - thickness / 2) {
      Point top = wall.plus(up.times(hipIn));
      Joint head = Joint.against(Bearing.HIP, thickness, up, up, hipAt(station));
      addMain(RafterKind.CRIPPLE, from, top, foot, head, "hip-" + near);
      return;
    }
    Point top = wall.plus(up.times(topIn));
    addMain(RafterKind.VALLEY_JACK, from, top, foot, atTop, "main-" + near);
  }

  /** On the nearer valley; close to the apex into the corner of both. */
  private Joint foot(Bank near, Point from, Point up) {
    double off = Math.abs(wing.axes().v(from) - wing.ridgeV());
    if (off > thickness * (1 + Math.sqrt(2)) / 2) {
      return onValley(near, up.times(-1), up);
    }
    List<Face> faces = new ArrayList<>();
    for (Bank bank : List.of(Bank.LOW, Bank.HIGH)) {
      Point along = apex().minus(corner(bank));
      boolean left = along.left().dot(up) > 0;
      faces.add(Face.leftOf(apex(), left ? along : along.times(-1), thickness));
    }
    return Joint.into(Bearing.VALLEY, from, up.times(-1), thickness, faces).turned();
  }

  /** Plan distance from the main wall up to a hip of the main roof. */
  private double hipIn(double station) {
    return hipEnds()
        .mapToDouble(
            b ->
                (height(b) + slope(b) * away(b, station) - height(meeting.bank()))
                    / slope(meeting.bank()))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private Point hipAt(double station) {
    Bank nearest = hipEnds().min(Comparator.comparingDouble(b -> away(b, station))).orElseThrow();
    return RunSticks.hipLine(side(meeting.bank()), side(nearest));
  }

  private Stream<Bank> hipEnds() {
    boolean bearing = meeting.bank() == Bank.LOW || meeting.bank() == Bank.HIGH;
    List<Bank> ends = bearing ? List.of(Bank.START, Bank.END) : List.of(Bank.LOW, Bank.HIGH);
    return ends.stream().filter(b -> meeting.lower().bound(b).isEave());
  }

  private double away(Bank end, double station) {
    return switch (end) {
      case START, LOW -> station;
      case END -> meeting.lower().length() - station;
      case HIGH -> meeting.lower().width() - station;
    };
  }

  private Side side(Bank bank) {
    return meeting.lower().bound(bank).side().orElseThrow();
  }

  private double height(Bank bank) {
    return side(bank).plateHeight() + side(bank).heel();
  }

  private double slope(Bank bank) {
    return side(bank).slope().ratio();
  }

  /** A jack of the main roof, of the part it stands in unless that is there already. */
  private void addMain(
      RafterKind kind, Point foot, Point head, Joint atFoot, Joint atHead, String row) {
    Run of = meeting.lower().part().existing() ? wing : meeting.lower();
    if (foot.distance(head) - atFoot.off() - atHead.off() > thickness
        && head.minus(foot).dot(wing.axes().along()) > 0) {
      sticks.add(
          Stick.of(kind, of.part().id(), of.id(), foot, head, frame.slope())
              .withFoot(atFoot)
              .withHead(atHead)
              .withRow(wing.id() + "-" + row));
    }
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
