/**
 * The outside of the house as flat faces and straight edges in space: {@link
 * longpoint.sheets.solid.RoofSolid} lifts the roof planes, stands the walls under them ({@link
 * longpoint.sheets.solid.WallTop}), closes steps and hangs fascias; {@link
 * longpoint.sheets.solid.FrameSolid} stands trusses and rafters in their places. Pure geometry, for
 * any view that turns the house; nothing new is worked out here.
 */
package longpoint.sheets.solid;
