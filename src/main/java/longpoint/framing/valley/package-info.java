/**
 * Valley trusses: the shrinking set that carries a wing's roof over the finished plane of a main
 * roof. Distances run square to the main eave: {@code x} in plan from the outside face of the main
 * wall, {@code v} up the deck from its lower top edge at the fascia. Steps: shift, places, sizes,
 * set line, sheet line, blocks.
 */
package longpoint.framing.valley;
