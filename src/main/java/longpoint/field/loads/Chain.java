package longpoint.field.loads;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import longpoint.field.loads.BearingLoad.On;
import longpoint.geometry.Overlay;
import longpoint.geometry.Patch;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.stop.CalledOff;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;

/**
 * From planes to members, from members to what carries them, to walls. A truss is a beam on two
 * bearings; a gable end stands on its wall all along; a valley set, and a rafter's foot on a deck,
 * press straight down on the members beneath.
 */
final class Chain {
  /** A load is taken to lie no farther past an end than the member is long. */
  private static final double FARTHEST = 2;

  /** What has come to a member so far. */
  private static final class Borne {
    final Member member;
    double groundFirst;
    double groundLast;
    Amount first = Amount.NONE;
    Amount last = Amount.NONE;
    int carries;

    Borne(Member member) {
      this.member = member;
    }

    /** Share of the length from the first bearing. */
    double share(Point at) {
      double length = member.axis().length();
      return member.direction().dot(at.minus(member.axis().from())) / length;
    }

    void load(Point at, Amount amount) {
      double share = Math.max(1 - FARTHEST, Math.min(FARTHEST, share(at)));
      first = first.plus(amount.times(1 - share));
      last = last.plus(amount.times(share));
    }

    void ground(Point at, double area) {
      if (share(at) < 0.5) {
        groundFirst += area;
      } else {
        groundLast += area;
      }
    }
  }

  /** Deeper stacks of roofs on roofs than anybody builds. */
  private static final int DEEPEST = 12;

  private final Plan plan;
  private final RoofSurface surface;
  private final List<Member> members;
  private final Map<String, List<Member>> ofPart = new HashMap<>();
  private final Map<String, Borne> borne = new LinkedHashMap<>();
  private final List<BearingLoad> bearings = new ArrayList<>();
  private final List<Hung> hung = new ArrayList<>();
  private final Set<String> handed = new HashSet<>();

  /**
   * One member's end on another member.
   *
   * @param by id of the member that carries it
   * @param along place on that, from its first bearing
   * @param area ground nearer to this end
   */
  record Hung(Member member, String by, double along, double area, Amount reaction) {}

  private Chain(Plan plan, RoofSurface surface, List<Member> members) {
    this.plan = plan;
    this.surface = surface;
    this.members = members;
    for (Member m : members) {
      ofPart.computeIfAbsent(m.part(), p -> new ArrayList<>()).add(m);
      borne.put(m.id(), new Borne(m));
    }
  }

  /** Where everything ends up: the roof's ground tiles over them, their loads add up to its. */
  static Chain of(Plan plan, RoofSurface surface, List<Member> members) {
    Chain chain = new Chain(plan, surface, members);
    for (RoofPlane plane : surface.planes()) {
      CalledOff.check();
      chain.roof(plane);
    }
    plan.parts().forEach(chain::ceiling);
    chain.passOn();
    return chain;
  }

  List<BearingLoad> bearings() {
    return bearings;
  }

  /** In the order they were handed on. */
  List<Hung> hung() {
    return hung;
  }

  /** All that a member carries, hung trusses included. */
  Amount total(String member) {
    Borne b = borne.get(member);
    return b.first.plus(b.last);
  }

  /** Ground nearest to a member and to what hangs on it. */
  double ground(String member) {
    Borne b = borne.get(member);
    return b.groundFirst + b.groundLast;
  }

  private void roof(RoofPlane plane) {
    List<Region> top = new ArrayList<>(plane.visible());
    top.addAll(plane.sheltered());
    double factor = plane.plane().areaFactor();
    Patch ground = Patch.of(top);
    out(plane, ground, new Sink(plane.part(), 0, a -> new Amount(a, a * factor, 0), true));
  }

  /**
   * What hangs between the walls of a part: under its own planes, and where another part's roof is
   * framed through into it, on the members that run on there.
   */
  private void ceiling(Part part) {
    if (part.outline().area() == 0) {
      return;
    }
    List<Region> walls = List.of(part.region());
    List<Region> rest = walls;
    for (RoofPlane plane : surface.planes()) {
      if (plane.part().equals(part.id())) {
        CalledOff.check();
        List<Region> own = new ArrayList<>(plane.visible());
        own.addAll(plane.covered());
        Patch inside = Patch.of(Overlay.common(own, walls));
        out(plane, inside, new Sink(part.id(), 0, a -> new Amount(0, 0, a), false));
        rest = Overlay.minus(rest, own);
      }
    }
    Patch left = Patch.of(rest);
    if (left.isEmpty() || left.area() <= 1e-9 * part.outline().area()) {
      return;
    }
    Point middle = left.centre();
    List<Member> own = ofPart.getOrDefault(part.id(), List.of());
    Sink sink = new Sink(part.id(), 0, a -> new Amount(0, 0, a), false);
    own.stream()
        .filter(m -> m.way() == Member.Way.SPANS && m.lie() == Member.Lie.UP_THE_SLOPE)
        .min(Comparator.comparingDouble(m -> m.axis().distance(middle)))
        .ifPresentOrElse(
            m -> Spread.out(left, m.direction(), own, part.frame().spacing(), sink),
            () -> sink.nobody(left));
  }

