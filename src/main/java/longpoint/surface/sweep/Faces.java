package longpoint.surface.sweep;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Chains the arcs around each side into the rings of its face. {@link #ring} is null until then and
 * for steps and for sides that hold no ground.
 */
final class Faces {
  private final Sides sides;
  private final Traces traces;

  /** Node numbers of each given side's face, counter-clockwise from the side's own start. */
  final int[][] ring;

  /** Rings of ground within a face that are other sides', clockwise; null where there are none. */
  final int[][][] holes;

  /** Side whose arcs make no rings that keep apart, or -1. */
  int broken = -1;

  private int[] merged;
  private final int[] start;
  private final int[] arc;

  private Faces(Sides sides, Traces traces) {
    this.sides = sides;
    this.traces = traces;
    this.ring = new int[sides.given][];
    this.holes = new int[sides.given][][];
    this.start = new int[sides.count + 1];
    this.arc = new int[2 * traces.arcs];
  }

  /**
   * @param reach nodes nearer to each other than this, along an arc, are one
   */
  static Faces of(Sides sides, Traces traces, double reach) {
    Faces faces = new Faces(sides, traces);
    faces.mergeNodes(reach);
    faces.sortArcs();
    faces.chainAll();
    return faces;
  }

  private void mergeNodes(double reach) {
    double fastest = sides.fastest();
    merged = new int[traces.nodes];
    for (int i = 0; i < traces.nodes; i++) {
      merged[i] = i;
    }
    for (int i = 0; i < traces.arcs; i++) {
      int a = traces.from[i];
      int b = traces.to[i];
      // Two ends of an upright line stand over one point and stay two.
      if (b >= sides.given
          && Math.abs(traces.x[a] - traces.x[b]) <= reach
          && Math.abs(traces.y[a] - traces.y[b]) <= reach
          && Math.abs(traces.time[a] - traces.time[b]) * fastest <= reach) {
        int ra = find(a);
        int rb = find(b);
        merged[Math.max(ra, rb)] = Math.min(ra, rb);
      }
    }
    for (int i = 0; i < traces.nodes; i++) {
      merged[i] = find(i);
    }
  }

  private int find(int node) {
    int root = node;
    while (merged[root] != root) {
      root = merged[root];
    }
    return root;
  }

  private void sortArcs() {
    for (int i = 0; i < traces.arcs; i++) {
      start[traces.left[i] + 1]++;
      start[traces.right[i] + 1]++;
    }
    for (int i = 0; i < sides.count; i++) {
      start[i + 1] += start[i];
    }
    int[] at = Arrays.copyOf(start, sides.count);
    for (int i = 0; i < traces.arcs; i++) {
      arc[at[traces.left[i]]++] = i;
      // The complement marks an arc that is run backwards.
      arc[at[traces.right[i]]++] = ~i;
    }
  }

  private void chainAll() {
    int[] leaving = new int[traces.nodes];
    int[] owner = new int[traces.nodes];
    Arrays.fill(owner, -1);
    for (int side = 0; side < sides.given && broken < 0; side++) {
      ring[side] = sides.speed[side] == 0 ? null : chain(side, leaving, owner);
    }
  }

  private int tail(int a) {
    return merged[a >= 0 ? traces.from[a] : traces.to[~a]];
  }

  private int head(int a) {
    return merged[a >= 0 ? traces.to[a] : traces.from[~a]];
  }

  private int[] chain(int side, int[] leaving, int[] owner) {
    int open = 0;
    for (int i = start[side]; i < start[side + 1]; i++) {
      int tail = tail(arc[i]);
      if (tail == head(arc[i])) {
        continue;
      }
      if (owner[tail] == side) {
        broken = side;
        return null;
      }
      owner[tail] = side;
      leaving[tail] = arc[i];
      open++;
    }
    int after = sides.next[side] < sides.given ? sides.next[side] : sides.corner[sides.next[side]];
    int[] nodes = follow(side, side, after, open, leaving, owner);
    if (nodes != null && nodes.length < open + 1) {
      holes[side] = holes(side, open + 1 - nodes.length, leaving, owner);
    }
    return nodes;
  }

  /** The ring that starts at one node and goes on to another; its nodes are struck off. */
  private int[] follow(int side, int first, int second, int most, int[] leaving, int[] owner) {
    int[] nodes = new int[most + 1];
    nodes[0] = first;
    int size = 1;
    int node = second;
    while (node != first) {
      if (owner[node] != side || size > most) {
        broken = side;
        return null;
      }
      owner[node] = STRUCK_OFF;
      nodes[size++] = node;
      node = head(leaving[node]);
    }
    return size == nodes.length ? nodes : Arrays.copyOf(nodes, size);
  }

  /** Where a side has swept all round something, what is left of its arcs makes rings as well. */
  private int[][] holes(int side, int arcsLeft, int[] leaving, int[] owner) {
    List<int[]> found = new ArrayList<>();
    int open = arcsLeft;
    for (int i = start[side]; i < start[side + 1] && broken < 0; i++) {
      int first = tail(arc[i]);
      if (owner[first] == side) {
        owner[first] = STRUCK_OFF;
        int[] ring = follow(side, first, head(leaving[first]), open, leaving, owner);
        if (ring != null) {
          found.add(ring);
          open -= ring.length;
        }
      }
    }
    return found.toArray(int[][]::new);
  }

  private static final int STRUCK_OFF = -2;
}
