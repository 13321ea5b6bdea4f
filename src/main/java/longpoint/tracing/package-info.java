/**
 * Wall outlines out of CAD drawings.
 *
 * <p>The text is cut into tags ({@code DxfTagReader}), the tags into entities with blocks put where
 * they are inserted ({@code DxfEntityReader}), the entities into strokes of straight and round
 * pieces ({@code Stroke}); {@link longpoint.tracing.CadDrawing#trace} chains the strokes of the
 * layers chosen into closed outlines in the unit of the plan.
 */
package longpoint.tracing;
