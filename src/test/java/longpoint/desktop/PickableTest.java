package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.desktop.canvas.PickListener.How;
import longpoint.drawing.Mark;
import longpoint.framing.truss.Truss;
import longpoint.framing.valley.ValleySet;
import longpoint.framing.valley.ValleyTruss;
import longpoint.packet.FiguresText;
import longpoint.packet.Listing;
import longpoint.packet.Packet;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.planfile.PlanFile;
import longpoint.sheets.solid.RoofSolid;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever a view shows can be picked there, and is known everywhere. */
class PickableTest {
  static Stream<Path> samples() throws IOException {
    return Files.list(Path.of("sample-plans")).filter(p -> p.toString().endsWith(".json")).sorted();
  }

  private static final Map<Path, Design> SOLVED = new HashMap<>();

  private static Design solved(Path sample) throws Exception {
    if (!SOLVED.containsKey(sample)) {
      SOLVED.put(sample, Pipeline.solve(PlanFile.read(sample).plan()));
    }
    return SOLVED.get(sample);
  }

  private static void assertKnown(Design design, Things things, String subject, String where) {
    boolean known =
        subject.isEmpty()
            || things.thing(subject).isPresent()
            || Sight.ref(design.plan(), subject).isPresent();
    assertThat(known).as(where + ": " + subject).isTrue();
  }

  private static Stream<Mark> all(Mark mark) {
    return mark instanceof Mark.Group g
        ? g.marks().stream().flatMap(PickableTest::all)
        : Stream.of(mark);
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everySubjectOfListsSheetsAndHouseIsKnown(Path sample) throws Exception {
    Design design = solved(sample);
    Things things = Things.of(design);
    for (Listing listing : FiguresText.listings(design)) {
      listing.subjects().forEach(s -> assertKnown(design, things, s, listing.table().title()));
    }
    Packet.pages(design, Packet.paperFor(design.plan().unit()))
        .forEach(
            p ->
                p.marks().stream()
                    .flatMap(PickableTest::all)
                    .forEach(m -> assertKnown(design, things, m.subject(), p.title())));
    RoofSolid house =
        RoofSolid.of(design.plan(), design.surface())
            .with(design.framing(), design.surface())
            .with(design.deck());
    house.faces().forEach(f -> assertKnown(design, things, f.subject(), "house"));
    house.edges().forEach(e -> assertKnown(design, things, e.subject(), "house"));
  }

  @ParameterizedTest
  @MethodSource("samples")
  void rowsOfTheFrameAreAboutSomething(Path sample) throws Exception {
    Design design = solved(sample);
    for (Listing listing : FiguresText.listings(design)) {
      String title = listing.table().title();
      if (Stream.of("Tape", "Valley set", "Ridge blocks", "Cut list", "Lines", "Gable studs")
          .anyMatch(title::startsWith)) {
        assertThat(listing.subjects()).as(title).doesNotContain("");
      }
    }
  }

  /** A run that stands on two planes has two sets, each with trusses of its own. */
  @ParameterizedTest
  @MethodSource("samples")
  void everyTrussOfAValleySetIsTheOneInItsPlace(Path sample) throws Exception {
    Design design = solved(sample);
    List<String> ids =
        design.framing().valleySets().stream()
            .flatMap(
                set ->
                    set.trusses().stream()
                        .flatMap(row -> placed(design, set, row).stream())
                        .map(Truss::id))
            .toList();
    assertThat(ids).doesNotHaveDuplicates();
  }

  private static Optional<Truss> placed(Design design, ValleySet set, ValleyTruss row) {
    Optional<Truss> truss = design.framing().valleyTruss(set, row);
    truss.ifPresent(t -> assertThat(t.span()).isEqualTo(row.length()));
    return truss;
  }

  @Test
  void aTrussPickedIsMarkedInEveryRowThatTellsOfIt() throws Exception {
    Design design = solved(Path.of("sample-plans", "sable-lane-garden-wing.json"));
    try (Job job = new Job(design.plan())) {
      WindowDriver.until("it is worked out", job::isUpToDate);
      for (Truss truss : job.picture().design().framing().trusses()) {
        Picks picks = new Picks(job);
        picks.pick(Optional.of(truss.id()), How.ALONE);
        assertThat(picks.named()).contains(truss.id(), truss.mark(), truss.run());
      }
    }
  }
}
