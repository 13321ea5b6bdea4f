package longpoint.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import longpoint.deck.DeckFixture;
import longpoint.deck.DeckPlan;
import longpoint.deck.PlaneDeck;
import longpoint.drawing.Drawing;
import longpoint.drawing.Mark;
import longpoint.drawing.Strokes;
import longpoint.field.chalk.Chalk;
import longpoint.field.chalk.ChalkSheet;
import longpoint.geometry.Ring;
import longpoint.plan.Deck;
import longpoint.wording.Language;
import org.junit.jupiter.api.Test;

class ChalkViewTest {
  private static final DeckFixture HIP =
      DeckFixture.of(
          8,
          Ring.of(0, 0, 480, 0, 340, 168, 140, 168),
          DeckFixture.every(24, 12, 468),
          DeckFixture.inches(Deck.Start.LEFT));

  private static final double UNITS_PER_MM = 48 / 25.4;

  private static ChalkView view() {
    DeckPlan deck = HIP.lay();
    List<ChalkSheet> chalk = Chalk.sheets(deck, List.of(), List.of());
    return ChalkView.of(
        deck.planes().get(0), Optional.of(chalk.get(0)), Words.of(HIP.plan()), UNITS_PER_MM);
  }

  private static List<Mark.Text> texts(List<Mark> marks) {
    return marks.stream().filter(Mark.Text.class::isInstance).map(Mark.Text.class::cast).toList();
  }

  @Test
  void numbersEveryPieceThatHasRoom() {
    ChalkView view = view();
    PlaneDeck deck = HIP.lay().planes().get(0);
    Set<String> subjects =
        texts(view.marks()).stream().map(Mark.Text::subject).collect(Collectors.toSet());
    long shown = deck.pieces().stream().filter(p -> subjects.contains(p.id())).count();
    assertThat(shown + view.leftOff()).isGreaterThanOrEqualTo(deck.pieces().size());
    assertThat(shown).isGreaterThan(deck.pieces().size() / 2);
    assertThat(texts(view.marks()).stream().map(Mark.Text::text)).contains("4'-0\"", "8'-0\"");
  }

  @Test
  void neverLaysLetteringOnLettering() {
    var labels = Strokes.of(view().marks(), UNITS_PER_MM).labels();
    for (int i = 0; i < labels.size(); i++) {
      for (int j = 0; j < i; j++) {
        assertThat(labels.get(i).box().overlaps(labels.get(j).box())).isFalse();
      }
    }
  }

  @Test
  void drawsTheSameEveryTime() {
    assertThat(view()).isEqualTo(view());
    assertThat(view().drawing()).isEqualTo(new Drawing(view().title(), view().marks()));
  }

  /** Every letter of a pattern and every line's tape stands somewhere on the pages. */
  @Test
  void leavesNothingOffThePages() {
    DeckPlan deck = HIP.lay();
    List<ChalkSheet> chalk = Chalk.sheets(deck, List.of(), List.of());
    RoofNames names = new RoofNames(HIP.plan(), HIP.surface());
    SheetBorder border = new SheetBorder(HIP.plan(), List.of(), Paper.LETTER);
    List<Sheet> pages = ChalkSheets.of(HIP.plan(), deck, chalk, names, border);
    List<String> words = new ArrayList<>();
    pages.forEach(p -> texts(p.marks()).forEach(t -> words.add(t.text())));
    deck.planes().get(0).pieces().forEach(p -> assertThat(words).contains(p.cut()));
    chalk.get(0).lines().forEach(l -> assertThat(words).contains(l.label().in(Language.ENGLISH)));
    assertThat(words).noneMatch(w -> w.equals("…"));
  }

  /** As many outlines as pieces of sheets that are cut, and every cut sheet has its number. */
  @Test
  void drawsEverySheetThatIsCut() {
    DeckPlan deck = HIP.lay();
    RoofNames names = new RoofNames(HIP.plan(), HIP.surface());
    SheetBorder border = new SheetBorder(HIP.plan(), List.of(), Paper.LETTER);
    List<Sheet> pages = CuttingSheets.of(HIP.plan(), deck, names, border);
    List<String> words = new ArrayList<>();
    long outlines = 0;
    for (Sheet page : pages) {
      texts(page.marks()).forEach(t -> words.add(t.text()));
      for (Mark mark : page.marks()) {
        if (mark instanceof Mark.Group group) {
          outlines +=
              group.marks().stream()
                  .filter(m -> m instanceof Mark.Path p && p.layer().equals(Layers.DECK))
                  .count();
        }
      }
    }
    long cut = 0;
    for (var sheet : deck.stock().get(0).sheets()) {
      if (sheet.pieces().stream().noneMatch(p -> p.cut().equals("whole"))) {
        cut += sheet.pieces().size();
        assertThat(words).contains("No. " + sheet.number());
      }
    }
    assertThat(outlines).isEqualTo(cut);
  }
}
