package longpoint.surface.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every outline without holes has an ear until a triangle is left (G. H. Meisters, "Polygons have
 * ears", American Mathematical Monthly 82, 1975; from memory). An ear's triangle holds no other
 * corner, and all of them together cover the ground once.
 */
class LargeHoleTest {
  @ParameterizedTest
  @ValueSource(strings = {"b_star_1000", "b_blob_1000"})
  void cutsEveryCornerOffAsAnEar(String name) {
    Outline outline =
        Outline.even(Path.of("src/test/resources/longpoint/surface/sweep", name + ".poly"));
    Sides sides = Sides.of(outline.rings(), outline.speeds());
    Front front = new Front(sides, new Traces(sides));
    int n = sides.count;
    int[] ring = new int[n];
    for (int i = 1; i < n; i++) {
      ring[i] = sides.next[ring[i - 1]];
    }
    double ground = 0;
    for (int i = 1; i + 1 < n; i++) {
      ground += area(sides, ring[0], ring[i], ring[i + 1]);
    }
    TileClock clock = new TileClock(front, new Tiles(8), 1e-10 * sides.diagonal);
    LargeHole hole = new LargeHole(front, clock, 0, ring, n);
    for (int i = 0; i < n; i++) {
      offer(hole, sides, ring, i);
    }
    double cut = 0;
    while (hole.size() > 3) {
      int ear = hole.ear();
      assertTrue(ear >= 0, "no ear among " + hole.size() + " corners");
      int p = hole.before(ear);
      int q = hole.after(ear);
      double area = area(sides, ring[p], ring[ear], ring[q]);
      assertTrue(area > 0);
      cut += area;
      for (int i = hole.after(q); i != p; i = hole.after(i)) {
        boolean within =
            area(sides, ring[p], ring[ear], ring[i]) > 0
                && area(sides, ring[ear], ring[q], ring[i]) > 0
                && area(sides, ring[q], ring[p], ring[i]) > 0;
        assertTrue(!within, "corner " + ring[i] + " lies in the ear at " + ring[ear]);
      }
      hole.cut(ear);
      offer(hole, sides, ring, p);
      offer(hole, sides, ring, q);
    }
    int last = hole.ear();
    cut += area(sides, ring[hole.before(last)], ring[last], ring[hole.after(last)]);
    assertEquals(ground, cut, 1e-9 * ground);
  }

  private static void offer(LargeHole hole, Sides sides, int[] ring, int i) {
    hole.offer(i, area(sides, ring[hole.before(i)], ring[i], ring[hole.after(i)]));
  }

  /** Twice the area of a triangle, positive counter-clockwise. */
  private static double area(Sides sides, int a, int b, int c) {
    return (sides.x[b] - sides.x[a]) * (sides.y[c] - sides.y[a])
        - (sides.y[b] - sides.y[a]) * (sides.x[c] - sides.x[a]);
  }
}
