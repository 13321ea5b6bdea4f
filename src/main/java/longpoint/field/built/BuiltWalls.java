package longpoint.field.built;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.field.built.Network.Settled;
import longpoint.geometry.Point;
import longpoint.plan.AsBuilt;
import longpoint.plan.AsBuilt.Tape;
import longpoint.plan.CornerNumber;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.PlanDimension.Corner;
import longpoint.plan.Problem;

/**
 * The walls as they stand, by what was read on site.
 *
 * @param accuracy of a tape, one standard deviation in plan units
 * @param spare readings more than the shape needs
 * @param misfit residuals of the readings that count over their accuracy, root mean square by the
 *     spare ones; 0 without any; about 1 where the tape is as good as it is taken to be
 * @param corners every corner of every part, in the order of their numbers
 * @param tapes every tape reading, in the plan's order
 * @param doubts readings that do not agree with the others
 * @param next tapes worth taking
 * @param square every corner of parts that were taped
 * @param diagonals of taped parts that are drawn as rectangles
 * @param plates of parts whose plates were read
 */
public record BuiltWalls(
    double accuracy,
    int spare,
    double misfit,
    List<BuiltCorner> corners,
    List<BuiltTape> tapes,
    List<DoubtedTape> doubts,
    List<NextTape> next,
    List<OutOfSquare> square,
    List<Diagonals> diagonals,
    List<PlateLevel> plates,
    List<Problem> problems) {
  /** Nothing was measured. */
  public static final BuiltWalls NONE =
      new BuiltWalls(
          0, 0, 0, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
          List.of());

  public BuiltWalls {
    corners = List.copyOf(corners);
    tapes = List.copyOf(tapes);
    doubts = List.copyOf(doubts);
    next = List.copyOf(next);
    square = List.copyOf(square);
    diagonals = List.copyOf(diagonals);
    plates = List.copyOf(plates);
    problems = List.copyOf(problems);
  }

  public boolean isEmpty() {
    return tapes.isEmpty() && plates.isEmpty();
  }

  /** Whether a part's outline was taped, at least in part. */
  public boolean isTaped(String part) {
    return square.stream().anyMatch(s -> s.part().equals(part));
  }

  /**
   * {@link #NONE} for a plan without readings or with two parts of one id. Never fails for what a
   * user can type.
   */
  public static BuiltWalls of(Plan plan) {
    AsBuilt readings = plan.onSite().walls();
    boolean apart = plan.parts().stream().map(Part::id).distinct().count() == plan.parts().size();
    if (readings.isEmpty() || !apart) {
      return NONE;
    }
    WallFit fit = WallFit.of(plan);
    Doubt.Sifted sifted = Doubt.sift(fit);
    boolean settled = sifted.settled().settled();
    Map<Corner, Point> at = settled ? fit.corners(sifted.settled()) : Map.of();
    Freedom freedom = new Freedom(sifted.settled(), taped(fit));
    List<OutOfSquare> square = new ArrayList<>();
    List<Diagonals> diagonals = new ArrayList<>();
    int first = 1;
    for (Part part : plan.parts()) {
      if (settled && fit.tapes.stream().anyMatch(t -> touches(t, part))) {
        List<OutOfSquare> corners = OutOfSquare.of(part, at, first);
        square.addAll(corners);
        Diagonals.of(part, at, corners, first, plan.unit().fromMillimetres(Diagonals.LEAST_MM))
            .ifPresent(diagonals::add);
      }
      first += part.sideCount();
    }
    List<BuiltTape> tapes = tapes(fit, sifted, at);
    int spare = settled ? spare(sifted) : 0;
    BuiltWalls walls =
        new BuiltWalls(
            fit.accuracy,
            spare,
            settled ? misfit(sifted, spare) : 0,
            corners(fit, sifted, at, freedom),
            tapes,
            doubts(readings, sifted),
            settled ? next(fit, sifted, freedom) : List.of(),
            square,
            diagonals,
            Plates.of(plan),
            List.of());
    return walls.withProblems(BuiltChecks.of(plan, walls, settled || fit.isEmpty()));
  }

  BuiltWalls withProblems(List<Problem> problems) {
    return new BuiltWalls(
        accuracy, spare, misfit, corners, tapes, doubts, next, square, diagonals, plates, problems);
  }

  private static boolean touches(Tape tape, Part part) {
    return tape.from().part().equals(part.id()) || tape.to().part().equals(part.id());
  }

  private static List<int[]> taped(WallFit fit) {
    return fit.tapes.stream()
        .map(t -> new int[] {fit.points.get(t.from()), fit.points.get(t.to())})
        .toList();
  }

  private static int spare(Doubt.Sifted sifted) {
    double sum = 0;
    for (int i = 0; i < sifted.used().size(); i++) {
      sum += sifted.settled().redundancy(i);
    }
    return (int) Math.round(sum);
  }

  private static double misfit(Doubt.Sifted sifted, int spare) {
    double sum = 0;
    for (int i = 0; i < sifted.used().size(); i++) {
      double v = sifted.settled().residual(i) / sifted.settled().ties().get(i).sigma();
      sum += v * v;
    }
    return spare == 0 ? 0 : Math.sqrt(sum / spare);
  }

  private static List<BuiltCorner> corners(
      WallFit fit, Doubt.Sifted sifted, Map<Corner, Point> at, Freedom freedom) {
    List<BuiltCorner> corners = new ArrayList<>();
    List<Corner> all = CornerNumber.all(fit.plan);
    for (int i = 0; i < all.size(); i++) {
      Corner c = all.get(i);
      Point planned = c.at(fit.plan).orElseThrow();
      Point built = at.get(c);
      BuiltCorner.Hold hold = BuiltCorner.Hold.DRAWN;
      double within = 0;
      if (built != null) {
        int point = fit.points.get(c);
        hold = freedom.isOpen(point) ? BuiltCorner.Hold.OPEN : BuiltCorner.Hold.HELD;
        within = sifted.settled().deviation(point);
      }
      corners.add(
          new BuiltCorner(
              i + 1, c.part(), c.corner(), planned, built == null ? planned : built, within, hold));
    }
    return corners;
  }

  private static List<BuiltTape> tapes(WallFit fit, Doubt.Sifted sifted, Map<Corner, Point> at) {
    List<BuiltTape> tapes = new ArrayList<>();
    for (Tape tape : fit.readings.tapes()) {
      Optional<Point> from = tape.from().at(fit.plan);
      Optional<Point> to = tape.to().at(fit.plan);
      boolean lies = from.isPresent() && to.isPresent() && !tape.from().equals(tape.to());
      double planned = lies ? from.get().distance(to.get()) : 0;
      double fitted =
          lies
              ? at.getOrDefault(tape.from(), from.get())
                  .distance(at.getOrDefault(tape.to(), to.get()))
              : 0;
      int used = sifted.settled().settled() ? place(sifted.used(), tape) : -1;
      tapes.add(
          new BuiltTape(
              tapes.size(),
              CornerNumber.of(fit.plan, tape.from()).orElse(0),
              CornerNumber.of(fit.plan, tape.to()).orElse(0),
              tape.reads(),
              planned,
              fitted,
              used < 0 ? Optional.empty() : Optional.of(check(sifted.settled(), used)),
              state(fit, sifted, tape)));
    }
    return tapes;
  }

  private static BuiltTape.State state(WallFit fit, Doubt.Sifted sifted, Tape tape) {
    if (tape.use() == AsBuilt.Use.ASIDE) {
      return BuiltTape.State.ASIDE;
    }
    if (place(fit.tapes, tape) < 0) {
      return BuiltTape.State.NOWHERE;
    }
    return place(sifted.used(), tape) < 0 ? BuiltTape.State.DOUBTED : BuiltTape.State.COUNTS;
  }

  /** By identity: the same tape may have been taken twice with the same reading. */
  private static int place(List<Tape> tapes, Tape tape) {
    for (int i = 0; i < tapes.size(); i++) {
      if (tapes.get(i) == tape) {
        return i;
      }
    }
    return -1;
  }

  private static BuiltTape.Check check(Settled settled, int tie) {
    double r = Math.max(0, settled.redundancy(tie));
    double sigma = settled.ties().get(tie).sigma();
    Optional<Double> unseen =
        r < Doubt.CHECKED ? Optional.empty() : Optional.of(Doubt.UNSEEN * sigma / Math.sqrt(r));
    return new BuiltTape.Check(sigma, r, Doubt.test(settled, tie), unseen);
  }

  private static List<DoubtedTape> doubts(AsBuilt readings, Doubt.Sifted sifted) {
    return sifted.doubts().stream()
        .map(
            d ->
                new DoubtedTape(
                    place(readings.tapes(), d.tape()),
                    d.by(),
                    d.test(),
                    d.others().stream().map(t -> place(readings.tapes(), t)).toList(),
                    d.witness()))
        .toList();
  }

  private static List<NextTape> next(WallFit fit, Doubt.Sifted sifted, Freedom freedom) {
    List<NextTape> next = new ArrayList<>();
    for (int[] pair : freedom.closing()) {
      next.add(tape(fit, pair, NextTape.Purpose.SHAPE));
    }
    if (next.isEmpty()) {
      freedom
          .checking(sifted.used().size())
          .ifPresent(pair -> next.add(tape(fit, pair, NextTape.Purpose.CHECK)));
    }
    return next;
  }

  private static NextTape tape(WallFit fit, int[] pair, NextTape.Purpose purpose) {
    int a = number(fit, pair[0]);
    int b = number(fit, pair[1]);
    return new NextTape(Math.min(a, b), Math.max(a, b), purpose);
  }

  private static int number(WallFit fit, int point) {
    return fit.points.entrySet().stream()
        .filter(e -> e.getValue() == point)
        .map(e -> CornerNumber.of(fit.plan, e.getKey()).orElseThrow())
        .min(Integer::compare)
        .orElseThrow();
  }
}
