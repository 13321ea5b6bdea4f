package longpoint.framing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.Deck;
import longpoint.plan.Defaults;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.surface.Roof;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;

/** Plans for tests, in inches: 24 in spacing, 1 1/2 in stock, 1/16 in relief. */
public final class Houses {
  private Houses() {}

  /** Sides from a word: e eave, g gable, o open, a abutment. */
  public static Part part(String id, double plate, String sides, double rise, double... xy) {
    List<Edge> edges = new ArrayList<>();
    for (char c : sides.toCharArray()) {
      edges.add(
          switch (c) {
            case 'e' -> Edge.eave(Slope.inTwelve(rise));
            case 'g' -> Edge.of(EdgeKind.GABLE).withOverhang(12);
            case 'o' -> Edge.of(EdgeKind.OPEN);
            default -> Edge.of(EdgeKind.ABUTMENT);
          });
    }
    return new Part(
        id,
        id,
        false,
        Ring.of(xy),
        List.of(),
        plate,
        edges,
        Frame.of(LengthUnit.INCH),
        new Deck(0.5, 48, 96, Deck.Start.LEFT, Extras.NONE),
        Extras.NONE);
  }

  public static Plan plan(Part... parts) {
    return Plan.empty(LengthUnit.INCH)
        .withDefaults(
            new Defaults(Slope.inTwelve(8), 16, Optional.of(4.5), 1.5, 0.0625, 20, 24, Extras.NONE))
        .withParts(List.of(parts));
  }

  public static Part box(String sides, double rise, double length, double width) {
    return part("main", 97.125, sides, rise, 0, 0, length, 0, length, width, 0, width);
  }

  /** A wing 12 ft wide over the front of a house 40 ft long, both 8 in 12. */
  public static Plan gardenWing(Join.Method method) {
    return plan(
            box("egeg", 8, 480, 336),
            part("wing", 97.125, "geoe", 8, 168, -144, 312, -144, 312, 0, 168, 0))
        .withJoins(List.of(new Join("wing", "main", method, Join.MadeFor.FRAME, Extras.NONE)));
  }

  public static Part framed(Part part, Frame.Method method, double spacing) {
    return part.withFrame(part.frame().withMethod(method).withSpacing(spacing));
  }

  public static FramingSet solve(Plan plan) {
    return Framing.solve(plan, Roof.solve(plan));
  }

  /** Every point of a plan moved; a mirroring map turns the rings round as the format asks. */
  public static Plan moved(Plan plan, UnaryOperator<Point> map) {
    return plan.withParts(plan.parts().stream().map(p -> moved(p, map)).toList());
  }

  private static Part moved(Part part, UnaryOperator<Point> map) {
    List<Point> points = part.outline().points().stream().map(map).toList();
    Ring ring = new Ring(points);
    if (ring.counterClockwise()) {
      return part.withShape(ring, List.of(), part.edges());
    }
    // Side i ran from corner i to i + 1; reversed it starts at the corner counted from the end.
    List<Point> turned = new ArrayList<>();
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      turned.add(ring.corner(-i));
      edges.add(part.edges().get(points.size() - 1 - i));
    }
    return part.withShape(new Ring(turned), List.of(), edges);
  }
}
