package longpoint.framing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import longpoint.framing.run.Mouth;
import longpoint.framing.run.Run;
import longpoint.framing.run.RunFinder;
import longpoint.framing.stick.Rafter;
import longpoint.framing.truss.Girder;
import longpoint.framing.truss.Profile;
import longpoint.framing.truss.TapeMarks;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussKind;
import longpoint.framing.truss.TrussMark;
import longpoint.framing.valley.ValleySet;
import longpoint.geometry.Bounds;
import longpoint.geometry.Jts;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Frame;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;
import org.locationtech.jts.geom.Geometry;

/** What a framer would laugh at: each a sentence with its place. In inches. */
final class FrameLaws {
  private final Plan plan;
  private final RoofSurface roof;
  private final FramingSet set;
  private final Map<String, TrussMark> marks;
  private final List<String> broken = new ArrayList<>();

  private FrameLaws(Plan plan, RoofSurface roof, FramingSet set) {
    this.plan = plan;
    this.roof = roof;
    this.set = set;
    this.marks = set.marks().stream().collect(Collectors.toMap(TrussMark::mark, m -> m));
  }

  static List<String> broken(Plan plan, RoofSurface roof, FramingSet set) {
    FrameLaws laws = new FrameLaws(plan, roof, set);
    laws.tapes();
    laws.profiles();
    laws.sizes();
    laws.bearings();
    laws.apart();
    laws.covered();
    laws.valleys();
    return laws.broken;
  }

  private void say(String format, Object... args) {
    broken.add(String.format(Locale.ROOT, format, args));
  }

  private double thickness(String part) {
    return plan.part(part).orElseThrow().frame().thickness();
  }

  private double spacing(String part) {
    return plan.part(part).orElseThrow().frame().spacing();
  }

  private void tapes() {
    for (TapeMarks t : set.tapes()) {
      double sum = t.marks().get(0);
      for (double w : t.widths()) {
        sum += w;
      }
      for (double g : t.gaps()) {
        sum += g;
        if (g < -1e-9) {
          say("tape %s: gap %.3f", t.run(), g);
        }
        if (g > spacing(t.part()) + 1e-6) {
          say("tape %s: gap %.3f above the spacing", t.run(), g);
        }
      }
      int last = t.marks().size() - 1;
      sum += t.length() - t.marks().get(last) - t.widths().get(last);
      if (Math.abs(sum - t.length()) > 1e-6) {
        say("tape %s: %.3f, not %.3f", t.run(), sum, t.length());
      }
    }
  }

  private Profile profile(Truss t) {
    Profile p = marks.get(t.mark()).profile();
    return t.turn() == Truss.Turn.END_FOR_END ? p.turned() : p;
  }

  /** Both faces on or below the part's own roof. */
  private void profiles() {
    for (Truss t : set.trusses()) {
      if (t.kind() == TrussKind.VALLEY || t.kind() == TrussKind.HIP_JACK) {
        continue;
      }
      Profile p = profile(t);
      Point along = t.to().minus(t.from()).unit();
      double half = t.plies() * thickness(t.part()) / 2;
      for (int i = 0; i <= 40; i++) {
        double v = p.span() * (i + 0.001) / 40.01;
        Point at = t.from().plus(along.times(v));
        double top = t.plate() + p.topAt(v);
        double least = Double.POSITIVE_INFINITY;
        for (int face = -1; face <= 1; face += 2) {
          least = Math.min(least, own(t.part(), at.plus(along.left().times(face * half))));
        }
        if (Double.isFinite(least) && top > least + 1e-4) {
          say("%s %s at %.1f stands %.3f above its roof", t.id(), t.mark(), v, top - least);
          break;
        }
        if (t.kind() == TrussKind.COMMON
            && set.proposals().isEmpty()
            && !underRakeOf(t)
            && Double.isFinite(least)
            && top < least - 1e-4) {
          say("%s %s at %.1f stays %.3f under its roof", t.id(), t.mark(), v, least - top);
          break;
        }
      }
    }
  }

  /** Beside a bump whose taller roof passes over on its rake overhang. */
  private boolean underRakeOf(Truss t) {
    Part part = plan.part(t.part()).orElseThrow();
    return part.outline().size() > 4
        && plan.sides(part).stream()
            .anyMatch(s -> s.kind() == EdgeKind.GABLE && s.wall().distance(t.to()) < 20);
  }

