package longpoint.field.built;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.field.built.Network.Settled;
import longpoint.plan.AsBuilt.Tape;

/**
 * Readings that do not agree with the others, by data snooping: each residual over its own standard
 * deviation, √r σ, is held against 3.29, which a good reading passes 999 times in 1000 (W. Baarda,
 * "A testing procedure for use in geodetic networks", 1968; threshold and the 4.13 of {@link
 * #UNSEEN} as usual with it, from memory). The largest is named, left out, and the rest tried
 * again.
 *
 * <p>With one reading to spare all residuals are alike and no test can tell which is wrong. Then
 * the plan is asked: if the mistake that one reading would have made brings it back to the plan,
 * and no other does, that one is named, and said to be named by the plan.
 *
 * @param tape the reading; of several that could be wrong, the first
 * @param by how much too long it reads, plan units; negative if too short
 * @param test its residual over its standard deviation
 * @param others that could be wrong instead, for all the tapes can tell; empty when it is certain
 * @param witness what points to it
 */
record Doubt(Tape tape, double by, double test, List<Tape> others, DoubtedTape.Witness witness) {
  /** Two-sided, one in a thousand. */
  static final double LIMIT = 3.29;

  /**
   * A mistake under this many standard deviations over √r goes unseen in more than one case of
   * five: 3.29 + 0.84.
   */
  static final double UNSEEN = 4.13;

  /** Below this a reading is as good as unchecked, and its residual is rounding. */
  static final double CHECKED = 1e-3;

  /** Residuals that go together as closely as this cannot be told apart. */
  private static final double ALIKE = 0.98;

  /** A mistake that comes from the plan's figure leaves this share of it at most. */
  private static final double EXPLAINED = 0.25;

  /** More mistakes than these and it is the list that is wrong. */
  private static final int MOST = 4;

  Doubt {
    others = List.copyOf(others);
  }

  /** Those found, and the readings that are left. */
  record Sifted(List<Doubt> doubts, List<Tape> used, Settled settled) {}

  static Sifted sift(WallFit fit) {
    List<Tape> used = new ArrayList<>(fit.tapes);
    List<Doubt> doubts = new ArrayList<>();
    Settled settled = fit.settle(used);
    while (doubts.size() < MOST && settled.settled()) {
      Optional<Doubt> worst = worst(fit, used, settled);
      if (worst.isEmpty()) {
        break;
      }
      doubts.add(worst.get());
      if (worst.get().witness() == DoubtedTape.Witness.NONE) {
        break;
      }
      Tape wrong = worst.get().tape();
      used.removeIf(t -> t == wrong); // another may read the very same
      settled = fit.settle(used);
    }
    return new Sifted(List.copyOf(doubts), List.copyOf(used), settled);
  }

  /** Residual over its standard deviation; 0 where nothing checks the reading. */
  static double test(Settled settled, int tie) {
    double r = settled.redundancy(tie);
    return r < CHECKED
        ? 0
        : settled.residual(tie) / (settled.ties().get(tie).sigma() * Math.sqrt(r));
  }

  private static Optional<Doubt> worst(WallFit fit, List<Tape> used, Settled settled) {
    int worst = -1;
    double most = LIMIT;
    for (int i = 0; i < used.size(); i++) {
      if (Math.abs(test(settled, i)) > most) {
        most = Math.abs(test(settled, i));
        worst = i;
      }
    }
    if (worst < 0) {
      return Optional.empty();
    }
    List<Integer> alike = new ArrayList<>();
    for (int i = 0; i < used.size(); i++) {
      if (i != worst && Math.abs(settled.correlation(i, worst)) > ALIKE) {
        alike.add(i);
      }
    }
    if (alike.isEmpty()) {
      return Optional.of(doubt(used, settled, worst, List.of(), DoubtedTape.Witness.TAPES));
    }
    alike.add(0, worst);
    List<Integer> explained =
        alike.stream().filter(i -> explained(fit, used.get(i), by(settled, i))).toList();
    int named = explained.size() == 1 ? explained.get(0) : worst;
    alike.remove(Integer.valueOf(named));
    DoubtedTape.Witness witness =
        explained.size() == 1 ? DoubtedTape.Witness.PLAN : DoubtedTape.Witness.NONE;
    return Optional.of(doubt(used, settled, named, alike, witness));
  }

  private static Doubt doubt(
      List<Tape> used,
      Settled settled,
      int tie,
      List<Integer> others,
      DoubtedTape.Witness witness) {
    return new Doubt(
        used.get(tie),
        by(settled, tie),
        test(settled, tie),
        others.stream().map(used::get).toList(),
        witness);
  }

  /** The mistake that would explain a residual. */
  private static double by(Settled settled, int tie) {
    return -settled.residual(tie) / settled.redundancy(tie);
  }

  private static boolean explained(WallFit fit, Tape tape, double by) {
    double off = tape.reads() - fit.planned(tape);
    return Math.abs(off) > LIMIT * fit.sigma(tape)
        && Math.abs(off - by) < EXPLAINED * Math.abs(off);
  }
}
