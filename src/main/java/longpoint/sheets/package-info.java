/**
 * Views and pages. {@link longpoint.sheets.PlanView} turns a plan and its roof into marks in real
 * size for the canvas, CAD files and sheets alike: tint, walls, roof lines, dimensions, labels.
 * {@link longpoint.sheets.PlanSheet} stands a view on paper at a standard scale, with title block,
 * legend and tables. Nothing here knows a file format.
 *
 * <p>No two pieces of lettering ever share room: dimensions take their places first, row by row,
 * then labels choose among places ({@link longpoint.sheets.Clutter}).
 */
package longpoint.sheets;
