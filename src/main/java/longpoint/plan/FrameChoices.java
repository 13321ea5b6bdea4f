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
    Optional<Ridge> ridge,
    Optional<Slope> ceiling,
    Optional<Double> haul,
    Optional<Lookout> lookout) {
  public static final FrameChoices NONE =
      new FrameChoices(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /** Of the two ways a ridge could run over a rectangle of eaves. */
  public enum Ridge {
    /** Along the longer walls as a rule, trusses spanning the short way. */
    LOW,
    /** The other way: trusses span the long way and the ridge is taller. */
    HIGH;

    /** As it stands in a plan file. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

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
    Objects.requireNonNull(ridge);
    Objects.requireNonNull(ceiling);
    Objects.requireNonNull(haul);
    Objects.requireNonNull(lookout);
  }

  public FrameChoices withRidge(Ridge ridge) {
    return new FrameChoices(Optional.of(ridge), ceiling, haul, lookout);
  }

  public FrameChoices withCeiling(Slope ceiling) {
    return new FrameChoices(ridge, Optional.of(ceiling), haul, lookout);
  }

  public FrameChoices withHaul(double haul) {
    return new FrameChoices(ridge, ceiling, Optional.of(haul), lookout);
  }

  public FrameChoices withLookout(Lookout lookout) {
    return new FrameChoices(ridge, ceiling, haul, Optional.of(lookout));
  }
}
