/**
 * Drawings to file formats. A writer is a {@link longpoint.drawing.MarkVisitor} behind a static
 * front door; it knows its format and nothing of plans, roofs or how a page is laid out. Same
 * drawing in, same bytes out.
 */
package longpoint.export;
