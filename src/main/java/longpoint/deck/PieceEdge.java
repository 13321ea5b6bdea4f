package longpoint.deck;

import java.util.Locale;
import java.util.Objects;
import longpoint.geometry.Segment;

/**
 * One side of a piece.
 *
 * @param line in (u, v), with the piece on its left
 * @param use what it meets
 * @param bevel degrees the saw leans from square so that both faces end in the plane halfway to the
 *     neighbour, or on the lower deck at a sheet line; 0 for a square edge. Leaving hips, valleys
 *     and ridges square is common practice; a sheet line needs its bevel to close
 */
public record PieceEdge(Segment line, Use use, double bevel) {
  /** What a side of a piece meets. */
  public enum Use {
    FASCIA,
    /** The next course. */
    COURSE,
    /** The next sheet of the same course. */
    JOINT,
    RIDGE,
    HIP,
    VALLEY,
    RAKE,
    BREAK,
    ABUTMENT,
    STEP,
    /** Where an overlay's deck ends on the deck below. */
    SHEET_LINE,
    /** Where the deck just stops: at another roof's fascia, or at an opening under an overlay. */
    END;

    /** As it stands in the figures. */
    public String key() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  public PieceEdge {
    Objects.requireNonNull(line);
    Objects.requireNonNull(use);
  }

  public double length() {
    return line.length();
  }

  /**
   * The gap a square edge leaves at the face, square to the line: with the bevel the two faces of
   * the sheet end this far apart. At a sheet line the underside ends this far back from the face,
   * on the set line.
   *
   * @param thickness of the sheet
   */
  public double squareGap(double thickness) {
    return thickness * Math.tan(Math.toRadians(bevel));
  }

  /** Degrees off a cut square across the sheet: 0 along the width, 90 along the length. */
  public double angle() {
    double du = Math.abs(line.to().x() - line.from().x());
    double dv = Math.abs(line.to().y() - line.from().y());
    return Math.toDegrees(Math.atan2(du, dv));
  }
}
