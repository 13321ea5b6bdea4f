package longpoint.framing.truss;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import longpoint.framing.Shop;
import longpoint.geometry.Point;

/**
 * Splits a truss that is too tall to haul into a base with a flat top and a cap that stands on it.
 * The base's flat is held down by the thickness of the flat purlins between the two. All bases of a
 * run are cut at one level, so that the purlins run straight; a level that would leave a cap of no
 * height worth making is lowered.
 *
 * @param haul tallest piece, base and purlin together
 * @param purlin thickness of the purlins laid flat on the base
 */
record TallTruss(double haul, double purlin) {
  /**
   * @param trusses of one run
   * @param asked tallest piece as the user wants it
   */
  static TallTruss over(List<Placed> trusses, Optional<Double> asked, Shop shop) {
    double most = asked.orElse(shop.haul());
    List<Double> heights =
        trusses.stream()
            .filter(t -> t.kind().squareToRidge())
            .map(t -> t.profile().height())
            .distinct()
            .toList();
    List<Double> levels = new ArrayList<>(List.of(most));
    levels.addAll(heights);
    heights.forEach(h -> levels.add((h - shop.cap()) / pieces(h - shop.cap(), most)));
    Comparator<Double> taller = Comparator.comparingDouble(l -> leastCap(heights, l, shop.cap()));
    double level =
        levels.stream()
            .filter(l -> l > most / 2 && l <= most)
            .max(taller.thenComparing(Comparator.naturalOrder()))
            .orElse(most);
    return new TallTruss(level, shop.flat());
  }

  private static double pieces(double height, double level) {
    return Math.max(1, Math.ceil(height / level * (1 - SAME)));
  }

  /** Height of the lowest cap when all are cut at a level, no more than is asked of one. */
  private static double leastCap(List<Double> heights, double level, double enough) {
    return heights.stream()
        .filter(h -> h > level * (1 + SAME))
        .mapToDouble(h -> h - (pieces(h, level) - 1) * level)
        .map(cap -> cap > enough * (1 - SAME) ? enough : cap)
        .min()
        .orElse(enough);
  }

  /** Rounding of sums; a billionth of a truss is nothing to a crew. */
  private static final double SAME = 1e-9;

  /**
   * @return the truss itself if it is low enough or not square to the ridge, else base and cap
   */
  List<Placed> split(Placed truss) {
    if (!truss.kind().squareToRidge()) {
      return List.of(truss);
    }
    Profile whole = truss.profile();
    double lowest = Math.max(whole.heelLow(), whole.heelHigh()) + purlin;
    if (whole.height() <= haul * (1 + SAME) || haul <= lowest) {
      return List.of(truss);
    }
    List<Placed> pieces = new ArrayList<>();
    pieces.add(
        new Placed(
            truss.kind().hasStuds() ? TrussKind.GABLE_BASE : TrussKind.BASE,
            truss.plies(),
            truss.run(),
            truss.station(),
            truss.from(),
            truss.to(),
            truss.plate(),
            new Profile(whole.span(), below(whole.top(), haul - purlin), whole.bottom()),
            truss.carriedFrom(),
            truss.carriedTo()));
    pieces.addAll(split(cap(truss, haul)));
    return pieces;
  }

  private static Placed cap(Placed truss, double height) {
    List<Point> above = above(truss.profile().top(), height);
    double start = above.get(0).x();
    double span = above.get(above.size() - 1).x() - start;
    double whole = truss.profile().span();
    return new Placed(
        truss.kind().hasStuds() ? TrussKind.GABLE_CAP : TrussKind.CAP,
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
