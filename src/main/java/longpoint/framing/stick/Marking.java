package longpoint.framing.stick;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.framing.Shop;
import longpoint.framing.rafter.Incline;
import longpoint.framing.square.SquareFigures;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.Plan;

/** Rafters that are cut alike share a mark, left hand and right hand together. */
final class Marking {
  /** Two rafters are one if no length differs by more than this share of the finest mark. */
  private static final double SAME = 1.0 / 16;

  private final Plan plan;
  private final Stock stock;
  private final double same;
  private final Map<String, List<Stick>> rows = new HashMap<>();

  private Marking(Plan plan) {
    this.plan = plan;
    this.stock = Stock.of(plan);
    this.same = Shop.of(plan.unit()).mark() * SAME;
  }

  static List<Rafter> share(List<Stick> sticks, Plan plan) {
    Marking marking = new Marking(plan);
    List<List<Stick>> groups = new ArrayList<>();
    Map<String, List<List<Stick>>> alike = new HashMap<>();
    for (Stick stick : sticks) {
      marking.add(stick, alike.computeIfAbsent(sort(stick), k -> new ArrayList<>()), groups);
      if (!stick.row().isEmpty()) {
        marking.rows.computeIfAbsent(row(stick), k -> new ArrayList<>()).add(stick);
      }
    }
    groups.sort(marking.inListOrder());
    Map<RafterKind, Integer> numbers = new EnumMap<>(RafterKind.class);
    List<Rafter> rafters = new ArrayList<>();
    for (List<Stick> group : groups) {
      RafterKind kind = group.get(0).kind();
      int number = numbers.merge(kind, 1, Integer::sum);
      rafters.add(marking.rafter(group, kind.letter() + number));
    }
    return List.copyOf(rafters);
  }

  /** Parts as drawn, kinds as they are set, jacks from the shortest up, hips by their order. */
  private Comparator<List<Stick>> inListOrder() {
    List<String> parts = plan.parts().stream().map(Part::id).toList();
    return Comparator.comparingInt((List<Stick> g) -> parts.indexOf(g.get(0).part()))
        .thenComparing(g -> g.get(0).kind())
        .thenComparing(g -> g.get(0).run())
        .thenComparingInt(g -> g.get(0).atHead().order())
        .thenComparingDouble(g -> Math.rint(g.get(0).cut().length() / same));
  }

  private void add(Stick stick, List<List<Stick>> alike, List<List<Stick>> groups) {
    for (List<Stick> group : alike) {
      if (isCutLike(stick, group.get(0))) {
        group.add(stick);
        return;
      }
    }
    List<Stick> group = new ArrayList<>(List.of(stick));
    alike.add(group);
    groups.add(group);
  }

  private static String row(Stick s) {
    return s.part() + "/" + s.run() + "/" + s.kind() + "/" + s.row();
  }

  private static String sort(Stick s) {
    return String.join(
        "/",
        s.kind().name(),
        s.run(),
        s.atFoot().on().name(),
        s.atHead().on().name(),
        Integer.toString(s.atHead().order()));
  }

  private boolean isCutLike(Stick s, Stick o) {
    return isNear(s.line().run(), o.line().run())
        && isNear(s.cut().run(), o.cut().run())
        && isNear(s.cut().rise(), o.cut().rise())
        && isNear(s.tail(), o.tail())
        && isNear(s.heel().orElse(-1), o.heel().orElse(-1))
        && (isSameHand(s, o) || isOtherHand(s, o));
  }

  private boolean isNear(double a, double b) {
    return Math.abs(a - b) <= same;
  }

  private static boolean isSameHand(Stick s, Stick o) {
    return s.atFoot().isLike(o.atFoot()) && s.atHead().isLike(o.atHead());
  }

  private static boolean isOtherHand(Stick s, Stick o) {
    return s.atFoot().isLike(o.atFoot().turned()) && s.atHead().isLike(o.atHead().turned());
  }

  private Rafter rafter(List<Stick> alike, String mark) {
    Stick s = alike.get(0);
    List<Stick> group = new ArrayList<>(alike);
    group.sort(Comparator.comparing(g -> !isSameHand(g, s)));
    Incline line = s.line();
    Part part = plan.part(s.part()).orElseThrow();
    double thickness = part.frame().thickness();
    double depth = stock.depth(s.kind());
    double cos = Math.cos(Math.atan(s.slope()));
    List<Double> backing =
        s.kind() == RafterKind.HIP && s.falls().steeper() > 0
            ? List.of(bevel(s.falls().left() * cos), bevel(s.falls().right() * cos))
            : List.of();
    return new Rafter(
        mark,
        s.kind(),
        s.part(),
        s.run(),
        group.size(),
        (int) group.stream().filter(g -> !isSameHand(g, s)).count(),
        line.run(),
        line.rise(),
        line.length(),
        new Incline(s.tail(), s.slope()).length(),
        new Incline(s.over(), s.slope()).length(),
        s.cut().length(),
        line.plumbCut(),
        line.levelCut(),
        square(s),
        s.atFoot().cut(line, thickness),
        s.atHead().cut(line, thickness),
        s.drop(thickness),
        backing,
        depth,
        thickness,
        seat(s, part, thickness, depth),
        difference(s),
        group.stream().map(g -> new Segment(g.foot(), g.head())).toList());
  }

  /** Run and rise to hold a framing square to: a common's run of 12 in or 250 mm. */
  private SquareFigures square(Stick s) {
    double unit = SquareFigures.unitRun(plan.unit());
    double common = Math.hypot(s.slope(), s.falls().left());
    return s.slope() > 0
        ? new SquareFigures(unit * common, unit * common / s.slope())
        : new SquareFigures(0, unit);
  }

  private static double bevel(double tangent) {
    return Math.toDegrees(Math.atan(tangent));
  }

  private Optional<Seat> seat(Stick s, Part part, double thickness, double depth) {
    if (s.heel().isEmpty() || !(s.slope() > 0)) {
      return Optional.empty();
    }
    double height = s.heel().getAsDouble() - s.drop(thickness);
    double plate = part.frame().choices().sticks().plateWidth(plan.unit());
    double sine = s.line().run() > 0 ? plateSine(s, part) : 1;
    return Optional.of(Seat.leaving(height, s.slope(), depth, plate / sine));
  }

  /** Sine of the angle in plan between a rafter and the wall it stands on. */
  private static double plateSine(Stick s, Part part) {
    double near = Double.POSITIVE_INFINITY;
    double sine = 1;
    for (int i = 0; i < part.sideCount(); i++) {
      Segment wall = part.side(i);
      if (wall.length() > 0 && wall.distance(s.foot()) < near - 1e-6) {
        near = wall.distance(s.foot());
        sine = Math.abs(wall.direction().cross(s.up().unit()));
      }
    }
    return Math.max(sine, 1e-3);
  }

  private Optional<Double> difference(Stick s) {
    if (s.row().isEmpty()) {
      return Optional.empty();
    }
    double own = s.line().length();
    return rows.get(row(s)).stream()
        .map(o -> o.line().length())
        .filter(l -> l < own - same)
        .max(Comparator.naturalOrder())
        .map(l -> own - l);
  }
}
