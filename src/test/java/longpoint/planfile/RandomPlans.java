package longpoint.planfile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.Buying;
import longpoint.plan.CeilingStretch;
import longpoint.plan.Deck;
import longpoint.plan.Defaults;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.FrameChoices;
import longpoint.plan.InLine;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Particulars;
import longpoint.plan.PlacedTruss;
import longpoint.plan.Placements;
import longpoint.plan.Plan;
import longpoint.plan.RunChoices;
import longpoint.plan.SpanRating;
import longpoint.plan.StickChoices;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import longpoint.wording.Language;

/** Plans of every shape a file can hold, sensible or not, rings the right way round. */
final class RandomPlans {
  private static final String[] TEXTS = {
    "",
    "Main house",
    "Brackenfell ½ mile",
    "\"quoted\" \\ back",
    "line\nbreak\ttab",
    "é 屋根 😀",
    "\u0000\u007f\u2028",
    "half \ud800 pair",
    "'; drop"
  };

  private RandomPlans() {}

  static Plan plan(Random r) {
    LengthUnit unit = LengthUnit.values()[r.nextInt(2)];
    List<Part> parts = new ArrayList<>();
    for (int i = r.nextInt(4); i > 0; i--) {
      parts.add(part(r));
    }
    List<Join> joins = new ArrayList<>();
    for (int i = r.nextInt(3); i > 0; i--) {
      joins.add(
          new Join(
              text(r),
              text(r),
              Join.Method.values()[r.nextInt(2)],
              Join.MadeFor.values()[r.nextInt(2)],
              Join.MouthTails.values()[r.nextInt(2)],
              r.nextBoolean() ? List.of() : List.of(number(r), number(r)),
              extras(r)));
    }
    Defaults defaults =
        new Defaults(
            slope(r),
            number(r),
            r.nextBoolean() ? Optional.of(number(r)) : Optional.empty(),
            number(r),
            number(r),
            number(r),
            number(r),
            extras(r));
    return new Plan(
        unit,
        text(r),
        parts,
        joins,
        defaults,
        buying(r, unit),
        RandomMarkup.of(r),
        particulars(r),
        RandomHandling.of(r),
        RandomOnSite.of(r),
        extras(r));
  }

  private static Particulars particulars(Random r) {
    return new Particulars(
        text(r),
        text(r),
        text(r),
        r.nextBoolean() ? Optional.empty() : Optional.of(number(r)),
        r.nextBoolean() ? Optional.empty() : Optional.of(Language.values()[r.nextInt(2)]));
  }

  private static Buying buying(Random r, LengthUnit unit) {
    if (r.nextInt(4) == 0) {
      return Buying.of(unit);
    }
    List<Double> lengths = new ArrayList<>();
    for (int i = 1 + r.nextInt(5); i > 0; i--) {
      lengths.add(number(r));
    }
    return new Buying(
        number(r),
        number(r),
        number(r),
        new Buying.Nails(number(r), number(r)),
        SpanRating.values()[r.nextInt(7)],
        Buying.Vent.values()[r.nextInt(2)],
        new Buying.Boards(
            number(r), lengths, number(r), number(r), number(r), number(r), number(r), number(r),
            number(r)),
        extras(r));
  }

  private static Part part(Random r) {
    Ring outline = ring(r);
    List<Ring> holes = new ArrayList<>();
    for (int i = r.nextInt(3); i > 0; i--) {
      holes.add(ring(r));
    }
    List<Edge> edges = new ArrayList<>();
    for (int i = outline.size() + holes.stream().mapToInt(Ring::size).sum(); i > 0; i--) {
      edges.add(
          new Edge(
              EdgeKind.values()[r.nextInt(4)],
              r.nextBoolean() ? Optional.empty() : Optional.of(slope(r)),
              r.nextBoolean() ? Optional.empty() : Optional.of(number(r)),
              r.nextBoolean() ? Optional.empty() : Optional.of(number(r)),
              r.nextBoolean() ? Optional.empty() : Optional.of(InLine.values()[r.nextInt(2)]),
              r.nextBoolean() ? Optional.empty() : Optional.of(Edge.HipEnd.values()[r.nextInt(3)]),
              r.nextBoolean() ? Optional.empty() : Optional.of(Deck.Start.values()[r.nextInt(4)]),
              r.nextBoolean() ? Optional.empty() : Optional.of(number(r)),
              extras(r)));
    }
    return new Part(
            text(r),
            text(r),
            r.nextBoolean(),
            outline,
            holes,
            number(r),
            edges,
            new Frame(
                Frame.Method.values()[r.nextInt(3)],
                number(r),
                number(r),
                r.nextBoolean() ? Optional.empty() : Optional.of(number(r)),
                choices(r),
                placements(r),
                extras(r)),
            new Deck(
                number(r),
                number(r),
                number(r),
                Deck.Start.values()[r.nextInt(3)],
                r.nextBoolean() ? Optional.empty() : Optional.of(number(r)),
                r.nextBoolean() ? Optional.empty() : Optional.of(number(r)),
                extras(r)),
            extras(r))
        .rightWayRound();
  }

