package longpoint.export;

import java.io.IOException;
import java.io.OutputStream;
import java.util.function.Consumer;
import longpoint.drawing.Drawing;
import longpoint.drawing.Strokes;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point3;
import longpoint.units.LengthUnit;

/**
 * Writes a drawing in real size as DXF 2000 (AC1015), in the drawing's own unit, named in {@code
 * $INSUNITS}.
 *
 * <p>Layers, line types and widths are those of the drawing; tints become closed outlines;
 * dimensions are true dimensions with a picture block, whose figure the CAD program measures
 * itself. Everything stands in model space on the ground plane. Text is ASCII with {@code \U+XXXX}
 * for the rest. The structure is that of the published DXF reference and of the file structure
 * chapter of the ezdxf documentation: every table, handle and owner a strict reader asks for.
 */
public final class DxfWriter {
  /** A solid has no lettering; lines that are dashed would be so for a print of 1:50. */
  private static final double SOLID_SCALE = 50;

  private DxfWriter() {}

  /**
   * Writes a drawing. The stream is flushed, not closed.
   *
   * @param unit of the drawing's coordinates
   * @param scale of the print the lettering is meant for: 48 for 1:48, &gt; 0
   * @throws IOException if the stream cannot be written
   */
  public static void write(Drawing drawing, LengthUnit unit, double scale, OutputStream out)
      throws IOException {
    DxfScale sizes = new DxfScale(unit, scale);
    write(sizes, extent(drawing, sizes), drawing::accept, out);
  }

  /**
   * Writes a solid as 3D faces and lines in space, in its own unit, z up; every entity carries the
   * name of its body. The stream is flushed, not closed.
   *
   * @throws IOException if the stream cannot be written
   */
  public static void write(Solid solid, OutputStream out) throws IOException {
    Bounds box = Bounds.EMPTY;
    for (Solid.Body body : solid.bodies()) {
      for (Solid.Face face : body.faces()) {
        for (Point3 p : face.rings().get(0)) {
          box = box.with(p.plan());
        }
      }
    }
    write(
        new DxfScale(solid.unit(), SOLID_SCALE),
        box.isEmpty() ? new Bounds(0, 0, 1, 1) : box,
        entities -> solid.bodies().forEach(entities::body),
        out);
  }

  private static void write(
      DxfScale sizes, Bounds extent, Consumer<DxfEntities> content, OutputStream out)
      throws IOException {
    DxfHandles handles = new DxfHandles();
    DxfEntities entities = new DxfEntities(handles, sizes);
    content.accept(entities);
    DxfTags tables =
        new DxfTables(handles, sizes).write(extent, entities.layers(), entities.pictures());
    DxfFrame.header(sizes, extent, handles.next()).writeTo(out);
    DxfFrame.classes().writeTo(out);
    tables.writeTo(out);
    entities.writeBlocks(out);
    entities.writeEntities(out);
    DxfFrame.objects(extent).tag(0, "EOF").writeTo(out);
    out.flush();
  }

  private static Bounds extent(Drawing drawing, DxfScale sizes) {
    Bounds box = Strokes.of(drawing.marks(), sizes.unitsPerMm()).bounds();
    return box.isEmpty() ? new Bounds(0, 0, 1, 1) : box;
  }
}
