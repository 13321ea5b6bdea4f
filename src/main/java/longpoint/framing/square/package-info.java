/** The figures stamped on a framing square, worked out instead of looked up. */
package longpoint.framing.square;
