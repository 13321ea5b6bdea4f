package longpoint.framing.truss;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.geometry.Point;

/**
 * Splits a truss that is too tall to haul into a base with a flat top and a cap that stands on it.
 * The base's flat is held down by the thickness of the flat purlins between the two.
 */
final class TallTruss {
  private TallTruss() {}

  /**
   * @param haul tallest piece, base and purlin together
   * @param purlin thickness of the purlins laid flat on the base
   * @return the truss itself if it is low enough, else base and cap
   */
  static List<Placed> split(Placed truss, double haul, double purlin) {
    Profile whole = truss.profile();
    double lowest = Math.max(whole.heelLow(), whole.heelHigh()) + purlin;
    if (whole.height() <= haul || haul <= lowest) {
      return List.of(truss);
    }
    List<Placed> pieces = new ArrayList<>();
    pieces.add(
        new Placed(
            TrussKind.BASE,
            truss.plies(),
            truss.run(),
            truss.station(),
            truss.from(),
            truss.to(),
            truss.plate(),
            new Profile(whole.span(), below(whole.top(), haul - purlin), whole.bottom()),
            truss.carriedFrom(),
            truss.carriedTo()));
    pieces.addAll(split(cap(truss, haul), haul, purlin));
    return pieces;
  }

  private static Placed cap(Placed truss, double height) {
    List<Point> above = above(truss.profile().top(), height);
    double start = above.get(0).x();
    double span = above.get(above.size() - 1).x() - start;
    double whole = truss.profile().span();
    return new Placed(
        TrussKind.CAP,
        truss.plies(),
        truss.run(),
        truss.station(),
        truss.from().toward(truss.to(), start / whole),
        truss.from().toward(truss.to(), (start + span) / whole),
        truss.plate() + height,
        Profile.level(
            span, above.stream().map(p -> new Point(p.x() - start, p.y() - height)).toList()),
        Optional.empty(),
        Optional.empty());
  }

  /** The top edge cut off level. */
  private static List<Point> below(List<Point> top, double z) {
    return clip(top, z, -1);
  }

  /** What stands above a level cut. */
  private static List<Point> above(List<Point> top, double z) {
    return clip(top, z, 1);
  }

  /** Corners on one side of a level, 1 above or −1 below, and the places where the edge crosses. */
  private static List<Point> clip(List<Point> top, double z, int side) {
    List<Point> kept = new ArrayList<>();
    for (int i = 0; i < top.size(); i++) {
      Point p = top.get(i);
      if (i > 0) {
        Point before = top.get(i - 1);
        if ((before.y() - z) * (p.y() - z) < 0) {
          kept.add(before.toward(p, (z - before.y()) / (p.y() - before.y())));
        }
      }
      if ((p.y() - z) * side >= 0) {
        kept.add(p);
      }
    }
    return kept;
  }
}
