package longpoint.pipeline;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import longpoint.framing.Framing;
import longpoint.framing.FramingSet;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.surface.Roof;
import longpoint.surface.RoofMemory;
import longpoint.surface.RoofSurface;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What each step of a drag costs on a plan of five parts and 40 sides: one corner of one part is
 * moved on and on, so that no step has been solved before. Run with JMH's own main class.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class DragBenchmark {
  @Param({"hall/6", "east/4", "west/0", "porch/0", "garage/1"})
  public String corner;

  private final RoofMemory memory = new RoofMemory();
  private Plan plan;
  private Plan moved;
  private RoofSurface roof;
  private int step;

  @Setup
  public void read() throws Exception {
    plan = PlanFile.read(Path.of("sample-plans/heronsmere-lodge.json")).plan();
    moved = next();
    roof = Roof.solve(moved, memory);
  }

  @Benchmark
  public Design sketch() {
    return Pipeline.sketch(next(), memory);
  }

  @Benchmark
  public RoofSurface surface() {
    return Roof.solve(next(), memory);
  }

  @Benchmark
  public FramingSet framing() {
    return Framing.solve(moved, roof);
  }

  /** Never twice the same place: some thousandths of an inch further each time, to and fro. */
  private Plan next() {
    String[] at = corner.split("/");
    Part part = plan.part(at[0]).orElseThrow();
    int number = Integer.parseInt(at[1]);
    List<Point> points = new ArrayList<>(part.outline().points());
    double off = 6 * Math.sin(++step * 0.01);
    points.set(number, points.get(number).plus(new Point(off, off / 2)));
    return plan.withPart(part.withShape(new Ring(points), part.holes(), part.edges()));
  }
}
