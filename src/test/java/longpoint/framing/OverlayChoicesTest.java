package longpoint.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longpoint.deck.DeckPlan;
import longpoint.deck.PlaneDeck;
import longpoint.deck.Sheathing;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussMark;
import longpoint.framing.valley.SuppliedSet;
import longpoint.framing.valley.ValleySet;
import longpoint.framing.valley.ValleyTruss;
import longpoint.plan.Join;
import longpoint.plan.Join.MouthTails;
import longpoint.plan.Plan;
import longpoint.surface.Roof;
import longpoint.surface.RoofSurface;
import org.junit.jupiter.api.Test;

/** What a join says about an overlay: a wing 12 ft wide over the front of a house, both 8 in 12. */
class OverlayChoicesTest {
  private static Plan with(java.util.function.UnaryOperator<Join> edit) {
    Plan plan = Houses.gardenWing(Join.Method.OVERLAY);
    return plan.withJoins(plan.joins().stream().map(edit).toList());
  }

  private static ValleySet set(Plan plan) {
    return Houses.solve(plan).valleySets().get(0);
  }

  /** The lengths the layout itself works out, given back as a list, stand where it has them. */
  @Test
  void aListThatFitsStandsWhereTheLayoutHasIt() {
    ValleySet own = set(with(j -> j));
    List<Double> chords = own.trusses().stream().map(ValleyTruss::length).toList();
    Plan plan = with(j -> j.withChords(chords));
    ValleySet supplied = set(plan);
    assertThat(chords).hasSizeGreaterThan(1);
    for (int i = 0; i < chords.size(); i++) {
      assertThat(supplied.trusses().get(i).x()).isEqualTo(own.trusses().get(i).x(), within(1e-9));
    }
    assertThat(supplied.supplied()).noneMatch(SuppliedSet.Placed::differs);
    assertThat(Houses.solve(plan).problems()).noneMatch(p -> p.message().contains("valley truss"));
  }

  /**
   * Plane geometry: at equal slopes of 8 in 12 both ends of a chord move in by 1 in for every 1 in
   * up the plan, so a chord 1/2 in too short stands 1/4 in too far up; the next one's gap is short
   * by as much. Rule: over 1/8 in is told.
   */
  @Test
  void aChordThatDoesNotFitIsTold() {
    List<Double> chords =
        new java.util.ArrayList<>(
            set(with(j -> j)).trusses().stream().map(ValleyTruss::length).toList());
    chords.set(1, chords.get(1) - 0.5);
    Plan plan = with(j -> j.withChords(chords));
    List<SuppliedSet.Placed> placed = set(plan).supplied();
    assertThat(placed.get(0).differs()).isFalse();
    assertThat(placed.get(1).off()).isEqualTo(0.25, within(1e-9));
    assertThat(placed.get(1).differs()).isTrue();
    assertThat(Houses.solve(plan).problems())
        .filteredOn(p -> p.message().contains("the gap below") || p.message().contains("The gap"))
        .anyMatch(p -> p.message().contains("2'-0 1/4\"") && p.message().contains("2'-0\""));
    // The trusses themselves, and so chalk lines and blocks, are those of the list.
    assertThat(Houses.solve(plan).trusses())
        .anyMatch(t -> Math.abs(t.span() - chords.get(1)) < 1e-9);
  }

  @Test
  void aChordThatIsTooLongHasNoPlace() {
    Plan plan = with(j -> j.withChords(List.of(200.0, 60.0, 30.0)));
    assertThat(set(plan).supplied()).hasSize(3);
    assertThat(set(plan).trusses()).hasSize(2);
    assertThat(Houses.solve(plan).problems())
        .anyMatch(p -> p.message().contains("has no place on the roof below"))
        .anyMatch(p -> p.message().contains("lists 3 valley trusses"));
  }

  private static double tail(FramingSet set, double x) {
    Truss truss =
        set.trusses().stream()
            .filter(t -> t.part().equals("main") && t.station() == x)
            .findFirst()
            .orElseThrow();
    TrussMark mark =
        set.marks().stream().filter(m -> m.mark().equals(truss.mark())).findFirst().orElseThrow();
    boolean turned = truss.turn() == Truss.Turn.END_FOR_END;
    boolean southFirst = truss.from().y() < 1;
    return southFirst != turned ? mark.tailLow() : mark.tailHigh();
  }

  /** The mouth runs from 168 to 312: trusses at 168 to 312 lose their south tails, no others. */
  @Test
  void tailsOverTheMouthAreLeftOff() {
    FramingSet off = Houses.solve(with(j -> j));
    FramingSet on = Houses.solve(with(j -> j.withTails(MouthTails.ON)));
    for (int x = 24; x < 480; x += 24) {
      assertThat(tail(off, x)).as("at " + x).isEqualTo(x >= 168 && x <= 312 ? 0 : 16);
      assertThat(tail(on, x)).isEqualTo(16);
    }
    assertThat(off.mouths()).hasSize(1);
    assertThat(on.mouths()).isEmpty();
  }

  /**
   * Deck and frame agree: between the two roofs the deck loses the strip over the mouth, 144 in
   * wide and 16 + 1 1/2 in deep on the plan, 1.2019 times that up the slope, but for the corners
   * where the wing's roof is no higher than the house's.
   */
  @Test
  void theDeckStopsAtTheWallThereToo() {
    double off = area(with(j -> j));
    double on = area(with(j -> j.withTails(MouthTails.ON)));
    double strip = 144 * 17.5 * Math.sqrt(1 + 4.0 / 9);
    assertThat(on - off).isEqualTo(strip, within(strip * 0.01));
  }

  private static double area(Plan plan) {
    RoofSurface roof = Roof.solve(plan);
    DeckPlan deck = Sheathing.lay(plan, roof, Framing.solve(plan, roof));
    return deck.planes().stream()
        .filter(p -> p.plane().startsWith("main"))
        .mapToDouble(PlaneDeck::area)
        .sum();
  }

  /** A roof that stands already keeps its tails; cutting them is the crew's affair on site. */
  @Test
  void anExistingRoofKeepsItsEave() {
    Plan plan = with(j -> j);
    Plan built = plan.withPart(plan.part("main").orElseThrow().withExisting(true));
    assertThat(Houses.solve(built).mouths()).isEmpty();
  }
}
