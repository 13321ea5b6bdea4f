/**
 * Sharing pieces out over sheets: place a shape beside others in a sheet, first fit in several
 * orders, then empty the worst sheets into the rest; and a bound from below that no way of cutting
 * the courses can beat. A piece keeps its direction: it may be turned end for end, never flipped
 * over and never turned crosswise.
 */
package longpoint.deck.nest;
