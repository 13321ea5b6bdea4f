package longpoint.editor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import longpoint.framing.TypicalPlans;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Edge;
import longpoint.plan.Frame;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.surface.RandomRun;
import longpoint.wording.Phrase;

/**
 * Tries every cure that is offered on houses as people draw them and on made-up ones, and says for
 * each kind of problem how often there was a cure, how often one took it away, and how often only
 * at the price of an error that was not there before. Run by hand:
 *
 * <pre>mvn -q test-compile exec:exec -Dmain=longpoint.editor.CureHunt -Dargs="FIRST HOWMANY"
 * </pre>
 */
final class CureHunt {
  private CureHunt() {}

  /** What came of the cures of one kind of problem. */
  private static final class Tally {
    int found;
    int offered;
    int cured;
    int worse;
    String example = "";
    String failed = "";
  }

  public static void main(String[] args) {
    long first = args.length > 0 ? Long.parseLong(args[0]) : 1;
    long count = args.length > 1 ? Long.parseLong(args[1]) : 300;
    Map<String, Plan> plans = new LinkedHashMap<>(TypicalPlans.all());
    for (long seed = first; seed < first + count; seed++) {
      plans.put("typical " + seed, knocked(TypicalPlans.random(seed), seed));
      plans.put("any " + seed, knocked(RandomRun.plan(seed), seed));
    }
    Map<String, Tally> tallies = new TreeMap<>();
    plans.forEach((name, plan) -> look(name, plan, tallies));
    System.out.println("kind | found | offered | cured | worse | e.g. | not cured");
    tallies.forEach(
        (key, t) ->
            System.out.printf(
                "%s | %d | %d | %d | %d | %s | %s%n",
                key, t.found, t.offered, t.cured, t.worse, t.example, t.failed));
  }

  private static void look(String name, Plan plan, Map<String, Tally> tallies) {
    List<Problem> before = Pipeline.solve(plan).problems();
    List<String> seen = new ArrayList<>();
    for (Problem problem : before) {
      String key = key(problem);
      if (seen.contains(key)) {
        continue;
      }
      seen.add(key);
      Tally tally = tallies.computeIfAbsent(key, k -> new Tally());
      tally.found++;
      tally.example = tally.example.isEmpty() ? name : tally.example;
      List<Problem> there = before.stream().filter(p -> p.where().equals(problem.where())).toList();
      List<Cure> cures = Cures.at(plan, problem.where(), there);
      tally.offered += cures.isEmpty() ? 0 : 1;
      boolean cured = false;
      boolean clean = false;
      for (Cure cure : cures) {
        Plan after = ((Outcome.Commit) cure.command().on(plan)).plan();
        List<Problem> left = Pipeline.solve(after).problems();
        if (count(left, key, problem) < count(before, key, problem)) {
          cured = true;
          clean |= errors(left) <= errors(before);
        }
      }
      tally.cured += cured ? 1 : 0;
      tally.worse += cured && !clean ? 1 : 0;
      if (!cures.isEmpty() && !cured && tally.failed.isEmpty()) {
        tally.failed = name;
      }
    }
  }

  private static String key(Problem problem) {
    return problem.wrong() instanceof Phrase phrase ? phrase.key() : "plain";
  }

  private static long count(List<Problem> problems, String key, Problem like) {
    return problems.stream()
        .filter(p -> key(p).equals(key) && p.where().equals(like.where()))
        .count();
  }

  private static long errors(List<Problem> problems) {
    return problems.stream().filter(p -> p.level() == Problem.Level.ERROR).count();
  }

  /** With some figures as people mistype them. */
  static Plan knocked(Plan plan, long seed) {
    Random random = new Random(seed);
    Plan out = plan;
    for (Part part : plan.parts()) {
      Part now = part;
      if (random.nextInt(3) == 0) {
        now = now.withFrame(now.frame().withMethod(Frame.Method.RAFTER));
      }
      if (random.nextInt(6) == 0) {
        now = now.withPlateHeight(now.plateHeight() + 24 * random.nextInt(4));
      }
      if (random.nextInt(6) == 0) {
        now = now.withFrame(now.frame().withHipSetback(Optional.of(24.0 * random.nextInt(8))));
      }
      for (int i = 0; i < now.sideCount(); i++) {
        Edge edge = now.edges().get(i);
        if (random.nextInt(8) == 0) {
          now = now.withEdge(i, edge.withOverhang(6.0 * random.nextInt(9)));
        } else if (random.nextInt(12) == 0) {
          now = now.withEdge(i, edge.withHeel(2.0 * random.nextInt(8)));
        }
      }
      out = out.withPart(now);
    }
    return out;
  }
}
