package longpoint.framing.edge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.framing.Shop;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Meeting;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;

/**
 * Two neighbouring eaves whose fascias run at different heights, and either change to the second
 * that would bring it level with the first.
 *
 * @param first id of the side whose fascia stays
 * @param second id of the side to change
 * @param difference how much higher the second fascia's top edge is; negative if lower
 * @param overhang for the second side that would bring it level; empty if none would
 * @param heel for the second side that would bring it level; empty if none would
 */
public record LevelFascia(
    String first,
    String second,
    double difference,
    Optional<Double> overhang,
    Optional<Double> heel) {

  /**
   * Every pair of neighbouring or meeting eaves that differs by more than the crew should let pass.
   */
  public static List<LevelFascia> find(Plan plan, List<Meeting> meetings, Shop shop) {
    List<LevelFascia> pairs = new ArrayList<>();
    for (Part part : plan.parts()) {
      int outline = part.outline().size();
      List<Side> sides = plan.sides(part);
      for (int i = 0; i < outline; i++) {
        Side a = sides.get(i);
        Side b = sides.get((i + 1) % outline);
        if (a.kind() == EdgeKind.EAVE && b.kind() == EdgeKind.EAVE) {
          pairs.add(between(a, b));
        }
      }
    }
    for (Meeting m : meetings) {
      m.lower().bound(m.bank()).side().ifPresent(main -> wing(main, m, pairs));
    }
    return pairs.stream().filter(p -> Math.abs(p.difference()) > shop.notice()).distinct().toList();
  }

  /** The eaves of a wing beside the eave it comes in over; those of one part are found already. */
  private static void wing(Side main, Meeting m, List<LevelFascia> pairs) {
    if (m.upper().part().id().equals(main.part()) || !m.takesValleyTrusses()) {
      return;
    }
    for (Bank bank : List.of(Bank.LOW, Bank.HIGH)) {
      if (m.upper().bound(bank).isEave()) {
        pairs.add(between(main, m.upper().bound(bank).side().orElseThrow()));
      }
    }
  }

  static LevelFascia between(Side first, Side second) {
    double wanted = arris(first);
    double slope = second.slope().ratio();
    double top = second.plateHeight() + second.heel();
    return new LevelFascia(
        first.id(),
        second.id(),
        arris(second) - wanted,
        possible(slope > 0 ? (top - wanted) / slope - second.fascia() : -1),
        possible(wanted + slope * second.reach() - second.plateHeight()));
  }

  private static Optional<Double> possible(double length) {
    return length >= 0 ? Optional.of(length) : Optional.empty();
  }

  /** Height of the fascia's top outer edge. */
  static double arris(Side eave) {
    return eave.plateHeight() + eave.heel() - eave.slope().ratio() * eave.reach();
  }
}
