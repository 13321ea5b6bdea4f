/**
 * The arithmetic of single rafters: line length, shortening, tails, cuts, seats, backing and drop,
 * for square and crooked corners and for two different slopes. Line lengths are theoretical, from
 * the outside wall face to the middle of the ridge, until they are shortened.
 */
package longpoint.framing.rafter;
