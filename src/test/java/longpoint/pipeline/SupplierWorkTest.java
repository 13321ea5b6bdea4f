package longpoint.pipeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import longpoint.field.supplied.Difference;
import longpoint.field.supplied.SuppliedTruss;
import longpoint.field.supplied.SupplierCheck;
import longpoint.framing.truss.TrussMark;
import longpoint.packet.SupplierDifferences;
import longpoint.plan.Extras;
import longpoint.plan.Plan;
import longpoint.plan.Supplied;
import longpoint.planfile.PlanFile;
import longpoint.trusslist.TrussList;
import org.junit.jupiter.api.Test;

/** A supplier's list for the bungalow, whose layout the other tests hold. */
class SupplierWorkTest {
  private static Plan bungalow() throws Exception {
    return PlanFile.read(Path.of("sample-plans/marrowgate-bungalow.json")).plan();
  }

  private static SupplierCheck check(Plan plan, Supplied supplied) {
    Plan with = plan.withOnSite(plan.onSite().withTrusses(supplied));
    return Pipeline.solve(with).onSite().trusses();
  }

  /** The sample was written with these faults in it. */
  @Test
  void theSampleListTellsEveryFaultThatWasPutIn() throws Exception {
    Plan plan = bungalow();
    Path list = Path.of("sample-plans/marrowgate-trusses.csv");
    Supplied supplied = TrussList.read(list, plan.unit(), Map.of()).supplied();
    SupplierCheck check = check(plan, supplied);
    assertThat(check.missing()).containsExactly(new SupplierCheck.Missing("T1", 1));
    assertThat(check.surplus())
        .extracting(SupplierCheck.Surplus::suppliedMark)
        .containsExactly("G1");
    assertThat(check.trusses())
        .filteredOn(SuppliedTruss::differs)
        .extracting(
            SuppliedTruss::suppliedMark,
            SuppliedTruss::mark,
            t ->
                t.differences().stream()
                    .filter(Difference::differs)
                    .map(d -> d.figure().name())
                    .toList())
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("B1", "HG1", List.of("PLIES")),
            org.assertj.core.groups.Tuple.tuple("B4", "SD3", List.of("HEEL")),
            org.assertj.core.groups.Tuple.tuple("B5", "SD4", List.of("SPAN")));
  }

  private static List<Supplied.Row> exact(Plan plan) {
    List<Supplied.Row> rows = new ArrayList<>();
    for (TrussMark m : Pipeline.solve(plan).framing().marks()) {
      rows.add(
          new Supplied.Row(
              rows.size() + 2,
              "X" + rows.size(),
              m.quantity(),
              new Supplied.Figures(
                  Optional.of(m.span()),
                  Optional.of(m.height()),
                  Optional.empty(),
                  Optional.empty(),
                  Optional.of(m.tailLow()),
                  Optional.of(m.tailHigh()),
                  Optional.of(m.heelLow()),
                  Optional.of(m.heelHigh()),
                  Optional.of(m.plies())),
              Extras.NONE));
    }
    return rows;
  }

  /** Other marks, any order, rows split in two and trusses end for end: it is the same list. */
  @Test
  void theVeryTrussesAgreeHoweverTheyAreListed() throws Exception {
    Plan plan = bungalow();
    Random random = new Random(4);
    for (int round = 0; round < 5; round++) {
      List<Supplied.Row> rows = new ArrayList<>();
      for (Supplied.Row r : exact(plan)) {
        Supplied.Figures f = r.figures();
        Supplied.Figures turned =
            new Supplied.Figures(
                f.span(),
                f.height(),
                f.otherSlope(),
                f.slope(),
                f.otherOverhang(),
                f.overhang(),
                f.otherHeel(),
                f.heel(),
                f.plies());
        int first = 1 + random.nextInt(r.quantity());
        rows.add(new Supplied.Row(r.line(), r.mark(), first, turned, r.extras()));
        if (first < r.quantity()) {
          rows.add(new Supplied.Row(r.line(), r.mark(), r.quantity() - first, f, r.extras()));
        }
      }
      Collections.shuffle(rows, random);
      SupplierCheck check = check(plan, new Supplied("", rows, Extras.NONE));
      assertThat(check.agrees()).isTrue();
      assertThat(check.trusses().stream().mapToInt(SuppliedTruss::count).sum())
          .isEqualTo(rows.stream().mapToInt(Supplied.Row::quantity).sum());
    }
  }

  @Test
  void aRowThatSaysTooLittleIsToldWhatElseItCouldBe() throws Exception {
    Plan plan = bungalow();
    Supplied.Figures span =
        new Supplied.Figures(
            Optional.of(336.0),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    Supplied.Row row = new Supplied.Row(2, "Q", 2, span, Extras.NONE);
    SupplierCheck check = check(plan, new Supplied("", List.of(row), Extras.NONE));
    assertThat(check.trusses()).hasSize(1);
    // Six marks of the bungalow span 28 ft; it is taken for one of them.
    assertThat(check.trusses().get(0).couldBe()).hasSize(5);
  }

  /** A mark that a spreadsheet would work out as a formula goes back as text. */
  @Test
  void whatIsSentBackIsSafeToOpen() throws Exception {
    Plan plan = bungalow();
    Supplied.Row row = new Supplied.Row(2, "=1+1", 1, exact(plan).get(0).figures(), Extras.NONE);
    Plan with =
        plan.withOnSite(plan.onSite().withTrusses(new Supplied("", List.of(row), Extras.NONE)));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SupplierDifferences.write(Pipeline.solve(with), out);
    assertThat(out.toString(StandardCharsets.UTF_8)).contains(",'=1+1,").doesNotContain(",=1+1");
  }
}
