package longpoint.surface;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import longpoint.geometry.Jts;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.FastNodingValidator;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.Noder;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snap.SnappingNoder;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;

/**
 * Cuts lines wherever they cross or touch, so that what is left meets at ends only.
 *
 * <p>The ladder:
 *
 * <ol>
 *   <li>up to some thousand lines, pair by pair ({@link PairwiseCut});
 *   <li>snap ends to ends and to lines, which leaves clear crossings where they are; since that
 *       moves lines a little, and now and then one across another, do it again, three times at
 *       most;
 *   <li>round everything to a grid as coarse as the grain, which always comes out clean.
 * </ol>
 */
final class Noding {
  private static final int PASSES = 3;

  /** Up to so many stretches looking at pairs is fastest. */
  private static final int FEW = 4096;

  /** Places are kept on a grid this many halvings finer than the grain. */
  private static final int GRID_BITS = 12;

  private Noding() {}

  /**
   * The lines, cut.
   *
   * @param grain places nearer than this are made one
   * @return single stretches, each once, in a fixed order
   */
  static List<LineString> cut(Collection<LineString> lines, double grain) {
    if (lines.stream().mapToInt(LineString::getNumPoints).sum() <= FEW) {
      PairwiseCut pairwise = new PairwiseCut(grain, grid(grain));
      if (pairwise.cut(lines)) {
        return IntStream.range(0, pairwise.stretches())
            .mapToObj(i -> stretch(pairwise.from(i), pairwise.to(i)))
            .toList();
      }
    }
    List<LineString> cut = List.copyOf(lines);
    for (int pass = 0; pass < PASSES; pass++) {
      cut = pass(cut, new SnappingNoder(grain), grain);
      if (new FastNodingValidator(strings(cut)).isValid()) {
        return cut;
      }
    }
    double grid = Math.scalb(1.0, Math.getExponent(grain));
    return pass(cut, new SnapRoundingNoder(new PrecisionModel(1 / grid)), grain);
  }

  private static List<LineString> pass(List<LineString> lines, Noder noder, double grain) {
    noder.computeNodes(strings(lines));
    Map<Coordinate, Map<Coordinate, LineString>> once = new TreeMap<>();
    for (Object each : noder.getNodedSubstrings()) {
      Coordinate[] c = ((SegmentString) each).getCoordinates();
      for (int i = 0; i + 1 < c.length; i++) {
        Coordinate a = tidy(c[i], grain);
        Coordinate b = tidy(c[i + 1], grain);
        if (!a.equals2D(b)) {
          Coordinate low = a.compareTo(b) < 0 ? a : b;
          Coordinate high = low == a ? b : a;
          once.computeIfAbsent(low, k -> new TreeMap<>()).put(high, stretch(low, high));
        }
      }
    }
    return once.values().stream().flatMap(m -> m.values().stream()).toList();
  }

  private static LineString stretch(Coordinate low, Coordinate high) {
    return Jts.FACTORY.createLineString(new Coordinate[] {low, high});
  }

  private static List<SegmentString> strings(List<LineString> lines) {
    List<SegmentString> strings = new ArrayList<>(lines.size());
    for (LineString line : lines) {
      strings.add(new NodedSegmentString(line.getCoordinates(), null));
    }
    return strings;
  }

  /**
   * Onto a grid far finer than the grain and yet coarser than the rounding of the steps before: 246
   * comes out as 246, not as 245.99999999999994, and zero has one sign, so that equal places are
   * equal keys.
   */
  private static Coordinate tidy(Coordinate place, double grain) {
    double grid = grid(grain);
    return new Coordinate(
        Math.rint(place.x / grid) * grid + 0.0, Math.rint(place.y / grid) * grid + 0.0);
  }

  private static double grid(double grain) {
    return Math.scalb(1.0, Math.getExponent(grain) - GRID_BITS);
  }
}
