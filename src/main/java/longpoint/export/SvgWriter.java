package longpoint.export;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import longpoint.drawing.Drawing;
import longpoint.drawing.Mark;
import longpoint.drawing.Page;
import longpoint.drawing.Placement;
import longpoint.drawing.Strokes;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.units.LengthUnit;

/**
 * Writes SVG 1.1 in UTF-8 with real sizes: one user unit is one millimetre on the medium.
 *
 * <p>Every group of the page and every run of marks on one layer is a {@code <g>} with an id (the
 * layer's name; a second run of the same layer in the file gets {@code ..2}); every mark that shows
 * something has the id <i>layer.subject</i>, slashes as full stops. Lettering is text, so it can be
 * searched. The y axis is flipped once, here. No script, style sheet, font or picture is referred
 * to, so the file shows the same wherever it is opened.
 */
public final class SvgWriter {
  /** Blank ground around a real-size drawing, millimetres on paper at its scale. */
  private static final double MARGIN_MM = 5;

  private SvgWriter() {}

  /**
   * Writes a page. The stream is flushed, not closed.
   *
   * @throws IOException if the stream cannot be written
   */
  public static void write(Page page, OutputStream out) throws IOException {
    write(page, "", out);
  }

  /**
   * As {@link #write(Page, OutputStream)}, with data for programs that read the file.
   *
   * @param metadata well-formed XML elements with namespaces of their own, or nothing
   */
  public static void write(Page page, String metadata, OutputStream out) throws IOException {
    write(title(page), metadata, page.marks(), paper(page), 1, out);
  }

  /**
   * Writes a page as an element for the inside of another file, as wide as that file makes it.
   *
   * @param idStart what its ids begin with, so that several pages can stand in one file; an XML
   *     name
   */
  static void writeInside(Page page, String idStart, Writer out) {
    SvgMarks svg = new SvgMarks(out, paper(page), 1, idStart);
    svg.openInside(title(page));
    page.marks().forEach(m -> m.accept(svg));
    svg.close();
  }

  /** The page's number and title, as one line. */
  static String title(Page page) {
    return page.number().isEmpty() ? page.title() : page.number() + " " + page.title();
  }

  private static Bounds paper(Page page) {
    return new Bounds(0, 0, page.widthMm(), page.heightMm());
  }

  /**
   * Writes a drawing at the size of the building itself; lettering and pens are as large as they
   * would be on a print at a scale.
   *
   * @param unit the drawing's own
   * @param scale how many times smaller the print would be, such as 48
   * @throws IOException if the stream cannot be written
   */
  public static void writeRealSize(Drawing drawing, LengthUnit unit, double scale, OutputStream out)
      throws IOException {
    double mmPerUnit = unit.toMillimetres(1);
    Placement toMm = new Placement(new Point(0, 0), mmPerUnit, 0);
    List<Mark> marks = List.of(new Mark.Group("drawing", toMm, drawing.marks()));
    Bounds box = Strokes.of(marks, scale).bounds();
    Bounds paper = box.isEmpty() ? new Bounds(0, 0, 1, 1) : box.grown(MARGIN_MM * scale);
    write(drawing.title(), "", marks, paper, scale, out);
  }

  private static void write(
      String title,
      String metadata,
      List<Mark> marks,
      Bounds paper,
      double penScale,
      OutputStream out)
      throws IOException {
    Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
    try {
      SvgMarks svg = new SvgMarks(writer, paper, penScale, "");
      svg.open(title, metadata);
      marks.forEach(m -> m.accept(svg));
      svg.close();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    writer.flush();
  }
}
