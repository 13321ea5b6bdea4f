package longpoint.plan;

import java.util.List;
import java.util.Objects;
import longpoint.units.LengthUnit;

/**
 * What the user decides about what is bought: nails, roofing, underlay, openings for air, boards.
 * Lengths in plan units, areas in square plan units. Nothing here is checked; a figure that cannot
 * be meant is named by {@link PlanCheck} and the usual one taken instead.
 *
 * @param roofingWaste share added to the roof's area for cutting; 0.08 is 8 %
 * @param bundlesPerSquare bundles that cover 100 square feet, or 10 m²
 * @param underlayRoll area that one roll covers, laps taken off
 * @param nails in the sheathing
 * @param rating stamped on the panels
 * @param vent share of the attic's area that is left open for air
 * @param boards what boards are sold and sawn
 */
public record Buying(
    double roofingWaste,
    double bundlesPerSquare,
    double underlayRoll,
    Nails nails,
    SpanRating rating,
    Vent vent,
    Boards boards,
    Extras extras) {
  /**
   * Spacing of the sheathing's nails.
   *
   * @param edge at panel ends and supported edges
   * @param field at supports between
   */
  public record Nails(double edge, double field) {}

  /**
   * Boards for what is cut on site.
   *
   * @param kerf what a saw cut takes away
   * @param lengths boards are sold in
   * @param blocking width of the boards for blocks, lookouts and studs
   * @param rafter of common and jack rafters
   * @param hip of hip and valley rafters
   * @param ridge of ridge boards
   * @param fascia of fascia and fly rafters
   * @param rake of rake boards
   * @param rakeThickness of rake boards
   */
  public record Boards(
      double kerf,
      List<Double> lengths,
      double blocking,
      double rafter,
      double hip,
      double ridge,
      double fascia,
      double rake,
      double rakeThickness) {
    public Boards {
      lengths = List.copyOf(lengths);
    }

    /** Width of rafters, or the usual one where that cannot be meant. */
    public double soundRafter(LengthUnit unit) {
      return rafter > 0 && Double.isFinite(rafter) ? rafter : boards(unit).rafter();
    }
  }

  /** Shares of the vented area that codes ask to be left open. */
  public enum Vent {
    /** The plain rule. */
    ONE_IN_150("1/150", 150),
    /** Where the code's conditions for the lesser share are met. */
    ONE_IN_300("1/300", 300);

    private final String key;
    private final double parts;

    Vent(String key, double parts) {
      this.key = key;
      this.parts = parts;
    }

    /** As it stands in a plan file. */
    public String key() {
      return key;
    }

    /** The opening for an area. */
    public double of(double area) {
      return area / parts;
    }
  }

  public Buying {
    Objects.requireNonNull(nails);
    Objects.requireNonNull(rating);
    Objects.requireNonNull(vent);
    Objects.requireNonNull(boards);
    Objects.requireNonNull(extras);
  }

  /**
   * Common practice: 8 % waste, three bundles to the square, 300 square feet net from a roll of
   * felt, nails at 6 and 12 in (IRC table R602.3(1)), panels rated 24/16, air at 1/150 (IRC
   * R806.2); boards of 8 to 20 ft by twos or 2.4 to 6 m by 300 mm, an 1/8 in or 3 mm cut, 2x4
   * blocks and lookouts, 2x8 rafters, 2x10 hips, valleys and ridges, 2x6 fascia and fly rafters,
   * 1x6 rake boards.
   */
  public static Buying of(LengthUnit unit) {
    double foot = unit.fromMillimetres(12 * LengthUnit.MM_PER_INCH);
    Nails nails =
        switch (unit) {
          case INCH -> new Nails(6, 12);
          case MILLIMETRE -> new Nails(150, 300);
        };
    return new Buying(
        0.08,
        3,
        300 * foot * foot,
        nails,
        SpanRating.S24_16,
        Vent.ONE_IN_150,
        boards(unit),
        Extras.NONE);
  }

  private static Boards boards(LengthUnit unit) {
    return switch (unit) {
      case INCH ->
          new Boards(
              0.125,
              List.of(96.0, 120.0, 144.0, 168.0, 192.0, 216.0, 240.0),
              3.5,
              7.25,
              9.25,
              9.25,
              5.5,
              5.5,
              0.75);
      case MILLIMETRE ->
          new Boards(
              3,
              List.of(
                  2400.0, 2700.0, 3000.0, 3300.0, 3600.0, 3900.0, 4200.0, 4500.0, 4800.0, 5100.0,
                  5400.0, 5700.0, 6000.0),
              89,
              184,
              235,
              235,
              140,
              140,
              19);
    };
  }

  public Buying withWaste(double share) {
    return new Buying(share, bundlesPerSquare, underlayRoll, nails, rating, vent, boards, extras);
  }

  public Buying withBundles(double perSquare) {
    return new Buying(roofingWaste, perSquare, underlayRoll, nails, rating, vent, boards, extras);
  }

  public Buying withRoll(double area) {
    return new Buying(roofingWaste, bundlesPerSquare, area, nails, rating, vent, boards, extras);
  }

  public Buying withNails(Nails nails) {
    return new Buying(
        roofingWaste, bundlesPerSquare, underlayRoll, nails, rating, vent, boards, extras);
  }

  public Buying withRating(SpanRating rating) {
    return new Buying(
        roofingWaste, bundlesPerSquare, underlayRoll, nails, rating, vent, boards, extras);
  }

  public Buying withVent(Vent vent) {
    return new Buying(
        roofingWaste, bundlesPerSquare, underlayRoll, nails, rating, vent, boards, extras);
  }

  public Buying withBoards(Boards boards) {
    return new Buying(
        roofingWaste, bundlesPerSquare, underlayRoll, nails, rating, vent, boards, extras);
  }
}
