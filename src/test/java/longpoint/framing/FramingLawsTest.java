package longpoint.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import longpoint.framing.gable.Ladder;
import longpoint.framing.truss.RidgeBlocks;
import longpoint.framing.truss.TapeMarks;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussKind;
import longpoint.framing.truss.TrussMark;
import longpoint.framing.valley.ValleySet;
import longpoint.framing.valley.ValleyTruss;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.plan.Join;
import longpoint.plan.Plan;
import longpoint.surface.Roof;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Laws that hold for every frame, checked on houses of every shape. */
class FramingLawsTest {
  static Map<String, Plan> houses() {
    Map<String, Plan> all = new LinkedHashMap<>();
    all.put("gable", Houses.plan(Houses.box("egeg", 7, 500, 331)));
    all.put("hip", Houses.plan(Houses.box("eeee", 6, 528, 336)));
    all.put("one hip, one gable", Houses.plan(Houses.box("eege", 9, 431, 287)));
    all.put("square hip", Houses.plan(Houses.box("eeee", 6, 300, 300)));
    all.put("shed", Houses.plan(Houses.box("eggg", 3, 300, 144)));
    all.put("against a wall", Houses.plan(Houses.box("egag", 4, 300, 120)));
    all.put("overlay", Houses.gardenWing(Join.Method.OVERLAY));
    all.put("through", Houses.gardenWing(Join.Method.THROUGH));
    all.put(
        "L",
        Houses.plan(
            Houses.part(
                "main", 97.125, "eeeege", 8, 0, 0, 480, 0, 480, 300, 300, 300, 300, 520, 0, 520)));
    all.put(
        "T",
        Houses.plan(
            Houses.part(
                "main",
                97.125,
                "ege" + "ege" + "eg",
                8,
                0,
                0,
                480,
                0,
                480,
                288,
                330,
                288,
                330,
                480,
                150,
                480,
                150,
                288,
                0,
                288)));
    return all;
  }

  private static Stream<DynamicTest> each(java.util.function.BiConsumer<Plan, FramingSet> law) {
    return houses().entrySet().stream()
        .map(
            e ->
                DynamicTest.dynamicTest(
                    e.getKey(), () -> law.accept(e.getValue(), Houses.solve(e.getValue()))));
  }

  @TestFactory
  Stream<DynamicTest> marksAndGapsMakeTheWall() {
    return each(
        (plan, set) -> {
          assertThat(set.tapes()).isNotEmpty();
          for (TapeMarks tape : set.tapes()) {
            double trusses = tape.marks().size() * tape.thickness();
            double gaps = tape.gaps().stream().mapToDouble(Double::doubleValue).sum();
            double before = tape.marks().get(0);
            double after =
                tape.length() - tape.marks().get(tape.marks().size() - 1) - tape.thickness();
            assertThat(before + trusses + gaps + after).isEqualTo(tape.length(), within(1e-9));
            assertThat(tape.gaps()).allMatch(g -> g > -1e-9 && g < 22.5 + 1e-9);
          }
        });
  }

  /** Over a gabled run: trusses, blocks and what each block is cut short add up to the wall. */
  @TestFactory
  Stream<DynamicTest> trussesBlocksAndReliefMakeTheRun() {
    return each(
        (plan, set) -> {
          for (RidgeBlocks b : set.ridgeBlocks()) {
            double relief = b.clear() - b.length();
            assertThat(relief).isBetween(0.0625 - 1e-9, 0.125);
            assertThat(b.length() * 16).isEqualTo(Math.rint(b.length() * 16), within(1e-9));
          }
          for (TapeMarks tape : set.tapes()) {
            boolean hipped =
                set.trusses().stream()
                    .anyMatch(t -> t.run().equals(tape.run()) && t.kind() == TrussKind.HIP_GIRDER);
            List<RidgeBlocks> row =
                set.ridgeBlocks().stream()
                    .filter(b -> b.run().equals(tape.run()) && b.place() == RidgeBlocks.Place.RIDGE)
                    .toList();
            if (!hipped) {
              int count = row.stream().mapToInt(RidgeBlocks::count).sum();
              double clear = row.stream().mapToDouble(b -> b.count() * b.clear()).sum();
              assertThat(count).isEqualTo(tape.marks().size() - 1);
              assertThat(clear + tape.marks().size() * 1.5).isEqualTo(tape.length(), within(1e-6));
            }
          }
        });
  }

