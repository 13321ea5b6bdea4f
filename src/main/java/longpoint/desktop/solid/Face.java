package longpoint.desktop.solid;

import java.util.List;
import longpoint.geometry.Point3;

/**
 * A flat piece of the house's outside.
 *
 * @param rings its outer edge and its holes, all in one plane; each of three corners or more
 * @param kind what it is made of
 */
record Face(List<List<Point3>> rings, Kind kind) {
  /** What a face is made of. */
  enum Kind {
    ROOF,
    WALL
  }

  Face {
    rings = rings.stream().map(List::copyOf).toList();
  }
}
