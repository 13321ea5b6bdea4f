package longpoint.surface.sweep;

import java.util.Arrays;

/**
 * Compares the two engines on random outlines and prints a tally.
 *
 * <p>Arguments: how many outlines (200000 if left out) and the seed (1).
 */
public final class EnginesAgreeMain {
  private static final double SHARE = 1e-10;
  private static final double AGREE = 1e-9;

  private EnginesAgreeMain() {}

  /**
   * @param same both solved it, with nodes at the same places and times
   * @param different both solved it, but not alike
   * @param tilesGaveUp only the whole front solved it
   * @param wholeGaveUp only the tiles solved it
   * @param neither nobody solved it: a plane round a courtyard, or ground no eave reaches
   */
  record Tally(int same, int different, int tilesGaveUp, int wholeGaveUp, int neither) {}

  public static void main(String[] args) {
    int outlines = args.length > 0 ? Integer.parseInt(args[0]) : 200_000;
    long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
    System.out.println(run(outlines, seed));
  }

  static Tally run(int outlines, long seed) {
    RandomOutlines random = new RandomOutlines(seed);
    int[] counts = new int[5];
    for (int i = 0; i < outlines; i++) {
      Outline outline = random.next();
      Sides sides = Sides.of(outline.rings(), outline.speeds());
      Sweep.Attempt whole = Sweep.whole(sides, SHARE);
      Sweep.Attempt tiled = Sweep.tiled(sides, SHARE);
      boolean wholeDone = whole.wrong() < 0;
      boolean tiledDone = tiled.wrong() < 0;
      if (wholeDone && tiledDone) {
        boolean same = sameNodes(whole.traces(), tiled.traces());
        counts[same ? 0 : 1]++;
        if (!same) {
          System.out.println("different: " + outline);
        }
      } else {
        counts[wholeDone ? 2 : tiledDone ? 3 : 4]++;
      }
    }
    return new Tally(counts[0], counts[1], counts[2], counts[3], counts[4]);
  }

  private static boolean sameNodes(Traces a, Traces b) {
    if (a.nodes != b.nodes) {
      return false;
    }
    double[][] pairs = {a.time, b.time, a.x, b.x, a.y, b.y};
    for (int i = 0; i < pairs.length; i += 2) {
      double[] p = Arrays.copyOf(pairs[i], a.nodes);
      double[] q = Arrays.copyOf(pairs[i + 1], a.nodes);
      Arrays.sort(p);
      Arrays.sort(q);
      for (int k = 0; k < p.length; k++) {
        if (Math.abs(p[k] - q[k]) > AGREE) {
          return false;
        }
      }
    }
    return true;
  }
}
