package longpoint.framing;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.surface.Roof;
import longpoint.surface.RoofSurface;

/**
 * Lays out many houses and says what a framer would laugh at. Run by hand:
 *
 * <pre>mvn -q test-compile exec:exec -Dmain=longpoint.framing.LayoutHunt -Dargs="FIRST HOWMANY"
 * </pre>
 *
 * HOWMANY below 0 leaves out the typical ones. {@code show NAME…} writes plans as files instead.
 */
final class LayoutHunt {
  private LayoutHunt() {}

  public static void main(String[] args) throws Exception {
    if (args.length > 1 && args[0].equals("show")) {
      for (int i = 1; i < args.length; i++) {
        Plan plan =
            args[i].matches("[0-9]+")
                ? TypicalPlans.random(Long.parseLong(args[i]))
                : TypicalPlans.all().get(args[i]);
        Files.write(
            Path.of(System.getProperty("to", "."), args[i].replace(' ', '-') + ".json"),
            PlanFile.bytes(plan.withTitle(args[i])));
      }
      return;
    }
    long first = args.length > 0 ? Long.parseLong(args[0]) : 1;
    long count = args.length > 1 ? Long.parseLong(args[1]) : 300;
    Map<String, Plan> plans = new LinkedHashMap<>(count < 0 ? Map.of() : TypicalPlans.all());
    for (long seed = first; seed < first + Math.abs(count); seed++) {
      plans.put("seed " + seed, TypicalPlans.random(seed));
    }
    int bad = 0;
    for (Map.Entry<String, Plan> e : plans.entrySet()) {
      RoofSurface roof = Roof.solve(e.getValue());
      List<String> broken;
      try {
        broken = FrameLaws.broken(e.getValue(), roof, Framing.solve(e.getValue(), roof));
      } catch (RuntimeException x) {
        broken = List.of(x + " " + x.getStackTrace()[0]);
      }
      if (!broken.isEmpty()) {
        bad++;
        System.out.println(e.getKey());
        broken.stream().limit(6).forEach(b -> System.out.println("    " + b));
      }
    }
    System.out.println(plans.size() + " plans, " + bad + " broken");
  }
}
