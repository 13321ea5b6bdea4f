package longpoint.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import longpoint.editor.tools.Tools;
import longpoint.plan.Plan;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Undo, redo, the saved mark, selection and who is told. */
@ExtendWith(EnglishWords.class)
class DocumentTest {
  private final ToolRunner runner = new ToolRunner(new Document(Houses.house()), Tools.SELECT);
  private final Document document = runner.document();

  private Plan retitle(String title) {
    runner.apply(PlanCommands.title(title));
    return document.plan();
  }

  @Test
  void undoAndRedoReturnTheVeryPlansThatWere() {
    List<Plan> plans = new ArrayList<>(List.of(document.plan()));
    for (String title : List.of("one", "two", "three")) {
      plans.add(retitle(title));
    }
    for (int i = 2; i >= 0; i--) {
      runner.undo();
      assertThat(document.plan()).isSameAs(plans.get(i));
    }
    runner.undo();
    assertThat(document.plan()).isSameAs(plans.get(0));
    assertThat(document.undoName()).isEmpty();
    for (int i = 1; i <= 3; i++) {
      runner.redo();
      assertThat(document.plan()).isSameAs(plans.get(i));
    }
    runner.redo();
    assertThat(document.plan()).isSameAs(plans.get(3));
    assertThat(document.redoName()).isEmpty();
  }

  @Test
  void stepsGoByName() {
    runner.apply(PartCommands.rename("main", "Barn"));
    runner.apply(PartCommands.plateHeight(document.plan(), List.of("main"), 120));
    assertThat(document.done()).containsExactly("Rename to Barn", "Plate height of Barn: 10'-0\"");
    assertThat(document.undoName()).contains("Plate height of Barn: 10'-0\"");
    runner.undo();
    assertThat(document.redoName()).contains("Plate height of Barn: 10'-0\"");
    assertThat(document.done()).containsExactly("Rename to Barn");
  }

  @Test
  void aNewEditDropsWhatWasUndone() {
    retitle("one");
    runner.undo();
    retitle("two");
    assertThat(document.redoName()).isEmpty();
    assertThat(document.done()).hasSize(1);
  }

  @Test
  void anEditThatChangesNothingIsNoStep() {
    retitle("");
    assertThat(document.done()).isEmpty();
    assertThat(document.isDirty()).isFalse();
  }

  @Test
  void theDocumentIsCleanWhereverItWasSaved() {
    assertThat(document.isDirty()).isFalse();
    retitle("one");
    assertThat(document.isDirty()).isTrue();
    runner.undo();
    assertThat(document.isDirty()).isFalse();
    runner.redo();
    runner.saved(document.plan());
    assertThat(document.isDirty()).isFalse();
    runner.undo();
    assertThat(document.isDirty()).isTrue();
    runner.redo();
    assertThat(document.isDirty()).isFalse();
  }

  @Test
  void savingWhileDrawingGoesOnMarksWhatWasWritten() {
    Plan written = retitle("one");
    retitle("two");
    runner.saved(written);
    assertThat(document.isDirty()).isTrue();
    runner.undo();
    assertThat(document.isDirty()).isFalse();
  }

  @Test
  void openingStartsOverAndARescuedPlanCountsAsUnsaved() {
    retitle("one");
    runner.select(Selection.of(Ref.side("main", 0)));
    runner.open(Houses.empty());
    assertThat(document.undoName()).isEmpty();
    assertThat(document.isDirty()).isFalse();
    assertThat(document.selection().isEmpty()).isTrue();
    runner.recover(Houses.winged());
    assertThat(document.isDirty()).isTrue();
    assertThat(document.undoName()).isEmpty();
  }

  @Test
  void settingsStayFromPlanToPlanInOneUnit() {
    runner.use(runner.settings().withGrid(2));
    runner.open(Houses.empty());
    assertThat(runner.settings().grid()).isEqualTo(2);
    runner.open(Plan.empty(LengthUnit.MILLIMETRE));
    assertThat(runner.settings()).isEqualTo(Settings.of(LengthUnit.MILLIMETRE));
  }

  @Test
  void theSelectionKeepsOnlyWhatIsThere() {
    runner.select(Selection.of(Ref.part("main"), Ref.corner("main", 9), Ref.side("barn", 0)));
    assertThat(document.selection().refs()).containsExactly(Ref.part("main"));
    runner.apply(PartCommands.delete(document.plan(), List.of("main")));
    assertThat(document.selection().isEmpty()).isTrue();
    runner.undo();
    assertThat(document.plan()).isEqualTo(Houses.house());
  }

  @Test
  void listenersHearOfEveryChange() {
    int[] told = {0, 0};
    document.onChange(() -> told[0]++);
    runner.onChange(() -> told[1]++);
    retitle("one");
    runner.undo();
    runner.select(Selection.of(Ref.part("main")));
    runner.saved(document.plan());
    assertThat(told[0]).isEqualTo(4);
    assertThat(told[1]).isGreaterThanOrEqualTo(4);
    runner.select(Selection.of(Ref.part("main")));
    assertThat(told[0]).isEqualTo(4);
  }

  @Test
  void aCommandDropsAGestureThatIsNoOutline() {
    Hand hand = new Hand(Houses.house(), Tools.RECTANGLE).does("click 600 0; move 700 90");
    hand.runner().apply(PlanCommands.title("one"));
    assertThat(hand.runner().state().back()).isEmpty();
    assertThat(hand.runner().previewing()).isFalse();
    assertThat(hand.plan().title()).isEqualTo("one");
  }

  @Test
  void typingIsTakenOnlyWhereFiguresAreWanted() {
    assertThat(runner.type("7")).isFalse();
    assertThat(runner.entry()).isEmpty();
    Hand hand = new Hand(Houses.empty(), Tools.OUTLINE).does("click 0 0; move 90 0; type 24'3");
    assertThat(hand.runner().entry()).isEqualTo("24'3");
    hand.does("backspace");
    assertThat(hand.runner().entry()).isEqualTo("24'");
    hand.does("escape");
    assertThat(hand.runner().entry()).isEmpty();
    assertThat(hand.runner().state().back()).isPresent();
  }
}