  private void out(RoofPlane plane, Patch ground, Sink sink) {
    Point up = new Point(plane.plane().a(), plane.plane().b());
    if (ground.isEmpty() || !(up.length() > 0)) {
      if (!ground.isEmpty()) {
        sink.nobody(ground);
      }
      return;
    }
    double spacing = plan.part(plane.part()).orElseThrow().frame().spacing();
    Spread.out(ground, up.unit(), ofPart.getOrDefault(plane.part(), List.of()), spacing, sink);
  }

  /** Puts what one plane brings to its members, or through them to those beneath. */
  private final class Sink implements Spread.Taker {
    private final String part;
    private final int depth;
    private final DoubleFunction<Amount> amount;
    private final boolean tiles;

    Sink(String part, int depth, DoubleFunction<Amount> amount, boolean tiles) {
      this.part = part;
      this.depth = depth;
      this.amount = amount;
      this.tiles = tiles;
    }

    @Override
    public void ground(Member member, Patch patch) {
      if (!tiles) {
        return;
      }
      if (member.way() == Member.Way.THROUGH) {
        beneath(patch.centre(), member.plane(), depth)
            .ifPresentOrElse(
                b -> b.ground(patch.centre(), patch.area()),
                () ->
                    stray(
                        surface.plane(member.plane()).map(RoofPlane::part).orElse(member.part()),
                        patch.centre(),
                        patch.area(),
                        Amount.NONE));
        return;
      }
      // Parted half way along, so that each end has the ground nearer to it.
      Borne b = borne.get(member.id());
      Point way = member.direction();
      double half = way.dot(member.axis().middle());
      b.groundFirst += patch.within(way, half).area();
      b.groundLast += patch.within(way.times(-1), -half).area();
    }

    @Override
    public void load(Member member, Point at, double ground) {
      if (member.way() == Member.Way.THROUGH) {
        drop(member.plane(), member.part(), at, amount.apply(ground), depth);
      } else {
        borne.get(member.id()).load(at, amount.apply(ground));
      }
    }

    @Override
    public void nobody(Patch patch) {
      double area = patch.area();
      if (area > 0) {
        stray(part, patch.centre(), tiles ? area : 0, amount.apply(area));
      }
    }
  }

  private void stray(String part, Point at, double area, Amount amount) {
    bearings.add(new BearingLoad("", "", On.NOT_FRAMED, part, at, area, amount, 0));
  }

  /** Members under a place of a plane, those beside it at its height up the slope. */
  private List<Member> under(Point at, String plane, int depth) {
    Optional<RoofPlane> lower = surface.plane(plane);
    if (lower.isEmpty() || depth > DEEPEST) {
      return List.of();
    }
    Point up = new Point(lower.get().plane().a(), lower.get().plane().b());
    if (!(up.length() > 0)) {
      return List.of();
    }
    Point way = up.unit();
    Point over = way.left();
    double v = way.dot(at);
    double least = Double.POSITIVE_INFINITY;
    List<Member> beside = new ArrayList<>();
    for (Member m : ofPart.getOrDefault(lower.get().part(), List.of())) {
      boolean parallel = Math.abs(m.direction().cross(way)) < 1e-6;
      if (parallel && m.way() != Member.Way.THROUGH) {
        double a = way.dot(m.reach().from());
        double b = way.dot(m.reach().to());
        double off = Math.max(0, Math.max(Math.min(a, b) - v, v - Math.max(a, b)));
        if (off < least) {
          beside.clear();
          least = off;
        }
        if (off == least) {
          beside.add(m);
        }
      }
    }
    if (beside.isEmpty()) {
      ofPart.getOrDefault(lower.get().part(), List.of()).stream()
          .filter(m -> m.way() != Member.Way.THROUGH)
          .min(Comparator.comparingDouble(m -> m.axis().distance(at)))
          .ifPresent(beside::add);
    }
    beside.sort(Comparator.comparingDouble(m -> over.dot(m.axis().from())));
    return beside;
  }

  private Optional<Borne> beneath(Point at, String plane, int depth) {
    return under(at, plane, depth).stream()
        .min(Comparator.comparingDouble(m -> m.reach().distance(at)))
        .map(m -> borne.get(m.id()));
  }

