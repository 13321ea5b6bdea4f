/**
 * Gable ends: the ladder of lookouts, blocks and fly rafter that carries a rake overhang, and the
 * studs of a framed gable wall. Distances run up the slope along the top of the framing, from the
 * plumb cut of the tail.
 */
package longpoint.framing.gable;
