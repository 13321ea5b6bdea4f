package longpoint.framing.valley;

/**
 * One truss of a valley set in its place.
 *
 * @param number from 1 at the eave
 * @param x its uphill face, the one that touches the deck, plan distance from the main wall face
 * @param v the snapped line for that face, up the deck
 * @param stop line of the stop nails, one truss thickness down the deck from {@code v}
 * @param length of the bottom chord, end to end
 * @param left centre line to its left end, looking up the main slope
 * @param right centre line to its right end
 * @param height bottom of chord to peak, or to a flat top under the front plane of a hipped wing
 */
public record ValleyTruss(
    int number,
    double x,
    double v,
    double stop,
    double length,
    double left,
    double right,
    double height) {}
