package longpoint.planfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.Buying;
import longpoint.plan.Deck;
import longpoint.plan.Defaults;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Frame;
import longpoint.plan.Handling;
import longpoint.plan.InLine;
import longpoint.plan.Join;
import longpoint.plan.Markup;
import longpoint.plan.OnSite;
import longpoint.plan.Part;
import longpoint.plan.Particulars;
import longpoint.plan.Plan;
import longpoint.units.EntryException;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import longpoint.units.SlopeEntry;
import longpoint.units.SlopeText;
import longpoint.wording.Language;

/**
 * Makes a plan of a parsed file. Refused is only what cannot be made into a plan at all; a plan
 * whose walls cross or whose figures make no sense opens, and {@link longpoint.plan.PlanCheck} says
 * what is wrong with it.
 */
final class PlanReader {
  static final String FORMAT = "longpoint-plan";
  static final int VERSION = 1;

  /** Far more than a building has; enough to stop a file made to exhaust the program. */
  private static final int MOST_PARTS = 500;

  private static final int MOST_CORNERS = 20_000;
  private static final int MOST_JOINS = 2000;
  private static final int MOST_CHORDS = 1000;

  /** {@code 8/12}, {@code 33.7deg}, {@code 66.7%}; the schema holds the same pattern. */
  static final Pattern SLOPE =
      Pattern.compile(
          "[0-9]{1,20}(\\.[0-9]{1,20})?"
              + "(%|/([1-9][0-9]{0,20}(\\.[0-9]{1,20})?|0\\.0{0,20}[1-9][0-9]{0,20}))"
              + "|[0-8]?[0-9](\\.[0-9]{1,20})?deg");

  private final Notes notes = new Notes();
  private LengthUnit unit;
  private int corners;

  private PlanReader() {}

  static Opened read(JsonValue file) throws PlanFileException {
    PlanReader reader = new PlanReader();
    Plan plan = reader.plan(file);
    return new Opened(plan, reader.notes.all(), Opened.Source.PLAN);
  }

  private Plan plan(JsonValue file) throws PlanFileException {
    Fields f = new Fields(file);
    checkFormat(f);
    unit = Fields.choice(f.need("unit"), LengthUnit.values(), LengthUnit::symbol);
    String title = f.text("title", "");
    List<Part> parts = new ArrayList<>();
    for (JsonValue part : atMost(MOST_PARTS, f.need("parts"), "parts")) {
      parts.add(part(part));
    }
    List<Join> joins = new ArrayList<>();
    Optional<JsonValue> joinList = f.take("joins");
    if (joinList.isPresent()) {
      for (JsonValue join : atMost(MOST_JOINS, joinList.get(), "joins")) {
        joins.add(join(join));
      }
    }
    Optional<JsonValue> given = f.take("defaults");
    Defaults defaults = given.isEmpty() ? Defaults.of(unit) : defaults(given.get());
    Buying buying = new BuyingReader(notes, unit).read(f);
    Markup markup = new MarkupReader(notes).read(f);
    Particulars particulars =
        new Particulars(
            f.text("site", ""),
            f.text("drawnBy", ""),
            f.text("date", ""),
            f.optionalNumber("north"),
            f.optionalChoice("language", Language.values(), Language::key));
    Handling handling = new HandlingReader(notes).read(f);
    OnSite onSite = new OnSiteReader(notes).read(f);
    return new Plan(
        unit,
        title,
        parts,
        joins,
        defaults,
        buying,
        markup,
        particulars,
        handling,
        onSite,
        f.rest(notes, "plan"));
  }

  private static void checkFormat(Fields f) throws PlanFileException {
    Optional<JsonValue> format = f.take("format");
    if (format.isEmpty() || !FORMAT.equals(format.get().value())) {
      throw PlanFileException.at(format.orElse(f.object()), Fields.said("notOurs", FORMAT));
    }
    JsonValue version = f.need("version");
    double number = Fields.number(version);
    if (number > VERSION) {
      throw PlanFileException.at(
          version, Fields.said("newer", ((JsonValue.Number) version.value()).text()));
    }
    if (number != VERSION) {
      throw PlanFileException.at(version, Fields.said("version"));
    }
  }

  static List<JsonValue> atMost(int most, JsonValue list, String what) throws PlanFileException {
    List<JsonValue> values = Fields.list(list);
    if (values.size() > most) {
      throw PlanFileException.at(list, Fields.said("many", most, Fields.said("things." + what)));
    }
    return values;
  }

  private Part part(JsonValue value) throws PlanFileException {
    Fields f = new Fields(value);
    String id = f.text("id");
    String name = f.text("name", id);
    boolean existing = f.flag("existing", false);
    Ring outline = ring(f.need("outline"));
    List<Ring> holes = new ArrayList<>();
    for (JsonValue hole : f.list("holes")) {
      holes.add(ring(hole));
    }
    double plateHeight = f.number("plateHeight");
    int sides = outline.size() + holes.stream().mapToInt(Ring::size).sum();
    List<Edge> edges = edges(f.take("edges"), sides, id);
    Optional<JsonValue> frame = f.take("frame");
    Optional<JsonValue> deck = f.take("deck");
    Part part =
        new Part(
            id,
            name,
            existing,
            outline,
            holes,
            plateHeight,
            edges,
            frame.isEmpty() ? Frame.of(unit) : FrameReader.read(frame.get(), unit, notes, id),
            deck.isEmpty() ? Deck.of(unit) : deck(deck.get(), id),
            f.rest(notes, id));
    return turned(part, value);
  }

