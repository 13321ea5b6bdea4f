package longpoint.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Ink;
import longpoint.drawing.Layer;
import longpoint.drawing.Pen;
import longpoint.geometry.Point3;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;

/** Structure and numbers after the glTF 2.0 specification of Khronos (from memory). */
class SolidWritersTest {
  /** A level F, 1 in thick as drawn in plan; no mirror image of it is an F again. */
  private static final List<Point3> F =
      List.of(
          p(0, 0), p(10, 0), p(10, 20), p(26, 20), p(26, 30), p(10, 30), p(10, 40), p(32, 40),
          p(32, 50), p(0, 50));

  private static final List<Point3> HOLE = List.of(p(2, 2), p(2, 8), p(8, 8), p(8, 2));

  private static final Solid SOLID =
      new Solid(
          "Job",
          LengthUnit.INCH,
          List.of(
              new Solid.Body(
                  "Plane A",
                  layer("A-ROOF-FACE", "Roof"),
                  Solid.Finish.ROOF,
                  List.of(new Solid.Face(List.of(F, HOLE))),
                  List.of()),
              new Solid.Body(
                  "T1",
                  layer("S-TRUS-LINE", "Frame"),
                  Solid.Finish.TIMBER,
                  List.of(),
                  List.of(new Solid.Line(p(0, 0), new Point3(0, 0, 100))))));

  private static Layer layer(String name, String title) {
    return new Layer(name, title, Pen.solid(0.25), Ink.MAIN);
  }

  private static Point3 p(double x, double y) {
    return new Point3(x, y, 120);
  }

