package longpoint.field.loads;

/**
 * Load as the ground it comes from, square plan units: whatever the loads are, a force is these
 * areas times them.
 *
 * @param level roof, measured on level ground
 * @param sloped the same roof's true area
 * @param ceiling ceiling between the walls
 */
public record Amount(double level, double sloped, double ceiling) {
  public static final Amount NONE = new Amount(0, 0, 0);

  Amount plus(Amount other) {
    return new Amount(level + other.level, sloped + other.sloped, ceiling + other.ceiling);
  }

  Amount times(double share) {
    return new Amount(level * share, sloped * share, ceiling * share);
  }
}
