/**
 * The sheet one draws on. {@link longpoint.desktop.canvas.PlanCanvas} paints a drawing, the same
 * marks as every export, in three layers: grid and marks (kept as an image until the view, the
 * drawing or the theme changes), then what a tool is about, then rulers. {@link
 * longpoint.desktop.canvas.View} turns the plan's coordinates into the screen's.
 */
package longpoint.desktop.canvas;