  private static FrameChoices choices(Random r) {
    return new FrameChoices(
        r.nextBoolean() ? Optional.empty() : Optional.of(FrameChoices.Ridge.values()[r.nextInt(2)]),
        r.nextBoolean() ? Optional.empty() : Optional.of(slope(r)),
        r.nextBoolean() ? Optional.empty() : Optional.of(number(r)),
        r.nextBoolean()
            ? Optional.empty()
            : Optional.of(FrameChoices.Lookout.values()[r.nextInt(2)]),
        r.nextBoolean()
            ? Optional.empty()
            : Optional.of(FrameChoices.LookoutPlaces.values()[r.nextInt(2)]),
        r.nextBoolean() ? Optional.empty() : Optional.of(FrameChoices.Flats.values()[r.nextInt(2)]),
        r.nextBoolean() ? Optional.empty() : Optional.of(1 + r.nextInt(9)),
        new RunChoices(
            r.nextBoolean() ? List.of() : List.of(point(r)),
            r.nextBoolean() ? Optional.empty() : Optional.of(point(r)),
            r.nextBoolean()
                ? Optional.empty()
                : Optional.of(RunChoices.Legs.values()[r.nextInt(2)])),
        new StickChoices(
            r.nextBoolean() ? Optional.empty() : Optional.of(number(r)),
            r.nextBoolean() ? Optional.empty() : Optional.of(number(r)),
            r.nextBoolean()
                ? Optional.empty()
                : Optional.of(StickChoices.RidgeEnds.values()[r.nextInt(2)])));
  }

  private static Placements placements(Random r) {
    List<PlacedTruss> trusses = new ArrayList<>();
    for (int i = r.nextInt(3); i > 0; i--) {
      trusses.add(
          new PlacedTruss(
              point(r),
              r.nextBoolean() ? Optional.empty() : Optional.of(point(r)),
              PlacedTruss.Kind.values()[r.nextInt(2)],
              1 + r.nextInt(9),
              extras(r)));
    }
    return new Placements(
        trusses,
        r.nextBoolean() ? List.of() : List.of(point(r), point(r)),
        r.nextBoolean()
            ? List.of()
            : List.of(new CeilingStretch(point(r), point(r), slope(r), extras(r))),
        r.nextBoolean() ? List.of() : List.of(RandomHandling.lift(r)));
  }

  static Point point(Random r) {
    return new Point(number(r), number(r));
  }

  private static Ring ring(Random r) {
    List<Point> points = new ArrayList<>();
    for (int i = 3 + r.nextInt(6); i > 0; i--) {
      points.add(new Point(number(r), number(r)));
    }
    return new Ring(points);
  }

  static Slope slope(Random r) {
    return switch (r.nextInt(6)) {
      case 0 -> Slope.inTwelve(r.nextInt(200) / 10.0);
      case 1 -> Slope.degrees(r.nextInt(890) / 10.0);
      case 2 -> Slope.percent(r.nextInt(2000) / 10.0);
      case 3 -> Slope.ratio(r.nextDouble() * 3);
      case 4 -> Slope.ratio(0);
      default -> Slope.ratio(r.nextInt(400) / 100.0);
    };
  }

  static double number(Random r) {
    double number =
        switch (r.nextInt(5)) {
          case 0 -> r.nextInt(1000);
          case 1 -> r.nextInt(100_000) / 64.0;
          case 2 -> r.nextGaussian() * 1000;
          case 3 -> Math.scalb(r.nextDouble(), r.nextInt(400) - 200);
          default -> -r.nextInt(10_000) / 10.0;
        };
    return number == 0 ? 0 : number;
  }

  static String text(Random r) {
    return TEXTS[r.nextInt(TEXTS.length)];
  }

  static Extras extras(Random r) {
    if (r.nextInt(4) > 0) {
      return Extras.NONE;
    }
    Map<String, String> json = new LinkedHashMap<>();
    json.put("colour", "\"slate\"");
    json.put("x-" + r.nextInt(3), "{\"a\":[1,2.50,1e400,null,true],\"b\":{}}");
    return new Extras(json);
  }
}
