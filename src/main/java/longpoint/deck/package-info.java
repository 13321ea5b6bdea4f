/**
 * From framing to sheathing: unfold every plane flat, add what an overlay covers and take off what
 * lies beyond its sheet line, cut the plane into courses from the fascia, choose end joints on
 * supports, cut the pieces, name their edges and bevels, group equal ones, and share the pieces out
 * over as few sheets as can be found ({@code nest}).
 *
 * <p>In an unfolded plane u runs along the eave from its left end, seen from the ground facing the
 * plane, and v up the slope from the fascia arris. Both faces of the deck share one pair of
 * figures: a point of either face stands square over its place on top of the framing.
 */
package longpoint.deck;
