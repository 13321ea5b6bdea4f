package longpoint.deck;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.Deck;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;

/** One plane over one wall, built by hand: an outline in (u, v) and where supports stand. */
public record DeckFixture(
    Plan plan, RoofSurface surface, Map<String, List<Support>> supports, RoofPlane plane) {

  /** Wall length in the fixture; the plane's outline may be longer or shorter. */
  private static final double WALL = 480;

  /**
   * @param outline of the plane in (u, v), its eave starting at 0, 0
   * @param stations u of upright supports
   */
  public static DeckFixture of(double inTwelve, Ring outline, double[] stations, Deck deck) {
    return turned(inTwelve, outline, stations, deck, 0, new Point(0, 0));
  }

  /** The same with the whole plan turned and moved. */
  public static DeckFixture turned(
      double inTwelve, Ring outline, double[] stations, Deck deck, double degrees, Point to) {
    Ring walls = moved(Ring.of(0, 0, WALL, 0, WALL, 360, 0, 360), degrees, to);
    List<Edge> edges =
        IntStream.range(0, 4)
            .mapToObj(i -> i == 0 ? Edge.eave(Slope.inTwelve(inTwelve)) : Edge.of(EdgeKind.GABLE))
            .toList();
    Part part =
        new Part(
            "a",
            "House",
            false,
            walls,
            List.of(),
            96,
            edges,
            Frame.of(LengthUnit.INCH),
            deck,
            Extras.NONE);
    Plan plan = Plan.empty(LengthUnit.INCH).withPart(part);
    Side side = plan.side(part, 0);
    double stretch = Math.sqrt(1 + side.slope().ratio() * side.slope().ratio());
    List<Point> ground = new ArrayList<>();
    for (Point uv : outline.points()) {
      ground.add(new Point(uv.x(), uv.y() / stretch - side.reach()));
    }
    RoofPlane plane =
        new RoofPlane(
            "a/0",
            "a",
            0,
            side.framePlane(),
            List.of(new Region(moved(new Ring(ground), degrees, to))),
            List.of(),
            List.of());
    double top = outline.bounds().maxY() / stretch;
    List<Support> supports = new ArrayList<>();
    for (double u : stations) {
      Ring line = moved(Ring.of(u, -side.reach(), u, top, u, top + 1), degrees, to);
      supports.add(
          new Support("T", Support.Kind.TRUSS, new Segment(line.corner(0), line.corner(1)), 1.5));
    }
    return new DeckFixture(
        plan,
        new RoofSurface(List.of(plane), List.of(), List.of()),
        Map.of("a/0", supports),
        plane);
  }

  private static Ring moved(Ring ring, double degrees, Point to) {
    double c = Math.cos(Math.toRadians(degrees));
    double s = Math.sin(Math.toRadians(degrees));
    return new Ring(
        ring.points().stream()
            .map(p -> new Point(p.x() * c - p.y() * s, p.x() * s + p.y() * c).plus(to))
            .toList());
  }

  public DeckFixture withLines(List<RoofLine> lines) {
    return new DeckFixture(
        plan, new RoofSurface(surface.planes(), lines, List.of()), supports, plane);
  }

  public DeckPlan lay() {
    return Sheathing.lay(plan, surface, supports);
  }

  /** Stations {@code first}, {@code first + spacing} … up to {@code last}. */
  public static double[] every(double spacing, double first, double last) {
    return IntStream.range(0, 1 + (int) Math.floor((last - first) / spacing + 1e-9))
        .mapToDouble(i -> first + i * spacing)
        .toArray();
  }

  public static Deck inches(Deck.Start start) {
    return new Deck(0.46875, 48, 96, start, Extras.NONE);
  }

  public static Optional<PlaneDeck> only(DeckPlan plan) {
    return plan.planes().stream().findFirst();
  }
}