  private static ByteBuffer glb(Solid solid) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    GlbWriter.write(solid, out);
    return ByteBuffer.wrap(out.toByteArray()).order(ByteOrder.LITTLE_ENDIAN);
  }

  private static JsonNode json(ByteBuffer glb) throws Exception {
    assertThat(glb.getInt(0)).isEqualTo(0x46546C67);
    assertThat(glb.getInt(4)).isEqualTo(2);
    assertThat(glb.getInt(8)).isEqualTo(glb.capacity());
    assertThat(glb.getInt(12) % 4).isZero();
    byte[] text = new byte[glb.getInt(12)];
    glb.get(20, text);
    return new ObjectMapper().readTree(new String(text, StandardCharsets.UTF_8));
  }

  private static List<Point3> vertices(ByteBuffer glb, JsonNode root, int accessor) {
    JsonNode a = root.at("/accessors/" + accessor);
    JsonNode view = root.at("/bufferViews/" + a.get("bufferView").asInt());
    int start = 20 + glb.getInt(12) + 8 + view.get("byteOffset").asInt();
    List<Point3> points = new ArrayList<>();
    for (int i = 0; i < a.get("count").asInt(); i++) {
      int at = start + 12 * i;
      points.add(new Point3(glb.getFloat(at), glb.getFloat(at + 4), glb.getFloat(at + 8)));
    }
    return points;
  }

  /** Area of the F less its hole, by hand: 500 + 160 + 220 - 36 square inches. */
  @Test
  void facesKeepTheirAreaTheirPlaceAndTheirTurn() throws Exception {
    ByteBuffer glb = glb(SOLID);
    JsonNode root = json(glb);
    JsonNode mesh = root.at("/meshes/0/primitives/0");
    assertThat(mesh.get("mode").asInt()).isEqualTo(4);
    List<Point3> v = vertices(glb, root, mesh.at("/attributes/POSITION").asInt());
    double area = 0;
    for (int i = 0; i < v.size(); i += 3) {
      // Height is y, and the far end of the plan is at -z: seen from above, z runs down.
      double twice =
          (v.get(i + 1).x() - v.get(i).x()) * -(v.get(i + 2).z() - v.get(i).z())
              - (v.get(i + 2).x() - v.get(i).x()) * -(v.get(i + 1).z() - v.get(i).z());
      assertThat(twice).as("counter-clockwise from outside").isPositive();
      area += twice / 2;
      assertThat(v.get(i).y()).isCloseTo(120 * 0.0254, within(1e-6));
    }
    assertThat(area / 0.0254 / 0.0254).isCloseTo(844, within(1e-3));
    assertThat(vertices(glb, root, mesh.at("/attributes/NORMAL").asInt()))
        .allMatch(n -> n.equals(new Point3(0, 1, 0)));
    assertThat(root.at("/accessors/0/max/0").asDouble()).isCloseTo(32 * 0.0254, within(1e-6));
    assertThat(root.at("/accessors/0/min/2").asDouble()).isCloseTo(-50 * 0.0254, within(1e-6));
  }

  @Test
  void bodiesCanBePickedByNameInTheirGroups() throws Exception {
    JsonNode root = json(glb(SOLID));
    assertThat(root.at("/nodes/0/name").asText()).isEqualTo("Plane A");
    assertThat(root.at("/nodes/1/name").asText()).isEqualTo("Roof");
    assertThat(root.at("/nodes/1/children/0").asInt()).isZero();
    assertThat(root.at("/scenes/0/nodes")).extracting(JsonNode::asInt).containsExactly(1, 3);
    assertThat(root.at("/meshes/1/primitives/0/mode").asInt()).isEqualTo(1);
    assertThat(root.findValues("uri")).isEmpty();
    assertThat(glb(SOLID)).isEqualTo(glb(SOLID));
  }

  @Test
  void nothingToShowIsStillAFile() throws Exception {
    JsonNode root = json(glb(new Solid("Empty", LengthUnit.MILLIMETRE, List.of())));
    assertThat(root.has("meshes")).isFalse();
    assertThat(root.at("/asset/version").asText()).isEqualTo("2.0");
  }

  @Test
  void objHoldsTheSameFacesAndLines() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ObjWriter.write(SOLID, out);
    List<String> lines = out.toString(StandardCharsets.US_ASCII).lines().toList();
    List<double[]> v = new ArrayList<>();
    lines.stream()
        .filter(l -> l.startsWith("v "))
        .map(l -> l.substring(2).split(" "))
        .forEach(
            n ->
                v.add(
                    new double[] {
                      Double.parseDouble(n[0]), Double.parseDouble(n[1]), Double.parseDouble(n[2])
                    }));
    double area = 0;
    for (String line : lines.stream().filter(l -> l.startsWith("f ")).toList()) {
      String[] corners = line.substring(2).split(" ");
      double[] a = v.get(Integer.parseInt(corners[0].split("//")[0]) - 1);
      double[] b = v.get(Integer.parseInt(corners[1].split("//")[0]) - 1);
      double[] c = v.get(Integer.parseInt(corners[2].split("//")[0]) - 1);
      area += (-(b[0] - a[0]) * (c[2] - a[2]) + (c[0] - a[0]) * (b[2] - a[2])) / 2;
    }
    assertThat(area / 0.0254 / 0.0254).isCloseTo(844, within(1e-4));
    assertThat(lines).contains("o Plane_20_A", "g Roof", "g Frame");
    assertThat(lines.get(lines.size() - 1)).matches("l \\d+ \\d+");
  }

  /** 3D faces in the plan's own unit, z up; edges that are only cuts are marked unseen. */
  @Test
  void dxfHoldsTheSameFaces() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DxfWriter.write(SOLID, out);
    DxfFile dxf = DxfFile.read(out.toByteArray());
    DxfCheck.check(dxf);
    double[] area = {0};
    int[] seen = {0};
    dxf.entities("3DFACE")
        .forEach(
            f -> {
              area[0] +=
                  ((f.number(11) - f.number(10)) * (f.number(22) - f.number(20))
                          - (f.number(12) - f.number(10)) * (f.number(21) - f.number(20)))
                      / 2;
              assertThat(f.number(30)).isEqualTo(120);
              assertThat(f.number(13)).isEqualTo(f.number(12));
              seen[0] += 3 - Integer.bitCount(Integer.parseInt(f.text(70)) & 0b1011);
            });
    assertThat(area[0]).isCloseTo(844, within(1e-6));
    assertThat(seen[0]).as("edges of the F and its hole").isEqualTo(F.size() + HOLE.size());
    assertThat(dxf.entities("LINE").findFirst().orElseThrow().number(31)).isEqualTo(100);
  }
}
