/**
 * Sharing lengths out over boards: the one-dimensional cutting stock problem with several board
 * lengths, each at a price equal to its length. Patterns are priced by an exact knapsack, mixed by
 * a linear programme, rounded by diving, and held to a bound that is checked in whole numbers.
 */
package longpoint.field.lumber.saw;
