/**
 * From a plan to the roof's planes and lines. {@link longpoint.surface.Roof} is the front door; its
 * steps:
 *
 * <ol>
 *   <li>solve every part alone ({@code PartSolver}): set out the base of every side ({@code
 *       Contour}), sweep the eaves inward ({@code sweep}), run them down to their fascias ({@code
 *       Strips}), cut back what starts too high ({@code Trim}), look it over ({@code PartCheck});
 *   <li>cluster by cluster of parts that can have to do with each other ({@code Clusters}), cut
 *       their ground into cells once ({@code Noding}, {@code PairwiseCut}, {@code Ground}) along
 *       every side of every plane and every line where two are equally high ({@code Crossings});
 *   <li>find what lies over each cell ({@code Presence}), how far open sides run on ({@code
 *       RunOn}), and what shows and what is built beneath ({@code Covering});
 *   <li>name the lines between ({@code LineFinder}, {@code LineNaming}, {@code LineMerger}), look
 *       the whole over ({@code RoofCheck}) and put it together ({@code Assembly}).
 * </ol>
 *
 * <p>Everything here speaks of frame planes, the top of trusses and rafters; the deck on top of
 * them is another stage's business.
 */
package longpoint.surface;
