package longpoint.planfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.geometry.Point;
import longpoint.plan.CeilingStretch;
import longpoint.plan.Frame;
import longpoint.plan.FrameChoices;
import longpoint.plan.FrameChoices.Flats;
import longpoint.plan.FrameChoices.Lookout;
import longpoint.plan.FrameChoices.LookoutPlaces;
import longpoint.plan.FrameChoices.Ridge;
import longpoint.plan.Lift;
import longpoint.plan.PlacedTruss;
import longpoint.plan.Placements;
import longpoint.plan.RunChoices;
import longpoint.plan.StickChoices;
import longpoint.plan.StickChoices.RidgeEnds;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import longpoint.wording.Phrase;

/** Makes a part's frame of its object in a file. */
final class FrameReader {
  /** Far more than a part has; enough to stop a file made to exhaust the program. */
  private static final int MOST_PLACES = 1000;

  /** More trusses side by side than anybody fastens together. */
  private static final int MOST_PLIES = 9;

  private final Fields fields;
  private final Notes notes;
  private final String part;

  private FrameReader(Fields fields, Notes notes, String part) {
    this.fields = fields;
    this.notes = notes;
    this.part = part;
  }

  static Frame read(JsonValue value, LengthUnit unit, Notes notes, String part)
      throws PlanFileException {
    Fields f = new Fields(value);
    FrameReader reader = new FrameReader(f, notes, part);
    Frame usual = Frame.of(unit);
    return new Frame(
        f.choice("method", usual.method(), Frame.Method.values(), Frame.Method::key),
        f.number("spacing", usual.spacing()),
        f.number("thickness", usual.thickness()),
        f.optionalNumber("hipSetback"),
        reader.choices(),
        reader.placements(),
        f.rest(notes, part));
  }

  private FrameChoices choices() throws PlanFileException {
    Optional<JsonValue> ceiling = fields.take("ceiling");
    Optional<JsonValue> plies = fields.take("girderPlies");
    return new FrameChoices(
        fields.optionalChoice("ridge", Ridge.values(), Ridge::key),
        ceiling.isEmpty() ? Optional.empty() : Optional.of(PlanReader.slope(ceiling.get())),
        fields.optionalNumber("haul"),
        fields.optionalChoice("lookout", Lookout.values(), Lookout::key),
        fields.optionalChoice("lookoutPlaces", LookoutPlaces.values(), LookoutPlaces::key),
        fields.optionalChoice("flats", Flats.values(), Flats::key),
        plies.isEmpty() ? Optional.empty() : Optional.of(plies(plies.get())),
        runs(),
        sticks());
  }

  private StickChoices sticks() throws PlanFileException {
    return new StickChoices(
        fields.optionalNumber("plateWidth"),
        fields.optionalNumber("post"),
        fields.optionalChoice("ridgeEnds", RidgeEnds.values(), RidgeEnds::key));
  }

  private RunChoices runs() throws PlanFileException {
    Optional<JsonValue> through = fields.take("through");
    return new RunChoices(
        points("layoutFrom"),
        through.isEmpty() ? Optional.empty() : Optional.of(place(through.get())),
        fields.optionalChoice("legs", RunChoices.Legs.values(), RunChoices.Legs::key));
  }

  private Placements placements() throws PlanFileException {
    List<PlacedTruss> trusses = new ArrayList<>();
    for (JsonValue truss : list("placed")) {
      trusses.add(truss(new Fields(truss)));
    }
    List<CeilingStretch> ceilings = new ArrayList<>();
    List<Point> leftOut = points("leftOut");
    for (JsonValue ceiling : list("ceilings")) {
      ceilings.add(ceiling(new Fields(ceiling)));
    }
    List<Lift> lifts = new ArrayList<>();
    for (JsonValue lift : list("lifts")) {
      lifts.add(lift(lift, new Fields(lift)));
    }
    return new Placements(trusses, leftOut, ceilings, lifts);
  }

  private Lift lift(JsonValue value, Fields f) throws PlanFileException {
    String name = f.text("name", "");
    List<Point> trusses = points(f, "trusses");
    Optional<Point> from = f.optionalPoint("from");
    Optional<Point> to = f.optionalPoint("to");
    if (from.isPresent() != to.isPresent()) {
      throw PlanFileException.at(
          value, Phrase.of("planfile.missing", from.isPresent() ? "to" : "from"));
    }
    List<Lift.Also> also = new ArrayList<>();
    for (JsonValue with : f.list("with")) {
      also.add(Fields.choice(with, Lift.Also.values(), Lift.Also::key));
    }
    Optional<JsonValue> lines = f.take("lines");
    return new Lift(
        name,
        trusses,
        from.map(p -> new Lift.Stretch(p, to.orElseThrow())),
        also.stream().distinct().sorted().toList(),
        new Lift.Rigging(
            lines.isEmpty() ? Optional.empty() : Optional.of(whole(lines.get(), 2, 4)),
            points(f, "hangAt"),
            f.optionalNumber("hook")),
        f.rest(notes, part));
  }

  private PlacedTruss truss(Fields f) throws PlanFileException {
    Point at = place(f.need("at"));
    Optional<JsonValue> to = f.take("to");
    Optional<JsonValue> plies = f.take("plies");
    return new PlacedTruss(
        at,
        to.isEmpty() ? Optional.empty() : Optional.of(place(to.get())),
        f.choice("kind", PlacedTruss.Kind.TRUSS, PlacedTruss.Kind.values(), PlacedTruss.Kind::key),
        plies.isEmpty() ? 1 : plies(plies.get()),
        f.rest(notes, part));
  }

  private CeilingStretch ceiling(Fields f) throws PlanFileException {
    Point from = place(f.need("from"));
    Point to = place(f.need("to"));
    Slope slope = PlanReader.slope(f.need("slope"));
    return new CeilingStretch(from, to, slope, f.rest(notes, part));
  }

  private List<Point> points(String key) throws PlanFileException {
    return points(fields, key);
  }

  private static List<Point> points(Fields f, String key) throws PlanFileException {
    List<Point> points = new ArrayList<>();
    for (JsonValue point : list(f, key)) {
      points.add(place(point));
    }
    return points;
  }

  private List<JsonValue> list(String key) throws PlanFileException {
    return list(fields, key);
  }

  private static List<JsonValue> list(Fields f, String key) throws PlanFileException {
    Optional<JsonValue> list = f.take(key);
    return list.isEmpty() ? List.of() : PlanReader.atMost(MOST_PLACES, list.get(), "places");
  }

  private static Point place(JsonValue value) throws PlanFileException {
    return Fields.point(value);
  }

  private static int plies(JsonValue value) throws PlanFileException {
    return whole(value, 1, MOST_PLIES);
  }

  private static int whole(JsonValue value, int least, int most) throws PlanFileException {
    double number = Fields.number(value);
    if (number != Math.rint(number) || number < least || number > most) {
      throw PlanFileException.at(value, Phrase.of("planfile.whole", least, most));
    }
    return (int) number;
  }
}
