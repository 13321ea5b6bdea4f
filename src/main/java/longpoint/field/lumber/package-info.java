/**
 * Boards for the pieces the crew cuts itself: the cut list, every piece with its length, ends and
 * count; and the stock list, the boards to buy for it. Steps: gather the pieces of the frame, joint
 * what is longer than a board, put like pieces together, and have {@code saw} share them out over
 * boards. Counts and lengths, never engineering: sections are what the user says they are.
 */
package longpoint.field.lumber;
