package longpoint.field.built;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.framing.FramingSet;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussMark;
import longpoint.geometry.Point;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.PlanDimension.Corner;
import longpoint.plan.Problem;
import longpoint.units.LengthFigure;
import longpoint.wording.Phrase;

/** Sets the trusses of the plan on the walls as built, one by one. */
final class Seating {
  /** A quarter of an inch, 6 mm: more than that is worth a word with the supplier. */
  private static final double NOTICE_MM = 6.35;

  /** Off a wall by less than this, a bearing stands on it. */
  private static final double ON_MM = 3;

  /** As a sine: a truss along a wall does not end on it. */
  private static final double ALONG = 0.1;

  private final Plan plan;
  private final BuiltWalls walls;
  private final Map<Corner, Point> at = new HashMap<>();
  private final List<Wall> taped;

  private Seating(Plan plan, BuiltWalls walls) {
    this.plan = plan;
    this.walls = walls;
    for (BuiltCorner c : walls.corners()) {
      at.put(new Corner(c.part(), c.corner()), c.built());
    }
    taped = Wall.all(plan).stream().filter(w -> walls.isTaped(w.part())).toList();
  }

  /** Trusses with an end on a taped wall, in the order of the layout. */
  static List<TrussSeat> of(Plan plan, FramingSet framing, BuiltWalls walls) {
    Seating seating = new Seating(plan, walls);
    Map<String, TrussMark> marks = new HashMap<>();
    framing.marks().forEach(m -> marks.put(m.mark(), m));
    List<TrussSeat> seats = new ArrayList<>();
    for (Truss truss : framing.trusses()) {
      if (truss.kind().squareToRidge() && marks.containsKey(truss.mark())) {
        seating.seat(truss, marks.get(truss.mark())).ifPresent(seats::add);
      }
    }
    return seats;
  }

  private Optional<TrussSeat> seat(Truss truss, TrussMark mark) {
    if (truss.from().equals(truss.to())) {
      return Optional.empty();
    }
    Point way = truss.to().minus(truss.from()).unit();
    Optional<Double> from = out(truss.from(), way.times(-1));
    Optional<Double> to = out(truss.to(), way);
    boolean known =
        (from.isPresent() || truss.carriedFrom().isPresent())
            && (to.isPresent() || truss.carriedTo().isPresent())
            && (from.isPresent() || to.isPresent());
    if (!known) {
      return Optional.empty();
    }
    boolean asDrawn = truss.turn() == Truss.Turn.AS_DRAWN;
    double first = from.orElse(0.0);
    double last = to.orElse(0.0);
    return Optional.of(
        new TrussSeat(
            truss.id(),
            truss.mark(),
            truss.run(),
            truss.station(),
            truss.span(),
            truss.span() + first + last,
            first,
            last,
            left(asDrawn ? mark.tailLow() : mark.tailHigh(), first),
            left(asDrawn ? mark.tailHigh() : mark.tailLow(), last),
            Math.abs(first + last) > plan.unit().fromMillimetres(NOTICE_MM)));
  }

  /** What is left of a tail beyond a wall that stands further out. */
  private static Optional<Double> left(double tail, double out) {
    return tail > 0 ? Optional.of(tail - out) : Optional.empty();
  }

  /** How much further along its direction the wall stands that a bearing is planned on. */
  private Optional<Double> out(Point bearing, Point way) {
    Optional<Wall> on = Optional.empty();
    double least = plan.unit().fromMillimetres(ON_MM);
    for (Wall wall : taped) {
      boolean across =
          wall.line().length() > 0 && Math.abs(wall.line().direction().cross(way)) > ALONG;
      if (across && wall.line().distance(bearing) < least) {
        least = wall.line().distance(bearing);
        on = Optional.of(wall);
      }
    }
    return on.map(wall -> reach(bearing, way, at.get(wall.from()), at.get(wall.to())));
  }

  private static double reach(Point bearing, Point way, Point from, Point to) {
    Point along = to.minus(from);
    return from.minus(bearing).cross(along) / way.cross(along);
  }

  /** One word for each run whose walls are off: where it is worst. */
  static List<Problem> problems(Plan plan, List<TrussSeat> seats) {
    Map<String, TrussSeat> worst = new LinkedHashMap<>();
    for (TrussSeat seat : seats) {
      if (seat.notice()) {
        worst.merge(
            seat.run(),
            seat,
            (a, b) -> Math.abs(b.difference()) > Math.abs(a.difference()) ? b : a);
      }
    }
    List<Problem> problems = new ArrayList<>();
    worst.forEach(
        (run, seat) -> {
          String part = part(plan, run);
          String key = seat.difference() > 0 ? "field.built.wide" : "field.built.narrow";
          problems.add(
              Problem.warning(
                  part,
                  Phrase.of(
                      key,
                      seat.mark(),
                      PlaceName.part(part),
                      new LengthFigure(Math.abs(seat.difference()), plan.unit()),
                      new LengthFigure(seat.station(), plan.unit()))));
        });
    return problems;
  }

  private static String part(Plan plan, String run) {
    int dot = run.lastIndexOf('.');
    return plan.part(run).isPresent() || dot < 0 ? run : run.substring(0, dot);
  }
}
