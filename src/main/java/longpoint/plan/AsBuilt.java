package longpoint.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import longpoint.plan.PlanDimension.Corner;
import longpoint.units.LengthUnit;

/**
 * The walls as somebody taped them before the roof goes on.
 *
 * @param accuracy of one tape reading, one standard deviation in plan units, &gt; 0; empty for
 *     {@link #usualAccuracy}
 * @param tapes in the order they were taken
 * @param plates heights of the plate, in the order they were taken
 */
public record AsBuilt(
    Optional<Double> accuracy, List<Tape> tapes, List<PlateReading> plates, Extras extras) {
  public static final AsBuilt NONE =
      new AsBuilt(Optional.empty(), List.of(), List.of(), Extras.NONE);

  /** Whether a reading counts. */
  public enum Use {
    COUNTS,
    /** Kept on the list, left out of the sums: mistrusted, or to be taken again. */
    ASIDE
  }

  /**
   * A length from corner to corner, level.
   *
   * @param reads in plan units
   */
  public record Tape(Corner from, Corner to, double reads, Use use, Extras extras) {
    public Tape {
      Objects.requireNonNull(from);
      Objects.requireNonNull(to);
      Objects.requireNonNull(use);
      Objects.requireNonNull(extras);
    }

    public static Tape of(Corner from, Corner to, double reads) {
      return new Tape(from, to, reads, Use.COUNTS, Extras.NONE);
    }

    public Tape reading(double reads) {
      return new Tape(from, to, reads, use, extras);
    }

    public Tape used(Use use) {
      return new Tape(from, to, reads, use, extras);
    }

    /** Whether it was taken between the same two corners, in whichever direction. */
    public boolean between(Corner a, Corner b) {
      return from.equals(a) && to.equals(b) || from.equals(b) && to.equals(a);
    }
  }

  /**
   * Height of the top of the plate over a corner.
   *
   * @param reads above the plan's datum, plan units
   */
  public record PlateReading(Corner at, double reads, Use use, Extras extras) {
    public PlateReading {
      Objects.requireNonNull(at);
      Objects.requireNonNull(use);
      Objects.requireNonNull(extras);
    }

    public static PlateReading of(Corner at, double reads) {
      return new PlateReading(at, reads, Use.COUNTS, Extras.NONE);
    }

    public PlateReading reading(double reads) {
      return new PlateReading(at, reads, use, extras);
    }

    public PlateReading used(Use use) {
      return new PlateReading(at, reads, use, extras);
    }
  }

  public AsBuilt {
    Objects.requireNonNull(accuracy);
    tapes = List.copyOf(tapes);
    plates = List.copyOf(plates);
    Objects.requireNonNull(extras);
  }

  /**
   * What a careful reading of a steel tape, hooked on one corner of framing and read at another, is
   * good for: a sixteenth of an inch, 1.5 mm (common practice).
   */
  public static double usualAccuracy(LengthUnit unit) {
    return switch (unit) {
      case INCH -> 0.0625;
      case MILLIMETRE -> 1.5;
    };
  }

  /** Whether nothing was measured. */
  public boolean isEmpty() {
    return tapes.isEmpty() && plates.isEmpty();
  }

  public AsBuilt withAccuracy(Optional<Double> accuracy) {
    return new AsBuilt(accuracy, tapes, plates, extras);
  }

  public AsBuilt withTapes(List<Tape> tapes) {
    return new AsBuilt(accuracy, tapes, plates, extras);
  }

  public AsBuilt withPlates(List<PlateReading> plates) {
    return new AsBuilt(accuracy, tapes, plates, extras);
  }

  AsBuilt withCorners(Function<Corner, Optional<Corner>> edit) {
    List<Tape> taped = new ArrayList<>();
    for (Tape t : tapes) {
      Optional<Corner> from = edit.apply(t.from());
      Optional<Corner> to = edit.apply(t.to());
      if (from.isPresent() && to.isPresent()) {
        taped.add(new Tape(from.get(), to.get(), t.reads(), t.use(), t.extras()));
      }
    }
    List<PlateReading> read = new ArrayList<>();
    for (PlateReading p : plates) {
      edit.apply(p.at())
          .ifPresent(at -> read.add(new PlateReading(at, p.reads(), p.use(), p.extras())));
    }
    return new AsBuilt(accuracy, taped, read, extras);
  }
}
