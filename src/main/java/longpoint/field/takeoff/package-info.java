/**
 * Quantities to order for a roof's deck and covering: sheets, clips and nails from the deck as
 * laid; lengths of edges and lines; underlay and roofing by area; openings for attic air; soffit.
 * Estimates to order by, with the user's own waste; the maker's instructions and the local code
 * rule on fastening, underlay and ventilation.
 */
package longpoint.field.takeoff;
