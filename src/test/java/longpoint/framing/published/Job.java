package longpoint.framing.published;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.StreamSupport;
import longpoint.packet.FiguresJson;
import longpoint.packet.FiguresText;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.planfile.PlanFile;

/**
 * A plan file as a user has it, and the figures as a user gets them: written, opened, solved and
 * read back. Inches; walls as {@code x,y x,y …}; edges as {@code e8 g o a}, an eave with its rise
 * in 12.
 */
final class Job {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final StringBuilder parts = new StringBuilder();
  private final StringBuilder joins = new StringBuilder();
  private double overhang;
  private double heel;
  private JsonNode figures;
  private Design design;

  static Job of() {
    return new Job();
  }

  Job overhang(double level) {
    overhang = level;
    return this;
  }

  Job heel(double plumb) {
    heel = plumb;
    return this;
  }

  Job part(String id, double plate, String walls, String edges, String frame) {
    parts.append(parts.length() > 0 ? "," : "");
    parts.append(
        String.format(
            Locale.ROOT,
            "{\"id\":\"%s\",\"plateHeight\":%s,\"outline\":[%s],\"edges\":[%s],"
                + "\"frame\":{\"method\":\"rafter\",\"thickness\":1.5,%s}}",
            id,
            plate,
            walls(walls),
            edges(edges),
            frame));
    return this;
  }

  /** A rectangle from the origin; its first wall is the long one in front. */
  Job box(double length, double width, String edges, String frame) {
    String walls = String.format(Locale.ROOT, "0,0 %s,0 %s,%s 0,%s", length, length, width, width);
    return part("house", 96, walls, edges, frame);
  }

  Job join(String upper, String lower, String method) {
    joins.append(joins.length() > 0 ? "," : "");
    joins.append(
        "{\"upper\":\"" + upper + "\",\"lower\":\"" + lower + "\",\"method\":\"" + method + "\"}");
    return this;
  }

  private static String walls(String walls) {
    return "[" + walls.trim().replace(" ", "],[") + "]";
  }

  private static String edges(String edges) {
    StringBuilder text = new StringBuilder();
    for (String edge : edges.trim().split(" ")) {
      text.append(text.length() > 0 ? "," : "").append(edge(edge));
    }
    return text.toString();
  }

  /** e10 or e10@5: an eave of 10 in 12, with a heel of its own. */
  private static String edge(String edge) {
    String[] at = edge.substring(1).split("@");
    return switch (edge.charAt(0)) {
      case 'e' ->
          "{\"kind\":\"eave\",\"slope\":\""
              + at[0]
              + "/12\""
              + (at.length > 1 ? ",\"heel\":" + at[1] : "")
              + "}";
      case 'g' -> "{\"kind\":\"gable\"}";
      case 'o' -> "{\"kind\":\"open\"}";
      default -> "{\"kind\":\"abutment\"}";
    };
  }

  Design design() {
    if (design == null) {
      String plan =
          String.format(
              Locale.ROOT,
              "{\"format\":\"longpoint-plan\",\"version\":1,\"unit\":\"in\",\"parts\":[%s],"
                  + "\"joins\":[%s],\"defaults\":{\"overhang\":%s,\"heel\":%s,\"fascia\":0}}",
              parts,
              joins,
              overhang,
              heel);
      try {
        design = Pipeline.solve(PlanFile.read(plan.getBytes(StandardCharsets.UTF_8)).plan());
      } catch (longpoint.planfile.PlanFileException e) {
        throw new AssertionError(plan, e);
      }
    }
    return design;
  }

  JsonNode figures() {
    if (figures == null) {
      try {
        figures = MAPPER.readTree(FiguresJson.of(design()));
      } catch (java.io.IOException e) {
        throw new AssertionError(e);
      }
    }
    return figures;
  }

  /** What {@code longpoint figures} prints. */
  String text() {
    return FiguresText.of(design());
  }

  List<JsonNode> rafters(String kind) {
    return rafters(r -> r.get("kind").asText().equals(kind));
  }

  List<JsonNode> rafters(Predicate<JsonNode> which) {
    return StreamSupport.stream(figures().at("/framing/rafters").spliterator(), false)
        .filter(which)
        .toList();
  }

  /** The only one of its kind, or the first. */
  JsonNode rafter(String kind) {
    return rafters(kind).get(0);
  }

  /** The one with a line length, if there is one. */
  Optional<JsonNode> rafter(String kind, double lineLength, double within) {
    return rafters(kind).stream()
        .filter(r -> Math.abs(r.get("lineLength").asDouble() - lineLength) <= within)
        .findFirst();
  }
}
