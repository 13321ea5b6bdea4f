package longpoint.framing.stick;

import java.util.ArrayList;
import java.util.List;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Bound;
import longpoint.framing.run.Meeting;
import longpoint.framing.run.Run;
import longpoint.geometry.Point;

/** Where along its walls the rafters of a run stand. */
final class RunMarks {
  private final Run run;
  private final List<Meeting> meetings;
  private final double thickness;

  RunMarks(Run run, List<Meeting> meetings) {
    this.run = run;
    this.meetings = meetings;
    this.thickness = run.part().frame().thickness();
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

  /**
   * The stations of a wall, with those of the commons at the ends of a ridge. One that would stand
   * in the wood of such a common moves onto its place.
   */
  List<Double> along(Bank bank) {
    List<Double> ends = new ArrayList<>();
    if (isBearing(bank)) {
      for (Bank end : List.of(Bank.START, Bank.END)) {
        if (run.bound(end).isEave() && Double.isFinite(run.hipRun(end))) {
          ends.add(end == Bank.START ? run.hipRun(end) : run.length() - run.hipRun(end));
        }
      }
    } else {
      ends.add(run.ridgeV());
    }
    List<Double> places = new ArrayList<>();
    for (double station : stations(run, bank)) {
      if (isBearing(bank) && isAtMouth(station)) {
        continue;
      }
      double clear = clearOfValley(bank, station);
      double moved =
          ends.stream().filter(e -> Math.abs(e - clear) < thickness).findFirst().orElse(clear);
      if (places.stream().noneMatch(p -> Math.abs(p - moved) < thickness / 2)) {
        places.add(moved);
      }
    }
    if (run.part().frame().choices().sticks().hasCommonsAtRidgeEnds()) {
      for (double end : ends) {
        if (places.stream().noneMatch(p -> Math.abs(p - end) < thickness)) {
          places.add(end);
        }
      }
      places.sort(null);
    }
    return withTrimmers(bank, places);
  }

  private List<Double> withTrimmers(Bank bank, List<Double> places) {
    List<Double> trimmers = new ArrayList<>();
    for (Opening o : Opening.all(meetings)) {
      if (run.bound(bank).side().filter(o::isOver).isPresent() && o.run().equals(run.id())) {
        o.trimmers(thickness).forEach(p -> trimmers.add(along(bank, p)));
      }
    }
    double length = isBearing(bank) ? run.length() : run.width();
    return Opening.withTrimmers(places, trimmers, thickness, length);
  }

  private double along(Bank bank, Point p) {
    return isBearing(bank) ? run.axes().u(p) : run.axes().v(p);
  }

  /** Moved out of the wood of a valley that starts at the corner of a mouth. */
  private double clearOfValley(Bank bank, double station) {
    double least = thickness / 2 * (1 + Math.sqrt(2));
    for (Meeting m : meetings) {
      boolean through = m.manner() == Meeting.Manner.THROUGH && m.endsAtWall();
      if (through && m.lower().id().equals(run.id()) && m.bank() == bank) {
        if (station <= m.from() && station > m.from() - least) {
          return m.from() - least;
        }
        if (station >= m.to() && station < m.to() + least) {
          return m.to() + least;
        }
      }
      if (through && isBearing(bank) && m.isAt(run, Bank.END)) {
        station = Math.min(station, run.length() - least);
      }
      if (through && isBearing(bank) && m.isAt(run, Bank.START)) {
        station = Math.max(station, least);
      }
    }
    return station;
  }

  /**
   * Flush at the far end of a layout that opens over another roof: the valley starts there, and
   * jacks go on. It stays where it stands in for a rafter of the layout that would lie on the
   * mouth.
   */
  private boolean isAtMouth(double station) {
    return station > run.length() - thickness
        && !fallsOnMouth()
        && meetings.stream().anyMatch(m -> !m.manner().isShed() && m.isAt(run, Bank.END));
  }

  private boolean fallsOnMouth() {
    double spacing = run.part().frame().spacing();
    double past = run.length() % spacing;
    return past <= thickness * 3 / 2 || past > spacing - thickness;
  }

  static boolean isBearing(Bank bank) {
    return bank == Bank.LOW || bank == Bank.HIGH;
  }
}
