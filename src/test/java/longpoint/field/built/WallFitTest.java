package longpoint.field.built;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DiagonalMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.util.Pair;
import org.junit.jupiter.api.Test;

/**
 * The fit of walls to tapes: exact cases, laws of adjustment (from memory of any text on it), and
 * the least squares of Apache Commons Math with two corners held as the independent reference.
 */
class WallFitTest {
  /** A 28 by 20 ft cabin. */
  private static final double[] CABIN = {0, 0, 336, 0, 336, 240, 0, 240};

  /** Drawn 40 by 28 with a leg. */
  private static final double[] ELL = {0, 0, 480, 0, 480, 336, 240, 336, 240, 180, 0, 180};

  @Test
  void perfectReadingsOfWallsThatAreOutLeaveNoResidual() {
    List<Point> stand = Taped.points(0.2, -0.1, 336.3, 0.15, 335.8, 240.4, -0.1, 239.7);
    BuiltWalls walls = all(Taped.walls(CABIN), stand).fitted();
    assertThat(walls.problems()).isEmpty();
    assertThat(walls.spare()).isEqualTo(1);
    for (BuiltTape t : walls.tapes()) {
      assertThat(t.residual()).isCloseTo(0, within(1e-9));
    }
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        assertThat(built(walls, i).distance(built(walls, j)))
            .isCloseTo(stand.get(i).distance(stand.get(j)), within(1e-9));
      }
    }
  }

  private static Point built(BuiltWalls walls, int corner) {
    return walls.corners().get(corner).built();
  }

  /** Every tape between two corners. */
  private static Taped all(Taped to, List<Point> stand) {
    for (int i = 0; i < stand.size(); i++) {
      for (int j = i + 1; j < stand.size(); j++) {
        to.tape(i, j, stand);
      }
    }
    return to;
  }

  /** Three, four, five: a corner drawn 0.3 degrees off is found square. */
  @Test
  void threeFourFiveMakesASquareCorner() {
    BuiltWalls walls =
        Taped.walls(0, 0, 144, 0, 1, 192).tape(0, 1, 144).tape(0, 2, 192).tape(1, 2, 240).fitted();
    assertThat(walls.square().get(0).built()).isCloseTo(90, within(1e-9));
    assertThat(walls.spare()).isZero();
    // Nothing checks a triangle.
    assertThat(walls.tapes()).allMatch(t -> t.check().orElseThrow().unseen().isEmpty());
  }

  @Test
  void theWallsLieOverThePlanAsTheyFitBest() {
    List<Point> stand = Taped.points(0, 0, 336, 3, 335, 243, -2, 240);
    BuiltWalls walls = all(Taped.walls(CABIN), stand).fitted();
    // Inner constraints: the moves have no sum and no turn (B. Harvey, "Datums of networks and free
    // networks", UNSW 2013).
    double x = 0;
    double y = 0;
    double turn = 0;
    for (BuiltCorner c : walls.corners()) {
      Point move = c.built().minus(c.planned());
      x += move.x();
      y += move.y();
      turn += c.built().cross(move);
    }
    assertThat(x).isCloseTo(0, within(1e-8));
    assertThat(y).isCloseTo(0, within(1e-8));
    assertThat(turn).isCloseTo(0, within(1e-5));
  }

  @Test
  void agreesWithTheLeastSquaresOfAnother() {
    Random random = new Random(71);
    for (int round = 0; round < 40; round++) {
      double[] drawn = round % 2 == 0 ? CABIN : ELL;
      List<Point> stand = shaken(drawn, random, 0.8);
      Taped taped = Taped.walls(drawn);
      for (int i = 0; i < stand.size(); i++) {
        for (int j = i + 1; j < stand.size(); j++) {
          double noise = random.nextGaussian() * 0.05;
          taped.tape(i, j, stand.get(i).distance(stand.get(j)) + noise);
        }
      }
      BuiltWalls walls = taped.fitted();
      assertThat(walls.doubts()).isEmpty();
      Reference other = new Reference(Ring.of(drawn).points(), walls.tapes());
      double sum = 0;
      for (int t = 0; t < walls.tapes().size(); t++) {
        BuiltTape tape = walls.tapes().get(t);
        assertThat(tape.fitted()).isCloseTo(other.fitted(t), within(1e-6));
        double redundancy = tape.check().orElseThrow().redundancy();
        assertThat(redundancy).isCloseTo(other.redundancy(t), within(1e-6));
        sum += redundancy;
      }
      int unknown = 2 * stand.size() - 3;
      assertThat(sum).isCloseTo(walls.tapes().size() - unknown, within(1e-9));
      assertThat(walls.spare()).isEqualTo(walls.tapes().size() - unknown);
    }
  }

  private static List<Point> shaken(double[] xy, Random random, double by) {
    List<Point> shaken = new ArrayList<>();
    for (Point p : Ring.of(xy).points()) {
      shaken.add(p.plus(new Point(random.nextGaussian() * by, random.nextGaussian() * by)));
    }
    return shaken;
  }

  /** The first corner and the second's y held; everything measured is the same in any datum. */
  private static final class Reference {
    private final List<Point> meant;
    private final List<BuiltTape> tapes;
    private final LeastSquaresOptimizer.Optimum optimum;
    private final RealMatrix jacobian;
    private final RealMatrix covariances;

    Reference(List<Point> meant, List<BuiltTape> tapes) {
      this.meant = meant;
      this.tapes = tapes;
      double[] start = new double[2 * meant.size() - 3];
      for (int i = 1; i < meant.size(); i++) {
        for (int xy = 0; xy < 2; xy++) {
          int at = column(i, xy);
          if (at >= 0) {
            start[at] = xy == 0 ? meant.get(i).x() : meant.get(i).y();
          }
        }
      }
      double[] reads = tapes.stream().mapToDouble(BuiltTape::reads).toArray();
      double[] weights =
          tapes.stream().mapToDouble(t -> 1 / square(t.check().orElseThrow().sigma())).toArray();
      MultivariateJacobianFunction model =
          at -> new Pair<>(new ArrayRealVector(lengths(at.toArray())), slopes(at.toArray()));
      optimum =
          new LevenbergMarquardtOptimizer()
              .withCostRelativeTolerance(1e-14)
              .withParameterRelativeTolerance(1e-14)
              .optimize(
                  new LeastSquaresBuilder()
                      .start(start)
                      .model(model)
                      .target(reads)
                      .weight(new DiagonalMatrix(weights))
                      .maxEvaluations(1000)
                      .maxIterations(1000)
                      .build());
      jacobian = slopes(optimum.getPoint().toArray());
      covariances = optimum.getCovariances(1e-14);
    }

    private static double square(double a) {
      return a * a;
    }

    private static int column(int point, int xy) {
      return point == 0 ? -1 : point == 1 ? (xy == 0 ? 0 : -1) : 2 * point - 3 + xy;
    }

    private double coordinate(double[] at, int point, int xy) {
      int column = column(point, xy);
      double held = xy == 0 ? meant.get(point).x() : meant.get(point).y();
      return column < 0 ? held : at[column];
    }

    private double[] lengths(double[] at) {
      return tapes.stream()
          .mapToDouble(
              t ->
                  Math.hypot(
                      coordinate(at, t.to() - 1, 0) - coordinate(at, t.from() - 1, 0),
                      coordinate(at, t.to() - 1, 1) - coordinate(at, t.from() - 1, 1)))
          .toArray();
    }

    private RealMatrix slopes(double[] at) {
      double[][] rows = new double[tapes.size()][at.length];
      double[] lengths = lengths(at);
      for (int r = 0; r < rows.length; r++) {
        for (int xy = 0; xy < 2; xy++) {
          int a = tapes.get(r).from() - 1;
          int b = tapes.get(r).to() - 1;
          double share = (coordinate(at, b, xy) - coordinate(at, a, xy)) / lengths[r];
          if (column(b, xy) >= 0) {
            rows[r][column(b, xy)] += share;
          }
          if (column(a, xy) >= 0) {
            rows[r][column(a, xy)] -= share;
          }
        }
      }
      return new Array2DRowRealMatrix(rows);
    }

    double fitted(int tape) {
      return lengths(optimum.getPoint().toArray())[tape];
    }

    double redundancy(int tape) {
      double[] row = jacobian.getRow(tape);
      double[] times = covariances.operate(row);
      double sum = 0;
      for (int i = 0; i < row.length; i++) {
        sum += row[i] * times[i];
      }
      return 1 - sum / square(tapes.get(tape).check().orElseThrow().sigma());
    }
  }

  /** A foot misread is the commonest mistake with a tape (common practice). */
  @Test
  void oneBlunderOfAFootIsFoundAndNamedWhereverItIs() {
    Random random = new Random(5);
    List<Point> stand = shaken(ELL, random, 0.4);
    for (int wrong = 0; wrong < 15; wrong++) {
      for (double by : new double[] {12, -12, 1}) {
        BuiltWalls walls = tapedWithMistake(stand, wrong, by).fitted();
        assertThat(walls.doubts()).hasSize(1);
        DoubtedTape doubt = walls.doubts().get(0);
        assertThat(doubt.place()).isEqualTo(wrong);
        assertThat(doubt.witness()).isEqualTo(DoubtedTape.Witness.TAPES);
        // A foot bends the fit a little; the size is right to half an inch all the same.
        assertThat(doubt.by()).isCloseTo(by, within(0.5));
        assertThat(walls.tapes().get(wrong).state()).isEqualTo(BuiltTape.State.DOUBTED);
        assertThat(walls.tapes().get(wrong).residual()).isCloseTo(-by, within(0.3));
        assertThat(walls.problems())
            .anyMatch(p -> p.level() == Problem.Level.WARNING && p.message().contains("too"));
      }
    }
  }

  private static Taped tapedWithMistake(List<Point> stand, int wrong, double by) {
    Random random = new Random(wrong);
    Taped taped = Taped.walls(ELL);
    int place = 0;
    for (int i = 0; i < stand.size(); i++) {
      for (int j = i + 1; j < stand.size(); j++) {
        double off = random.nextGaussian() * 0.04 + (place++ == wrong ? by : 0);
        taped.tape(i, j, stand.get(i).distance(stand.get(j)) + off);
      }
    }
    return taped;
  }

  /** One spare reading tells that something is wrong, never what; the plan may. */
  @Test
  void withOneSpareTapeThePlanIsAsked() {
    List<Point> stand = Taped.points(0, 0, 336.1, 0, 336.2, 240.1, 0, 240);
    Taped taped = Taped.walls(CABIN).tape(0, 1, stand).tape(1, 2, stand).tape(2, 3, stand);
    BuiltWalls walls = taped.tape(3, 0, stand).tape(0, 2, stand).tape(1, 3, 412.9 + 12).fitted();
    assertThat(walls.doubts()).hasSize(1);
    assertThat(walls.doubts().get(0).place()).isEqualTo(5);
    assertThat(walls.doubts().get(0).witness()).isEqualTo(DoubtedTape.Witness.PLAN);
    assertThat(walls.doubts().get(0).others()).hasSize(5);
  }

  @Test
  void whatNothingCanTellIsSaidToBeSo() {
    // All six a little off the plan, and off each other by an inch or so.
    BuiltWalls walls =
        Taped.walls(CABIN)
            .tape(0, 1, 336.8)
            .tape(1, 2, 240.7)
            .tape(2, 3, 336.6)
            .tape(3, 0, 240.9)
            .tape(0, 2, 413.9)
            .tape(1, 3, 412.2)
            .fitted();
    assertThat(walls.doubts()).hasSize(1);
    assertThat(walls.doubts().get(0).witness()).isEqualTo(DoubtedTape.Witness.NONE);
    assertThat(walls.tapes()).allMatch(t -> t.state() == BuiltTape.State.COUNTS);
  }

  @Test
  void fourSidesAloneLeaveTheShapeOpenAndADiagonalCloses() {
    List<Point> stand = Taped.points(0, 0, 336, 0, 336, 240, 0, 240);
    Taped taped = Taped.walls(CABIN).tape(0, 1, stand).tape(1, 2, stand).tape(2, 3, stand);
    BuiltWalls open = taped.tape(3, 0, stand).fitted();
    assertThat(open.corners()).allMatch(c -> c.hold() == BuiltCorner.Hold.OPEN);
    assertThat(open.next()).extracting(NextTape::purpose).containsExactly(NextTape.Purpose.SHAPE);
    NextTape next = open.next().get(0);
    BuiltWalls closed = taped.tape(next.from() - 1, next.to() - 1, stand).fitted();
    assertThat(closed.corners()).allMatch(c -> c.hold() == BuiltCorner.Hold.HELD);
    // And now one that checks them.
    assertThat(closed.next()).extracting(NextTape::purpose).containsExactly(NextTape.Purpose.CHECK);
  }

  @Test
  void takingWhatIsProposedAlwaysClosesTheShape() {
    for (int seed = 0; seed < 30; seed++) {
      Random random = new Random(seed);
      List<Point> stand = shaken(ELL, random, 0.5);
      Taped taped = Taped.walls(ELL);
      for (int i = 0; i < 6; i++) {
        taped.tape(i, (i + 1) % 6, stand);
      }
      for (NextTape next : taped.fitted().next()) {
        taped.tape(next.from() - 1, next.to() - 1, stand);
      }
      BuiltWalls walls = taped.fitted();
      assertThat(walls.corners()).allMatch(c -> c.hold() == BuiltCorner.Hold.HELD);
      for (BuiltTape t : walls.tapes()) {
        assertThat(t.residual()).isCloseTo(0, within(1e-7));
      }
    }
  }

  /** A corner in the middle of a straight wall: tapes along the wall say nothing of a bow. */
  @Test
  void tapesInOneLineDoNotHoldACornerAcrossIt() {
    BuiltWalls walls =
        Taped.walls(0, 0, 168, 0, 336, 0, 336, 240, 0, 240)
            .tape(0, 1, 168.02)
            .tape(1, 2, 168.03)
            .tape(0, 2, 336.0)
            .fitted();
    assertThat(walls.corners().get(1).hold()).isEqualTo(BuiltCorner.Hold.OPEN);
    assertThat(walls.corners().get(1).built().y()).isCloseTo(0, within(1e-6));
    assertThat(walls.corners().get(4).hold()).isEqualTo(BuiltCorner.Hold.DRAWN);
  }

  @Test
  void turnedMirroredAndFarAwayIsTheSame() {
    Random random = new Random(19);
    List<Point> stand = shaken(ELL, random, 0.5);
    BuiltWalls here = tapedWithMistake(stand, 3, 12).fitted();
    for (double turn : new double[] {0, 33, 90, 217}) {
      for (int mirror : new int[] {1, -1}) {
        double[] moved = new double[ELL.length];
        for (int i = 0; i < ELL.length; i += 2) {
          double x = mirror * ELL[i];
          double sin = Math.sin(Math.toRadians(turn));
          double cos = Math.cos(Math.toRadians(turn));
          moved[i] = 4e5 + x * cos - ELL[i + 1] * sin;
          moved[i + 1] = -3e5 + x * sin + ELL[i + 1] * cos;
        }
        Plan same = tapedWithMistake(stand, 3, 12).plan();
        Plan there =
            Plan.empty(same.unit()).withPart(Taped.part("main", moved)).withOnSite(same.onSite());
        BuiltWalls far = BuiltWalls.of(there);
        for (int i = 0; i < here.tapes().size(); i++) {
          assertThat(far.tapes().get(i).fitted())
              .isCloseTo(here.tapes().get(i).fitted(), within(1e-6));
        }
        for (int i = 0; i < here.corners().size(); i++) {
          assertThat(far.corners().get(i).moved())
              .isCloseTo(here.corners().get(i).moved(), within(1e-6));
        }
        assertThat(far.doubts()).extracting(DoubtedTape::place).containsExactly(3);
      }
    }
  }

  /** The normal equations: residuals, weighted, are square to every way the corners may go. */
  @Test
  void residualsAreSquareToEveryMove() {
    Random random = new Random(8);
    List<Point> stand = shaken(ELL, random, 0.5);
    Plan plan = tapedWithMistake(stand, 0, 0).plan();
    WallFit fit = WallFit.of(plan);
    Network.Settled settled = fit.settle(fit.tapes);
    double[] sum = new double[12];
    for (int t = 0; t < fit.tapes.size(); t++) {
      double[] row = new double[12];
      settled.ties().get(t).slope(settled.at(), row);
      double sigma = settled.ties().get(t).sigma();
      for (int j = 0; j < 12; j++) {
        sum[j] += row[j] * settled.residual(t) / (sigma * sigma);
      }
    }
    for (double s : sum) {
      assertThat(s).isCloseTo(0, within(1e-7));
    }
  }

  @Test
  void aWingGoesWithTheWallItStandsAgainst() {
    Plan plan =
        Taped.walls(CABIN)
            .tape(0, 1, 337)
            .tape(1, 2, 241)
            .tape(2, 3, 337)
            .tape(3, 0, 241)
            .tape(0, 2, Math.hypot(337, 241))
            .tape(1, 3, Math.hypot(337, 241))
            .plan();
    Plan with = plan.withPart(Taped.part("wing", 100, 240, 200, 240, 200, 340, 100, 340));
    BuiltWalls walls = BuiltWalls.of(with);
    // The walls are an inch bigger each way; the wing's corners stand on the north one.
    Segment north = new Segment(built(walls, 2), built(walls, 3));
    assertThat(north.length()).isCloseTo(337, within(1e-6));
    assertThat(north.offset(built(walls, 4))).isCloseTo(0, within(1e-6));
    assertThat(north.offset(built(walls, 5))).isCloseTo(0, within(1e-6));
    assertThat(built(walls, 4).y()).isGreaterThan(240.25);
    assertThat(walls.corners().get(6).hold()).isEqualTo(BuiltCorner.Hold.DRAWN);
  }
}
