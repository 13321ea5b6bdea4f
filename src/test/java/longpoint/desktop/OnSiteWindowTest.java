package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import javax.swing.AbstractButton;
import longpoint.field.built.BuiltTape;
import longpoint.plan.AsBuilt;
import longpoint.planfile.PlanFile;
import longpoint.sheets.Layers;
import longpoint.trusslist.Column;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is measured and delivered, in the real window. */
class OnSiteWindowTest {
  private WindowDriver window;

  private void open(String sample) throws Exception {
    window = new WindowDriver(PlanFile.read(Path.of("sample-plans", sample)).plan());
    window.untilSolved();
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  private void press(String button) {
    AbstractButton found = window.find(button, AbstractButton.class);
    WindowDriver.onEvents(
        () -> {
          found.doClick();
          return null;
        });
    window.untilSolved();
  }

  @Test
  void tapesAreTypedTheWrongOneIsNamedAndTheWallsAreShown() throws Exception {
    open("tolverby-cabin.json");
    press("fold.asBuilt");
    // The diagonals of 28 by 20 ft are 34'-4 15/16"; one is read a foot long, and one wall is
    // taped in two steps.
    window
        .fill(
            "tapes",
            "1-2 = 28'; 2-3 = 20'; 3-4 = 14' + 14'; 4-1 = 20'; 1-3 = 34' 4 15/16;"
                + " 2-4 = 35' 4 15/16")
        .untilSolved();
    AsBuilt walls = window.plan().onSite().walls();
    assertThat(walls.tapes()).hasSize(6);
    assertThat(walls.tapes().get(2).reads()).isEqualTo(336);
    assertThat(window.design().onSite().walls().walls().tapes().get(5).state())
        .isEqualTo(BuiltTape.State.DOUBTED);
    assertThat(window.design().problems())
        .anyMatch(p -> p.message().contains("from corner 2 to 4"));
    assertThat(window.window().job().picture().drawing().marks())
        .anyMatch(
            m ->
                m instanceof longpoint.drawing.Mark.Path path && path.layer().equals(Layers.BUILT));
    window.fill("plateReadings", "1 = 97 1/8; (3 = 98)").untilSolved();
    assertThat(window.plan().onSite().walls().plates().get(1).use()).isEqualTo(AsBuilt.Use.ASIDE);
    window.menu("edit.undo");
    window.untilSolved();
    assertThat(window.plan().onSite().walls().plates()).isEmpty();
  }

  @Test
  void aReadingIsTypedBesideItsWallAndSetAside() throws Exception {
    open("tolverby-cabin.json");
    press("fold.asBuilt");
    window.fill("tape.1-2", "28' + 1/4").untilSolved();
    assertThat(window.plan().onSite().walls().tapes()).hasSize(1);
    assertThat(window.plan().onSite().walls().tapes().get(0).reads()).isEqualTo(336.25);
    window.fill("tape.1-3", "34' 5").untilSolved();
    window.fill("tape.1-2", "28' + 3/8").untilSolved();
    assertThat(window.plan().onSite().walls().tapes()).hasSize(2);
    press("tape.1-2.counts");
    assertThat(window.plan().onSite().walls().tapes().get(0).use()).isEqualTo(AsBuilt.Use.ASIDE);
    window.fill("tape.1-2", "").untilSolved();
    assertThat(window.plan().onSite().walls().tapes()).hasSize(1);
  }

  @Test
  void theWallsAreDrawnWhereTheyStandAndItCanBeUndone() throws Exception {
    open("tolverby-cabin.json");
    press("fold.asBuilt");
    window
        .fill(
            "tapes",
            "1-2 = 28' 0 1/2; 2-3 = 20'; 3-4 = 28' 0 1/2; 4-1 = 20'; 1-3 = 34' 5 3/8; 2-4 = 34' 5 3/8")
        .untilSolved();
    press("takeWalls");
    assertThat(window.plan().parts().get(0).side(0).length())
        .isCloseTo(336.5, org.assertj.core.api.Assertions.within(0.05));
    assertThat(window.design().framing().trusses()).isNotEmpty();
    window.menu("edit.undo");
    window.untilSolved();
    assertThat(window.plan().parts().get(0).side(0).length()).isEqualTo(336);
    assertThat(window.plan().onSite().walls().tapes()).hasSize(6);
  }

  @Test
  void aSuppliersListIsOpenedAndTold() throws Exception {
    open("marrowgate-bungalow.json");
    window.dialogs().list = Optional.of(Path.of("sample-plans/marrowgate-trusses.csv"));
    window.menu("file.supplied");
    WindowDriver.until(
        "the list", () -> !window.window().job().document().plan().onSite().trusses().isEmpty());
    window.untilSolved();
    assertThat(window.design().onSite().trusses().missing()).hasSize(1);
    assertThat(window.design().problems()).anyMatch(p -> p.message().contains("1 × T1"));
    window.menu("edit.undo");
    window.untilSolved();
    assertThat(window.plan().onSite().trusses().isEmpty()).isTrue();
  }

  /** Heads of a supplier's own: the user says which column holds what. */
  @Test
  void columnsThatAreNotUnderstoodAreAsked(@TempDir Path folder) throws Exception {
    open("marrowgate-bungalow.json");
    Path list = folder.resolve("own.csv");
    Files.writeString(list, "Zeichen;Stk;Weite\nA;7;28'\n");
    window.dialogs().list = Optional.of(list);
    window.dialogs().columns =
        Optional.of(Map.of(Column.MARK, 0, Column.QUANTITY, 1, Column.SPAN, 2));
    window.menu("file.supplied");
    WindowDriver.until(
        "the list", () -> !window.window().job().document().plan().onSite().trusses().isEmpty());
    window.untilSolved();
    assertThat(window.plan().onSite().trusses().trusses())
        .extracting(r -> r.mark(), r -> r.quantity(), r -> r.figures().span().orElse(0.0))
        .contains(org.assertj.core.groups.Tuple.tuple("A", 7, 336.0));
  }
}