  private double own(String part, Point p) {
    double z = Double.NEGATIVE_INFINITY;
    for (RoofPlane plane : roof.planes()) {
      if (plane.part().equals(part) && holds(plane, p)) {
        z = Math.max(z, plane.plane().heightAt(p));
      }
    }
    return Double.isInfinite(z) ? Double.POSITIVE_INFINITY : z;
  }

  private static boolean holds(RoofPlane plane, Point p) {
    return plane.visible().stream().anyMatch(r -> r.contains(p))
        || plane.covered().stream().anyMatch(r -> r.contains(p));
  }

  private void sizes() {
    for (TrussMark m : set.marks()) {
      Profile p = m.profile();
      boolean small = m.kind() != TrussKind.VALLEY && m.height() < 3.5;
      if (m.height() < 1.5 || small || m.height() > 480 || m.span() < 3 || m.weight() <= 0) {
        say("%s %s: span %.2f height %.2f", m.mark(), m.kind(), m.span(), m.height());
      }
      for (int i = 1; i < 20; i++) {
        double v = p.span() * i / 20;
        double deep = p.topAt(v) - p.bottomAt(v);
        if (deep < (m.kind() == TrussKind.VALLEY || m.kind().isCap() ? 0 : 2.5)) {
          say("%s %s: %.2f deep at %.1f of %.1f", m.mark(), m.kind(), deep, v, p.span());
          break;
        }
      }
    }
    for (TrussMark a : set.marks()) {
      for (TrussMark b : set.marks()) {
        if (a != b
            && a.kind() == b.kind()
            && a.plies() == b.plies()
            && (a.profile().sameAs(b.profile(), 1e-6)
                || a.profile().turned().sameAs(b.profile(), 1e-6))) {
          say("%s and %s are one truss", a.mark(), b.mark());
        }
      }
    }
  }

  private void bearings() {
    Map<String, Integer> hung = new HashMap<>();
    Map<String, Truss> byId = new HashMap<>();
    set.trusses().forEach(t -> byId.put(t.id(), t));
    for (Girder g : set.girders()) {
      for (Girder.Hanger h : g.hangers()) {
        hung.merge(g.truss() + ">" + h.carries(), 1, Integer::sum);
        if (h.along() < -1e-6 || h.along() > byId.get(g.truss()).span() + 1e-6) {
          say("hanger of %s off its girder %s at %.1f", h.carries(), g.truss(), h.along());
        }
      }
      for (int i = 0; i + 1 < g.hangers().size(); i++) {
        Girder.Hanger a = g.hangers().get(i);
        Girder.Hanger b = g.hangers().get(i + 1);
        if (a.face() == b.face() && b.along() - a.along() < 1.5) {
          say("hangers of %s and %s share a place on %s", a.carries(), b.carries(), g.truss());
        }
      }
    }
    for (Truss t : set.trusses()) {
      if (t.kind() == TrussKind.VALLEY || t.kind().isCap()) {
        continue;
      }
      bearing(t, t.from(), t.carriedFrom(), hung);
      bearing(t, t.to(), t.carriedTo(), hung);
    }
  }

  private void bearing(Truss t, Point end, Optional<String> by, Map<String, Integer> hung) {
    if (by.isPresent()) {
      if (!Integer.valueOf(1).equals(hung.get(by.get() + ">" + t.id()))) {
        say("%s hangs on %s without one hanger", t.id(), by.get());
      }
      return;
    }
    for (Part part : plan.parts()) {
      for (Side side : plan.sides(part)) {
        boolean own = part.id().equals(t.part());
        if ((!own || side.kind() != EdgeKind.OPEN) && side.wall().distance(end) < 0.07) {
          return;
        }
      }
    }
    if ((t.kind() == TrussKind.BASE || t.kind() == TrussKind.GABLE_BASE)
        && plan.parts().stream().allMatch(p -> Math.abs(p.plateHeight() - t.plate()) > 1)) {
      return;
    }
    for (Truss other : set.trusses()) {
      if (other.kind() == TrussKind.HIP_JACK
          && t.kind() == TrussKind.CORNER_JACK
          && new Segment(other.from(), other.to()).distance(end) < 2) {
        return;
      }
    }
    for (Rafter r : set.rafters()) {
      if (r.places().stream().anyMatch(s -> s.distance(end) < 3)) {
        return;
      }
    }
    say("%s %s: no bearing at %.1f, %.1f", t.id(), t.mark(), end.x(), end.y());
  }

