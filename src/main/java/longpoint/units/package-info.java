/**
 * The plan's unit, and lengths and slopes as people type and read them. Figures convert here, at
 * the edge; everywhere else a length is a plain number in the plan's unit.
 */
package longpoint.units;
