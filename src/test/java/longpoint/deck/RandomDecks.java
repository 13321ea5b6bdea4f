package longpoint.deck;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import longpoint.framing.Framing;
import longpoint.framing.FramingSet;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Deck;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Part;
import longpoint.plan.PlacedTruss;
import longpoint.plan.Placements;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.surface.RandomRun;
import longpoint.surface.Roof;
import longpoint.surface.RoofSurface;
import longpoint.wording.Phrase;

/**
 * Made-up houses framed and sheathed: square and odd corners, wings, hips, valleys; trusses and
 * rafters at four spacings, trusses and girders put where the layout would not have them, some
 * twice at one place, which leaves bays of every width.
 *
 * <p>{@code main} checks the laws on as many as asked for and prints each seed that breaks one:
 * {@code java longpoint.deck.RandomDecks 1 20000}.
 */
public final class RandomDecks {
  private static final double[] SPACINGS = {12, 16, 19.2, 24};

  private RandomDecks() {}

  public static void main(String[] args) {
    long first = args.length > 0 ? Long.parseLong(args[0]) : 1;
    long count = args.length > 1 ? Long.parseLong(args[1]) : 20_000;
    Tally tally = new Tally();
    int broken = 0;
    for (long seed = first; seed < first + count; seed++) {
      try {
        tally.add(seed);
      } catch (AssertionError e) {
        broken++;
        System.out.println(e.getMessage() + ": " + e.getCause());
      }
    }
    System.out.println(tally + ", " + broken + " broken");
  }

  /** What came of a number of houses. */
  static final class Tally {
    int plans;
    int planes;
    int pieces;
    int joints;
    final Map<String, Integer> told = new TreeMap<>();

    void add(long seed) {
      try {
        Plan plan = plan(seed);
        RoofSurface surface = Roof.solve(plan);
        FramingSet framing = Framing.solve(plan, surface);
        DeckPlan deck = Sheathing.lay(plan, surface, framing);
        DeckLaws.check(deck);
        Set<String> excused =
            deck.problems().stream()
                .filter(Tally::aboutJoints)
                .map(Problem::where)
                .collect(Collectors.toSet());
        deck.problems().forEach(p -> told.merge(key(p), 1, Integer::sum));
        for (PlaneDeck plane : deck.planes()) {
          if (!excused.contains(plane.plane())) {
            DeckLaws.keepsTheRulesForJoints(plane);
            joints += plane.courses().stream().mapToInt(c -> c.joints().size()).sum();
          }
          pieces += plane.pieces().size();
        }
        plans++;
        planes += deck.planes().size();
      } catch (AssertionError | RuntimeException e) {
        throw new AssertionError("house of seed " + seed, e);
      }
    }

    private static boolean aboutJoints(Problem problem) {
      return Set.of("deck.noSupports", "deck.unsupported", "deck.stagger").contains(key(problem));
    }

    private static String key(Problem problem) {
      return problem.wrong() instanceof Phrase said ? said.key() : problem.message();
    }

    @Override
    public String toString() {
      return plans
          + " houses, "
          + planes
          + " planes, "
          + pieces
          + " pieces, "
          + joints
          + " joints on supports, told: "
          + told;
    }
  }

  static Plan plan(long seed) {
    Random random = new Random(seed * 31 + 7);
    Plan plan = RandomRun.plan(seed);
    List<Part> parts = new ArrayList<>();
    for (Part part : plan.parts()) {
      Deck.Start start = Deck.Start.values()[random.nextInt(3)];
      Deck deck = part.deck().withStart(start);
      if (random.nextInt(4) == 0) {
        deck = deck.withFirstCourse(Optional.of(12.0 + random.nextInt(37)));
      }
      Frame frame =
          new Frame(
              random.nextInt(4) == 0 ? Frame.Method.RAFTER : Frame.Method.TRUSS,
              SPACINGS[random.nextInt(SPACINGS.length)],
              1.5,
              Optional.empty(),
              Extras.NONE);
      parts.add(part.withDeck(deck).withFrame(frame.withPlacements(placements(part, random))));
    }
    return plan.withParts(parts);
  }

  private static Placements placements(Part part, Random random) {
    Bounds box = part.outline().bounds();
    List<PlacedTruss> placed = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      Point at =
          new Point(
              box.minX() + random.nextDouble() * box.width(),
              box.minY() + random.nextDouble() * box.height());
      PlacedTruss.Kind kind = PlacedTruss.Kind.values()[random.nextInt(2)];
      PlacedTruss truss =
          new PlacedTruss(at, Optional.empty(), kind, 1 + random.nextInt(3), Extras.NONE);
      placed.add(truss);
      if (random.nextInt(3) == 0) {
        placed.add(truss);
      }
    }
    List<Point> leftOut =
        random.nextInt(3) == 0
            ? List.of(new Point(box.middle().x(), box.minY() + 0.3 * box.height()))
            : List.of();
    return new Placements(placed, leftOut, List.of());
  }
}
