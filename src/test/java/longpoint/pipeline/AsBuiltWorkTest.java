package longpoint.pipeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.field.built.BuiltPlan;
import longpoint.field.built.BuiltWalls;
import longpoint.field.built.Change;
import longpoint.field.built.TrussSeat;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.packet.FiguresJson;
import longpoint.packet.FiguresText;
import longpoint.plan.AsBuilt;
import longpoint.plan.Extras;
import longpoint.plan.OnSite;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.PlanDimension.Corner;
import longpoint.planfile.PlanFile;
import org.junit.jupiter.api.Test;

/**
 * What walls that are out do to the roof of the cabin: 28 by 20 ft, gables east and west, 9 in 12,
 * 16 in overhangs. Every figure beside is hand arithmetic.
 */
class AsBuiltWorkTest {
  private static Plan cabin() throws Exception {
    return PlanFile.read(Path.of("sample-plans/tolverby-cabin.json")).plan();
  }

  /** Every tape between the corners of the cabin as they stand. */
  private static Plan taped(Plan plan, double... xy) {
    List<Point> stand = Ring.of(xy).points();
    List<AsBuilt.Tape> tapes = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      for (int j = i + 1; j < 4; j++) {
        tapes.add(
            AsBuilt.Tape.of(
                new Corner("main", i), new Corner("main", j), stand.get(i).distance(stand.get(j))));
      }
    }
    return plan.withOnSite(
        OnSite.NONE.withWalls(new AsBuilt(Optional.empty(), tapes, List.of(), Extras.NONE)));
  }

  /** The north wall runs out of line by 3/4 in to the east: the trusses' walls part by as much. */
  @Test
  void everyTrussIsToldHowFarApartItsWallsStand() throws Exception {
    Plan plan = taped(cabin(), 0, 0, 336, 0, 336, 240.75, 0, 240);
    Design design = Pipeline.solve(plan);
    List<TrussSeat> seats = design.onSite().walls().seats();
    assertThat(seats).hasSameSizeAs(design.framing().trusses()).isNotEmpty();
    for (TrussSeat seat : seats) {
      double out = 0.75 * seat.station() / 336;
      assertThat(seat.span()).isCloseTo(240, within(1e-9));
      // The walls are turned under the plan by a thousandth: that is a millionth of the span.
      assertThat(seat.difference()).isCloseTo(out, within(0.002));
      double tails = seat.overhangFrom().orElseThrow() + seat.overhangTo().orElseThrow();
      // The fascia is 1 1/2 in; a tail ends behind it or with it, and what the walls take is even.
      double planned = design.framing().marks().get(0).tailLow() * 2;
      assertThat(tails).isCloseTo(planned - out, within(0.002));
    }
    assertThat(design.problems()).anyMatch(p -> p.message().contains("further apart"));
    // At the west end they stand as planned, at the east end 3/4 in apart, more than 1/4 in.
    assertThat(seats.get(0).notice()).isFalse();
    assertThat(seats.get(seats.size() - 1).notice()).isTrue();
  }

  /** Squared up the cabin is 3/8 in wider: the ridge 9/12 of half of that higher. */
  @Test
  void whatIsWorkedOutForTheBuiltWallsStandsBesideThePlanned() throws Exception {
    Plan plan = taped(cabin(), 0, 0, 336, 0, 336, 240.75, 0, 240);
    Design design = Pipeline.solve(plan);
    List<Change> spans =
        design.onSite().walls().changes().stream()
            .filter(c -> c.kind() == Change.Kind.TRUSS_SPAN)
            .toList();
    assertThat(spans).isNotEmpty().allMatch(c -> Math.abs(c.difference() - 0.375) < 0.002);
    List<Change> heights =
        design.onSite().walls().changes().stream()
            .filter(c -> c.kind() == Change.Kind.TRUSS_HEIGHT)
            .toList();
    assertThat(heights)
        .isNotEmpty()
        .allMatch(c -> Math.abs(c.difference() - 0.375 / 2 * 0.75) < 0.002);
    // Rakes: half of it up the slope, by the square: × √(12² + 9²) / 12 = 1.25.
    List<Change> rakes =
        design.onSite().walls().changes().stream()
            .filter(c -> c.kind() == Change.Kind.FLY_RAFTER)
            .toList();
    assertThat(rakes)
        .isNotEmpty()
        .allMatch(c -> Math.abs(c.difference() - 0.375 / 2 * 1.25) < 0.002);
  }

  @Test
  void walls40ByThirtyThatAreSquareAndTrueChangeNothing() throws Exception {
    Design design = Pipeline.solve(taped(cabin(), 0, 0, 336, 0, 336, 240, 0, 240));
    assertThat(design.onSite().walls().changes()).isEmpty();
    assertThat(design.onSite().walls().seats())
        .allMatch(s -> Math.abs(s.difference()) < 1e-9 && !s.notice());
    assertThat(design.problems()).isEqualTo(Pipeline.solve(cabin()).problems());
  }

  /** Trued walls keep every angle of the plan, and the work is done as for any plan. */
  @Test
  void truedWallsKeepTheirAnglesAndTheirFrame() throws Exception {
    Plan plan = taped(cabin(), 0.2, 0, 336.4, 0.3, 336, 240.75, -0.3, 240.1);
    Plan trued = BuiltPlan.of(plan, BuiltWalls.of(plan), BuiltPlan.Walls.TRUED);
    Part part = trued.parts().get(0);
    for (int i = 0; i < 4; i++) {
      Point was = plan.parts().get(0).side(i).direction();
      assertThat(part.side(i).direction().cross(was)).isCloseTo(0, within(1e-9));
    }
    assertThat(Pipeline.solve(trued).framing().trusses())
        .hasSameSizeAs(Pipeline.solve(plan).framing().trusses());
    // Mean of both ends: between the averages of the corners that stand there.
    assertThat(part.side(0).length()).isCloseTo((336.2 + 336.3) / 2, within(0.01));
    assertThat(part.side(1).length()).isCloseTo((240.45 + 240.1) / 2, within(0.01));
    Plan taped = BuiltPlan.of(plan, BuiltWalls.of(plan), BuiltPlan.Walls.TAPED);
    assertThat(taped.parts().get(0).side(1).length())
        .isCloseTo(new Point(336.4, 0.3).distance(new Point(336, 240.75)), within(1e-9));
    assertThat(BuiltPlan.of(plan, BuiltWalls.of(plan), BuiltPlan.Walls.PLANNED)).isEqualTo(plan);
  }

  @Test
  void platesAreShimmedToTheHighestAndTheTwistIsToldApart() throws Exception {
    List<AsBuilt.PlateReading> plates = new ArrayList<>();
    // Falls 1/4 in to the east, and the last corner is up 1/8 in by itself: a quarter of that
    // stays as twist at every corner, by turns (four readings, three unknowns).
    double[] reads = {97.25, 97, 97, 97.375};
    for (int i = 0; i < 4; i++) {
      plates.add(AsBuilt.PlateReading.of(new Corner("main", i), reads[i]));
    }
    Plan plan =
        cabin()
            .withOnSite(
                OnSite.NONE.withWalls(
                    new AsBuilt(Optional.empty(), List.of(), plates, Extras.NONE)));
    var level = BuiltWalls.of(plan).plates().get(0);
    assertThat(level.range()).isEqualTo(0.375);
    assertThat(level.corners()).extracting(c -> c.shim()).containsExactly(0.125, 0.375, 0.375, 0.0);
    double[] twist = {-0.03125, 0.03125, -0.03125, 0.03125};
    for (int i = 0; i < 4; i++) {
      assertThat(level.corners().get(i).off()).isCloseTo(twist[i], within(1e-9));
    }
    assertThat(level.tilt().orElseThrow().across()).isCloseTo(-0.3125 / 336, within(1e-9));
    Plan built = BuiltPlan.of(plan, BuiltWalls.of(plan), BuiltPlan.Walls.TRUED);
    assertThat(built.parts().get(0).plateHeight()).isEqualTo(97.375);
  }

  @Test
  void figuresTellIt() throws Exception {
    Plan plan = taped(cabin(), 0, 0, 336, 0, 336, 240.75, 0, 240);
    Design design = Pipeline.solve(plan);
    JsonNode built =
        new ObjectMapper().readTree(FiguresJson.of(design)).get("field").get("asBuilt");
    assertThat(built.get("tapes")).hasSize(6);
    assertThat(built.get("seats")).isNotEmpty();
    assertThat(built.get("changes")).isNotEmpty();
    assertThat(built.get("corners").get(2).get("hold").asText()).isEqualTo("held");
    assertThat(FiguresText.of(design)).contains("Tape readings", "Walls apart".toLowerCase());
    JsonNode none = new ObjectMapper().readTree(FiguresJson.of(Pipeline.solve(cabin())));
    assertThat(none.get("field").has("asBuilt")).isFalse();
  }

  /** A plan somebody else wrote may hold anything. */
  @Test
  void readingsThatMakeNoSenseAreToldAndNothingBreaks() throws Exception {
    Plan plan = cabin();
    List<AsBuilt.Tape> tapes =
        List.of(
            AsBuilt.Tape.of(new Corner("main", 0), new Corner("main", 0), 5),
            AsBuilt.Tape.of(new Corner("main", 0), new Corner("gone", 1), 5),
            AsBuilt.Tape.of(new Corner("main", 0), new Corner("main", 1), 1e300),
            AsBuilt.Tape.of(new Corner("main", 1), new Corner("main", 2), 1e-9),
            AsBuilt.Tape.of(new Corner("main", 0), new Corner("main", 2), 7));
    Plan odd =
        plan.withOnSite(
            OnSite.NONE.withWalls(
                new AsBuilt(
                    Optional.of(1e-200),
                    tapes,
                    List.of(AsBuilt.PlateReading.of(new Corner("main", 9), 1)),
                    Extras.NONE)));
    Design design = Pipeline.solve(odd);
    assertThat(design.problems()).anyMatch(p -> p.message().contains("does not go between"));
    assertThat(FiguresJson.of(design)).doesNotContain("NaN");
    FiguresText.of(design);
  }
}
