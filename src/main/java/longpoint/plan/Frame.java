package longpoint.plan;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import longpoint.units.LengthUnit;

/**
 * How a part is framed. Lengths in plan units.
 *
 * @param method trusses, rafters, or nothing but the shape
 * @param spacing centre to centre, &gt; 0
 * @param thickness of one truss or rafter, &gt; 0
 * @param hipSetback end wall to hip girder; empty lets the program choose
 * @param choices what most users leave to the program
 * @param placements what the user puts in or leaves out at places of their own
 */
public record Frame(
    Method method,
    double spacing,
    double thickness,
    Optional<Double> hipSetback,
    FrameChoices choices,
    Placements placements,
    Extras extras) {
  /** What carries the roof. */
  public enum Method {
    TRUSS,
    RAFTER,
    NONE;

    /** As it stands in a plan file. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public Frame {
    Objects.requireNonNull(method);
    Objects.requireNonNull(hipSetback);
    Objects.requireNonNull(choices);
    Objects.requireNonNull(placements);
    Objects.requireNonNull(extras);
  }

  /** A frame with every choice left to the program. */
  public Frame(
      Method method, double spacing, double thickness, Optional<Double> hipSetback, Extras extras) {
    this(method, spacing, thickness, hipSetback, FrameChoices.NONE, Placements.NONE, extras);
  }

  public Frame withChoices(FrameChoices choices) {
    return new Frame(method, spacing, thickness, hipSetback, choices, placements, extras);
  }

  /** The same for another part: without whatever stands at a place. */
  public Frame elsewhere() {
    return withChoices(choices.withRuns(RunChoices.NONE)).withPlacements(Placements.NONE);
  }

  public Frame withPlacements(Placements placements) {
    return new Frame(method, spacing, thickness, hipSetback, choices, placements, extras);
  }

  public Frame withMethod(Method method) {
    return new Frame(method, spacing, thickness, hipSetback, choices, placements, extras);
  }

  public Frame withSpacing(double spacing) {
    return new Frame(method, spacing, thickness, hipSetback, choices, placements, extras);
  }

  public Frame withThickness(double thickness) {
    return new Frame(method, spacing, thickness, hipSetback, choices, placements, extras);
  }

  public Frame withHipSetback(Optional<Double> setback) {
    return new Frame(method, spacing, thickness, setback, choices, placements, extras);
  }

  public static Frame of(LengthUnit unit) {
    return switch (unit) {
      case INCH -> new Frame(Method.TRUSS, 24, 1.5, Optional.empty(), Extras.NONE);
      case MILLIMETRE -> new Frame(Method.TRUSS, 610, 38, Optional.empty(), Extras.NONE);
    };
  }
}
