/**
 * From a plan to the roof's planes and lines: sweep every eave inward ({@code sweep}), clip to the
 * roof outline, join the parts, name the lines, verify. Everything here speaks of frame planes, the
 * top of trusses and rafters; the deck on top of them is another stage's business.
 */
package longpoint.surface;
