package longpoint.deck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import longpoint.geometry.Ring;
import longpoint.plan.Deck;
import longpoint.plan.Problem;
import longpoint.wording.Language;
import org.junit.jupiter.api.Test;

/** How wide the lowest course is, and what is left for the last one. */
class FirstCourseTest {
  /** 20'-1 7/16" of rake: five courses of 48 in and a strip of 1 7/16 in. */
  private static final double RAKE = 241.4375;

  private static DeckPlan lay(double rake, Deck deck) {
    Ring outline = Ring.of(0, 0, 384, 0, 384, rake, 0, rake);
    DeckPlan plan = DeckFixture.of(10, outline, DeckFixture.every(24, 0, 384), deck).lay();
    DeckLaws.check(plan);
    DeckLaws.keepsTheRulesForJoints(plan.planes().get(0));
    return plan;
  }

  private static double[] widths(DeckPlan plan) {
    return plan.planes().get(0).courses().stream().mapToDouble(c -> c.to() - c.from()).toArray();
  }

  private static final Deck LEFT = DeckFixture.inches(Deck.Start.LEFT);

  @Test
  void wholeSheetsUnlessSaid() {
    assertThat(widths(lay(100, LEFT))).containsExactly(new double[] {48, 48, 4}, within(1e-9));
    assertThat(widths(lay(48, LEFT))).containsExactly(new double[] {48}, within(1e-9));
  }

  @Test
  void rippedAsSaid() {
    DeckPlan plan = lay(100, LEFT.withFirstCourse(Optional.of(30.0)));
    assertThat(widths(plan)).containsExactly(new double[] {30, 48, 22}, within(1e-9));
    // By hand, 32 ft long: 4 sheets ripped to 30, 4 whole, and of 22 two to a sheet, 2.
    assertThat(plan.planes().get(0).pieces().stream().mapToDouble(Piece::area).sum())
        .isCloseTo(38_400, within(1e-6));
    assertThat(plan.sheetsBought()).isEqualTo(10);
    assertThat(plan.lowerBound()).isEqualTo(10);
  }

  /** Wider than a sheet is a whole one, narrower than can be sawn too. */
  @Test
  void neverWiderThanASheet() {
    assertThat(widths(lay(100, LEFT.withFirstCourse(Optional.of(60.0)))))
        .startsWith(new double[] {48}, within(1e-9));
    assertThat(widths(lay(100, LEFT.withFirstCourse(Optional.of(-3.0)))))
        .startsWith(new double[] {48}, within(1e-9));
    assertThat(widths(lay(20, LEFT.withFirstCourse(Optional.of(30.0)))))
        .containsExactly(new double[] {20}, within(1e-9));
  }

  /** The cure named in the warning leaves a last course a quarter of a sheet wide and more. */
  @Test
  void aSliverAtTheTopIsToldWithItsCure() {
    DeckPlan sliver = lay(RAKE, LEFT);
    assertThat(sliver.problems()).hasSize(1);
    Problem told = sliver.problems().get(0);
    assertThat(told.where()).isEqualTo("a/0");
    assertThat(told.message(Language.ENGLISH)).contains("0'-1 7/16\" wide");
    assertThat(told.cure(Language.ENGLISH)).contains("3'-0\"").contains("1'-1 7/16\"");
    DeckPlan cured = lay(RAKE, LEFT.withFirstCourse(Optional.of(36.0)));
    assertThat(cured.problems()).isEmpty();
    assertThat(widths(cured)[5]).isCloseTo(13.4375, within(1e-9));
  }

  /** 6 in and more is no sliver, nor is the tip of a hip end, which has no course at the top. */
  @Test
  void whatIsNoSliverIsNotTold() {
    assertThat(lay(54, LEFT).problems()).isEmpty();
    assertThat(lay(53.9, LEFT).problems()).hasSize(1);
    Ring hip = Ring.of(0, 0, 192, 0, 96, 97);
    DeckPlan plan = DeckFixture.of(10, hip, DeckFixture.every(24, 0, 192), LEFT).lay();
    assertThat(plan.problems()).isEmpty();
  }

  /** In line with a plane that comes down farther, the first course begins at the lower fascia. */
  @Test
  void beginsAtTheLowerOfTwoFasciasInLine() {
    Ring outline = Ring.of(0, 0, 192, 0, 192, -8, 384, -8, 384, 88, 0, 88);
    DeckPlan plan = DeckFixture.of(10, outline, DeckFixture.every(24, 0, 384), LEFT).lay();
    DeckLaws.check(plan);
    assertThat(widths(plan)).containsExactly(new double[] {48, 48}, within(1e-9));
    assertThat(plan.planes().get(0).courses().get(0).from()).isCloseTo(-8, within(1e-9));
  }

  /** A hair longer than two sheets and no support to break on: no joint fits in the last hair. */
  @Test
  void aStripAHairTooLongIsBrokenAtHalves() {
    Ring outline = Ring.of(0, 0, 192.03, 0, 192.03, 40, 0, 40);
    DeckPlan plan = DeckFixture.of(10, outline, new double[] {30}, LEFT).lay();
    DeckLaws.check(plan);
    assertThat(plan.planes().get(0).pieces()).hasSizeGreaterThanOrEqualTo(3);
  }

  @Test
  void theLeastSheetsAvoidASliver() {
    DeckPlan plan = lay(RAKE, DeckFixture.inches(Deck.Start.LEAST));
    assertThat(plan.problems()).isEmpty();
    assertThat(widths(plan)[0]).isEqualTo(36);
    DeckPlan own =
        lay(RAKE, DeckFixture.inches(Deck.Start.LEAST).withFirstCourse(Optional.of(48.0)));
    assertThat(own.problems()).hasSize(1);
    assertThat(List.of(widths(own).length, widths(plan).length)).containsOnly(6);
  }
}
