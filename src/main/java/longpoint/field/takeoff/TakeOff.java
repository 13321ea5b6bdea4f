package longpoint.field.takeoff;

import java.util.ArrayList;
import java.util.List;
import longpoint.deck.DeckPlan;
import longpoint.deck.Panel;
import longpoint.deck.PlaneDeck;
import longpoint.deck.Stock;
import longpoint.geometry.Overlay;
import longpoint.geometry.Region;
import longpoint.plan.Buying;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.plan.SpanRating;
import longpoint.stop.CalledOff;
import longpoint.surface.LineKind;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;
import longpoint.units.LengthFigure;
import longpoint.wording.Phrase;

/**
 * What to order for the deck and the covering of the parts that are to be built; parts that stand
 * already are left as they are, but lines where new meets old are counted. Lengths in plan units,
 * areas in square plan units.
 *
 * @param sheets of each kind
 * @param fixings nails and clips of the whole deck
 * @param edgeSupport what the panels' rating asks for at the widest bay
 * @param lines lengths of edges, ridges, hips and valleys
 * @param covering roofing and underlay
 * @param vents openings for attic air
 * @param soffit level area from the wall faces out to the tails
 * @param problems what to look at
 */
public record TakeOff(
    List<Sheets> sheets,
    Fixings fixings,
    SpanRating.EdgeSupport edgeSupport,
    Lines lines,
    Covering covering,
    Vents vents,
    double soffit,
    List<Problem> problems) {

  /** Below 4 in 12 underlay is doubled, below 2 in 12 shingles are not laid (IRC R905.2). */
  private static final double DOUBLE_BELOW = 4 / 12.0;

  private static final double NO_SHINGLES_BELOW = 2 / 12.0;

  /** A slope typed in degrees that is the limit but for rounding is at the limit. */
  private static final double ROUNDING = 1e-9;

  /**
   * Sheets of one kind.
   *
   * @param bought by the cutting diagrams
   * @param byArea the panel method: area over sheet area, rounded up
   * @param lowerBound no cutting of these courses can do with fewer
   */
  public record Sheets(Panel panel, int bought, long byArea, int lowerBound, double areaUsed) {}

  /** Nothing to order. */
  public static final TakeOff NONE =
      new TakeOff(
          List.of(),
          new Fixings(0, 0, 0, ""),
          SpanRating.EdgeSupport.NOT_NEEDED,
          new Lines(0, 0, 0, 0, 0, 0, 0, 0),
          new Covering(0, 0, 0, 0, 0, 0),
          new Vents(0, Buying.Vent.ONE_IN_150),
          0,
          List.of());

  public TakeOff {
    sheets = List.copyOf(sheets);
    problems = List.copyOf(problems);
  }

  /** Counts everything up. */
  public static TakeOff of(Plan plan, RoofSurface surface, DeckPlan deck, TakeOffChoices choices) {
    CalledOff.check();
    Fixings fixings = new Fixings(0, 0, 0, "");
    for (PlaneDeck plane : deck.planes()) {
      CalledOff.check();
      fixings = fixings.plus(Fixings.of(plane, choices.nails()));
    }
    double area = 0;
    double low = 0;
    List<Problem> problems = new ArrayList<>();
    List<RoofPlane> planes = toBuild(plan, surface);
    for (RoofPlane plane : planes) {
      area += plane.area();
      if (plane.slope() < DOUBLE_BELOW - ROUNDING) {
        low += plane.area();
      }
      if (plane.slope() < NO_SHINGLES_BELOW - ROUNDING) {
        problems.add(
            Problem.note(
                plane.id(),
                Phrase.of(
                    "field.shingles.low",
                    PlaceName.of(plan.part(plane.part()).orElseThrow(), plane.edge()))));
      }
    }
    SpanRating.EdgeSupport support = choices.rating().at(fixings.widest(), plan.unit());
    if (support == SpanRating.EdgeSupport.TOO_FAR) {
      problems.add(far(plan, surface, fixings, choices));
    }
    return new TakeOff(
        deck.stock().stream().map(TakeOff::sheets).toList(),
        fixings,
        support,
        Lines.of(surface, planes),
        Covering.of(area, low, plan.unit(), choices),
        new Vents(attic(sound(plan, surface)), choices.vent()),
        soffit(plan, sound(plan, surface), surface, planes),
        problems);
  }

  private static Problem far(
      Plan plan, RoofSurface surface, Fixings fixings, TakeOffChoices choices) {
    RoofPlane plane = surface.plane(fixings.plane()).orElseThrow();
    return Problem.warning(
        plane.id(),
        Phrase.of(
            "field.span.far",
            new LengthFigure(fixings.widest(), plan.unit()),
            PlaceName.of(plan.part(plane.part()).orElseThrow(), plane.edge()),
            choices.rating().stamp()));
  }

  private static Sheets sheets(Stock stock) {
    return new Sheets(
        stock.panel(),
        stock.bought(),
        byArea(stock.areaUsed(), stock.panel().area()),
        stock.lowerBound(),
        stock.areaUsed());
  }

  /** The panel method: sheets for an area, rounded up. */
  static long byArea(double area, double sheet) {
    return Covering.whole(area / sheet);
  }

  /** Ground inside the walls. */
  private static double attic(List<Part> parts) {
    List<Region> walls = parts.stream().filter(p -> !p.existing()).map(Part::region).toList();
    return Overlay.union(walls).stream().mapToDouble(Region::area).sum();
  }

  /** Parts whose roof could be solved; the walls of the others may cross themselves. */
  private static List<Part> sound(Plan plan, RoofSurface surface) {
    return plan.parts().stream()
        .filter(part -> surface.planes().stream().anyMatch(p -> p.part().equals(part.id())))
        .toList();
  }

  private static List<RoofPlane> toBuild(Plan plan, RoofSurface surface) {
    return surface.planes().stream()
        .filter(p -> plan.part(p.part()).filter(part -> !part.existing()).isPresent())
        .toList();
  }

  /**
   * The roof's shadow outside the walls, once more where one overhang lies beneath another, less
   * what the fascia boards stand on.
   */
  private static double soffit(
      Plan plan, List<Part> sound, RoofSurface surface, List<RoofPlane> planes) {
    List<Region> walls = sound.stream().map(Part::region).toList();
    double outside =
        outside(planes.stream().flatMap(p -> p.visible().stream()).toList(), walls)
            + outside(planes.stream().flatMap(p -> p.sheltered().stream()).toList(), walls);
    double fascia = 0;
    for (Part part : sound.stream().filter(p -> !p.existing()).toList()) {
      for (Side side : plan.sides(part)) {
        if (side.kind() == EdgeKind.EAVE) {
          fascia += side.fascia() * eave(surface, side);
        }
      }
    }
    return Math.max(0, outside - fascia);
  }

  private static double outside(List<Region> roof, List<Region> walls) {
    return Overlay.minus(roof, walls).stream().mapToDouble(Region::area).sum();
  }

  private static double eave(RoofSurface surface, Side side) {
    return surface.lines().stream()
        .filter(l -> l.kind() == LineKind.EAVE)
        .filter(l -> l.planes().contains(side.id()))
        .mapToDouble(l -> l.length())
        .sum();
  }
}
