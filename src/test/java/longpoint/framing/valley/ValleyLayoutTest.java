package longpoint.framing.valley;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import longpoint.framing.Shop;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.plan.Join.MadeFor;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ValleyLayoutTest {
  private static final double NOTICE = Shop.of(LengthUnit.INCH).notice();

  /** Wing of 20 ft span, heels and plates level, over 10 in 12 with a 1/2 in deck. */
  private static ValleySite tens(MadeFor madeFor) {
    return new ValleySite(
        new ValleySite.Main(10 / 12.0, 0, 0.5, -17.5, 120),
        new ValleySite.Wing(100, 10 / 12.0, 10 / 12.0, 0.5, 137.5, 137.5),
        0,
        24,
        1.5,
        madeFor);
  }

  private static ValleySite eights() {
    return new ValleySite(
        new ValleySite.Main(8 / 12.0, 0, 15 / 32.0, -17.5, 168),
        new ValleySite.Wing(100, 10 / 12.0, 10 / 12.0, 15 / 32.0, 137.5, 137.5),
        0,
        24,
        1.5,
        MadeFor.FRAME);
  }

  /**
   * Worked by hand with similar triangles, to 0.001 in: 10 in 12 on 10 in 12, 240 span, 1/2 in
   * deck, 16 in overhang, 1 1/2 in fascia; shift 0.5 / sin 39.806°.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 23.219, 53.421, 192, 80",
    "2, 47.219, 84.662, 144, 60",
    "3, 71.219, 115.903, 96, 40",
    "4, 95.219, 147.144, 48, 20"
  })
  void equalSlopes(int number, double x, double v, double length, double height) {
    ValleyLayout set = ValleyLayout.lay(tens(MadeFor.FRAME));
    ValleyTruss truss = set.trusses().get(number - 1);
    assertThat(set.trusses()).hasSize(4);
    assertThat(truss.number()).isEqualTo(number);
    assertThat(truss.x()).isEqualTo(x, within(0.001));
    assertThat(truss.v()).isEqualTo(v, within(0.001));
    assertThat(truss.length()).isEqualTo(length, within(0.001));
    assertThat(truss.height()).isEqualTo(height, within(0.001));
    assertThat(truss.stop()).isEqualTo(v - 1.5, within(0.001));
  }

  @Test
  void equalSlopesApexAndShift() {
    ValleyLayout set = ValleyLayout.lay(tens(MadeFor.FRAME));
    assertThat(set.shift()).isEqualTo(0.781, within(0.001));
    assertThat(set.firstGap()).isEqualTo(23.219, within(0.001));
    assertThat(set.apexX()).isEqualTo(119.219, within(0.001));
    assertThat(set.apexV()).isEqualTo(178.385, within(0.001));
    assertThat(set.meets()).isTrue();
    ValleyLine left = set.setLines().get(0);
    // 45 degrees in plan: at the wall the half-width is as long as the way up to the apex.
    assertThat(left.apexX()).isEqualTo(119.219, within(0.001));
    assertThat(left.apexHalf()).isEqualTo(0, within(1e-9));
    assertThat(left.half() + left.x()).isEqualTo(119.219, within(0.001));
  }

  /** Same, 10 in 12 over 8 in 12, 15/32 in deck: chords in feet and inches to 1/16. */
  @Test
  void wingSteeperThanMain() {
    ValleyLayout set = ValleyLayout.lay(eights());
    double[] chords = {
      16 * 12 + 9.625, 13 * 12 + 7.1875, 10 * 12 + 4.8125, 7 * 12 + 2.375, 48, 9.625
    };
    assertThat(set.shift()).isEqualTo(0.845, within(0.001));
    assertThat(set.trusses()).hasSize(chords.length);
    for (int i = 0; i < chords.length; i++) {
      assertThat(set.trusses().get(i).length()).isEqualTo(chords[i], within(1.0 / 32));
    }
  }

  /** Made for the deck the set does not slide, and each truss is smaller by the deck. */
  @Test
  void madeForTheDeck() {
    ValleyLayout frame = ValleyLayout.lay(tens(MadeFor.FRAME));
    ValleyLayout deck = ValleyLayout.lay(tens(MadeFor.DECK));
    assertThat(deck.shift()).isZero();
    for (int i = 0; i < 4; i++) {
      ValleyTruss a = frame.trusses().get(i);
      ValleyTruss b = deck.trusses().get(i);
      assertThat(b.x()).isEqualTo(24 * (i + 1), within(1e-9));
      // A plumb deck thickness of 0.5 × 15.6205 / 12 = 0.6509 off the height.
      assertThat(a.height() - b.height()).isEqualTo(0.6509, within(5e-5));
    }
  }

  /** A chord's ends lie on the main deck and on the wing's frame planes. */
  @Test
  void chordEndsLieOnBothPlanes() {
    ValleySite site =
        new ValleySite(
            new ValleySite.Main(7 / 12.0, 101.5, 0.594, -14, 150),
            new ValleySite.Wing(171, 9 / 12.0, 12 / 12.0, 0.47, 110, 85),
            -3,
            16,
            1.5,
            MadeFor.FRAME);
    Plane deck = new Plane(0, 7 / 12.0, 101.5 + 0.594 * Math.sqrt(1 + 49 / 144.0));
    Plane left = new Plane(9 / 12.0, 0, 171);
    Plane right = new Plane(-1, 0, 171);
    ValleyLayout set = ValleyLayout.lay(site);
    assertThat(set.trusses()).hasSizeGreaterThan(3);
    for (ValleyTruss t : set.trusses()) {
      Point l = new Point(-t.left(), t.x());
      Point r = new Point(t.right(), t.x());
      assertThat(left.heightAt(l)).isEqualTo(deck.heightAt(l), within(1e-9));
      assertThat(right.heightAt(r)).isEqualTo(deck.heightAt(r), within(1e-9));
      assertThat(171 - t.height()).isEqualTo(deck.heightAt(l), within(1e-9));
    }
    for (ValleyLine line : set.sheetLines()) {
      boolean onLeft = line.side() == ValleyLine.Side.LEFT;
      double slope = onLeft ? 0.75 : 1;
      Plane top = (onLeft ? left : right).raised(0.47 * Math.sqrt(1 + slope * slope));
      double turn = onLeft ? -1 : 1;
      Point foot = new Point(turn * line.half(), line.x());
      Point end = new Point(turn * line.apexHalf(), line.apexX());
      assertThat(top.heightAt(foot)).isEqualTo(deck.heightAt(foot), within(1e-9));
      assertThat(top.heightAt(end)).isEqualTo(deck.heightAt(end), within(1e-9));
    }
    assertThat(set.sheetLines().get(0).apexHalf())
        .isEqualTo(-set.sheetLines().get(1).apexHalf(), within(1e-9));
  }

  @Test
  void mirroredWingSwapsTheHalves() {
    ValleySite site =
        new ValleySite(
            tens(MadeFor.FRAME).main(),
            new ValleySite.Wing(90, 0.5, 1.25, 0.5, 200, 90),
            0,
            24,
            1.5,
            MadeFor.FRAME);
    ValleySite mirrored =
        new ValleySite(site.main(), site.wing().mirrored(), 0, 24, 1.5, MadeFor.FRAME);
    List<ValleyTruss> a = ValleyLayout.lay(site).trusses();
    List<ValleyTruss> b = ValleyLayout.lay(mirrored).trusses();
    assertThat(a).isNotEmpty().hasSameSizeAs(b);
    for (int i = 0; i < a.size(); i++) {
      assertThat(a.get(i).left()).isEqualTo(b.get(i).right());
      assertThat(a.get(i).length()).isEqualTo(b.get(i).length(), within(1e-12));
    }
  }

  /** A wing taller than the main ridge never closes; the set stops at the ridge. */
  @Test
  void wingTallerThanMain() {
    ValleySite tall =
        new ValleySite(
            tens(MadeFor.FRAME).main(),
            new ValleySite.Wing(140, 1, 1, 0.5, 160, 160),
            0,
            24,
            1.5,
            MadeFor.FRAME);
    ValleyLayout set = ValleyLayout.lay(tall);
    assertThat(set.meets()).isFalse();
    assertThat(set.trusses().get(set.trusses().size() - 1).x()).isLessThanOrEqualTo(120);
    assertThat(set.setLines().get(0).apexX()).isEqualTo(120);
  }

  /** The lengths the layout gives come back to the places the layout gave. */
  @Test
  void suppliedLengthsComeBackToTheirPlaces() {
    ValleyLayout set = ValleyLayout.lay(eights());
    List<Double> lengths =
        new ArrayList<>(set.trusses().stream().map(ValleyTruss::length).toList());
    java.util.Collections.reverse(lengths);
    List<SuppliedSet.Placed> placed = SuppliedSet.place(eights(), lengths, NOTICE);
    for (int i = 0; i < placed.size(); i++) {
      assertThat(placed.get(i).truss().x()).isEqualTo(set.trusses().get(i).x(), within(1e-9));
      assertThat(placed.get(i).differs()).isFalse();
    }
  }

  /** A chord 3/8 in too long on a 45° set line stands 3/16 in low: gaps 23.81 and 24.19. */
  @Test
  void oneWrongLengthIsFlaggedOnBothSides() {
    List<SuppliedSet.Placed> placed =
        SuppliedSet.place(tens(MadeFor.FRAME), List.of(192.0, 144.375, 96.0, 48.0), NOTICE);
    assertThat(placed.stream().map(SuppliedSet.Placed::differs))
        .containsExactly(false, true, true, false);
    assertThat(placed.get(1).off()).isEqualTo(-0.1875, within(1e-9));
    assertThat(placed.get(2).off()).isEqualTo(0.1875, within(1e-9));
  }
}