  /**
   * Both faces of every truss on or below its part's roof, and one of them on it. Compared with the
   * solved roof, which knows nothing of runs. Over a mouth, where the wing's roof is the higher
   * one, only the first half holds.
   */
  @TestFactory
  Stream<DynamicTest> profilesLieOnTheFramePlanes() {
    return each(
        (plan, set) -> {
          RoofSurface roof = Roof.solve(plan);
          int checked = 0;
          for (Truss t : set.trusses()) {
            if (t.kind() != TrussKind.VALLEY && t.kind() != TrussKind.HIP_JACK) {
              checked += check(set, roof, t);
            }
          }
          assertThat(checked).isGreaterThan(50);
        });
  }

  private static int check(FramingSet set, RoofSurface roof, Truss t) {
    TrussMark mark =
        set.marks().stream().filter(m -> m.mark().equals(t.mark())).findFirst().orElseThrow();
    boolean turned = t.turn() == Truss.Turn.END_FOR_END;
    var profile = turned ? mark.profile().turned() : mark.profile();
    Point along = t.to().minus(t.from()).unit();
    boolean dropped =
        switch (t.kind()) {
          case DROPPED_GABLE_END, BASE, CAP, GABLE_BASE, GABLE_CAP -> true;
          default -> false;
        };
    boolean overMouth = t.carriedFrom().isPresent() || t.carriedTo().isPresent();
    int checked = 0;
    for (int i = 0; i <= 40; i++) {
      double v = profile.span() * i / 40;
      Point at = t.from().plus(along.times(v));
      double top = t.plate() + profile.topAt(v);
      double least = Double.POSITIVE_INFINITY;
      for (int face = -1; face <= 1; face += 2) {
        least = Math.min(least, height(roof, t.part(), at.plus(along.left().times(face * 0.75))));
      }
      if (Double.isFinite(least)) {
        assertThat(top).as(t.id() + " at " + v).isLessThanOrEqualTo(least + 1e-6);
        if (!overMouth && !dropped && !underOther(set, t)) {
          assertThat(top).as(t.id() + " at " + v).isEqualTo(least, within(1e-6));
        }
        checked++;
      }
    }
    return checked;
  }

  /** Jacks and hip trusses at a mouth stand under the wing's roof. */
  private static boolean underOther(FramingSet set, Truss t) {
    return !set.proposals().isEmpty() && !t.run().contains(".");
  }

  /** Height of a part's own roof, the higher plane where its planes share an edge. */
  private static double height(RoofSurface roof, String part, Point p) {
    double z = Double.NEGATIVE_INFINITY;
    for (RoofPlane plane : roof.planes()) {
      if (plane.part().equals(part)) {
        List<Region> ground = new ArrayList<>(plane.visible());
        ground.addAll(plane.covered());
        if (ground.stream().anyMatch(g -> holds(g.shell(), p))) {
          z = Math.max(z, plane.plane().heightAt(p));
        }
      }
    }
    return Double.isInfinite(z) ? Double.POSITIVE_INFINITY : z;
  }

