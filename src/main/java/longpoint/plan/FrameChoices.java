package longpoint.plan;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import longpoint.units.Slope;

/**
 * What most users leave to the program about a part's frame. Lengths in plan units.
 *
 * @param ridge which of the two ways the ridge runs; empty for the lower
 * @param ceiling slope of the bottom chord of scissor trusses; empty for level ceilings
 * @param haul tallest truss that can be hauled in one piece, &gt; 0; empty for common practice
 * @param lookout how the lookouts of gable overhangs lie; empty for flat
 * @param lookoutPlaces what the places of lookouts follow; empty for the plan's spacing
 * @param flats where the level tops of step-down trusses lie; empty for flush with the frame
 * @param girderPlies trusses side by side in every girder that the user did not place, ≥ 1; empty
 *     for one
 * @param runs about the straight runs of the part
 * @param sticks about its rafters
 */
public record FrameChoices(
    Optional<Ridge> ridge,
    Optional<Slope> ceiling,
    Optional<Double> haul,
    Optional<Lookout> lookout,
    Optional<LookoutPlaces> lookoutPlaces,
    Optional<Flats> flats,
    Optional<Integer> girderPlies,
    RunChoices runs,
    StickChoices sticks) {
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

  /** What the places of lookouts follow. */
  public enum LookoutPlaces {
    /** The plan's first distance and spacing. */
    SPACING,
    /** The long edges of the sheets, each with a lookout under it. */
    SHEETS;

    /** As it stands in a plan file. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Where the level tops of a hip end's trusses lie. */
  public enum Flats {
    /** Their outer edge in the frame plane. */
    FLUSH,
    /** Held down for frames of 2x4 laid flat over them. */
    LOW;

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
    Objects.requireNonNull(lookoutPlaces);
    Objects.requireNonNull(flats);
    Objects.requireNonNull(girderPlies);
    Objects.requireNonNull(runs);
    Objects.requireNonNull(sticks);
  }

  /** With nothing said about the rest. */
  public FrameChoices(
      Optional<Ridge> ridge,
      Optional<Slope> ceiling,
      Optional<Double> haul,
      Optional<Lookout> lookout) {
    this(
        ridge,
        ceiling,
        haul,
        lookout,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        RunChoices.NONE,
        StickChoices.NONE);
  }

  public FrameChoices withRidge(Ridge ridge) {
    return new FrameChoices(
        Optional.of(ridge),
        ceiling,
        haul,
        lookout,
        lookoutPlaces,
        flats,
        girderPlies,
        runs,
        sticks);
  }

  public FrameChoices withCeiling(Slope ceiling) {
    return new FrameChoices(
        ridge,
        Optional.of(ceiling),
        haul,
        lookout,
        lookoutPlaces,
        flats,
        girderPlies,
        runs,
        sticks);
  }

  public FrameChoices withCeiling(Optional<Slope> ceiling) {
    return new FrameChoices(
        ridge, ceiling, haul, lookout, lookoutPlaces, flats, girderPlies, runs, sticks);
  }

  public FrameChoices withHaul(double haul) {
    return new FrameChoices(
        ridge,
        ceiling,
        Optional.of(haul),
        lookout,
        lookoutPlaces,
        flats,
        girderPlies,
        runs,
        sticks);
  }

  public FrameChoices withHaul(Optional<Double> haul) {
    return new FrameChoices(
        ridge, ceiling, haul, lookout, lookoutPlaces, flats, girderPlies, runs, sticks);
  }

  public FrameChoices withLookout(Lookout lookout) {
    return new FrameChoices(
        ridge,
        ceiling,
        haul,
        Optional.of(lookout),
        lookoutPlaces,
        flats,
        girderPlies,
        runs,
        sticks);
  }

  public FrameChoices withLookoutPlaces(LookoutPlaces places) {
    return new FrameChoices(
        ridge, ceiling, haul, lookout, Optional.of(places), flats, girderPlies, runs, sticks);
  }

  public FrameChoices withFlats(Flats flats) {
    return new FrameChoices(
        ridge,
        ceiling,
        haul,
        lookout,
        lookoutPlaces,
        Optional.of(flats),
        girderPlies,
        runs,
        sticks);
  }

  public FrameChoices withGirderPlies(int plies) {
    return new FrameChoices(
        ridge, ceiling, haul, lookout, lookoutPlaces, flats, Optional.of(plies), runs, sticks);
  }

  public FrameChoices withRuns(RunChoices runs) {
    return new FrameChoices(
        ridge, ceiling, haul, lookout, lookoutPlaces, flats, girderPlies, runs, sticks);
  }

  public FrameChoices withSticks(StickChoices sticks) {
    return new FrameChoices(
        ridge, ceiling, haul, lookout, lookoutPlaces, flats, girderPlies, runs, sticks);
  }
}
