/**
 * Straight runs: the rectangles of a part that one row of trusses or rafters can cover. Steps: lay
 * a grid through the corners, find the largest rectangles, choose the main run by the taller ridge,
 * take what is left as wings, and note where one run meets another.
 */
package longpoint.framing.run;
