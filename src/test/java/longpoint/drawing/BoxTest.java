package longpoint.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import longpoint.geometry.Jts;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import org.junit.jupiter.api.Test;

class BoxTest {
  /** JTS is the reference: two boxes overlap when their polygons share area. */
  @Test
  void overlapAgreesWithPolygonIntersection() {
    Random random = new Random(20);
    int overlapping = 0;
    for (int i = 0; i < 2000; i++) {
      Box a = box(random);
      Box b = box(random);
      double shared = polygon(a).intersection(polygon(b)).getArea();
      if (shared > 1e-9) {
        overlapping++;
        assertThat(a.overlaps(b)).as("%s %s", a, b).isTrue();
      } else if (polygon(a).distance(polygon(b)) > 1e-9) {
        assertThat(a.overlaps(b)).as("%s %s", a, b).isFalse();
      }
      assertThat(b.overlaps(a)).isEqualTo(a.overlaps(b));
    }
    assertThat(overlapping).isBetween(200, 1800);
  }

  @Test
  void touchingIsNotOverlapping() {
    Box left = new Box(new Point(0, 0), new Point(1, 0), 1, 1);
    Box right = new Box(new Point(2, 0), new Point(1, 0), 1, 1);
    assertThat(left.overlaps(right)).isFalse();
  }

  private static Box box(Random random) {
    double angle = random.nextDouble() * 7;
    return new Box(
        new Point(random.nextDouble() * 10, random.nextDouble() * 10),
        new Point(Math.cos(angle), Math.sin(angle)),
        random.nextDouble() * 5,
        random.nextDouble() * 2);
  }

  private static org.locationtech.jts.geom.Polygon polygon(Box box) {
    return Jts.polygon(new Ring(box.corners()));
  }
}
