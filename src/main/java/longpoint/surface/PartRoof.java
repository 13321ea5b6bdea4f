package longpoint.surface;

import java.util.List;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * One part's roof as if nothing else stood near.
 *
 * @param sides of the part, walls about the same origin as the pieces
 * @param runOn how far open sides were moved out
 * @param pieces ground of every plane, on the part's own ground and beyond its open sides
 * @param own the ground within the part's own roof outline
 * @param walls the ground within its walls
 * @param crowded whether overhangs of this part reach over one another
 * @param problems found on the way
 */
record PartRoof(
    String part,
    List<Side> sides,
    double runOn,
    List<Piece> pieces,
    Geometry own,
    Geometry walls,
    boolean crowded,
    List<Problem> problems) {
  PartRoof {
    sides = List.copyOf(sides);
    pieces = List.copyOf(pieces);
    problems = List.copyOf(problems);
  }

  boolean solved() {
    return !pieces.isEmpty();
  }

  PartRoof moved(double dx, double dy) {
    AffineTransformation move = AffineTransformation.translationInstance(dx, dy);
    return new PartRoof(
        part,
        sides.stream().map(s -> Sides.moved(s, dx, dy)).toList(),
        runOn,
        pieces.stream().map(p -> p.moved(dx, dy)).toList(),
        move.transform(own),
        move.transform(walls),
        crowded,
        problems);
  }
}
