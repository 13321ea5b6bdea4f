package longpoint.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import longpoint.units.Slope;

/**
 * The trusses as the supplier lists them.
 *
 * @param from what the list came in, such as the name of a file; may be empty
 * @param trusses row by row
 */
public record Supplied(String from, List<Row> trusses, Extras extras) {
  public static final Supplied NONE = new Supplied("", List.of(), Extras.NONE);

  /**
   * One row. What the list does not say is empty; lengths in plan units.
   *
   * @param line of the file it stood in, from 1; 0 if it was typed
   * @param mark the supplier's; may be empty
   * @param quantity how many, at least 1
   * @param figures what it says of the truss
   */
  public record Row(int line, String mark, int quantity, Figures figures, Extras extras) {
    public Row {
      Objects.requireNonNull(mark);
      Objects.requireNonNull(figures);
      Objects.requireNonNull(extras);
      if (quantity < 1) {
        throw new IllegalArgumentException("a row of " + quantity + " trusses");
      }
    }
  }

  /**
   * Sizes of a truss as far as the list gives them. What it says once for both ends stands at one.
   *
   * @param span outside to outside of the bearings
   * @param height over all
   * @param slope of the top chord at one end
   * @param otherSlope at the other
   * @param overhang level length of the tail at one end
   * @param otherOverhang at the other
   * @param heel plumb, at the outside of the bearing at one end
   * @param otherHeel at the other
   * @param plies side by side
   */
  public record Figures(
      Optional<Double> span,
      Optional<Double> height,
      Optional<Slope> slope,
      Optional<Slope> otherSlope,
      Optional<Double> overhang,
      Optional<Double> otherOverhang,
      Optional<Double> heel,
      Optional<Double> otherHeel,
      Optional<Integer> plies) {
    public static final Figures NONE =
        new Figures(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    public Figures {
      Objects.requireNonNull(span);
      Objects.requireNonNull(height);
      Objects.requireNonNull(slope);
      Objects.requireNonNull(otherSlope);
      Objects.requireNonNull(overhang);
      Objects.requireNonNull(otherOverhang);
      Objects.requireNonNull(heel);
      Objects.requireNonNull(otherHeel);
      Objects.requireNonNull(plies);
    }
  }

  public Supplied {
    Objects.requireNonNull(from);
    trusses = List.copyOf(trusses);
    Objects.requireNonNull(extras);
  }

  public boolean isEmpty() {
    return trusses.isEmpty();
  }
}