  private Geometry foot(Truss t) {
    Point along = t.to().minus(t.from()).unit();
    Point aside = along.left().times(t.plies() * thickness(t.part()) / 2);
    if (t.kind() == TrussKind.VALLEY) {
      aside = along.left().times(thickness(t.part()) / 2);
    }
    return Jts.polygon(
        new Ring(
            List.of(
                t.from().minus(aside),
                t.to().minus(aside),
                t.to().plus(aside),
                t.from().plus(aside))));
  }

  /** No two in each other's wood. */
  private void apart() {
    List<Truss> all = set.trusses();
    List<Geometry> feet = all.stream().map(this::foot).toList();
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        Truss a = all.get(i);
        Truss b = all.get(j);
        boolean hung =
            a.carriedFrom().equals(Optional.of(b.id()))
                || a.carriedTo().equals(Optional.of(b.id()))
                || b.carriedFrom().equals(Optional.of(a.id()))
                || b.carriedTo().equals(Optional.of(a.id()));
        boolean cap = a.kind().isCap() || b.kind().isCap();
        if (!feet.get(i).getEnvelopeInternal().intersects(feet.get(j).getEnvelopeInternal())
            || cap) {
          continue;
        }
        Geometry common = feet.get(i).intersection(feet.get(j));
        double most =
            hung ? 6 : a.kind() == TrussKind.HIP_JACK || b.kind() == TrussKind.HIP_JACK ? 4 : 0.2;
        if (common.getArea() > most) {
          Point at = Jts.point(common.getCentroid().getCoordinate());
          double over = Math.min(top(a, at), top(b, at)) - Math.max(bottom(a, at), bottom(b, at));
          if (over > 0.6) {
            say(
                "%s and %s stand in each other at %.1f, %.1f (%.2f, %.2f high)",
                a.id(), b.id(), at.x(), at.y(), common.getArea(), over);
          }
        }
      }
    }
  }

  private double top(Truss t, Point at) {
    return t.plate() + profile(t).topAt(new Segment(t.from(), t.to()).along(at));
  }

  private double bottom(Truss t, Point at) {
    return t.plate() + profile(t).bottomAt(new Segment(t.from(), t.to()).along(at));
  }

  /** No piece of deck further from framing than half a bay. */
  private void covered() {
    List<Segment> sticks = new ArrayList<>();
    Set<String> runs = set.tapes().stream().map(TapeMarks::run).collect(Collectors.toSet());
    for (Truss t : set.trusses()) {
      TrussMark m = marks.get(t.mark());
      boolean turned = t.turn() == Truss.Turn.END_FOR_END;
      Point along = t.to().minus(t.from()).unit();
      sticks.add(
          new Segment(
              t.from().minus(along.times(turned ? m.tailHigh() : m.tailLow())),
              t.to().plus(along.times(turned ? m.tailLow() : m.tailHigh()))));
    }
    set.rafters().forEach(r -> sticks.addAll(r.places()));
    RoofSurface cut = Mouth.cutFrom(roof, set.mouths());
    for (RoofPlane plane : cut.planes()) {
      Part part = plan.part(plane.part()).orElseThrow();
      if (part.existing()
          || part.frame().method() != Frame.Method.TRUSS
          || ownWay(part)
          || runs.stream().noneMatch(r -> r.split("\\.")[0].equals(part.id()))) {
        continue;
      }
      bare(plane, part, sticks);
    }
  }

  /** An end that the user has framed with rafters, or leaves to somebody else. */
  private boolean ownWay(Part part) {
    return part.edges().stream()
        .anyMatch(e -> e.hip().filter(h -> h != Edge.HipEnd.STEPDOWN).isPresent());
  }

  private void bare(RoofPlane plane, Part part, List<Segment> sticks) {
    List<Region> ground = new ArrayList<>(plane.visible());
    ground.addAll(plane.covered());
    double half = part.frame().spacing() / 2;
    double worst = 0;
    Point where = null;
    int times = 0;
    for (Region r : ground) {
      Bounds b = r.shell().bounds();
      for (double x = b.minX() + 1.37; x < b.maxX(); x += 4) {
        for (double y = b.minY() + 1.73; y < b.maxY(); y += 4) {
          Point p = new Point(x, y);
          if (!r.contains(p) || pastGable(part, p)) {
            continue;
          }
          double near = Double.POSITIVE_INFINITY;
          for (Segment s : sticks) {
            near = Math.min(near, s.distance(p));
          }
          boolean onOther = isOver(part, p);
          double allowed = onOther ? 2 * half + 2 : half + 1.6;
          if (!part.outline().contains(p)) {
            // Out at a corner the fascia spans from the hip jack's tail to the first jack's.
            allowed = 2 * half + 4;
          }
          if (near > allowed) {
            times++;
            if (near > worst) {
              worst = near;
              where = p;
            }
          }
        }
      }
    }
    if (times > 3) {
      say(
          "%s: %d places bare, %.1f from any framing at %.1f, %.1f",
          plane.id(), times, worst, where.x(), where.y());
    }
  }

  /** Out over a gable wall, where the ladder carries. */
  private boolean pastGable(Part part, Point p) {
    for (Side side : plan.sides(part)) {
      if (side.kind() == EdgeKind.GABLE) {
        double off = -side.wall().offset(p);
        if (off > -1e-9 && off <= side.overhang() + side.fascia() + 1) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean isOver(Part part, Point p) {
    return plan.joins().stream()
            .filter(j -> j.upper().equals(part.id()))
            .flatMap(j -> plan.part(j.lower()).stream())
            .anyMatch(l -> l.outline().contains(p))
        || plan.joins().stream()
            .filter(j -> j.lower().equals(part.id()))
            .flatMap(j -> plan.part(j.upper()).stream())
            .anyMatch(l -> l.outline().distance(p) < 30);
  }

  private void valleys() {
    List<Run> runs = RunFinder.find(plan).runs();
    for (Join join : plan.joins()) {
      boolean laid =
          set.valleySets().stream()
              .anyMatch(
                  s ->
                      part(s.upper()).equals(join.upper()) && part(s.lower()).equals(join.lower()));
      boolean said = set.problems().stream().anyMatch(p -> p.where().startsWith(join.upper()));
      boolean gabled =
          runs.stream()
              .anyMatch(
                  r -> r.part().id().equals(join.upper()) && r.low().isEave() && r.high().isEave());
      boolean over = join.method() == Join.Method.OVERLAY && gabled && over(join);
      if (over && !laid && !said) {
        say("no valley set of %s on %s and no word about it", join.upper(), join.lower());
      }
      if (join.method() == Join.Method.OVERLAY && !over && laid) {
        say("a valley set of %s on %s where no roof lies over", join.upper(), join.lower());
      }
    }
    for (ValleySet v : set.valleySets()) {
      Run lower = run(runs, v.lower());
      Run upper = run(runs, v.upper());
      var main = roof.plane(v.plane()).orElseThrow().plane();
      boolean warned =
          set.problems().stream().anyMatch(p -> p.where().startsWith(upper.part().id()));
      for (var t : v.trusses()) {
        boolean told =
            set.problems().stream().anyMatch(p -> p.where().startsWith(upper.part().id()));
        if ((t.length() < 12 || t.height() < 3) && !told) {
          say("%s: valley truss %d is %.1f by %.1f", v.upper(), t.number(), t.length(), t.height());
        }
        for (double half : new double[] {t.left(), -t.right()}) {
          Point end = v.axes().at(t.x(), half);
          double u = lower.axes().u(end);
          double w = lower.axes().v(end);
          boolean on =
              u > -30
                  && u < lower.length() + 30
                  && w > -30
                  && w < lower.width() + 30
                  && main.heightAt(end) < lower.heightAt(u, w) + 0.01;
          if (!on && !warned) {
            say(
                "%s: no deck under an end of valley truss %d of %d at %.1f, %.1f",
                v.upper(), t.number(), v.trusses().size(), end.x(), end.y());
          }
          double wu = upper.axes().u(end);
          double wv = upper.axes().v(end);
          double deck = v.site().main().deckAt(t.x());
          if (Math.abs(upper.heightAt(wu, wv) - deck) > 1e-6) {
            say("%s: valley truss %d ends off its roof", v.upper(), t.number());
          }
        }
      }
    }
  }

  private static Run run(List<Run> runs, String id) {
    return runs.stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
  }

  private static String part(String run) {
    return run.split("\\.")[0];
  }

  /** Whether some of the lower roof lies covered within the upper part's ground. */
  private boolean over(Join join) {
    return roof.planes().stream()
        .filter(p -> p.part().equals(join.lower()))
        .anyMatch(p -> p.covered().stream().mapToDouble(Region::area).sum() > 144);
  }
}
