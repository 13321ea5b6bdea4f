package longpoint.framing.truss;

import java.util.ArrayList;
import java.util.List;
import longpoint.framing.Shop;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/**
 * Chords and webs of a truss as an aid to the eye: shape only, not engineered. A king post up to 16
 * ft, above that the W of the older manuals, whose top chords are met at their quarter points and
 * whose bottom chord in thirds (US Navy NAVEDTRA 14044 vol. 2), and a fan over long spans.
 *
 * @param chords top and bottom edges
 * @param webs everything between them
 */
public record TrussShape(List<Segment> chords, List<Segment> webs) {
  /** Printed beside every drawing of one. */
  public static final String CAUTION = "Shape only, not engineered";

  /** The manual's W goes up to 32 ft; that is twice its king post. */
  private static final double FAN = 2;

  public TrussShape {
    chords = List.copyOf(chords);
    webs = List.copyOf(webs);
  }

  public static TrussShape of(
      TrussKind kind, Profile profile, double studs, double from, Shop shop) {
    List<Segment> webs =
        switch (kind) {
          case GABLE_END, DROPPED_GABLE_END, GABLE_BASE, GABLE_CAP -> studs(profile, studs, from);
          case JACK, CORNER_JACK, HIP_JACK -> List.of();
          default -> webs(profile, shop);
        };
    List<Segment> chords = new ArrayList<>(edges(profile.top()));
    chords.addAll(edges(profile.bottom()));
    return new TrussShape(chords, webs);
  }

  /** Total length of everything drawn. */
  public double lumber() {
    double sum = 0;
    for (Segment s : chords) {
      sum += s.length();
    }
    for (Segment s : webs) {
      sum += s.length();
    }
    return sum;
  }

  private static List<Segment> edges(List<Point> line) {
    List<Segment> edges = new ArrayList<>(line.size() - 1);
    for (int i = 0; i + 1 < line.size(); i++) {
      edges.add(new Segment(line.get(i), line.get(i + 1)));
    }
    return edges;
  }

  private static List<Segment> studs(Profile p, double spacing, double from) {
    List<Segment> webs = new ArrayList<>();
    for (long k = (long) Math.floor(from / spacing) + 1; k * spacing - from < p.span(); k++) {
      webs.add(post(p, k * spacing - from));
    }
    return webs;
  }

  private static List<Segment> webs(Profile p, Shop shop) {
    double peak = peak(p);
    boolean oneSided = peak <= 0 || peak >= p.span() || p.top().size() != 3;
    if (oneSided) {
      return panels(p, shop);
    }
    if (p.span() <= shop.kingPost()) {
      return List.of(post(p, peak));
    }
    List<Segment> webs = new ArrayList<>();
    boolean fan = p.span() > FAN * shop.kingPost();
    for (double side : new double[] {0, p.span()}) {
      double third = side + (p.span() / 2 - side) * (2.0 / 3);
      if (fan) {
        webs.add(web(p, side + (peak - side) / 3, third));
        webs.add(web(p, side + (peak - side) * (2.0 / 3), third));
      } else {
        webs.add(web(p, (side + peak) / 2, third));
      }
      webs.add(web(p, peak, third));
    }
    return webs;
  }

  /** Posts under every corner of the top edge and at even steps between, with diagonals. */
  private static List<Segment> panels(Profile p, Shop shop) {
    List<Double> posts = posts(p, shop.kingPost() / 2);
    List<Segment> webs = new ArrayList<>();
    for (int i = 0; i + 1 < posts.size(); i++) {
      double a = posts.get(i);
      double b = posts.get(i + 1);
      double low = p.topAt(a) <= p.topAt(b) ? a : b;
      double high = low == a ? b : a;
      if (i > 0) {
        webs.add(post(p, a));
      }
      boolean slender = p.topAt(low) < p.topAt(high) / 2;
      if (!slender || (low > 0 && low < p.span())) {
        // From a low heel a diagonal would only run along the chord.
        webs.add(web(p, high, low));
      }
    }
    return webs;
  }

  /** Both bearings, the corners between them, and even steps no longer than a panel. */
  private static List<Double> posts(Profile p, double panel) {
    List<Double> fixed = new ArrayList<>();
    fixed.add(0.0);
    p.top().stream().map(Point::x).filter(v -> v > 0 && v < p.span()).forEach(fixed::add);
    fixed.add(p.span());
    List<Double> posts = new ArrayList<>();
    for (int i = 0; i + 1 < fixed.size(); i++) {
      double length = fixed.get(i + 1) - fixed.get(i);
      int steps = (int) Math.max(1, Math.ceil(length / panel));
      for (int k = 0; k < steps; k++) {
        posts.add(fixed.get(i) + length * k / steps);
      }
    }
    posts.add(p.span());
    return posts;
  }

  private static double peak(Profile p) {
    Point high = p.top().get(0);
    for (Point q : p.top()) {
      high = q.y() > high.y() ? q : high;
    }
    return high.x();
  }

  private static Segment post(Profile p, double v) {
    return web(p, v, v);
  }

  /** From the top edge at one place to the bottom edge at another. */
  private static Segment web(Profile p, double topV, double bottomV) {
    return new Segment(new Point(topV, p.topAt(topV)), new Point(bottomV, p.bottomAt(bottomV)));
  }
}
