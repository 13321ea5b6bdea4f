package longpoint.field.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.deck.Stock;
import longpoint.geometry.Ring;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Deck;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Printed areas and counts of sheets against what a solved plan hands its user. */
class PublishedAreasTest {
  /** A gable house of so many feet, all its figures in inches. */
  private record House(double length, double width, double inTwelve, double eave, double rake) {
    Plan plan(Frame.Method method, double spacing, Deck.Start start) {
      List<Edge> edges =
          Stream.of(EdgeKind.EAVE, EdgeKind.GABLE, EdgeKind.EAVE, EdgeKind.GABLE)
              .map(k -> Edge.of(k).withSlope(Slope.inTwelve(inTwelve)))
              .map(e -> e.withOverhang(e.kind() == EdgeKind.EAVE ? eave : rake))
              .toList();
      double l = length * 12;
      double w = width * 12;
      Part part =
          new Part(
              "a",
              "House",
              false,
              Ring.of(0, 0, l, 0, l, w, 0, w),
              List.of(),
              96,
              edges,
              new Frame(method, spacing, 1.5, Optional.empty(), Extras.NONE),
              Deck.of(LengthUnit.INCH).withStart(start),
              Extras.NONE);
      return Plan.empty(LengthUnit.INCH).withPart(part);
    }

    Design design() {
      return Pipeline.solve(plan(Frame.Method.TRUSS, 24, Deck.Start.LEFT));
    }
  }

  private static double fascia(Design design) {
    return design.plan().defaults().fascia();
  }

  /**
   * The factors of area for 2 to 12 in 12 that the trade carries to three places: common practice,
   * the print itself from memory. A roof of 100 sq ft on the flat, fascia and all.
   */
  @ParameterizedTest
  @CsvSource({
    "2, 1.014",
    "3, 1.031",
    "4, 1.054",
    "5, 1.083",
    "6, 1.118",
    "7, 1.158",
    "8, 1.202",
    "9, 1.250",
    "10, 1.302",
    "11, 1.357",
    "12, 1.414"
  })
  void areaFactors(double inTwelve, double factor) {
    Design design = new House(40, 25, inTwelve, 12, 12).design();
    double flat = (40 * 12 + 24) * (25 * 12 + 24 + 2 * fascia(design));
    assertThat(design.takeOff().covering().area() / flat).isCloseTo(factor, within(0.0006));
  }

  /**
   * A student's worksheet from a college estimating course (seen second hand, weak): a truss span
   * of 27 ft at 4 in 12 and 33 ft of length takes 18 trusses 24 in apart; rise 4.5 ft, 14.2 ft up
   * the slope. Worked again: 33/2 + 1 = 17.5, 13.5 x 4/12 = 4.5, 14.230.
   */
  @Test
  void trussesOfTheWorksheet() {
    Design design = new House(33, 27, 4, 0, 0).design();
    long trusses = design.framing().trusses().stream().filter(t -> !t.kind().isCap()).count();
    assertThat(trusses).isEqualTo(18);
    double slope = design.deck().planes().get(0).ground().get(0).shell().bounds().height();
    double overhang = fascia(design) * Math.sqrt(1 + 1 / 9.0);
    assertThat((slope - overhang) / 12).isCloseTo(14.230, within(0.001));
    // Its roof alone: what two slopes of 33 ft come to, in sheets of 32 sq ft, by the panel method.
    long byArea = TakeOff.byArea(2 * 33 * slope / 12, 32);
    assertThat(design.deck().lowerBound()).isGreaterThanOrEqualTo((int) byArea);
  }

  /**
   * US Navy, Builder 3 & 2, vol. 2, p. 3-7 (seen): with rafters 16 in apart a rake that projects 16
   * in saves waste in sheathing. 40 ft of wall and twice 16 in are 42 ft 8 in, 32 bays of 16 in.
   */
  @Test
  void aRakeOfOneBaySavesSheets() {
    assertThat(wasteWithRake(16)).isLessThan(wasteWithRake(12)).isLessThan(wasteWithRake(10));
  }

  private static double wasteWithRake(double rake) {
    Plan plan = new House(40, 24, 6, 12, rake).plan(Frame.Method.RAFTER, 16, Deck.Start.LEFT);
    List<Stock> stock = Pipeline.solve(plan).deck().stock();
    assertThat(stock).hasSize(1);
    return stock.get(0).waste();
  }

  /** The panel method's count is a floor: no laying takes less than area over 32 sq ft. */
  @ParameterizedTest
  @CsvSource({"70, 30, 5.5", "52, 35, 6", "46, 28, 6", "36, 24, 9", "24, 20, 12"})
  void neverFewerSheetsThanByArea(double length, double width, double inTwelve) {
    Design design = new House(length, width, inTwelve, 18, 12).design();
    long byArea = TakeOff.byArea(design.takeOff().covering().area() / 144, 32);
    assertThat(design.deck().lowerBound()).isGreaterThanOrEqualTo((int) byArea);
    assertThat(design.deck().sheetsBought())
        .isGreaterThanOrEqualTo(design.deck().lowerBound())
        .isLessThanOrEqualTo((int) Math.ceil(1.2 * byArea));
  }
}
