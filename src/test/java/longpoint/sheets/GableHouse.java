package longpoint.sheets;

import java.util.List;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.plan.Deck;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.surface.LineKind;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;

/**
 * A gable roof worked out by hand, inches: walls 480 by 336, slope 8 in 12, heel 4.5 on a plate at
 * 97.125, tails 16 + 1.5 fascia, rakes 12. Ridge over the middle, 168 in from each long wall:
 * 97.125 + 4.5 + 168 · 2/3 = 213.625.
 */
public final class GableHouse {
  public static final Plan PLAN =
      Plan.empty(LengthUnit.INCH)
          .withTitle("Kestrel Court")
          .withParts(
              List.of(
                  new Part(
                      "main",
                      "House",
                      false,
                      Ring.of(0, 0, 480, 0, 480, 336, 0, 336),
                      List.of(),
                      97.125,
                      List.of(
                          Edge.eave(Slope.inTwelve(8)),
                          Edge.of(EdgeKind.GABLE).withOverhang(12),
                          Edge.eave(Slope.inTwelve(8)),
                          Edge.of(EdgeKind.GABLE).withOverhang(12)),
                      Frame.of(LengthUnit.INCH),
                      Deck.of(LengthUnit.INCH),
                      Extras.NONE)));

  private static final double RIDGE = 213.625;
  private static final double FASCIA = 97.125 + 4.5 - 17.5 * 2 / 3;

  public static final RoofSurface SURFACE =
      new RoofSurface(
          List.of(
              plane(
                  0,
                  new Plane(0, 2 / 3.0, 101.625),
                  Ring.of(-12, -17.5, 492, -17.5, 492, 168, -12, 168)),
              plane(
                  2,
                  new Plane(0, -2 / 3.0, 101.625 + 224),
                  Ring.of(-12, 168, 492, 168, 492, 353.5, -12, 353.5))),
          List.of(
              line("l0", LineKind.RIDGE, -12, 168, RIDGE, 492, 168, RIDGE, "main/0", "main/2"),
              line("l1", LineKind.EAVE, -12, -17.5, FASCIA, 492, -17.5, FASCIA, "main/0"),
              line("l2", LineKind.EAVE, -12, 353.5, FASCIA, 492, 353.5, FASCIA, "main/2"),
              line("l3", LineKind.RAKE, -12, -17.5, FASCIA, -12, 168, RIDGE, "main/0"),
              line("l4", LineKind.RAKE, 492, -17.5, FASCIA, 492, 168, RIDGE, "main/0"),
              line("l5", LineKind.RAKE, -12, 353.5, FASCIA, -12, 168, RIDGE, "main/2"),
              line("l6", LineKind.RAKE, 492, 353.5, FASCIA, 492, 168, RIDGE, "main/2")),
          List.of());

  private GableHouse() {}

  private static RoofPlane plane(int edge, Plane plane, Ring ground) {
    return new RoofPlane(
        "main/" + edge, "main", edge, plane, List.of(new Region(ground)), List.of(), List.of());
  }

  private static RoofLine line(
      String id,
      LineKind kind,
      double x1,
      double y1,
      double z1,
      double x2,
      double y2,
      double z2,
      String... planes) {
    return new RoofLine(
        id, kind, new Point(x1, y1).at(z1), new Point(x2, y2).at(z2), List.of(planes));
  }
}
