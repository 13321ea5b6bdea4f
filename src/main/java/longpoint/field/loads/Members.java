package longpoint.field.loads;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.field.loads.BearingLoad.On;
import longpoint.field.loads.Member.End;
import longpoint.field.loads.Member.Lie;
import longpoint.field.loads.Member.Way;
import longpoint.framing.FramingSet;
import longpoint.framing.stick.Bearing;
import longpoint.framing.stick.Rafter;
import longpoint.framing.stick.RafterKind;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussKind;
import longpoint.framing.truss.TrussMark;
import longpoint.framing.valley.ValleySet;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;

/** Every member of a frame with what carries its ends. */
final class Members {
  /** An end this many thicknesses from a wall or a rafter's line stands on it. */
  private static final double NEAR = 3;

  private final Plan plan;
  private final FramingSet framing;
  private final Map<String, Truss> trusses = new HashMap<>();
  private final Map<String, String> beneath = new HashMap<>();
  private final List<Member> all = new ArrayList<>();

  private Members(Plan plan, FramingSet framing) {
    this.plan = plan;
    this.framing = framing;
    framing.trusses().forEach(t -> trusses.put(t.id(), t));
    for (ValleySet set : framing.valleySets()) {
      set.trusses()
          .forEach(
              row ->
                  framing.valleyTruss(set, row).ifPresent(t -> beneath.put(t.id(), set.plane())));
    }
  }

  static List<Member> of(Plan plan, FramingSet framing) {
    Members members = new Members(plan, framing);
    Map<String, TrussMark> marks = new HashMap<>();
    framing.marks().forEach(m -> marks.put(m.mark(), m));
    for (Truss t : framing.trusses()) {
      // A cap stands on its base, which has its place in the row.
      if (t.kind() != TrussKind.CAP) {
        members.all.add(members.truss(t, marks.get(t.mark())));
      }
    }
    List<Member> lines = new ArrayList<>();
    for (Rafter r : framing.rafters()) {
      if (r.kind() == RafterKind.HIP || r.kind() == RafterKind.VALLEY) {
        lines.addAll(members.rafters(r, List.of()));
      }
    }
    members.all.addAll(lines);
    for (Rafter r : framing.rafters()) {
      boolean jack = r.kind() != RafterKind.HIP && r.kind() != RafterKind.VALLEY;
      if (jack && r.kind() != RafterKind.RIDGE) {
        members.all.addAll(members.rafters(r, lines));
      }
    }
    return members.all;
  }

  private Member truss(Truss t, TrussMark mark) {
    Optional<String> byFirst = carrier(t, t.from(), t.carriedFrom());
    Optional<String> byLast = carrier(t, t.to(), t.carriedTo());
    boolean drawn = t.turn() == Truss.Turn.AS_DRAWN;
    Point way = t.to().minus(t.from()).unit();
    Point low = t.from().minus(way.times(drawn ? mark.tailLow() : mark.tailHigh()));
    Point high = t.to().plus(way.times(drawn ? mark.tailHigh() : mark.tailLow()));
    boolean gable = t.kind() == TrussKind.GABLE_END || t.kind() == TrussKind.DROPPED_GABLE_END;
    Way carries = t.kind() == TrussKind.VALLEY ? Way.THROUGH : gable ? Way.ON_WALL : Way.SPANS;
    Optional<String> wall = gable ? wallAlong(t) : Optional.empty();
    End first =
        wall.map(w -> new End(On.GABLE_WALL, Optional.empty(), w))
            .orElseGet(() -> end(t, t.from(), byFirst));
    return new Member(
        t.id(),
        t.mark(),
        t.part(),
        beneath.getOrDefault(t.id(), ""),
        new Segment(onCarrier(t, t.from(), byFirst), onCarrier(t, t.to(), byLast)),
        new Segment(low, high),
        gable && wall.isEmpty() ? Way.SPANS : carries,
        t.kind() == TrussKind.HIP_JACK ? Lie.UNDER_A_CORNER : Lie.UP_THE_SLOPE,
        first,
        end(t, t.to(), byLast));
  }

  /** A corner jack's upper end leans on the hip jack beside it. */
  private Optional<String> carrier(Truss t, Point end, Optional<String> named) {
    if (named.isPresent() || t.kind() != TrussKind.CORNER_JACK || wall(t.part(), end).isPresent()) {
      return named;
    }
    double near = NEAR * thickness(t.part());
    return framing.trusses().stream()
        .filter(h -> h.kind() == TrussKind.HIP_JACK && h.part().equals(t.part()))
        .filter(h -> new Segment(h.from(), h.to()).distance(end) < near)
        .min(Comparator.comparingDouble(h -> new Segment(h.from(), h.to()).distance(end)))
        .map(Truss::id);
  }

