package longpoint.framing.valley;

import java.util.ArrayList;
import java.util.List;

/**
 * Places for valley trusses that came with nothing but their chord lengths: each stands where the
 * set line is just that wide.
 */
public final class SuppliedSet {
  private SuppliedSet() {}

  /**
   * One truss of a supplier's list.
   *
   * @param truss its place and the size that the roof gives a chord of that length
   * @param gap from the truss before it, or from the last ordinary truss; uphill face to uphill
   *     face, in plan
   * @param expected the gap the layout calls for
   * @param differs whether the gap is off by more than the crew should let pass
   */
  public record Placed(ValleyTruss truss, double gap, double expected, boolean differs) {
    /** Positive when the gap is wider than the layout calls for. */
    public double off() {
      return gap - expected;
    }
  }

  /**
   * @param lengths of the bottom chords in any order, each &gt; 0
   * @param notice a difference above this is flagged
   * @return longest first, numbered from 1 at the eave
   */
  public static List<Placed> place(ValleySite site, List<Double> lengths, double notice) {
    List<Double> sorted = lengths.stream().sorted((a, b) -> Double.compare(b, a)).toList();
    List<Placed> placed = new ArrayList<>(sorted.size());
    double before = site.last();
    double expected = site.spacing() - site.shift();
    for (double length : sorted) {
      if (!(length > 0)) {
        throw new IllegalArgumentException("a chord has a length above 0, not " + length);
      }
      double height = length / (1 / site.wing().left() + 1 / site.wing().right());
      double x = site.main().xAt(site.wing().ridge() - height);
      ValleyTruss truss = ValleyLayout.truss(site, placed.size() + 1, x);
      double gap = x - before;
      placed.add(new Placed(truss, gap, expected, Math.abs(gap - expected) > notice));
      before = x;
      expected = site.spacing();
    }
    return List.copyOf(placed);
  }

  /** Those that stand on the roof: above the wing's last ordinary truss and below the ridge. */
  static List<ValleyTruss> standing(ValleySite site, List<Placed> placed) {
    return placed.stream().map(Placed::truss).filter(t -> stands(site, t)).toList();
  }

  static boolean stands(ValleySite site, ValleyTruss truss) {
    return truss.x() > site.last() && truss.x() <= site.main().ridge();
  }
}
