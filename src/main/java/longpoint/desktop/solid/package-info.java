/**
 * The house beside the sheet, to turn in the hand: {@link longpoint.desktop.solid.Stand} says where
 * it is looked at from, {@link longpoint.desktop.solid.SolidPainter} paints its faces and edges
 * into a {@link longpoint.desktop.solid.DepthImage} where the nearest wins, {@link
 * longpoint.desktop.solid.SolidPick} says what the pointer is on, {@link
 * longpoint.desktop.solid.SolidView} shows and turns it, {@link longpoint.desktop.solid.SolidPane}
 * keeps it in step with the plan. A picture to check the roof by; nothing is measured in it.
 */
package longpoint.desktop.solid;
