/**
 * Chalk sheets: every line to snap on a roof plane in the order it is snapped, measured from edges
 * that are there at that moment. On the bare frame first the lookouts and the course lines; then,
 * on the deck of a plane that carries an overlay, the centre line, set lines, the lines of the
 * valley trusses with their stop nails, and last the sheet lines.
 */
package longpoint.field.chalk;
