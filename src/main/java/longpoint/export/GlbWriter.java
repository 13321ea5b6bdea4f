package longpoint.export;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longpoint.geometry.Point3;

/**
 * Writes a solid as binary glTF 2.0 (Khronos specification; ISO/IEC 12113), everything in one file:
 * metres, y up. Each group is a node, each body a named node under it, so that a viewer can hide
 * and pick them.
 */
public final class GlbWriter {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  /** Prints the shortest exact number on every JDK; the language's own changed in version 19. */
  private static final ObjectMapper MAPPER =
      new ObjectMapper(
          JsonFactory.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build());

  /** Numbers of the specification: {@code glTF}, {@code JSON} and {@code BIN} as little-endian. */
  private static final int MAGIC = 0x46546C67;

  private static final int JSON_CHUNK = 0x4E4F534A;
  private static final int BINARY_CHUNK = 0x004E4942;
  private static final int FLOAT = 5126;
  private static final int ARRAY_BUFFER = 34962;
  private static final int LINES = 1;
  private static final int TRIANGLES = 4;

  private final ObjectNode root = NODES.objectNode();
  private final ArrayNode nodes = NODES.arrayNode();
  private final ArrayNode meshes = NODES.arrayNode();
  private final ArrayNode accessors = NODES.arrayNode();
  private final ArrayNode views = NODES.arrayNode();
  private final List<float[]> arrays = new ArrayList<>();
  private int bytes;

  private GlbWriter() {}

  /**
   * Writes the solid. The stream is flushed, not closed.
   *
   * @throws IOException if the stream cannot be written
   */
  public static void write(Solid solid, OutputStream out) throws IOException {
    GlbWriter glb = new GlbWriter();
    glb.scene(solid);
    byte[] json = MAPPER.writeValueAsBytes(glb.root);
    int text = padded(json.length);
    ByteBuffer head = buffer(20);
    int all = 12 + 8 + text + (glb.bytes == 0 ? 0 : 8 + glb.bytes);
    head.putInt(MAGIC).putInt(2).putInt(all).putInt(text).putInt(JSON_CHUNK);
    out.write(head.array());
    out.write(json);
    out.write(" ".repeat(text - json.length).getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    if (glb.bytes > 0) {
      out.write(buffer(8).putInt(glb.bytes).putInt(BINARY_CHUNK).array());
      for (float[] array : glb.arrays) {
        ByteBuffer numbers = buffer(4 * array.length);
        numbers.asFloatBuffer().put(array);
        out.write(numbers.array());
      }
    }
    out.flush();
  }

  private static ByteBuffer buffer(int size) {
    return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
  }

  private static int padded(int length) {
    return (length + 3) / 4 * 4;
  }

  private void scene(Solid solid) {
    root.putObject("asset").put("version", "2.0").put("generator", "Longpoint");
    root.put("scene", 0);
    ObjectNode scene = root.putArray("scenes").addObject().put("name", solid.title());
    ArrayNode top = NODES.arrayNode();
    Map<String, List<Solid.Body>> groups = new LinkedHashMap<>();
    solid
        .bodies()
        .forEach(b -> groups.computeIfAbsent(b.layer().title(), g -> new ArrayList<>()).add(b));
    groups.forEach(
        (name, bodies) -> {
          ArrayNode children = NODES.arrayNode();
          bodies.forEach(b -> body(b, solid, children));
          if (!children.isEmpty()) {
            top.add(nodes.size());
            nodes.addObject().put("name", name).set("children", children);
          }
        });
    put(scene, "nodes", top);
    put(root, "nodes", nodes);
    put(root, "meshes", meshes);
    put(root, "accessors", accessors);
    put(root, "bufferViews", views);
    if (bytes > 0) {
      root.putArray("buffers").addObject().put("byteLength", bytes);
      materials();
    }
  }

  /** An empty list is no glTF. */
  private static void put(ObjectNode node, String name, ArrayNode list) {
    if (!list.isEmpty()) {
      node.set(name, list);
    }
  }

  private void materials() {
    ArrayNode materials = root.putArray("materials");
    for (Solid.Finish finish : Solid.Finish.values()) {
      ObjectNode material = materials.addObject();
      material.put("name", finish.name().toLowerCase(java.util.Locale.ROOT));
      material.put("doubleSided", true);
      ObjectNode surface = material.putObject("pbrMetallicRoughness");
      ArrayNode colour = surface.putArray("baseColorFactor");
      finish.colour().forEach(colour::add);
      colour.add(1);
      surface.put("metallicFactor", 0).put("roughnessFactor", 0.9);
    }
  }

  private void body(Solid.Body body, Solid solid, ArrayNode children) {
    SolidMesh mesh = SolidMesh.of(body, solid.unit());
    ArrayNode primitives = NODES.arrayNode();
    if (!mesh.vertices().isEmpty()) {
      ObjectNode attributes = primitive(primitives, body, TRIANGLES);
      attributes.put("POSITION", accessor(mesh.vertices()));
      attributes.put("NORMAL", accessor(mesh.normals()));
    }
    if (!mesh.ends().isEmpty()) {
      primitive(primitives, body, LINES).put("POSITION", accessor(mesh.ends()));
    }
    if (!primitives.isEmpty()) {
      children.add(nodes.size());
      nodes.addObject().put("name", body.name()).put("mesh", meshes.size());
      meshes.addObject().put("name", body.name()).set("primitives", primitives);
    }
  }

  private static ObjectNode primitive(ArrayNode primitives, Solid.Body body, int mode) {
    ObjectNode primitive = primitives.addObject();
    ObjectNode attributes = primitive.putObject("attributes");
    primitive.put("material", body.finish().ordinal()).put("mode", mode);
    return attributes;
  }

  private int accessor(List<Point3> points) {
    float[] numbers = new float[3 * points.size()];
    float[] least = {Float.MAX_VALUE, Float.MAX_VALUE, Float.MAX_VALUE};
    float[] most = {-Float.MAX_VALUE, -Float.MAX_VALUE, -Float.MAX_VALUE};
    for (int i = 0; i < points.size(); i++) {
      Point3 p = points.get(i);
      double[] xyz = {p.x(), p.y(), p.z()};
      for (int axis = 0; axis < 3; axis++) {
        // Plus nought, or a negative nought would be written.
        float number = (float) xyz[axis] + 0f;
        numbers[3 * i + axis] = number;
        least[axis] = Math.min(least[axis], number);
        most[axis] = Math.max(most[axis], number);
      }
    }
    ObjectNode view = views.addObject();
    view.put("buffer", 0).put("byteOffset", bytes).put("byteLength", 4 * numbers.length);
    view.put("target", ARRAY_BUFFER);
    ObjectNode accessor = accessors.addObject();
    accessor.put("bufferView", views.size() - 1).put("componentType", FLOAT);
    accessor.put("count", points.size()).put("type", "VEC3");
    accessor.set("min", list(least));
    accessor.set("max", list(most));
    arrays.add(numbers);
    bytes += 4 * numbers.length;
    return accessors.size() - 1;
  }

  private static ArrayNode list(float[] numbers) {
    ArrayNode list = NODES.arrayNode();
    for (float number : numbers) {
      list.add((double) number);
    }
    return list;
  }
}