  /** The gable wall a truss stands on from end to end. */
  private Optional<String> wallAlong(Truss t) {
    double near = NEAR * thickness(t.part());
    return plan.part(t.part()).stream()
        .flatMap(p -> plan.sides(p).stream())
        .filter(s -> s.wall().distance(t.from()) < near && s.wall().distance(t.to()) < near)
        .map(Side::id)
        .findFirst();
  }

  /** Where its line meets that of what carries it. */
  private Point onCarrier(Truss t, Point end, Optional<String> by) {
    Truss carrier = by.map(trusses::get).orElse(null);
    if (carrier == null) {
      return end;
    }
    Point way = t.to().minus(t.from()).unit();
    Point other = carrier.to().minus(carrier.from()).unit();
    double cross = way.cross(other);
    return Math.abs(cross) < 1e-6
        ? end
        : end.plus(way.times(carrier.from().minus(end).cross(other) / cross));
  }

  private End end(Truss t, Point at, Optional<String> by) {
    if (by.isPresent() && trusses.containsKey(by.get())) {
      return new End(On.MEMBER, by, by.get());
    }
    return wall(t.part(), at)
        .map(w -> new End(On.WALL, Optional.<String>empty(), w))
        .orElseGet(() -> new End(On.NO_WALL, Optional.empty(), t.part()));
  }

  /** The nearest wall of the part, or of any other part where its own has none there. */
  private Optional<String> wall(String part, Point at) {
    Optional<String> own = plan.part(part).flatMap(p -> wall(p, at));
    return own.isPresent()
        ? own
        : plan.parts().stream().flatMap(p -> wall(p, at).stream()).findFirst();
  }

  private Optional<String> wall(Part part, Point at) {
    double least = NEAR * part.frame().thickness();
    String best = null;
    for (Side side : plan.sides(part)) {
      double away = side.wall().distance(at);
      if (away < least) {
        least = away;
        best = side.id();
      }
    }
    return Optional.ofNullable(best);
  }

  private double thickness(String part) {
    return plan.part(part).map(p -> p.frame().thickness()).orElse(0.0);
  }

  private List<Member> rafters(Rafter r, List<Member> lines) {
    List<Member> members = new ArrayList<>();
    double flat = Math.hypot(1, r.slope());
    for (int i = 0; i < r.places().size(); i++) {
      Segment place = r.places().get(i);
      if (!(place.length() > 0)) {
        continue;
      }
      Point way = place.direction();
      Segment reach =
          new Segment(
              place.from().minus(way.times(r.tail() / flat)),
              place.to().plus(way.times(r.over() / flat)));
      members.add(
          new Member(
              r.mark() + "/" + (i + 1),
              r.mark(),
              r.part(),
              "",
              place,
              reach,
              Way.SPANS,
              r.kind() == RafterKind.HIP || r.kind() == RafterKind.VALLEY
                  ? Lie.UNDER_A_CORNER
                  : Lie.UP_THE_SLOPE,
              end(r, r.footAt(i).on(), place.from(), lines),
              end(r, r.headAt(i).on(), place.to(), lines)));
    }
    return members;
  }

  private End end(Rafter r, Bearing on, Point at, List<Member> lines) {
    return switch (on) {
      case WALL ->
          wall(r.part(), at)
              .map(w -> new End(On.WALL, Optional.<String>empty(), w))
              .orElseGet(() -> new End(On.NO_WALL, Optional.empty(), r.part()));
      case HIP, VALLEY ->
          nearest(lines, at, r)
              .map(m -> new End(On.MEMBER, Optional.of(m.id()), m.id()))
              .orElseGet(() -> new End(On.RIDGE, Optional.empty(), r.part()));
      case GIRDER ->
          nearest(all, at, r)
              .map(m -> new End(On.MEMBER, Optional.of(m.id()), m.id()))
              .orElseGet(() -> new End(On.RIDGE, Optional.empty(), r.part()));
      case DECK -> new End(On.ROOF, Optional.empty(), r.part());
      case RIDGE,
          RIDGE_END,
          LEDGER,
          HEADER,
          TRIMMER,
          POST,
          OPPOSITE,
          SET_BEFORE,
          MITRED,
          COMMONS,
          NOTHING ->
          new End(On.RIDGE, Optional.empty(), r.part());
    };
  }

  private static Optional<Member> nearest(List<Member> members, Point at, Rafter r) {
    double least = NEAR * r.thickness();
    Member best = null;
    for (Member m : members) {
      double away = m.axis().distance(at);
      if (away < least) {
        least = away;
        best = m;
      }
    }
    return Optional.ofNullable(best);
  }
}
