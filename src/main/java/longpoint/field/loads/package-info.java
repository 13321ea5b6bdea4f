/**
 * What roof and ceiling come to at each bearing, for whoever designs walls, headers, girders and
 * posts: the ground that is nearest to each member ({@code Spread}), what carries each member
 * ({@code Members}), reactions from hung trusses to girders to walls ({@code Chain}), and the sums
 * by wall and girder ({@code Loads}). Figures to pass on, never a design.
 */
package longpoint.field.loads;
