package longpoint.framing.valley;

import java.util.Objects;
import java.util.Optional;
import longpoint.plan.Join.MadeFor;

/**
 * A wing's roof over one plane of a main roof, the wing's ridge square to the main eave. Heights
 * are above one datum; lengths in plan units.
 *
 * @param main the plane beneath
 * @param wing the roof above
 * @param last x of the uphill face of the wing's last ordinary truss
 * @param spacing of the wing's trusses, centre to centre
 * @param thickness of one truss
 * @param madeFor what the valley trusses were made to sit on
 */
public record ValleySite(
    Main main, Wing wing, double last, double spacing, double thickness, MadeFor madeFor) {

  /**
   * The plane beneath.
   *
   * @param slope rise over run, &gt; 0
   * @param height of the frame plane at x = 0
   * @param deck thickness of its sheathing, square to its face, ≥ 0; 0 for a bare frame
   * @param arris x of the top outer edge of the fascia, ≤ 0
   * @param ridge x where the plane ends at its top
   */
  public record Main(double slope, double height, double deck, double arris, double ridge) {
    public Main {
      if (!(slope > 0) || !(deck >= 0) || !(arris <= 0) || !(ridge > 0)) {
        throw new IllegalArgumentException("no main plane");
      }
    }

    /** Top of framing. */
    public double frameAt(double x) {
      return height + slope * x;
    }

    /** Top of the sheathing. */
    public double deckAt(double x) {
      return frameAt(x) + plumb(deck, slope);
    }

    /** Where the top of the sheathing has a given height. */
    public double xAt(double deckHeight) {
      return (deckHeight - plumb(deck, slope) - height) / slope;
    }

    /** Up the deck from its lower top edge over the fascia arris. */
    public double v(double x) {
      return (x - arris) * Math.sqrt(1 + slope * slope) + deck * slope;
    }
  }

  /**
   * The roof above, seen looking up the main slope.
   *
   * @param ridge frame height of its ridge
   * @param left rise over run of the plane on the left, &gt; 0
   * @param right the same on the right, &gt; 0
   * @param deck thickness of its sheathing
   * @param leftEave plan distance from ridge to the outside of the left fascia
   * @param rightEave the same on the right
   * @param front where the ridge of a hipped wing begins
   */
  public record Wing(
      double ridge,
      double left,
      double right,
      double deck,
      double leftEave,
      double rightEave,
      Optional<Front> front) {
    public Wing {
      Objects.requireNonNull(front);
      if (!(left > 0) || !(right > 0) || !(deck >= 0)) {
        throw new IllegalArgumentException("no wing roof");
      }
    }

    /** With a gable out front. */
    public Wing(
        double ridge, double left, double right, double deck, double leftEave, double rightEave) {
      this(ridge, left, right, deck, leftEave, rightEave, Optional.empty());
    }

    /** The same roof seen in a mirror. */
    public Wing mirrored() {
      return new Wing(ridge, right, left, deck, rightEave, leftEave, front);
    }

    /** Frame height along the ridge line, lower where the front's plane still climbs to it. */
    double topAt(double x) {
      return front.map(f -> Math.min(ridge, ridge - f.slope() * (f.x() - x))).orElse(ridge);
    }
  }

  /**
   * The plane over the front wall of a hipped wing.
   *
   * @param x where it reaches the ridge
   * @param slope rise over run
   */
  public record Front(double x, double slope) {}

  public ValleySite {
    Objects.requireNonNull(main);
    Objects.requireNonNull(wing);
    Objects.requireNonNull(madeFor);
    if (!(spacing > 0) || !(thickness > 0) || !(spacing > thickness)) {
      throw new IllegalArgumentException("trusses " + thickness + " thick every " + spacing);
    }
  }

  /**
   * How far, in plan, trusses made for the bare frame slide down once a deck is under them: deck ÷
   * sin of the slope.
   */
  public double shift() {
    return switch (madeFor) {
      case FRAME -> plumb(main.deck(), main.slope()) / main.slope();
      case DECK -> 0;
    };
  }

  /** How far the wing's ridge stands above the main one; below zero it runs into its slope. */
  double taller() {
    return wing.ridge() - main.frameAt(main.ridge());
  }

  /** Bearing to ridge on the left of a truss of this height. */
  double left(double height) {
    return height / wing.left();
  }

  double right(double height) {
    return height / wing.right();
  }

  /** Plumb measure of a sheet's thickness on a slope. */
  static double plumb(double thickness, double slope) {
    return thickness * Math.sqrt(1 + slope * slope);
  }
}
