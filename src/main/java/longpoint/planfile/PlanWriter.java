package longpoint.planfile;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.Deck;
import longpoint.plan.Defaults;
import longpoint.plan.Edge;
import longpoint.plan.Extras;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Particulars;
import longpoint.plan.Plan;
import longpoint.units.Decimal;
import longpoint.units.Slope;
import longpoint.units.SlopeText;

/**
 * Writes a plan as JSON text in one fixed layout: the same plan gives the same bytes, and a changed
 * wall changes one line. Numbers are the shortest that read back exactly; extras follow the known
 * keys in the order they were found.
 */
final class PlanWriter {
  private PlanWriter() {}

  /** The file's text, ending in a line feed. */
  static String write(Plan plan) {
    List<String> known = new ArrayList<>();
    known.add(field("format", JsonText.quote(PlanReader.FORMAT)));
    known.add(field("version", Integer.toString(PlanReader.VERSION)));
    known.add(field("unit", JsonText.quote(plan.unit().symbol())));
    known.add(field("title", JsonText.quote(plan.title())));
    known.addAll(particulars(plan.particulars()));
    known.add(field("parts", list(plan.parts().stream().map(PlanWriter::part).toList(), "  ")));
    known.add(field("joins", list(plan.joins().stream().map(PlanWriter::join).toList(), "  ")));
    known.add(field("defaults", defaults(plan.defaults())));
    known.addAll(BuyingWriter.field(plan.buying(), plan.unit()));
    known.addAll(HandlingWriter.fields(plan.handling()));
    known.addAll(MarkupWriter.fields(plan.markup()));
    known.addAll(OnSiteWriter.fields(plan.onSite()));
    return block(fields(plan.extras(), known.toArray(String[]::new)), "") + "\n";
  }

  /** Only what is given. */
  private static List<String> particulars(Particulars given) {
    List<String> known = new ArrayList<>();
    text(known, "site", given.site());
    text(known, "drawnBy", given.drawnBy());
    text(known, "date", given.date());
    given.north().ifPresent(n -> known.add(field("north", number(n))));
    given.language().ifPresent(l -> known.add(field("language", JsonText.quote(l.key()))));
    return known;
  }

  private static void text(List<String> known, String key, String value) {
    if (!value.isEmpty()) {
      known.add(field(key, JsonText.quote(value)));
    }
  }

  private static String part(Part part) {
    List<String> lines =
        fields(
            part.extras(),
            field("id", JsonText.quote(part.id())),
            field("name", JsonText.quote(part.name())),
            field("existing", Boolean.toString(part.existing())),
            field("outline", ring(part.outline())),
            field(
                "holes",
                part.holes().stream()
                    .map(PlanWriter::ring)
                    .collect(Collectors.joining(", ", "[", "]"))),
            field("plateHeight", number(part.plateHeight())),
            field("edges", list(part.edges().stream().map(PlanWriter::edge).toList(), "      ")),
            field("frame", FrameWriter.write(part.frame())),
            field("deck", deck(part.deck())));
    return block(lines, "    ");
  }

  private static String ring(Ring ring) {
    return row(ring.points().stream().map(PlanWriter::point).toList());
  }

  static String point(Point p) {
    return "[" + number(p.x()) + ", " + number(p.y()) + "]";
  }

  static String row(List<String> items) {
    return items.stream().collect(Collectors.joining(", ", "[", "]"));
  }

  private static String edge(Edge edge) {
    List<String> known = new ArrayList<>();
    known.add(field("kind", JsonText.quote(edge.kind().key())));
    edge.slope().ifPresent(s -> known.add(field("slope", slope(s))));
    edge.overhang().ifPresent(o -> known.add(field("overhang", number(o))));
    edge.heel().ifPresent(h -> known.add(field("heel", number(h))));
    edge.inLine().ifPresent(l -> known.add(field("inLine", JsonText.quote(l.key()))));
    edge.hip().ifPresent(h -> known.add(field("hip", JsonText.quote(h.key()))));
    edge.start().ifPresent(s -> known.add(field("start", JsonText.quote(s.key()))));
    edge.firstCourse().ifPresent(w -> known.add(field("firstCourse", number(w))));
    return line(fields(edge.extras(), known.toArray(String[]::new)));
  }

  private static String deck(Deck deck) {
    List<String> known = new ArrayList<>();
    known.add(field("thickness", number(deck.thickness())));
    known.add(field("sheetWidth", number(deck.sheetWidth())));
    known.add(field("sheetLength", number(deck.sheetLength())));
    known.add(field("start", JsonText.quote(deck.start().key())));
    deck.walkway().ifPresent(w -> known.add(field("walkway", number(w))));
    deck.firstCourse().ifPresent(w -> known.add(field("firstCourse", number(w))));
    return line(fields(deck.extras(), known.toArray(String[]::new)));
  }

  private static String join(Join join) {
    List<String> known = new ArrayList<>();
    known.add(field("upper", JsonText.quote(join.upper())));
    known.add(field("lower", JsonText.quote(join.lower())));
    known.add(field("method", JsonText.quote(join.method().key())));
    known.add(field("madeFor", JsonText.quote(join.madeFor().key())));
    if (join.tails() != Join.MouthTails.OFF) {
      known.add(field("tails", JsonText.quote(join.tails().key())));
    }
    if (!join.chords().isEmpty()) {
      known.add(field("chords", row(join.chords().stream().map(PlanWriter::number).toList())));
    }
    return line(fields(join.extras(), known.toArray(String[]::new)));
  }

  private static String defaults(Defaults defaults) {
    List<String> known = new ArrayList<>();
    known.add(field("slope", slope(defaults.slope())));
    known.add(field("overhang", number(defaults.overhang())));
    defaults.heel().ifPresent(h -> known.add(field("heel", number(h))));
    known.add(field("fascia", number(defaults.fascia())));
    known.add(field("ridgeBlockRelief", number(defaults.ridgeBlockRelief())));
    known.add(field("lookoutFirst", number(defaults.lookoutFirst())));
    known.add(field("lookoutSpacing", number(defaults.lookoutSpacing())));
    return line(fields(defaults.extras(), known.toArray(String[]::new)));
  }

  static String slope(Slope slope) {
    String text = SlopeText.exact(slope);
    // What its notation cannot hold to the last bit goes as a ratio, which is a number here.
    boolean fits = PlanReader.SLOPE.matcher(text).matches();
    return fits ? JsonText.quote(text) : number(slope.ratio());
  }

  static String number(double value) {
    return Decimal.json(value);
  }

  static String field(String key, String json) {
    return JsonText.quote(key) + ": " + json;
  }

  static List<String> fields(Extras extras, String... known) {
    return Stream.concat(
            Stream.of(known),
            extras.json().entrySet().stream().map(e -> field(e.getKey(), e.getValue())))
        .toList();
  }

  static String line(List<String> fields) {
    return fields.stream().collect(Collectors.joining(", ", "{ ", " }"));
  }

  static String block(List<String> fields, String indent) {
    return fields.stream()
        .collect(
            Collectors.joining(",\n" + indent + "  ", "{\n" + indent + "  ", "\n" + indent + "}"));
  }

  static String list(List<String> items, String indent) {
    if (items.isEmpty()) {
      return "[]";
    }
    return items.stream()
        .collect(
            Collectors.joining(",\n" + indent + "  ", "[\n" + indent + "  ", "\n" + indent + "]"));
  }
}
