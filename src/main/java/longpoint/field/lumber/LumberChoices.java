package longpoint.field.lumber;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import longpoint.units.LengthUnit;

/**
 * What boards are bought and how they are cut. Widths are to count by, not to build by: what
 * carries is for the span tables, the local code or an engineer to say.
 *
 * @param kerf a saw cut takes away, ≥ 0
 * @param lengths boards are sold in, rising, at least one, all &gt; 0
 * @param widths of the boards for each role, &gt; 0
 * @param rakeThickness of a rake board, &gt; 0
 */
public record LumberChoices(
    double kerf, List<Double> lengths, Map<Role, Double> widths, double rakeThickness) {
  public LumberChoices {
    lengths = lengths.stream().sorted().distinct().toList();
    Map<Role, Double> all = new EnumMap<>(Role.class);
    all.putAll(widths);
    widths = Map.copyOf(all);
    boolean known = List.of(Role.values()).stream().allMatch(r -> all.getOrDefault(r, 0.0) > 0);
    if (!(kerf >= 0) || lengths.isEmpty() || !(lengths.get(0) > 0) || !known) {
      throw new IllegalArgumentException("no boards: " + kerf + ", " + lengths + ", " + all);
    }
    if (!(rakeThickness > 0)) {
      throw new IllegalArgumentException("no rake board: " + rakeThickness);
    }
  }

  /**
   * Common practice: 8 to 20 ft boards by twos, or 2.4 to 6 m by threes of a decimetre; an 1/8 in
   * or 3 mm cut; 2x4 blocks and lookouts, 2x8 rafters, 2x10 hips, valleys and ridges, 2x6 fascia
   * and fly rafters, 1x6 rake boards.
   */
  public static LumberChoices of(LengthUnit unit) {
    return switch (unit) {
      case INCH ->
          new LumberChoices(
              0.125,
              List.of(96.0, 120.0, 144.0, 168.0, 192.0, 216.0, 240.0),
              widths(3.5, 7.25, 9.25, 9.25, 5.5, 5.5),
              0.75);
      case MILLIMETRE ->
          new LumberChoices(
              3,
              List.of(
                  2400.0, 2700.0, 3000.0, 3300.0, 3600.0, 3900.0, 4200.0, 4500.0, 4800.0, 5100.0,
                  5400.0, 5700.0, 6000.0),
              widths(89, 184, 235, 235, 140, 140),
              19);
    };
  }

  private static Map<Role, Double> widths(
      double block, double rafter, double hip, double ridge, double fascia, double rake) {
    return Map.of(
        Role.BLOCKING, block,
        Role.RAFTER, rafter,
        Role.HIP, hip,
        Role.RIDGE, ridge,
        Role.FASCIA, fascia,
        Role.RAKE, rake);
  }

  double width(Role role) {
    return widths.get(role);
  }

  /** The longest board sold. */
  double longest() {
    return lengths.get(lengths.size() - 1);
  }
}
