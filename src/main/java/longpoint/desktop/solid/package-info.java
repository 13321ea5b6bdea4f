/**
 * The house seen from outside, to turn in the hand: {@link longpoint.desktop.solid.SolidScene}
 * makes faces of roof planes and walls, {@link longpoint.desktop.solid.SolidPainter} paints them
 * with their depth, {@link longpoint.desktop.solid.SolidView} shows and turns them. A picture to
 * check the roof by; nothing is measured in it.
 */
package longpoint.desktop.solid;
