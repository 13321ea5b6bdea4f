package longpoint.export;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import longpoint.geometry.Point3;

/**
 * Writes a solid as Wavefront OBJ, which modelling programs without glTF read: metres, y up,
 * triangles with normals and lines, a named object for each body. Plain ASCII, no outside file.
 */
public final class ObjWriter {
  /** A hundredth of a millimetre would do; readers get the figures back to a thousandth of that. */
  private static final int DECIMALS = 8;

  private final Writer out;
  private int vertices;
  private int normals;

  private ObjWriter(Writer out) {
    this.out = out;
  }

  /**
   * Writes the solid. The stream is flushed, not closed.
   *
   * @throws IOException if the stream cannot be written
   */
  public static void write(Solid solid, OutputStream out) throws IOException {
    Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.US_ASCII));
    writer.write("# " + name(solid.title()) + "\n# metres, y up\n");
    ObjWriter obj = new ObjWriter(writer);
    for (Solid.Body body : solid.bodies()) {
      obj.body(body, SolidMesh.of(body, solid.unit()));
    }
    writer.flush();
  }

  private void body(Solid.Body body, SolidMesh mesh) throws IOException {
    if (mesh.vertices().isEmpty() && mesh.ends().isEmpty()) {
      return;
    }
    out.write("o " + name(body.name()) + "\ng " + name(body.layer().title()) + "\n");
    points("v", mesh.vertices());
    points("vn", mesh.normals());
    for (int i = 1; i <= mesh.vertices().size(); i += 3) {
      out.write("f" + corner(i) + corner(i + 1) + corner(i + 2) + "\n");
    }
    vertices += mesh.vertices().size();
    normals += mesh.normals().size();
    points("v", mesh.ends());
    for (int i = 1; i <= mesh.ends().size(); i += 2) {
      out.write("l " + (vertices + i) + " " + (vertices + i + 1) + "\n");
    }
    vertices += mesh.ends().size();
  }

  private String corner(int i) {
    return " " + (vertices + i) + "//" + (normals + i);
  }

  private void points(String kind, List<Point3> points) throws IOException {
    for (Point3 p : points) {
      out.write(kind + number(p.x()) + number(p.y()) + number(p.z()) + "\n");
    }
  }

  private static String number(double value) {
    return " " + Figures.plain(value, DECIMALS);
  }

  /** One word of ASCII: some readers end a name at the first blank. */
  private static String name(String text) {
    String word = XmlText.name(text.strip());
    return word.isEmpty() ? "_" : word;
  }
}
