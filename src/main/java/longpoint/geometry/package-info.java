/**
 * Points, rings, regions and planes, and the one door to JTS. Geometry knows no unit: a length is
 * in whatever unit the plan was drawn in. x runs to the right, y up the page, z up from the ground.
 */
package longpoint.geometry;
