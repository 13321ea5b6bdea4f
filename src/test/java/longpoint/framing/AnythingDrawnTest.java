package longpoint.framing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.CeilingStretch;
import longpoint.plan.Deck;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.FrameChoices;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.PlacedTruss;
import longpoint.plan.Placements;
import longpoint.plan.Plan;
import longpoint.plan.RunChoices;
import longpoint.plan.StickChoices;
import longpoint.surface.Roof;
import longpoint.surface.RoofSurface;
import longpoint.units.Slope;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** Whatever is drawn, framing answers; it never throws. */
@Execution(ExecutionMode.CONCURRENT)
class AnythingDrawnTest {
  private static final RoofSurface NO_ROOF = new RoofSurface(List.of(), List.of(), List.of());

  @Test
  void anyOutlineAnyEdgesAnyFigures() {
    Random random = new Random(41);
    int framed = 0;
    for (int round = 0; round < 1500; round++) {
      framed += Framing.solve(plan(random), NO_ROOF).trusses().isEmpty() ? 0 : 1;
    }
    assertThat(framed).isGreaterThan(100);
  }

  /** The same over solved roofs, which edge boards and rafters of odd shapes are read off. */
  @Test
  void anyRoof() {
    Random random = new Random(43);
    int boarded = 0;
    for (int round = 0; round < 150; round++) {
      Plan plan = plan(random);
      boarded += Framing.solve(plan, Roof.solve(plan)).fascia().isEmpty() ? 0 : 1;
    }
    assertThat(boarded).isGreaterThan(20);
  }

  private static Plan plan(Random random) {
    List<Part> parts = new ArrayList<>();
    int count = 1 + random.nextInt(3);
    for (int i = 0; i < count; i++) {
      parts.add(part(random, "p" + i));
    }
    Plan plan = Houses.plan(parts.toArray(Part[]::new));
    if (count == 1) {
      return plan;
    }
    Join.Method method = pick(random, Join.Method.values());
    return plan.withJoins(
        List.of(
            new Join("p1", "p0", method, pick(random, Join.MadeFor.values()), Extras.NONE)
                .withTails(pick(random, Join.MouthTails.values()))
                .withChords(
                    random.nextInt(3) > 0 ? List.of() : List.of(random.nextInt(200) - 9.0, 96.0))));
  }

  /** Right-angled staircases on a coarse grid, so that walls often line up and often cross. */
  private static Part part(Random random, String id) {
    List<Double> xy = new ArrayList<>();
    int steps = 1 + random.nextInt(4);
    int x = random.nextInt(5);
    int y = random.nextInt(5);
    int startX = x;
    int startY = y;
    for (int i = 0; i < steps; i++) {
      xy.add(x * 60.0);
      xy.add(y * 60.0);
      x += 1 + random.nextInt(5);
      xy.add(x * 60.0);
      xy.add(y * 60.0);
      y += random.nextInt(6) - 1;
    }
    xy.add(x * 60.0);
    xy.add((startY + 8) * 60.0);
    xy.add(startX * 60.0);
    xy.add((startY + 8) * 60.0 + (random.nextInt(20) == 0 ? 7 : 0));
    double[] flat = xy.stream().mapToDouble(Double::doubleValue).toArray();
    Ring ring = Ring.of(flat);
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      edges.add(
          Edge.of(random.nextInt(3) > 0 ? EdgeKind.EAVE : pick(random, EdgeKind.values()))
              .withSlope(Slope.inTwelve(random.nextInt(19)))
              .withOverhang(random.nextInt(5) * 12 - (random.nextInt(30) == 0 ? 20 : 0))
              .withHip(pick(random, Edge.HipEnd.values())));
    }
    FrameChoices choices =
        new FrameChoices(
            random.nextBoolean()
                ? Optional.of(pick(random, FrameChoices.Ridge.values()))
                : Optional.empty(),
            random.nextInt(4) == 0 ? Optional.of(Slope.inTwelve(4)) : Optional.empty(),
            random.nextInt(4) == 0 ? Optional.of(60.0 * random.nextInt(3)) : Optional.empty(),
            Optional.of(pick(random, FrameChoices.Lookout.values())));
    Frame frame =
        new Frame(
            random.nextInt(3) == 0 ? Frame.Method.RAFTER : Frame.Method.TRUSS,
            random.nextInt(40),
            1.5,
            random.nextInt(3) == 0 ? Optional.of(24.0 * random.nextInt(9)) : Optional.empty(),
            choices(random, choices),
            placements(random),
            Extras.NONE);
    return new Part(
        id,
        id,
        random.nextInt(6) == 0,
        ring,
        List.of(),
        97,
        edges,
        frame,
        new Deck(0.5, 48, 96, Deck.Start.LEFT, Extras.NONE),
        Extras.NONE);
  }

  private static FrameChoices choices(Random random, FrameChoices some) {
    RunChoices runs =
        new RunChoices(
            random.nextBoolean() ? List.of() : List.of(place(random)),
            random.nextBoolean() ? Optional.empty() : Optional.of(place(random)),
            random.nextInt(4) > 0 ? Optional.empty() : Optional.of(RunChoices.Legs.WHOLE));
    return some.withRuns(runs)
        .withGirderPlies(1 + random.nextInt(3))
        .withFlats(pick(random, FrameChoices.Flats.values()))
        .withLookoutPlaces(pick(random, FrameChoices.LookoutPlaces.values()))
        .withSticks(
            new StickChoices(
                Optional.of(random.nextInt(9) - 1.0),
                random.nextBoolean() ? Optional.empty() : Optional.of(random.nextInt(12) - 1.0),
                Optional.of(pick(random, StickChoices.RidgeEnds.values()))));
  }

  private static Placements placements(Random random) {
    if (random.nextBoolean()) {
      return Placements.NONE;
    }
    return new Placements(
        List.of(
            PlacedTruss.truss(place(random)),
            PlacedTruss.girder(place(random), 1 + random.nextInt(3)),
            PlacedTruss.girder(place(random), place(random), 1 + random.nextInt(3))),
        List.of(place(random)),
        List.of(
            new CeilingStretch(
                place(random), place(random), Slope.inTwelve(random.nextInt(9)), Extras.NONE)));
  }

  private static Point place(Random random) {
    return new Point(random.nextInt(700) - 50, random.nextInt(700) - 50);
  }

  private static <T> T pick(Random random, T[] from) {
    return from[random.nextInt(from.length)];
  }
}
