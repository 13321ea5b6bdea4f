package longpoint.plan;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import longpoint.units.Slope;

/**
 * What most users leave to the program about a part's frame. Lengths in plan units.
 *
 * @param bearing number of an eave side that the trusses or rafters bear on; empty lets the program
 *     pick the direction with the lower ridge
 * @param ceiling slope of the bottom chord of scissor trusses; empty for level ceilings
 * @param haul tallest truss that can be hauled in one piece, &gt; 0; empty for common practice
 * @param lookout how the lookouts of gable overhangs lie; empty for flat
 */
public record FrameChoices(
    Optional<Integer> bearing,
    Optional<Slope> ceiling,
    Optional<Double> haul,
    Optional<Lookout> lookout) {
  public static final FrameChoices NONE =
      new FrameChoices(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /** How a lookout lies over the dropped gable truss. */
  public enum Lookout {
    /** Wide face up. */
    FLAT,
    /** Narrow face up. */
    EDGE;

    /** As it stands in a plan file. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public FrameChoices {
    Objects.requireNonNull(bearing);
    Objects.requireNonNull(ceiling);
    Objects.requireNonNull(haul);
    Objects.requireNonNull(lookout);
  }

  public FrameChoices withBearing(int side) {
    return new FrameChoices(Optional.of(side), ceiling, haul, lookout);
  }

  public FrameChoices withCeiling(Slope ceiling) {
    return new FrameChoices(bearing, Optional.of(ceiling), haul, lookout);
  }

  public FrameChoices withHaul(double haul) {
    return new FrameChoices(bearing, ceiling, Optional.of(haul), lookout);
  }

  public FrameChoices withLookout(Lookout lookout) {
    return new FrameChoices(bearing, ceiling, haul, Optional.of(lookout));
  }
}
