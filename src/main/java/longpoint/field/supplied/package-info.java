/**
 * The supplier's list against the layout: rows are matched to trusses by their figures at the least
 * cost over all ({@link longpoint.field.supplied.Transport}), and what differs, is missing or is
 * too many is told ({@link longpoint.field.supplied.SupplierCheck}).
 */
package longpoint.field.supplied;