  /** Straight down on the two members beside the place, by the rule of the lever. */
  private void drop(String plane, String from, Point at, Amount amount, int depth) {
    List<Member> beside = under(at, plane, depth);
    if (beside.isEmpty()) {
      String part = surface.plane(plane).map(RoofPlane::part).orElse(from);
      stray(part, at, 0, amount);
      return;
    }
    if (beside.size() == 1) {
      borne.get(beside.get(0).id()).load(at, amount);
      return;
    }
    Point across = beside.get(0).direction().left();
    if (across.dot(beside.get(1).axis().from()) < across.dot(beside.get(0).axis().from())) {
      across = across.times(-1);
    }
    double u = across.dot(at);
    int i = 0;
    while (i + 2 < beside.size() && across.dot(beside.get(i + 1).axis().from()) < u) {
      i++;
    }
    Member a = beside.get(i);
    Member b = beside.get(i + 1);
    double ua = across.dot(a.axis().from());
    double ub = across.dot(b.axis().from());
    double share = ub > ua ? Math.max(-1, Math.min(2, (u - ua) / (ub - ua))) : 0;
    borne.get(a.id()).load(at.plus(across.times(ua - u)), amount.times(1 - share));
    borne.get(b.id()).load(at.plus(across.times(ub - u)), amount.times(share));
  }

  /** Hung members before those that carry them. */
  private void passOn() {
    Map<String, Integer> waiting = new HashMap<>();
    for (Member m : members) {
      for (Member.End end : List.of(m.first(), m.last())) {
        end.by().ifPresent(by -> waiting.merge(by, 1, Integer::sum));
      }
    }
    List<Member> ready = new ArrayList<>();
    members.stream()
        .filter(m -> !waiting.containsKey(m.id()))
        .sorted(Comparator.comparingInt(m -> standsOnRoof(m) ? 0 : 1))
        .forEach(ready::add);
    List<Member> done = new ArrayList<>();
    for (int i = 0; i < ready.size(); i++) {
      Member m = ready.get(i);
      done.add(m);
      hand(m);
      for (Member.End end : List.of(m.first(), m.last())) {
        if (end.by().isPresent() && waiting.merge(end.by().get(), -1, Integer::sum) == 0) {
          ready.add(borne.get(end.by().get()).member);
        }
      }
    }
    // Members that would carry each other in a ring: each keeps what it has.
    members.stream().filter(m -> !done.contains(m)).forEach(m -> settle(m, On.NO_WALL));
  }

  private static boolean standsOnRoof(Member m) {
    return m.first().kind() == On.ROOF || m.last().kind() == On.ROOF;
  }

  private void hand(Member m) {
    Borne b = borne.get(m.id());
    handed.add(m.id());
    switch (m.way()) {
      case THROUGH -> {}
      case ON_WALL -> {
        Amount all = b.first.plus(b.last);
        bearings.add(
            new BearingLoad(
                m.id(),
                m.mark(),
                On.GABLE_WALL,
                m.first().on(),
                balance(b),
                b.groundFirst + b.groundLast,
                all,
                b.carries));
      }
      case SPANS -> {
        end(b, m.first(), m.axis().from(), b.groundFirst, b.first);
        end(b, m.last(), m.axis().to(), b.groundLast, b.last);
      }
    }
  }

  private static Point balance(Borne b) {
    double all = b.first.level() + b.last.level();
    double share = all == 0 ? 0.5 : b.last.level() / all;
    return b.member.axis().from().toward(b.member.axis().to(), share);
  }

  private void end(Borne b, Member.End end, Point at, double ground, Amount amount) {
    if (end.by().isPresent()) {
      Borne carrier = borne.get(end.by().get());
      carrier.carries++;
      double along = carrier.share(at) * carrier.member.axis().length();
      hung.add(new Hung(b.member, end.by().get(), along, ground, amount));
      carrier.ground(at, ground);
      carrier.load(at, amount);
    } else if (end.kind() == On.ROOF) {
      onDeck(b.member, at, ground, amount);
    } else {
      bearings.add(
          new BearingLoad(
              b.member.id(), b.member.mark(), end.kind(), end.on(), at, ground, amount, b.carries));
    }
  }

  private void settle(Member m, On on) {
    Borne b = borne.get(m.id());
    bearings.add(
        new BearingLoad(
            m.id(),
            m.mark(),
            on,
            m.part(),
            balance(b),
            b.groundFirst + b.groundLast,
            b.first.plus(b.last),
            b.carries));
  }

  /** A rafter's foot on the deck of another part: on the highest plane beneath. */
  private void onDeck(Member m, Point at, double ground, Amount amount) {
    RoofPlane best = null;
    for (RoofPlane plane : surface.planes()) {
      boolean holds =
          plane.covered().stream().anyMatch(r -> r.contains(at) || r.edgeDistance(at) < 1e-6)
              || plane.visible().stream().anyMatch(r -> r.contains(at));
      if (holds
          && !plane.part().equals(m.part())
          && (best == null || plane.plane().heightAt(at) > best.plane().heightAt(at))) {
        best = plane;
      }
    }
    String plane = best == null ? "" : best.id();
    List<Member> beside = under(at, plane, 0);
    if (beside.isEmpty() || beside.stream().anyMatch(b -> handed.contains(b.id()))) {
      bearings.add(new BearingLoad(m.id(), m.mark(), On.ROOF, m.part(), at, ground, amount, 0));
      return;
    }
    drop(plane, m.part(), at, amount, 0);
    beneath(at, plane, 0).ifPresent(b -> b.ground(at, ground));
  }
}
