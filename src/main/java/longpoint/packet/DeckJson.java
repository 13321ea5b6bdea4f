package longpoint.packet;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import longpoint.deck.CutDifference;
import longpoint.deck.CutSheet;
import longpoint.deck.DeckPlan;
import longpoint.deck.Piece;
import longpoint.deck.PlaneDeck;
import longpoint.deck.Stock;
import longpoint.field.chalk.ChalkLine;
import longpoint.field.chalk.ChalkSheet;
import longpoint.field.chalk.SquareCheck;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.wording.Language;

/** The deck and its chalk lines as JSON; u runs along the eave, v up the slope from the fascia. */
final class DeckJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private DeckJson() {}

  static ObjectNode deck(DeckPlan deck) {
    ObjectNode node = NODES.objectNode();
    node.put("sheetsBought", deck.sheetsBought());
    node.put("areaUsed", deck.areaUsed());
    node.put("lowerBound", deck.lowerBound());
    ArrayNode planes = node.putArray("planes");
    deck.planes().forEach(p -> planes.add(plane(p, deck.stock())));
    ArrayNode stock = node.putArray("stock");
    deck.stock().forEach(s -> stock.add(stock(s)));
    return node;
  }

  static ArrayNode chalk(List<ChalkSheet> sheets) {
    ArrayNode all = NODES.arrayNode();
    for (ChalkSheet sheet : sheets) {
      ObjectNode node = all.addObject();
      node.put("plane", sheet.plane());
      node.set("datum", RecordsJson.of(sheet.datum()));
      ArrayNode lines = node.putArray("lines");
      sheet.lines().forEach(l -> lines.add(line(l)));
      ArrayNode square = node.putArray("square");
      sheet.square().forEach(s -> square.add(square(s)));
    }
    return all;
  }

  private static ObjectNode square(SquareCheck check) {
    ObjectNode node = NODES.objectNode();
    node.put("to", check.head().label().in(Language.ENGLISH));
    node.put("checkedOn", TextSections.key(check.head().kind().stage()));
    ArrayNode tapes = node.putArray("tapes");
    for (Segment tape : check.tapes()) {
      ObjectNode one = tapes.addObject();
      one.set("from", place(tape.from()));
      one.set("to", place(tape.to()));
      one.put("reads", tape.length());
    }
    return node;
  }

  private static ObjectNode line(ChalkLine line) {
    ObjectNode node = NODES.objectNode();
    node.put("kind", line.kind().key());
    node.put("label", line.label().in(Language.ENGLISH));
    node.put("snappedOn", TextSections.key(line.kind().stage()));
    node.set("from", place(line.from()));
    node.set("to", place(line.to()));
    node.put("diagonal", line.diagonal());
    return node;
  }

  private static ObjectNode place(Point p) {
    return NODES.objectNode().put("u", p.x()).put("v", p.y());
  }

  private static ObjectNode plane(PlaneDeck plane, List<Stock> stock) {
    ObjectNode node = NODES.objectNode();
    node.put("plane", plane.plane());
    ArrayNode together = node.putArray("planes");
    plane.planes().forEach(together::add);
    node.put("area", plane.area());
    node.put("sheets", sheetsCutFor(plane, stock));
    ArrayNode differences = node.putArray("cutDifference");
    for (CutDifference d : plane.cutDifferences()) {
      differences.addObject().put("line", d.line()).put("per", d.per()).put("angle", d.angle());
    }
    ArrayNode courses = node.putArray("courses");
    plane.courses().forEach(c -> courses.add(RecordsJson.of(c)));
    ArrayNode pieces = node.putArray("pieces");
    plane.pieces().forEach(p -> pieces.add(piece(p)));
    return node;
  }

  /** Sheets that at least one piece of the plane is cut from. */
  private static long sheetsCutFor(PlaneDeck plane, List<Stock> stock) {
    Set<String> own = new HashSet<>();
    plane.pieces().forEach(p -> own.add(p.id()));
    return stock.stream()
        .flatMap(s -> s.sheets().stream())
        .filter(s -> s.pieces().stream().map(CutSheet.Placed::piece).anyMatch(own::contains))
        .count();
  }

  private static ObjectNode piece(Piece piece) {
    ObjectNode node = NODES.objectNode();
    node.put("id", piece.id());
    node.put("number", piece.number());
    node.put("course", piece.course());
    node.put("cut", piece.cut());
    node.put("area", piece.area());
    node.put("length", piece.length());
    node.put("width", piece.width());
    node.put("longPoint", piece.longPoint());
    node.put("shortPoint", piece.shortPoint());
    node.set("outline", rings(piece.outline()));
    return node;
  }

  private static ObjectNode stock(Stock stock) {
    ObjectNode node = NODES.objectNode();
    node.set("panel", RecordsJson.of(stock.panel()));
    node.put("bought", stock.bought());
    node.put("areaUsed", stock.areaUsed());
    node.put("lowerBound", stock.lowerBound());
    node.put("waste", stock.waste());
    ArrayNode sheets = node.putArray("sheets");
    for (CutSheet sheet : stock.sheets()) {
      ArrayNode pieces = sheets.addObject().put("number", sheet.number()).putArray("pieces");
      for (CutSheet.Placed placed : sheet.pieces()) {
        ObjectNode in = pieces.addObject().put("piece", placed.piece()).put("cut", placed.cut());
        in.put("turned", placed.turned()).set("outline", rings(placed.outline()));
      }
    }
    return node;
  }

  private static ArrayNode rings(Region region) {
    ArrayNode rings = NODES.arrayNode();
    rings.add(ring(region.shell()));
    region.holes().forEach(h -> rings.add(ring(h)));
    return rings;
  }

  private static ArrayNode ring(Ring ring) {
    ArrayNode points = NODES.arrayNode();
    ring.points().forEach(p -> points.addArray().add(p.x()).add(p.y()));
    return points;
  }
}
