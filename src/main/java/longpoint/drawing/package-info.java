/**
 * The marks a page is made of. One closed set serves the screen, SVG, DXF, PDF and picking: each is
 * a {@link longpoint.drawing.MarkVisitor} and must handle every mark.
 *
 * <p>Geometry is in plan units with y up, and scales. Pens and lettering are paper sizes in
 * millimetres, and do not. A {@link longpoint.drawing.Placement} says where on a sheet of paper a
 * group of marks lands and at what scale. Writers know no page rules; {@code sheets} knows no file
 * format.
 */
package longpoint.drawing;
