package longpoint.framing.truss;

import java.util.ArrayList;
import java.util.List;
import longpoint.framing.Shop;
import longpoint.framing.run.Run;
import longpoint.framing.valley.ValleySet;
import longpoint.framing.valley.ValleyTruss;

/**
 * Blocks of one length between trusses at the ridge: the clear bay less a relief, so that blocks
 * never push the trusses along; cut down to the mark, never up.
 *
 * @param part id of the part
 * @param run id of the run
 * @param place row they belong to
 * @param count how many
 * @param clear distance between the trusses
 * @param length to cut
 */
public record RidgeBlocks(
    String part, String run, Place place, int count, double clear, double length) {
  /** Which row of trusses the blocks stand between. */
  public enum Place {
    RIDGE,
    VALLEY
  }

  /**
   * Blocks for a row of clear bays, equal lengths together, in the order first met. A bay with room
   * for less than the thickness of a board takes none.
   */
  public static List<RidgeBlocks> cut(
      String part, String run, Place place, List<Double> bays, double relief, Shop shop) {
    List<RidgeBlocks> groups = new ArrayList<>();
    for (double bay : bays) {
      double length = shop.cutDown(bay - relief);
      int same = -1;
      for (int i = 0; i < groups.size(); i++) {
        same = Math.abs(groups.get(i).length() - length) < shop.mark() / 2 ? i : same;
      }
      if (same >= 0) {
        RidgeBlocks g = groups.get(same);
        groups.set(same, new RidgeBlocks(part, run, place, g.count() + 1, g.clear(), length));
      } else if (length >= shop.flat()) {
        groups.add(new RidgeBlocks(part, run, place, 1, bay, length));
      }
    }
    return List.copyOf(groups);
  }

  /** Blocks along a run's ridge, between every two neighbours that both reach it. */
  public static List<RidgeBlocks> along(RunLayout layout, double relief, Shop shop) {
    List<Double> stations = layout.row().stations();
    List<Double> gaps = layout.row().gaps();
    List<Double> bays = new ArrayList<>();
    for (int i = 0; i + 1 < stations.size(); i++) {
      if (reaches(layout, stations.get(i), shop) && reaches(layout, stations.get(i + 1), shop)) {
        bays.add(gaps.get(i));
      }
    }
    return cut(layout.run().part().id(), layout.run().id(), Place.RIDGE, bays, relief, shop);
  }

  /** Blocks of a valley set: the first stands between the last ordinary truss and the set. */
  public static List<RidgeBlocks> in(ValleySet set, Run wing, double relief, Shop shop) {
    List<Double> bays = new ArrayList<>();
    double before = set.last();
    boolean tall = set.site().wing().front().filter(f -> f.x() > set.last()).isEmpty();
    for (ValleyTruss truss : set.trusses()) {
      double peak = truss.left() * set.site().wing().left();
      boolean reaches = truss.height() > peak - shop.flat();
      if (tall && reaches) {
        bays.add(truss.x() - before - wing.part().frame().thickness());
      }
      before = truss.x();
      tall = reaches;
    }
    return cut(wing.part().id(), wing.id(), Place.VALLEY, bays, relief, shop);
  }

  private static boolean reaches(RunLayout layout, double station, Shop shop) {
    return layout.trusses().stream()
        .anyMatch(
            t ->
                t.kind().squareToRidge()
                    && t.station() == station
                    && reaches(t, layout.run(), shop));
  }

  /** A step-down less than a flat 2x low, as where the hips begin, still takes a block. */
  private static boolean reaches(Placed t, Run run, Shop shop) {
    return switch (t.kind()) {
      case COMMON, GABLE_END, DROPPED_GABLE_END, GIRDER, MONO, SCISSOR, CAP, GABLE_CAP -> true;
      case HIP_GIRDER, STEP_DOWN ->
          t.plate() + t.profile().height() >= run.ridgeHeight() - shop.flat();
      case JACK, CORNER_JACK, HIP_JACK, VALLEY, BASE, GABLE_BASE, CROSS_GIRDER -> false;
    };
  }
}