  private static boolean holds(Ring ring, Point p) {
    boolean in = false;
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.corner(i);
      Point b = ring.corner(i + 1);
      if (a.y() > p.y() != b.y() > p.y()
          && p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
        in = !in;
      }
    }
    return in;
  }

  /** Ends of valley chords lie on the wing's frame plane and on the deck or frame beneath. */
  @TestFactory
  Stream<DynamicTest> valleyChordsEndOnBothPlanes() {
    return Stream.of(Join.Method.OVERLAY, Join.Method.THROUGH)
        .map(
            method ->
                DynamicTest.dynamicTest(
                    method.key(),
                    () -> {
                      Plan plan = Houses.gardenWing(method);
                      RoofSurface roof = Roof.solve(plan);
                      ValleySet set = Houses.solve(plan).valleySets().get(0);
                      double deck = method == Join.Method.OVERLAY ? 0.5 : 0;
                      RoofPlane main = roof.plane(set.plane()).orElseThrow();
                      assertThat(set.trusses()).isNotEmpty();
                      for (ValleyTruss t : set.trusses()) {
                        Point left = set.axes().at(t.x(), t.left());
                        Point right = set.axes().at(t.x(), -t.right());
                        double onMain =
                            main.plane().heightAt(left) + deck * main.plane().areaFactor();
                        // The wing's outline turns left: its west wall is side 3, its east side 1.
                        assertThat(roof.plane("wing/3").orElseThrow().plane().heightAt(left))
                            .isEqualTo(onMain, within(1e-9));
                        assertThat(roof.plane("wing/1").orElseThrow().plane().heightAt(right))
                            .isEqualTo(onMain, within(1e-9));
                      }
                    }));
  }

  @TestFactory
  Stream<DynamicTest> lookoutsAndBlocksMakeTheRake() {
    return each(
        (plan, set) -> {
          for (Ladder ladder : set.ladders()) {
            double sum =
                ladder.blocks().stream().mapToDouble(Double::doubleValue).sum()
                    + ladder.lookouts().size() * ladder.lookoutWidth();
            assertThat(sum).isEqualTo(ladder.rakeLength(), within(1e-9));
            assertThat(ladder.lookouts().get(0)).isGreaterThanOrEqualTo(20);
          }
        });
  }

  @TestFactory
  Stream<DynamicTest> turnedMirroredAndFarAwayGiveTheSameFigures() {
    double angle = Math.toRadians(33.3);
    Map<String, UnaryOperator<Point>> maps = new LinkedHashMap<>();
    maps.put(
        "turned",
        p ->
            new Point(
                p.x() * Math.cos(angle) - p.y() * Math.sin(angle),
                p.x() * Math.sin(angle) + p.y() * Math.cos(angle)));
    maps.put("mirrored", p -> new Point(-p.x(), p.y()));
    maps.put("far away", p -> new Point(p.x() + 4e5, p.y() - 7e5));
    return houses().entrySet().stream()
        .flatMap(
            house ->
                maps.entrySet().stream()
                    .map(
                        map ->
                            DynamicTest.dynamicTest(
                                house.getKey() + " " + map.getKey(),
                                () -> {
                                  Plan moved = Houses.moved(house.getValue(), map.getValue());
                                  assertThat(figures(Houses.solve(moved)))
                                      .isEqualTo(figures(Houses.solve(house.getValue())));
                                })));
  }

  /** What a crew would read, with no left or right, place or name in it. */
  private static List<String> figures(FramingSet set) {
    List<String> lines = new ArrayList<>();
    for (TrussMark m : set.marks()) {
      double low = Math.min(m.heelLow(), m.heelHigh());
      double tail = Math.min(m.tailLow(), m.tailHigh());
      lines.add(
          text("truss %s %d", m.kind(), m.quantity())
              + text(" %.4f %.4f %.4f %.4f", m.span(), m.height(), low, tail));
    }
    for (ValleySet v : set.valleySets()) {
      for (ValleyTruss t : v.trusses()) {
        lines.add(text("valley %.4f %.4f %.4f %.4f", t.x(), t.v(), t.length(), t.height()));
      }
    }
    for (RidgeBlocks b : set.ridgeBlocks()) {
      lines.add(text("block %s %d %.4f", b.place(), b.count(), b.length()));
    }
    for (Ladder l : set.ladders()) {
      lines.add(text("ladder %.4f %.4f %.4f", l.rakeLength(), l.lookoutLength(), l.drop()));
    }
    set.fascia()
        .forEach(
            f ->
                lines.add(text("board %s %.4f %.4f", f.kind(), f.length(), f.height() + f.rise())));
    set.girders().forEach(g -> lines.add("girder " + g.hangers().size()));
    lines.sort(null);
    return lines;
  }

  private static String text(String format, Object... args) {
    // Adding zero turns a −0 into 0, which prints without its sign.
    Object[] plain =
        Stream.of(args)
            .map(a -> a instanceof Double d ? (Object) (Math.rint(d * 1e4) / 1e4 + 0.0) : a)
            .toArray();
    return String.format(Locale.ROOT, format, plain);
  }
}
