package longpoint.field.lumber;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import longpoint.plan.Buying;
import longpoint.plan.Plan;
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

  /** What is usual, see {@link Buying#of}. */
  public static LumberChoices of(LengthUnit unit) {
    return of(Buying.of(unit).boards());
  }

  /** The plan's, and the usual one for what cannot be meant. */
  public static LumberChoices of(Plan plan) {
    Buying.Boards own = plan.buying().boards();
    Buying.Boards usual = Buying.of(plan.unit()).boards();
    List<Double> lengths = own.lengths().stream().filter(l -> sold(l, plan.unit())).toList();
    return of(
        new Buying.Boards(
            own.kerf() >= 0 && own.kerf() < usual.lengths().get(0) / 8 ? own.kerf() : usual.kerf(),
            lengths.isEmpty() ? usual.lengths() : lengths,
            meant(own.blocking(), usual.blocking()),
            meant(own.rafter(), usual.rafter()),
            meant(own.hip(), usual.hip()),
            meant(own.ridge(), usual.ridge()),
            meant(own.fascia(), usual.fascia()),
            meant(own.rake(), usual.rake()),
            meant(own.rakeThickness(), usual.rakeThickness())));
  }

  /** From one foot to a hundred. */
  private static boolean sold(double length, LengthUnit unit) {
    double inches = unit.toMillimetres(length) / LengthUnit.MM_PER_INCH;
    return inches >= 11 && inches <= 1200;
  }

  private static double meant(double width, double usual) {
    return width > 0 && Double.isFinite(width) ? width : usual;
  }

  private static LumberChoices of(Buying.Boards b) {
    return new LumberChoices(
        b.kerf(),
        b.lengths(),
        widths(b.blocking(), b.rafter(), b.hip(), b.ridge(), b.fascia(), b.rake()),
        b.rakeThickness());
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
