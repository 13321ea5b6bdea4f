package longpoint.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import longpoint.framing.truss.TrussKind;
import longpoint.geometry.Point;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.surface.Roof;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A part drawn clean across another: the taller ridge runs through (common practice). */
class CrossGableTest {
  private static Plan cross(
      Frame.Method framing, Join.Method method, String ends, double width, double off) {
    double spacing = framing == Frame.Method.TRUSS ? 24 : 16;
    Part main = Houses.framed(Houses.box("egeg", 8, 480, 336), framing, spacing);
    String sides = "" + ends.charAt(0) + 'e' + ends.charAt(1) + 'e';
    double left = 240 - width / 2;
    double right = 240 + width / 2;
    Part wing =
        Houses.framed(
            Houses.part(
                "wing", 97.125, sides, 8, left, -144, right, -144, right, 336 + off, left,
                336 + off),
            framing,
            spacing);
    return Houses.plan(main, wing)
        .withJoins(List.of(new Join("wing", "main", method, Join.MadeFor.FRAME, Extras.NONE)));
  }

  static Stream<Arguments> crosses() {
    return Stream.of(Frame.Method.TRUSS, Frame.Method.RAFTER)
        .flatMap(
            f ->
                Stream.of(Join.Method.OVERLAY, Join.Method.THROUGH)
                    .flatMap(
                        m ->
                            Stream.of("gg", "eg", "ee")
                                .flatMap(
                                    e ->
                                        Stream.of(120.0, 144.0, 240.0)
                                            .map(w -> Arguments.of(f, m, e, w, w - 24)))));
  }

  @ParameterizedTest
  @MethodSource("crosses")
  void nothingStandsInAnything(
      Frame.Method framing, Join.Method method, String ends, double width, double off) {
    Plan plan = cross(framing, method, ends, width, off);
    for (Plan turned : List.of(plan, Houses.moved(plan, p -> new Point(-p.y(), p.x())))) {
      FramingSet set = Houses.solve(turned);
      assertThat(FrameLaws.broken(turned, Roof.solve(turned), set)).isEmpty();
    }
  }

  /**
   * By hand: 8 in 12, 12 ft wide over a deck of 1/2 in. The trusses made for the frame slide down
   * 1/2 / sin 33.69 = 0.901, so their first stand 23.099 in; chords 2 x (72 - 24) = 96 and 48, on
   * both sides; the seven house trusses over the wing's mouths lose their tails on both.
   */
  @Test
  void valleySetsOnBothSides() {
    FramingSet set = Houses.solve(cross(Frame.Method.TRUSS, Join.Method.OVERLAY, "gg", 144, 144));
    assertThat(set.valleySets()).hasSize(2);
    assertThat(set.valleySets())
        .allSatisfy(
            v -> {
              assertThat(v.trusses()).hasSize(2);
              assertThat(v.trusses().get(0).x()).isEqualTo(23.099, within(0.001));
              assertThat(v.trusses().get(0).length()).isEqualTo(96, within(1e-6));
              assertThat(v.trusses().get(1).length()).isEqualTo(48, within(1e-6));
            });
    assertThat(
            set.marks().stream()
                .filter(m -> m.kind() == TrussKind.COMMON && m.span() == 336)
                .filter(m -> m.tailLow() == 0 && m.tailHigh() == 0)
                .mapToInt(m -> m.quantity())
                .sum())
        .isEqualTo(7);
    assertThat(set.trusses().stream().filter(t -> t.part().equals("wing")))
        .allMatch(
            t ->
                t.kind() == TrussKind.VALLEY
                    || Math.max(t.from().y(), t.to().y()) < 0
                    || Math.min(t.from().y(), t.to().y()) > 336);
  }

  @Test
  void framedThroughHangsBetweenTwoGirders() {
    FramingSet set = Houses.solve(cross(Frame.Method.TRUSS, Join.Method.THROUGH, "gg", 144, 144));
    assertThat(set.girders()).hasSize(2);
    assertThat(
            set.trusses().stream()
                .filter(t -> t.carriedFrom().isPresent() && t.carriedTo().isPresent()))
        .hasSize(5);
  }

  /** The taller one runs through even if it is the upper of the join, and that is said. */
  @Test
  void tallerOneRunsThrough() {
    Plan plan = cross(Frame.Method.TRUSS, Join.Method.OVERLAY, "gg", 360, 144);
    FramingSet set = Houses.solve(plan);
    assertThat(set.problems()).anyMatch(p -> p.message().contains("taller than main"));
    assertThat(set.valleySets()).hasSize(2).allMatch(v -> v.lower().equals("wing"));
    Plan turned =
        plan.withJoins(plan.joins().stream().map(j -> j.between("main", "wing")).toList());
    FramingSet right = Houses.solve(turned);
    assertThat(right.problems()).noneMatch(p -> p.message().contains("taller than"));
    assertThat(FrameLaws.broken(turned, Roof.solve(turned), right)).isEmpty();
  }
}
