/**
 * A reminder of temporary restraint: rows of boards across each run of trusses, diagonals, ground
 * braces, tolerances of setting, by general guidance. The truss supplier's documents rule.
 */
package longpoint.field.restraint;