  private Part turned(Part part, JsonValue value) {
    Part right = part.rightWayRound();
    if (!right.outline().equals(part.outline())) {
      notes.add(part.id(), Fields.said("turned.outline", value.path().words()));
    }
    for (int i = 0; i < part.holes().size(); i++) {
      if (!right.holes().get(i).equals(part.holes().get(i))) {
        notes.add(part.id(), Fields.said("turned.hole", value.path().words(), i));
      }
    }
    return right;
  }

  private Ring ring(JsonValue value) throws PlanFileException {
    List<Point> points = new ArrayList<>();
    for (JsonValue corner : Fields.list(value)) {
      points.add(Fields.point(corner));
    }
    corners += points.size();
    if (corners > MOST_CORNERS) {
      throw PlanFileException.at(
          value, Fields.said("many", MOST_CORNERS, Fields.said("things.corners")));
    }
    if (points.size() < 3) {
      throw PlanFileException.at(value, Fields.said("fewCorners", points.size()));
    }
    return new Ring(points);
  }

  private List<Edge> edges(Optional<JsonValue> value, int sides, String id)
      throws PlanFileException {
    List<Edge> edges = new ArrayList<>();
    if (value.isEmpty()) {
      for (int i = 0; i < sides; i++) {
        edges.add(Edge.of(EdgeKind.EAVE));
      }
      return edges;
    }
    for (JsonValue edge : Fields.list(value.get())) {
      edges.add(edge(edge, id, edges.size()));
    }
    if (edges.size() != sides) {
      throw PlanFileException.at(value.get(), Fields.said("edges", edges.size(), sides));
    }
    return edges;
  }

  private Edge edge(JsonValue value, String id, int side) throws PlanFileException {
    Fields f = new Fields(value);
    EdgeKind kind = Fields.choice(f.need("kind"), EdgeKind.values(), EdgeKind::key);
    Optional<JsonValue> slope = f.take("slope");
    Optional<JsonValue> inLine = f.take("inLine");
    return new Edge(
        kind,
        slope.isEmpty() ? Optional.empty() : Optional.of(slope(slope.get())),
        f.optionalNumber("overhang"),
        f.optionalNumber("heel"),
        inLine.isEmpty()
            ? Optional.empty()
            : Optional.of(Fields.choice(inLine.get(), InLine.values(), InLine::key)),
        f.optionalChoice("hip", Edge.HipEnd.values(), Edge.HipEnd::key),
        f.optionalChoice("start", Deck.Start.values(), Deck.Start::key),
        f.optionalNumber("firstCourse"),
        f.rest(notes, id + "/" + side));
  }

  static Slope slope(JsonValue value) throws PlanFileException {
    if (value.value() instanceof JsonValue.Number) {
      double ratio = Fields.number(value);
      if (ratio < 0) {
        throw PlanFileException.at(value, Fields.said("slope.negative"));
      }
      return Slope.ratio(ratio);
    }
    if (value.value() instanceof String text) {
      try {
        if (SLOPE.matcher(text).matches()) {
          Slope slope = SlopeEntry.read(text);
          // A slope that could not be written back in its notation is a plain ratio from the start.
          boolean keeps = SLOPE.matcher(SlopeText.exact(slope)).matches();
          return keeps ? slope : Slope.ratio(slope.ratio());
        }
      } catch (EntryException e) {
        throw PlanFileException.at(value, e::message);
      }
      throw PlanFileException.at(
          value, Fields.said("slope.unknown", JsonText.quote(Fields.shortened(text))));
    }
    throw Fields.expected(value, Fields.said("kind.slope"));
  }

  private Deck deck(JsonValue value, String id) throws PlanFileException {
    Fields f = new Fields(value);
    Deck usual = Deck.of(unit);
    return new Deck(
        f.number("thickness", usual.thickness()),
        f.number("sheetWidth", usual.sheetWidth()),
        f.number("sheetLength", usual.sheetLength()),
        f.choice("start", usual.start(), Deck.Start.values(), Deck.Start::key),
        f.optionalNumber("walkway"),
        f.optionalNumber("firstCourse"),
        f.rest(notes, id));
  }

  private Join join(JsonValue value) throws PlanFileException {
    Fields f = new Fields(value);
    return new Join(
        f.text("upper"),
        f.text("lower"),
        f.choice("method", Join.Method.OVERLAY, Join.Method.values(), Join.Method::key),
        f.choice("madeFor", Join.MadeFor.FRAME, Join.MadeFor.values(), Join.MadeFor::key),
        f.choice("tails", Join.MouthTails.OFF, Join.MouthTails.values(), Join.MouthTails::key),
        chords(f),
        f.rest(notes, "plan"));
  }

  private static List<Double> chords(Fields f) throws PlanFileException {
    List<Double> chords = new ArrayList<>();
    Optional<JsonValue> list = f.take("chords");
    if (list.isPresent()) {
      for (JsonValue chord : atMost(MOST_CHORDS, list.get(), "chords")) {
        chords.add(Fields.number(chord));
      }
    }
    return chords;
  }

  private Defaults defaults(JsonValue value) throws PlanFileException {
    Fields f = new Fields(value);
    Defaults usual = Defaults.of(unit);
    Optional<JsonValue> slope = f.take("slope");
    return new Defaults(
        slope.isEmpty() ? usual.slope() : slope(slope.get()),
        f.number("overhang", usual.overhang()),
        f.optionalNumber("heel"),
        f.number("fascia", usual.fascia()),
        f.number("ridgeBlockRelief", usual.ridgeBlockRelief()),
        f.number("lookoutFirst", usual.lookoutFirst()),
        f.number("lookoutSpacing", usual.lookoutSpacing()),
        f.rest(notes, "plan"));
  }
}
