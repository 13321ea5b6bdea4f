package longpoint.deck;

import longpoint.geometry.Segment;
import longpoint.surface.LineKind;

/**
 * How far a hip or valley cut runs over from one course to the next on one plane: the same for
 * every full course, so the first cut found true gives all the others.
 *
 * @param line id of the roof line
 * @param kind hip or valley
 * @param place of the line in (u, v)
 * @param per along the eave for one sheet width up the slope, ≥ 0
 * @param angle degrees off a cut square across the sheet
 */
public record CutDifference(String line, LineKind kind, Segment place, double per, double angle) {
  /**
   * The difference along a line.
   *
   * @throws IllegalArgumentException if the line runs level, which no course crosses
   */
  static CutDifference of(String line, LineKind kind, Segment place, double sheetWidth) {
    double du = Math.abs(place.to().x() - place.from().x());
    double dv = Math.abs(place.to().y() - place.from().y());
    if (dv == 0) {
      throw new IllegalArgumentException("a level line has no cut difference: " + line);
    }
    return new CutDifference(
        line, kind, place, sheetWidth * du / dv, Math.toDegrees(Math.atan2(du, dv)));
  }
}
