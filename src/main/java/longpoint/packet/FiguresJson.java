package longpoint.packet;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.pipeline.Design;
import longpoint.plan.Problem;
import longpoint.surface.LineFigures;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import longpoint.wording.Language;

/**
 * Every figure of a design for programs to read: in the plan's unit, unrounded, keys as in {@code
 * docs/plan-format.md}. The same design gives the same bytes.
 */
public final class FiguresJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  /** Prints the shortest exact number on every JDK; the language's own changed in version 19. */
  private static final ObjectMapper MAPPER =
      new ObjectMapper(
          JsonFactory.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build());

  private FiguresJson() {}

  /** JSON text, indented, ending in a line feed; problems are told in English. */
  public static String of(Design design) {
    return of(design, Language.ENGLISH);
  }

  /**
   * JSON text, indented, ending in a line feed.
   *
   * @param language of the problems' messages and cures; all keys stay as they are
   */
  public static String of(Design design, Language language) {
    ObjectNode root = NODES.objectNode();
    root.put("unit", design.plan().unit().symbol());
    root.put("title", design.plan().title());
    root.set("problems", problems(design, language));
    root.set("surface", surface(design));
    root.set("framing", RecordsJson.of(design.framing()).without("problems"));
    root.set("deck", DeckJson.deck(design.deck()));
    ObjectNode field = root.putObject("field");
    field.set("chalk", DeckJson.chalk(design.chalk()));
    field.set("tape", RecordsJson.of(design.framing()).withArray("tapes"));
    field.set("cuts", RecordsJson.of(design.lumber()).withArray("cuts"));
    field.set("stock", RecordsJson.of(design.lumber()).withArray("stock"));
    field.set("takeOff", RecordsJson.of(design.takeOff()).without("problems"));
    if (!design.onSite().walls().walls().isEmpty()) {
      field.set("asBuilt", OnSiteJson.walls(design.onSite().walls()));
    }
    if (!design.onSite().trusses().isEmpty()) {
      field.set("supplied", RecordsJson.of(design.onSite().trusses()));
    }
    field.set("lifts", RecordsJson.of(design.aids().lifts()).withArray("sections"));
    field.set("restraint", RecordsJson.of(design.aids().restraint()).withArray("runs"));
    field.set("loads", RecordsJson.of(design.aids().loads()));
    return print(root);
  }

  private static ArrayNode problems(Design design, Language language) {
    ArrayNode all = NODES.arrayNode();
    for (Problem p : design.problems()) {
      all.addObject()
          .put("level", p.level().name().toLowerCase(java.util.Locale.ROOT))
          .put("where", p.where())
          .put("message", p.message(language))
          .put("cure", p.cure(language));
    }
    return all;
  }

  private static ObjectNode surface(Design design) {
    ObjectNode surface = NODES.objectNode();
    ArrayNode planes = surface.putArray("planes");
    design.surface().planes().forEach(p -> planes.add(plane(p)));
    ArrayNode lines = surface.putArray("lines");
    for (RoofLine line : design.surface().lines()) {
      ObjectNode node = line(line, design.surface().figures(line));
      ArrayNode seen = node.putArray("seen");
      for (Segment stretch : design.surface().seen(line)) {
        seen.addArray().add(place(stretch.from())).add(place(stretch.to()));
      }
      lines.add(node);
    }
    return surface;
  }

  private static ObjectNode plane(RoofPlane plane) {
    ObjectNode node = NODES.objectNode();
    node.put("id", plane.id());
    node.put("part", plane.part());
    node.put("edge", plane.edge());
    node.put("slope", plane.slope());
    node.put("planArea", plane.planArea());
    node.put("area", plane.area());
    node.put("coveredArea", plane.coveredArea());
    node.set("visible", rings(plane, plane.visible()));
    node.set("covered", rings(plane, plane.covered()));
    node.set("sheltered", rings(plane, plane.sheltered()));
    return node;
  }

  /** Outer rings run counter-clockwise; the clockwise rings after one are its holes. */
  private static ArrayNode rings(RoofPlane plane, Iterable<Region> regions) {
    ArrayNode rings = NODES.arrayNode();
    for (Region region : regions) {
      rings.add(ring(plane, region.shell()));
      region.holes().forEach(hole -> rings.add(ring(plane, hole)));
    }
    return rings;
  }

  private static ArrayNode ring(RoofPlane plane, Ring ring) {
    ArrayNode points = NODES.arrayNode();
    ring.points().forEach(p -> points.add(point(plane.plane().lift(p))));
    return points;
  }

  private static ArrayNode place(Point p) {
    return NODES.arrayNode().add(p.x()).add(p.y());
  }

  private static ArrayNode point(Point3 p) {
    return NODES.arrayNode().add(p.x()).add(p.y()).add(p.z());
  }

  private static ObjectNode line(RoofLine line, LineFigures figures) {
    ObjectNode node = NODES.objectNode();
    node.put("id", line.id());
    node.put("kind", line.kind().key());
    node.set("from", point(line.from()));
    node.set("to", point(line.to()));
    node.put("length", figures.length());
    node.put("run", figures.run());
    node.put("rise", figures.rise());
    node.put("bearing", figures.bearing());
    node.put("degrees", figures.degrees());
    figures.dihedral().ifPresent(angle -> node.put("dihedral", angle));
    ArrayNode planes = node.putArray("planes");
    line.planes().forEach(planes::add);
    ArrayNode beside = node.putArray("beside");
    for (LineFigures.Beside side : figures.sides()) {
      beside
          .addObject()
          .put("plane", side.plane())
          .put("planAngle", side.planAngle())
          .put("backing", side.backing());
    }
    return node;
  }

  private static String print(ObjectNode root) {
    DefaultIndenter indent = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(indent);
    try {
      return MAPPER.writer(printer).writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("figures are plain numbers and text", e);
    }
  }
}
