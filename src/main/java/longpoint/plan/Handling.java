package longpoint.plan;

import java.util.Collections;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What the user knows of weights, loads and restraint and the program cannot: the supplier's
 * figures, the designer's loads. Plans in inches take pounds, those in millimetres kilograms and
 * kilonewtons.
 */
public record Handling(Weights weights, Loads loads, Restraint restraint) {
  /** Nothing typed. */
  public static final Handling NONE = new Handling(Weights.USUAL, Loads.NONE, Restraint.USUAL);

  /**
   * Weights that stand before those the program estimates.
   *
   * @param lumber density, lb/ft³ or kg/m³
   * @param panel of the sheathing, lb/ft² or kg/m²
   * @param trusses mark to the weight of one truss, all its plies, lb or kg
   */
  public record Weights(
      Optional<Double> lumber, Optional<Double> panel, Map<String, Double> trusses, Extras extras) {
    public static final Weights USUAL =
        new Weights(Optional.empty(), Optional.empty(), Map.of(), Extras.NONE);

    public Weights {
      Objects.requireNonNull(lumber);
      Objects.requireNonNull(panel);
      Objects.requireNonNull(extras);
      trusses = Collections.unmodifiableMap(new TreeMap<>(trusses));
    }

    public Weights withLumber(Optional<Double> density) {
      return new Weights(density, panel, trusses, extras);
    }

    public Weights withPanel(Optional<Double> weight) {
      return new Weights(lumber, weight, trusses, extras);
    }

    /** With one truss's weight put in, or taken out where it is empty. */
    public Weights withTruss(String mark, Optional<Double> weight) {
      Map<String, Double> changed = new TreeMap<>(trusses);
      weight.ifPresentOrElse(w -> changed.put(mark, w), () -> changed.remove(mark));
      return new Weights(lumber, panel, changed, extras);
    }
  }

  /**
   * Loads from the designer, the code or the building department, lb/ft² or kN/m²; the program
   * knows none of its own.
   *
   * @param dead of roof and framing
   * @param deadOn what ground its square foot is measured on
   * @param live of the roof, on level ground
   * @param snow on level ground
   * @param ceiling dead load hung from the bottom chords, on level ground between the walls
   */
  public record Loads(
      Optional<Double> dead,
      DeadOn deadOn,
      Optional<Double> live,
      Optional<Double> snow,
      Optional<Double> ceiling,
      Extras extras) {
    public static final Loads NONE =
        new Loads(
            Optional.empty(),
            DeadOn.LEVEL,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Extras.NONE);

    /** What a square foot of dead load is a square foot of. */
    public enum DeadOn {
      /** Of level ground beneath. */
      LEVEL("level"),
      /** Of the roof itself. */
      SLOPE("slope");

      private final String key;

      DeadOn(String key) {
        this.key = key;
      }

      /** As it stands in a plan file. */
      public String key() {
        return key;
      }
    }

    public Loads {
      Objects.requireNonNull(dead);
      Objects.requireNonNull(deadOn);
      Objects.requireNonNull(live);
      Objects.requireNonNull(snow);
      Objects.requireNonNull(ceiling);
      Objects.requireNonNull(extras);
    }

    /** Whether there is a load at all. */
    public boolean any() {
      return dead.isPresent() || live.isPresent() || snow.isPresent() || ceiling.isPresent();
    }

    public Loads withDead(Optional<Double> load) {
      return new Loads(load, deadOn, live, snow, ceiling, extras);
    }

    public Loads withDeadOn(DeadOn on) {
      return new Loads(dead, on, live, snow, ceiling, extras);
    }

    public Loads withLive(Optional<Double> load) {
      return new Loads(dead, deadOn, load, snow, ceiling, extras);
    }

    public Loads withSnow(Optional<Double> load) {
      return new Loads(dead, deadOn, live, load, ceiling, extras);
    }

    public Loads withCeiling(Optional<Double> load) {
      return new Loads(dead, deadOn, live, snow, load, extras);
    }
  }

  /**
   * What the supplier's documents say of temporary restraint.
   *
   * @param rows farthest from row to row along the top chords, plan units
   * @param bottomRows farthest from row to row along the bottom chords, plan units
   * @param board length of the boards, plan units
   */
  public record Restraint(
      Optional<Double> rows, Optional<Double> bottomRows, Optional<Double> board, Extras extras) {
    public static final Restraint USUAL =
        new Restraint(Optional.empty(), Optional.empty(), Optional.empty(), Extras.NONE);

    public Restraint {
      Objects.requireNonNull(rows);
      Objects.requireNonNull(bottomRows);
      Objects.requireNonNull(board);
      Objects.requireNonNull(extras);
    }

    public Restraint withRows(Optional<Double> farthest) {
      return new Restraint(farthest, bottomRows, board, extras);
    }

    public Restraint withBottomRows(Optional<Double> farthest) {
      return new Restraint(rows, farthest, board, extras);
    }

    public Restraint withBoard(Optional<Double> length) {
      return new Restraint(rows, bottomRows, length, extras);
    }
  }

  public Handling {
    Objects.requireNonNull(weights);
    Objects.requireNonNull(loads);
    Objects.requireNonNull(restraint);
  }

  public Handling withWeights(Weights weights) {
    return new Handling(weights, loads, restraint);
  }

  public Handling withLoads(Loads loads) {
    return new Handling(weights, loads, restraint);
  }

  public Handling withRestraint(Restraint restraint) {
    return new Handling(weights, loads, restraint);
  }
}
