package longpoint.surface.sweep;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
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
 * Time to sweep one house outline, square to the axes and turned. Run with JMH's own main class.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class HouseBenchmark {
  @Param({
    "a_rect",
    "a_rect_rot",
    "a_L",
    "a_L_rot",
    "a_T",
    "a_T_rot",
    "a_house12",
    "a_house12_rot",
    "a_house16",
    "a_house16_rot",
    "a_bay16",
    "a_bay16_rot",
    "a_courtyard",
    "a_courtyard_rot"
  })
  public String outline;

  private Outline read;

  @Setup
  public void read() {
    read = Outline.even(Path.of("src/test/resources/longpoint/surface/sweep", outline + ".poly"));
    if (!(read.solve() instanceof SweepResult.Solved)) {
      throw new IllegalStateException(outline + " is not solved");
    }
  }

  @Benchmark
  public SweepResult sweep() {
    return read.solve();
  }
}
