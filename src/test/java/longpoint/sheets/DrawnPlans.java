package longpoint.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.Deck;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;

/**
 * Plans of our own that between them make sheets of every kind: bays, wings, a yard, odd angles.
 */
public final class DrawnPlans {
  private DrawnPlans() {}

  public static Map<String, Plan> all() {
    Map<String, Plan> plans = new LinkedHashMap<>();
    plans.put("gable", GableHouse.PLAN);
    plans.put("wing", wing());
    plans.put("hip-el", el(LengthUnit.INCH, 1));
    plans.put("metric-el", el(LengthUnit.MILLIMETRE, 25));
    plans.put("yard", yard());
    plans.put("turned", turned());
    plans.put("bays", bays());
    plans.put("sheds", sheds());
    plans.put("empty", Plan.empty(LengthUnit.INCH));
    return plans;
  }

  /** A gable house with a gabled wing laid over its south slope. */
  static Plan wing() {
    Part house = GableHouse.PLAN.parts().get(0);
    Edge eave = Edge.eave(Slope.inTwelve(10));
    Edge gable = Edge.of(EdgeKind.GABLE).withOverhang(12);
    Part wing =
        part(
            "wing",
            "Garden wing",
            Ring.of(168, -144, 312, -144, 312, 0, 168, 0),
            List.of(gable, eave, Edge.of(EdgeKind.OPEN), eave));
    return Plan.empty(LengthUnit.INCH)
        .withTitle("Kestrel Court garden wing")
        .withParts(List.of(house, wing))
        .withJoins(List.of(Join.overlay("wing", "main")));
  }

  private static Plan el(LengthUnit unit, double times) {
    Ring ring = Ring.of(0, 0, 600, 0, 600, 240, 288, 240, 288, 480, 0, 480);
    Ring scaled = new Ring(ring.points().stream().map(p -> p.times(times)).toList());
    Edge eave =
        unit == LengthUnit.INCH ? Edge.eave(Slope.inTwelve(6)) : Edge.eave(Slope.degrees(35));
    return Plan.empty(unit)
        .withTitle("Larkspur Lane 4")
        .withParts(List.of(part("main", "Long room & kitchen", scaled, same(6, eave), unit)));
  }

  private static Plan yard() {
    Part part =
        new Part(
            "main",
            "Cloister",
            false,
            Ring.of(0, 0, 720, 0, 720, 600, 0, 600),
            List.of(Ring.of(240, 220, 240, 380, 470, 380, 470, 220)),
            108,
            same(8, Edge.eave(Slope.inTwelve(5))),
            Frame.of(LengthUnit.INCH),
            Deck.of(LengthUnit.INCH),
            Extras.NONE);
    return Plan.empty(LengthUnit.INCH).withTitle("Four winds").withParts(List.of(part));
  }

  /** The wing, turned by 23 degrees and moved far off. */
  private static Plan turned() {
    Plan plan = wing();
    List<Part> parts = new ArrayList<>();
    for (Part p : plan.parts()) {
      List<Point> points = new ArrayList<>();
      for (Point q : p.outline().points()) {
        double c = Math.cos(Math.toRadians(23));
        double s = Math.sin(Math.toRadians(23));
        points.add(new Point(9000 + q.x() * c - q.y() * s, -4000 + q.x() * s + q.y() * c));
      }
      parts.add(p.withShape(new Ring(points), List.of(), p.edges()));
    }
    return plan.withTitle("Turned").withParts(parts);
  }

  /** Many short walls in a row. */
  private static Plan bays() {
    List<Point> points = new ArrayList<>(List.of(new Point(0, 0)));
    for (int i = 0; i < 9; i++) {
      double x = 60 + i * 90;
      points.add(new Point(x, 0));
      points.add(new Point(x, -18));
      points.add(new Point(x + 37, -18));
      points.add(new Point(x + 37, 0));
    }
    points.add(new Point(900, 0));
    points.add(new Point(900, 400));
    points.add(new Point(0, 400));
    Ring ring = new Ring(points);
    return Plan.empty(LengthUnit.INCH)
        .withTitle("Nine bays by the sea, a house with a title that does not fit on one line")
        .withParts(List.of(part("m", "", ring, same(ring.size(), Edge.eave(Slope.inTwelve(4))))));
  }

  private static Plan sheds() {
    Edge eave = Edge.eave(Slope.inTwelve(3));
    Edge gable = Edge.of(EdgeKind.GABLE);
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < 14; i++) {
      double x = i % 5 * 170;
      double y = i / 5 * 200;
      parts.add(
          part(
                  "s" + i,
                  "Shed " + (i + 1),
                  Ring.of(x, y, x + 100, y, x + 100, y + 120 + i, x, y + 120 + i),
                  List.of(eave, gable, i % 2 == 0 ? gable : eave, gable))
              .withExisting(i % 3 == 0));
    }
    return Plan.empty(LengthUnit.INCH).withTitle("Allotment").withParts(parts);
  }

  private static List<Edge> same(int count, Edge edge) {
    return java.util.Collections.nCopies(count, edge);
  }

  private static Part part(String id, String name, Ring outline, List<Edge> edges) {
    return part(id, name, outline, edges, LengthUnit.INCH);
  }

  private static Part part(
      String id, String name, Ring outline, List<Edge> edges, LengthUnit unit) {
    return new Part(
        id,
        name,
        false,
        outline,
        List.of(),
        unit.fromMillimetres(2467),
        edges,
        Frame.of(unit),
        Deck.of(unit),
        Extras.NONE);
  }
}
