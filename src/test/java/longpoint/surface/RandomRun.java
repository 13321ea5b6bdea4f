package longpoint.surface;

import java.util.Map;
import java.util.TreeMap;
import longpoint.plan.Plan;
import longpoint.plan.Problem;

/**
 * Solves tens of thousands of made-up houses and looks every roof over. Run by hand:
 *
 * <pre>mvn -q test-compile exec:exec -Dmain=longpoint.surface.RandomRun -Dargs="FIRST HOWMANY"
 * </pre>
 *
 * Prints each seed whose roof breaks a law, and how often each kind of problem was reported.
 */
public final class RandomRun {
  private RandomRun() {}

  public static void main(String[] args) {
    long first = args.length > 0 ? Long.parseLong(args[0]) : 1;
    long count = args.length > 1 ? Long.parseLong(args[1]) : 20_000;
    Map<String, Integer> reports = new TreeMap<>();
    int broken = 0;
    long start = System.nanoTime();
    for (long seed = first; seed < first + count; seed++) {
      Plan plan = plan(seed);
      try {
        RoofSurface roof = Roof.solve(plan);
        for (Problem problem : roof.problems()) {
          reports.merge(problem.level() + " " + kind(problem), 1, Integer::sum);
        }
        RoofLaws.check(roof);
      } catch (AssertionError | RuntimeException e) {
        broken++;
        System.out.println("seed " + seed + ": " + firstLines(String.valueOf(e)));
      }
    }
    System.out.printf(
        "%d plans, %d broken, %.2f ms each%n",
        count, broken, (System.nanoTime() - start) / 1e6 / count);
    reports.forEach((kind, times) -> System.out.println(times + " × " + kind));
  }

  /** A third each: one part of square corners, one of any corners, a house with wings. */
  public static Plan plan(long seed) {
    RandomPlans some = new RandomPlans(seed);
    Plan plan =
        switch ((int) (seed % 3)) {
          case 0 -> Plans.plan(some.house("house"));
          case 1 -> Plans.plan(some.star("star"));
          default -> some.winged();
        };
    return seed % 2 == 0 ? RandomPlans.turned(plan, seed % 359) : plan;
  }

  private static String kind(Problem problem) {
    return problem.message().replaceAll("[0-9/'\" -]+|(star|house|main|wing)", "…");
  }

  private static String firstLines(String text) {
    return text.lines().limit(8).reduce("", (a, b) -> a + " " + b);
  }
}
