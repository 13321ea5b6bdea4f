package longpoint.framing.stick;

import java.util.List;
import java.util.Optional;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.surface.LineKind;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;
import longpoint.wording.Phrase;

/**
 * Rafters read off the roof of a part that is laid over another's deck, as those of an octagon bay
 * over a house: no valley rafter stands between the two, for the roof beneath is whole. Jacks stand
 * on its deck and the ridge is cut along it.
 */
final class OnDeck {
  private final RoofSurface surface;
  private final Part upper;
  private final Part lower;
  private final double near;

  private OnDeck(RoofSurface surface, Part upper, Part lower, double near) {
    this.surface = surface;
    this.upper = upper;
    this.lower = lower;
    this.near = near;
  }

  /**
   * @param irregular parts whose rafters are read off the roof
   * @param sticks of those parts
   * @param problems told where such a part is to be framed through, which nothing here does
   * @param near how close an end lies to a line that it meets
   */
  static List<Stick> stand(
      Plan plan,
      List<Part> irregular,
      RoofSurface surface,
      List<Stick> sticks,
      List<Problem> problems,
      double near) {
    List<Stick> standing = sticks;
    for (Join join : plan.joins()) {
      Optional<Part> upper =
          irregular.stream().filter(p -> p.id().equals(join.upper())).findFirst();
      Optional<Part> lower = plan.part(join.lower());
      if (upper.isPresent() && lower.isPresent() && !join.upper().equals(join.lower())) {
        OnDeck over = new OnDeck(surface, upper.get(), lower.get(), near);
        if (over.lines().isEmpty()) {
          continue;
        }
        if (join.method() == Join.Method.OVERLAY) {
          standing = standing.stream().flatMap(s -> over.stand(s).stream()).toList();
        } else {
          problems.add(
              Problem.warning(
                  join.upper(),
                  Phrase.of(
                      "framing.join.irregular",
                      PlaceName.of(upper.get()),
                      PlaceName.of(lower.get()))));
        }
      }
    }
    return standing;
  }

  /** Valleys between the two roofs. */
  private List<RoofLine> lines() {
    return surface.lines().stream()
        .filter(l -> l.kind() == LineKind.VALLEY && l.run() > near)
        .filter(l -> plane(l, upper).isPresent() && plane(l, lower).isPresent())
        .toList();
  }

  private Optional<RoofPlane> plane(RoofLine line, Part part) {
    return line.planes().stream()
        .flatMap(id -> surface.plane(id).stream())
        .filter(p -> p.part().equals(part.id()))
        .findFirst();
  }

  private Optional<RoofLine> at(Point p) {
    return lines().stream()
        .filter(l -> new Segment(l.from().plan(), l.to().plan()).distance(p) < near)
        .findFirst();
  }

  private Plane frame(RoofLine line) {
    return plane(line, lower).orElseThrow().plane();
  }

  /** Plumb, through the deck that lies on a frame plane. */
  private double through(Plane frame) {
    return lower.deck().thickness() * frame.areaFactor();
  }

  private List<Stick> stand(Stick s) {
    if (!s.part().equals(upper.id())) {
      return List.of(s);
    }
    Optional<RoofLine> foot = at(s.foot());
    return switch (s.kind()) {
      case VALLEY ->
          foot.isPresent() && at(s.inPlan().middle()).isPresent() ? List.of() : List.of(s);
      case VALLEY_JACK, CRIPPLE -> foot.map(l -> jack(s, frame(l))).orElse(List.of(s));
      case RIDGE -> List.of(ridge(s));
      case COMMON, HIP, HIP_JACK, TRIMMER, HEADER -> List.of(s);
    };
  }

  /** Up the slope to where it comes out of the deck. */
  private List<Stick> jack(Stick s, Plane frame) {
    Point up = s.up().unit();
    double closing = s.slope() - (frame.a() * up.x() + frame.b() * up.y());
    double on = closing > 0 ? through(frame) / closing : 0;
    if (on >= s.line().run()) {
      return List.of();
    }
    return List.of(
        s.between(s.foot().plus(up.times(on)), s.head())
            .withFoot(Joint.onDeck(frame.raised(through(frame)), s.up(), s.slope())));
  }

  /** Level, back to where the deck comes up to it, and cut along that. */
  private Stick ridge(Stick s) {
    for (boolean head : new boolean[] {true, false}) {
      Point end = head ? s.head() : s.foot();
      Point out = head ? s.up().unit() : s.up().unit().times(-1);
      Optional<Plane> frame =
          lines().stream()
              .filter(l -> l.to().plan().distance(end) < near)
              .map(this::frame)
              .filter(f -> f.a() * out.x() + f.b() * out.y() > 0)
              .findFirst();
      if (frame.isPresent()) {
        double climb = frame.get().a() * out.x() + frame.get().b() * out.y();
        double back = through(frame.get()) / climb;
        if (back < s.line().run()) {
          Point to = end.minus(out.times(back));
          Joint deck = Joint.square(Bearing.DECK, 0);
          return head
              ? s.between(s.foot(), to).withHead(deck)
              : s.between(to, s.head()).withFoot(deck);
        }
      }
    }
    return s;
  }
}
