/**
 * The walls as they stand: tape readings become a fitted outline ({@link
 * longpoint.field.built.WallFit}), readings that do not agree are named, squareness and level are
 * told, and what was worked out for the walls as drawn is held against the walls as built.
 */
package longpoint.field.built;
