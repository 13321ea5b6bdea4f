package longpoint.surface;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Remembers the roofs of single parts and of parts joined, so that dragging one part solves again
 * only what depends on it. Safe to share between threads.
 */
public final class RoofMemory {
  /** Enough for the parts of a few large plans; a part's roof is some tens of kilobytes at most. */
  private static final int PARTS = 256;

  /** A joined roof holds a few times as much. */
  private static final int JOINED = 64;

  private final Map<PartSpec, PartRoof> parts = latest(PARTS);
  private final Map<JoinSpec, Optional<JoinedRoof>> joined = latest(JOINED);
  private int solved;
  private int joinings;

  private static <K, V> Map<K, V> latest(int most) {
    return new LinkedHashMap<>(16, 0.75f, true) {
      private static final long serialVersionUID = 1L;

      @Override
      protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
        return size() > most;
      }
    };
  }

  /** How many parts have been worked out, as against remembered. */
  synchronized int solved() {
    return solved;
  }

  /** How many clusters of parts have been joined, as against remembered. */
  synchronized int joinings() {
    return joinings;
  }

  PartRoof solve(PartSpec spec) {
    PartRoof before = known(parts, spec);
    if (before != null) {
      return before;
    }
    PartRoof roof = PartSolver.solve(spec);
    synchronized (this) {
      parts.put(spec, roof);
      solved++;
    }
    return roof;
  }

  /**
   * The roofs of some parts, joined.
   *
   * @param roofs of the spec's parts, measured from its origin; asked for when it is not known
   */
  Optional<JoinedRoof> join(JoinSpec spec, Supplier<List<PartRoof>> roofs) {
    Optional<JoinedRoof> before = known(joined, spec);
    if (before != null) {
      return before;
    }
    Optional<JoinedRoof> roof = JoinedRoof.of(spec, roofs.get());
    synchronized (this) {
      joined.put(spec, roof);
      joinings++;
    }
    return roof;
  }

  private synchronized <K, V> V known(Map<K, V> among, K spec) {
    return among.get(spec);
  }
}
