package longpoint.field.lumber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import longpoint.framing.Framing;
import longpoint.framing.FramingSet;
import longpoint.framing.stick.RafterKind;
import longpoint.framing.truss.RidgeBlocks;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.surface.LineKind;
import longpoint.surface.Roof;
import longpoint.surface.RoofSurface;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LumberTest {
  private record Case(Plan plan, RoofSurface surface, FramingSet framing, Lumber lumber) {
    static Case of(String name) throws Exception {
      Plan plan = PlanFile.read(Path.of("sample-plans", name + ".json")).plan();
      RoofSurface surface = Roof.solve(plan);
      FramingSet framing = Framing.solve(plan, surface);
      return new Case(
          plan, surface, framing, Lumber.of(plan, surface, framing, LumberChoices.of(plan.unit())));
    }

    List<Cut> cuts(Use use) {
      return lumber.cuts().stream().filter(c -> c.use() == use).toList();
    }
  }

  /** Spacing 24 less 1 1/2 less 1/16: 22 7/16 (common practice); lookouts by hand. */
  @Test
  void gardenWingByHand() throws Exception {
    Case wing = Case.of("sable-lane-garden-wing");
    Cut block = wing.cuts(Use.RIDGE_BLOCK).get(0);
    assertThat(block.length()).isEqualTo(22.4375);
    assertThat(block.section()).isEqualTo(new Section(1.5, 3.5));
    // First bay clear 21 3/4 with the end truss's 1 1/2, overhang 12 1/2 … less the fly's 1 1/2.
    Cut lookout = wing.cuts(Use.LOOKOUT).get(0);
    assertThat(lookout.length()).isEqualTo(wing.framing().ladders().get(0).lookoutLength());
    assertThat(lookout.count()).isEqualTo(2 * wing.framing().ladders().get(0).lookouts().size());
    // A plumb cut at 9 in 12 on a 2x6 leans 5 1/2 x 9/12 = 4 1/8 over the board's width.
    Cut fly = wing.cuts(Use.FLY_RAFTER).get(0);
    assertThat(fly.from().face()).isCloseTo(Math.toDegrees(Math.atan(0.75)), within(1e-9));
    assertThat(fly.board() - fly.length()).isCloseTo(4.125, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sable-lane-garden-wing",
        "marrowgate-bungalow",
        "tolverby-cabin",
        "fernholt-garage",
        "quennel-court",
        "heronsmere-lodge"
      })
  void nothingIsLeftOutAndNothingIsTwice(String name) throws Exception {
    Case c = Case.of(name);
    int blocks = c.framing().ridgeBlocks().stream().mapToInt(RidgeBlocks::count).sum();
    assertThat(count(c, Use.RIDGE_BLOCK) + count(c, Use.VALLEY_BLOCK)).isEqualTo(blocks);
    assertThat(count(c, Use.LOOKOUT))
        .isEqualTo(c.framing().ladders().stream().mapToInt(l -> l.lookouts().size()).sum());
    assertThat(together(c, Use.FASCIA)).isCloseTo(edge(c, LineKind.EAVE), within(1e-6));
    assertThat(together(c, Use.RAKE_BOARD)).isCloseTo(edge(c, LineKind.RAKE), within(1e-6));
    assertThat(rafters(c))
        .isEqualTo(
            c.framing().rafters().stream()
                .filter(r -> r.kind() != RafterKind.RIDGE)
                .mapToInt(r -> r.quantity())
                .sum());
    everyPieceComesOutOfTheBoards(c.lumber());
  }

  private static void everyPieceComesOutOfTheBoards(Lumber lumber) {
    Map<String, Integer> sawn = new HashMap<>();
    for (BoardStock stock : lumber.stock()) {
      double bought = 0;
      for (BoardStock.Pattern p : stock.patterns()) {
        bought += p.times() * p.board();
        p.pieces().forEach(c -> sawn.merge(c.cut(), c.count() * p.times(), Integer::sum));
      }
      assertThat(stock.total()).isCloseTo(bought, within(1e-9));
      assertThat(stock.lowerBound()).isLessThanOrEqualTo(stock.total() + 1e-9);
      assertThat(stock.used()).isLessThanOrEqualTo(stock.lowerBound() + 1e-9);
      assertThat(stock.boards().stream().mapToDouble(b -> b.count() * b.length()).sum())
          .isCloseTo(bought, within(1e-9));
    }
    for (Cut cut : lumber.cuts()) {
      int wanted = cut.spliced() == Cut.Splice.TOO_LONG ? 0 : cut.count();
      assertThat(sawn.getOrDefault(cut.mark(), 0)).as(cut.mark()).isEqualTo(wanted);
    }
  }

  private static int count(Case c, Use use) {
    return c.cuts(use).stream().mapToInt(Cut::count).sum();
  }

  private static double together(Case c, Use use) {
    return c.cuts(use).stream().mapToDouble(k -> k.count() * k.length()).sum();
  }

  private static double edge(Case c, LineKind kind) {
    return c.framing().fascia().stream()
        .filter(b -> b.kind() == kind)
        .mapToDouble(b -> b.length())
        .sum();
  }

  private static int rafters(Case c) {
    return c.lumber().cuts().stream()
        .filter(k -> k.use().role() == Role.RAFTER || k.use().role() == Role.HIP)
        .mapToInt(Cut::count)
        .sum();
  }

  /** A row of 60 ft is jointed over trusses; a rafter of 21 ft is not jointed at all. */
  @Test
  void longRowsAreJointedAndLongRaftersNamed() throws Exception {
    Case bungalow = Case.of("marrowgate-bungalow");
    assertThat(bungalow.cuts(Use.FASCIA)).anyMatch(c -> c.spliced() == Cut.Splice.SPLICED);
    assertThat(bungalow.cuts(Use.FASCIA)).allMatch(c -> c.board() <= 240 + 1.0 / 32);
    LumberChoices choices = LumberChoices.of(bungalow.plan().unit());
    LumberChoices shortBoards =
        new LumberChoices(choices.kerf(), List.of(96.0), choices.widths(), choices.rakeThickness());
    Case court = Case.of("quennel-court");
    Lumber lumber = Lumber.of(court.plan(), court.surface(), court.framing(), shortBoards);
    assertThat(lumber.cuts())
        .filteredOn(c -> c.spliced() == Cut.Splice.TOO_LONG)
        .isNotEmpty()
        .allMatch(c -> c.use().role() == Role.RAFTER || c.use().role() == Role.HIP);
    assertThat(lumber.problems()).isNotEmpty();
    everyPieceComesOutOfTheBoards(lumber);
  }
}
