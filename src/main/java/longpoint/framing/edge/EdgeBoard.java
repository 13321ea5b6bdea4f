package longpoint.framing.edge;

import java.util.Objects;
import longpoint.surface.LineKind;

/**
 * One straight run of fascia or rake board along the roof's outer edge.
 *
 * @param line id of the roof line it follows
 * @param part id of the part
 * @param kind EAVE for fascia, RAKE for a rake board
 * @param length along its outer top edge, long point to long point
 * @param height of that edge above the datum at the first end
 * @param rise from the first end to the other; 0 for fascia
 * @param from how the first end is cut
 * @param to how the other end is cut
 */
public record EdgeBoard(
    String line,
    String part,
    LineKind kind,
    double length,
    double height,
    double rise,
    End from,
    End to) {
  /** How an end is cut. */
  public enum Joint {
    /** Meets another board at an outward corner. */
    OUTSIDE_MITRE,
    /** Meets another board at an inward corner. */
    INSIDE_MITRE,
    /** Meets the board of the other slope at the peak, cut plumb. */
    PLUMB,
    /** Runs on in line with another board. */
    BUTT,
    /** Ends free or against a roof. */
    SQUARE
  }

  /**
   * @param joint how it meets what is there
   * @param degrees of the mitre, from square; of a plumb cut, from the board's edge
   */
  public record End(Joint joint, double degrees) {
    static final End SQUARE = new End(Joint.SQUARE, 0);
  }

  public EdgeBoard {
    Objects.requireNonNull(from);
    Objects.requireNonNull(to);
  }
}
