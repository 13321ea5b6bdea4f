package longpoint.framing.truss;

import java.util.List;
import longpoint.framing.Shop;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Meeting;
import longpoint.framing.run.Mouth;
import longpoint.framing.run.Run;
import longpoint.geometry.Point;

/**
 * What becomes of trusses where runs meet: one over the mouth of a wing hangs on that wing's girder
 * and has no tail there; nor has one on the mouth's corner, which would run out along the wing's
 * wall under the wing's roof, nor the wing's last truss under the eave of the roof it comes in to.
 * Under an overlay a truss over the mouth keeps its wall, and its tail only if the user says so.
 */
final class Hanging {
  private final Run run;
  private final List<Meeting> meetings;
  private final Shop shop;
  private final List<Mouth> mouths;
  private final double thickness;

  /**
   * @param mouths where lower roofs stop at the wall under a part laid over them
   */
  Hanging(Run run, List<Meeting> meetings, List<Mouth> mouths, Shop shop) {
    this.run = run;
    this.meetings = meetings;
    this.mouths = mouths.stream().filter(m -> m.run().equals(run.id())).toList();
    this.shop = shop;
    this.thickness = run.part().frame().thickness();
  }

  /**
   * Hangs a truss on the girders of the wings over whose mouths it has no wall, and cuts it off at
   * the wall where it stands on the corner of such a mouth.
   */
  Placed hang(Placed truss) {
    Placed hung = truss;
    for (Meeting m : meetings) {
      if (m.lower().id().equals(run.id()) && m.needsGirder()) {
        if (overMouth(m, hung.from(), -shop.mark())) {
          hung = hung.hungFrom(carrier(m, hung.from()));
        } else if (overMouth(m, hung.from(), thickness / 2)) {
          hung = hung.withoutTailFrom();
        }
        if (overMouth(m, hung.to(), -shop.mark())) {
          hung = hung.hungTo(carrier(m, hung.to()));
        } else if (overMouth(m, hung.to(), thickness / 2)) {
          hung = hung.withoutTailTo();
        }
      }
    }
    return withoutTails(hung);
  }

  /** Cut off at the wall where a part laid over this roof has its mouth, its corners included. */
  private Placed withoutTails(Placed truss) {
    Placed cut = truss;
    for (Mouth mouth : mouths) {
      cut = mouth.holds(cut.from(), thickness / 2) ? cut.withoutTailFrom() : cut;
      cut = mouth.holds(cut.to(), thickness / 2) ? cut.withoutTailTo() : cut;
    }
    return cut;
  }

  /**
   * A wing's girder, or its last truss where it is laid over, stands along the wall of the roof
   * beneath, whose eave passes over its ends if the plates are level: cut plumb at the wall
   * wherever that eave goes on past the wing. An end in line with the lower roof's own end wall
   * keeps its tail, for there the eave turns the corner.
   */
  Placed underOther(Placed truss) {
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
    return truss.kind().squareToRidge()
        && (m.isAt(run, Bank.END) && run.length() - truss.station() < truss.width()
            || m.isAt(run, Bank.START) && truss.station() < truss.width());
  }

  /** Whether the lower roof has an eave over the wing's last truss, at its height. */
  private boolean eaveIsLevel(Meeting m) {
    return m.lower().bound(m.bank()).overhang() > thickness
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
   * @param beside how far past the corners of the mouth still counts; negative for that far inside,
   *     as a truss centred on the corner still has half its thickness on the wall
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
    int plies = wing.part().frame().choices().girderPlies().orElse(1);
    double girder = wing.length() - plies * wing.part().frame().thickness() / 2;
    return new Placed.Carrier(wing.id(), wing.axes().at(girder, wing.axes().v(end)));
  }
}
