package longpoint.deck;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.Deck;
import longpoint.plan.Problem;
import longpoint.wording.Phrase;

/**
 * Planes as roofs have them (gable, hip, hip and valley, stepped at a wing, cut by a dormer) with
 * regular and irregular supports, from a seed.
 *
 * <p>{@code main} checks the laws on as many as asked for: {@code java longpoint.deck.RandomPlanes
 * 20000}.
 */
public final class RandomPlanes {
  private RandomPlanes() {}

  public static void main(String[] args) {
    int count = args.length > 0 ? Integer.parseInt(args[0]) : 20_000;
    Tally tally = new Tally();
    for (int seed = 0; seed < count; seed++) {
      tally.add(seed);
    }
    System.out.println(tally);
  }

  /** What came of a number of planes. */
  static final class Tally {
    int planes;
    int pieces;
    int sheets;
    int bounds;
    int noted;
    int apart;

    void add(long seed) {
      try {
        DeckPlan plan = plane(seed).lay();
        DeckLaws.check(plan);
        planes++;
        pieces += plan.planes().get(0).pieces().size();
        sheets += plan.sheetsBought();
        bounds += plan.lowerBound();
        apart = Math.max(apart, plan.sheetsBought() - plan.lowerBound());
        if (plan.problems().stream().noneMatch(Tally::aboutJoints)) {
          DeckLaws.keepsTheRulesForJoints(plan.planes().get(0));
        } else {
          noted++;
        }
      } catch (AssertionError | RuntimeException e) {
        throw new AssertionError("plane of seed " + seed, e);
      }
    }

    void add(Tally other) {
      planes += other.planes;
      pieces += other.pieces;
      sheets += other.sheets;
      bounds += other.bounds;
      noted += other.noted;
      apart = Math.max(apart, other.apart);
    }

    private static boolean aboutJoints(Problem problem) {
      return !(problem.wrong() instanceof Phrase said && said.key().equals("deck.lastCourse"));
    }

    @Override
    public String toString() {
      return planes
          + " planes, "
          + pieces
          + " pieces, "
          + sheets
          + " sheets, bounds add to "
          + bounds
          + ", at most "
          + apart
          + " over, "
          + noted
          + " with something to note";
    }
  }

  static DeckFixture plane(long seed) {
    Random random = new Random(seed * 7919 + 13);
    double slope = 2 + random.nextInt(17);
    double cos = Math.cos(Math.atan(slope / 12));
    double length = 60 + random.nextInt(600) + (random.nextBoolean() ? random.nextDouble() : 0);
    double height = 20 + random.nextInt(280) + (random.nextBoolean() ? random.nextDouble() : 0);
    Ring outline = outline(random, length, height, cos);
    Deck.Start start = Deck.Start.values()[random.nextInt(4)];
    return DeckFixture.turned(
        slope,
        outline,
        stations(random, length, height),
        DeckFixture.inches(start),
        random.nextInt(4) * 90 + (random.nextBoolean() ? random.nextInt(90) : 0),
        new Point(random.nextInt(2000), random.nextInt(2000)));
  }

  private static Ring outline(Random random, double length, double height, double cos) {
    double left = random.nextInt(3) * height * cos / 2;
    double right = random.nextInt(3) * height * cos / 2;
    double top = length - left - right;
    if (top <= 0) {
      double apex = length * (0.2 + 0.6 * random.nextDouble());
      return Ring.of(0, 0, length, 0, apex, height);
    }
    List<Point> points = new ArrayList<>();
    points.add(new Point(0, 0));
    double a = length * (0.2 + 0.3 * random.nextDouble());
    double b = a + (length - a) * 0.6 * random.nextDouble();
    double notch = Math.min(height * 0.8, (b - a) / 2 / cos);
    switch (random.nextInt(4)) {
      case 0 -> {
        // A wing framed through: two valleys meeting above the eave.
        if (notch > 1) {
          points.add(new Point(a, 0));
          points.add(new Point((a + b) / 2, notch));
          points.add(new Point(b, 0));
        }
        points.add(new Point(length, 0));
        points.add(new Point(length - right, height));
        points.add(new Point(left, height));
      }
      case 1 -> {
        // Spreads beside a valley.
        points.add(new Point(length, 0));
        points.add(new Point(length + height * cos, height));
        points.add(new Point(left, height));
      }
      case 2 -> {
        // Stepped at the top, as behind a taller part.
        points.add(new Point(length, 0));
        points.add(new Point(length - right, height));
        double step = left + top * 0.5;
        points.add(new Point(step, height));
        points.add(new Point(step, height * 0.6));
        points.add(new Point(left * 0.6, height * 0.6));
      }
      default -> {
        points.add(new Point(length, 0));
        points.add(new Point(length - right, height));
        points.add(new Point(left, height));
      }
    }
    return new Ring(points);
  }

  private static double[] stations(Random random, double length, double height) {
    double[] spacings = {12, 16, 19.2, 24};
    double spacing = spacings[random.nextInt(4)];
    double from = -height - random.nextInt(24);
    double to = length + height + 100;
    List<Double> stations = new ArrayList<>();
    boolean irregular = random.nextInt(3) == 0;
    for (double u = from; u < to; ) {
      stations.add(u);
      u +=
          irregular && random.nextInt(5) == 0
              ? spacing * (0.4 + 0.6 * random.nextDouble())
              : spacing;
    }
    return stations.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
