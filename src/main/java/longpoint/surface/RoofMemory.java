package longpoint.surface;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Remembers the roofs of single parts, so that dragging one part does not solve the others again.
 * Safe to share between threads.
 */
public final class RoofMemory {
  /** Enough for the parts of a few large plans; a part's roof is some tens of kilobytes at most. */
  private static final int PARTS = 256;

  private final Map<PartSpec, PartRoof> known =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<PartSpec, PartRoof> eldest) {
          return size() > PARTS;
        }
      };

  private int solved;

  /** How many parts have been worked out, as against remembered. */
  int solved() {
    synchronized (known) {
      return solved;
    }
  }

  PartRoof solve(PartSpec spec) {
    synchronized (known) {
      PartRoof before = known.get(spec);
      if (before != null) {
        return before;
      }
    }
    PartRoof roof = PartSolver.solve(spec);
    synchronized (known) {
      known.put(spec, roof);
      solved++;
    }
    return roof;
  }
}
