package longpoint.framing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import longpoint.plan.Edge;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.FrameChoices;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.units.Slope;

/** Houses as people draw them, each shape over a range of sizes and slopes. Trusses, inches. */
public final class TypicalPlans {
  private TypicalPlans() {}

  /** Each shape once, in ordinary sizes. */
  public static Map<String, Plan> all() {
    Map<String, Plan> all = new LinkedHashMap<>();
    for (double span : new double[] {72, 96, 144, 240, 336, 431, 600, 720}) {
      for (String ends : List.of("egeg", "eeee", "eeeg", "eggg", "egag")) {
        all.put("box " + ends + " " + span, Houses.plan(Houses.box(ends, 6, 480, span)));
      }
    }
    for (double rise : new double[] {2, 3, 5, 8, 12, 15, 18}) {
      all.put("gable at " + rise, Houses.plan(Houses.box("egeg", rise, 480, 336)));
      all.put("hip at " + rise, Houses.plan(Houses.box("eeee", rise, 480, 336)));
    }
    for (double length : new double[] {1.5, 3, 6, 12, 24, 25, 26, 30, 47, 49, 60}) {
      all.put("short " + length, Houses.plan(Houses.box("egeg", 6, length, 144)));
      all.put("short hip " + length, Houses.plan(Houses.box("eeee", 6, length + 200, 240)));
    }
    legs(all);
    unequal(all);
    joins(all);
    return all;
  }

  private static void legs(Map<String, Plan> all) {
    for (String kinds : List.of("eeeeee", "eeeege", "egeege", "egeeee")) {
      all.put("L " + kinds, Houses.plan(ell(kinds, 480, 520, 300, 300)));
      all.put("L narrow leg " + kinds, Houses.plan(ell(kinds, 480, 520, 300, 340)));
      all.put("L wide leg " + kinds, Houses.plan(ell(kinds, 600, 620, 240, 240)));
      all.put("L stub " + kinds, Houses.plan(ell(kinds, 480, 330, 300, 330)));
    }
    for (String kinds : List.of("egegegeg", "eeeeeeee", "ege" + "eee" + "eg")) {
      for (double from : new double[] {0.0, 30, 150}) {
        double a = 100 + from;
        all.put(
            "T " + kinds + " " + from,
            Houses.plan(
                Houses.part(
                    "main", 97.125, kinds, 8, 0, 0, 480, 0, 480, 288, a + 180, 288, a + 180, 480, a,
                    480, a, 288, 0, 288)));
      }
    }
    all.put(
        "U hips",
        Houses.plan(
            Houses.part(
                "main",
                97.125,
                "eeeeeeee",
                6,
                0,
                0,
                720,
                0,
                720,
                480,
                480,
                480,
                480,
                240,
                240,
                240,
                240,
                480,
                0,
                480)));
    all.put(
        "U gables",
        Houses.plan(
            Houses.part(
                "main",
                97.125,
                "eegeeege",
                6,
                0,
                0,
                720,
                0,
                720,
                480,
                500,
                480,
                500,
                260,
                220,
                260,
                220,
                480,
                0,
                480)));
    all.put(
        "Z",
        Houses.plan(
            Houses.part(
                "main",
                97.125,
                "egeeegee",
                6,
                0,
                0,
                400,
                0,
                400,
                240,
                640,
                240,
                640,
                480,
                260,
                480,
                260,
                240,
                0,
                240)));
    all.put(
        "plus",
        Houses.plan(
            Houses.part(
                "main",
                97.125,
                "geegeegeegee",
                7,
                200,
                0,
                440,
                0,
                440,
                200,
                640,
                200,
                640,
                440,
                440,
                440,
                440,
                640,
                200,
                640,
                200,
                440,
                0,
                440,
                0,
                200,
                200,
                200)));
    all.put(
        "H",
        Houses.plan(
            Houses.part(
                "main",
                97.125,
                "eeeeeeeeeeee",
                6,
                0,
                0,
                240,
                0,
                240,
                200,
                480,
                200,
                480,
                0,
                720,
                0,
                720,
                600,
                480,
                600,
                480,
                400,
                240,
                400,
                240,
                600,
                0,
                600)));
    all.put(
        "bump",
        Houses.plan(
            Houses.part(
                "main",
                97.125,
                "eeegegeg".replace("eeegegeg", "egegegeg"),
                6,
                0,
                0,
                480,
                0,
                480,
                288,
                300,
                288,
                300,
                312,
                150,
                312,
                150,
                288,
                0,
                288)));
  }

  private static void unequal(Map<String, Plan> all) {
    Part box = Houses.box("egeg", 6, 480, 336);
    all.put("saltbox", Houses.plan(box.withEdge(2, box.edges().get(2).withSlope(rise(12)))));
    all.put("raised heel", Houses.plan(box.withEdge(2, box.edges().get(2).withHeel(40))));
    Part hip = Houses.box("eeee", 6, 480, 336);
    all.put("steep hip ends", Houses.plan(ends(hip, rise(12))));
    all.put("shallow hip ends", Houses.plan(ends(hip, rise(4))));
    all.put("offset hip", Houses.plan(hip.withEdge(2, hip.edges().get(2).withSlope(rise(10)))));
    all.put(
        "no tails",
        Houses.plan(
            hip.withEdge(0, hip.edges().get(0).withOverhang(0))
                .withEdge(1, hip.edges().get(1).withOverhang(0))));
    for (Edge.HipEnd way : Edge.HipEnd.values()) {
      all.put(
          "hip " + way,
          Houses.plan(
              hip.withEdge(1, hip.edges().get(1).withHip(way))
                  .withEdge(3, hip.edges().get(3).withHip(way))));
    }
    all.put("scissor", Houses.plan(choosing(box, c -> c.withCeiling(rise(3)))));
    all.put("scissor hip", Houses.plan(choosing(hip, c -> c.withCeiling(rise(3)))));
    all.put("low flats", Houses.plan(choosing(hip, c -> c.withFlats(FrameChoices.Flats.LOW))));
    all.put("two-ply girders", Houses.plan(choosing(hip, c -> c.withGirderPlies(2))));
    all.put("turned", Houses.plan(choosing(box, c -> c.withRidge(FrameChoices.Ridge.HIGH))));
    all.put("capped", Houses.plan(choosing(Houses.box("egeg", 12, 480, 336), c -> c)));
    all.put("capped hip", Houses.plan(choosing(Houses.box("eeee", 12, 480, 336), c -> c)));
    all.put("at 16", Houses.plan(Houses.framed(hip, Frame.Method.TRUSS, 16)));
    all.put("at 19.2", Houses.plan(Houses.framed(hip, Frame.Method.TRUSS, 19.2)));
  }

  private static void joins(Map<String, Plan> all) {
    for (Join.Method method : Join.Method.values()) {
      String by = " " + method.key();
      all.put("wing" + by, wing(method, 8, 8, 97.125, 168, 144, 144, 0));
      all.put("steep wing" + by, wing(method, 8, 12, 97.125, 168, 144, 144, 0));
      all.put("shallow wing" + by, wing(method, 8, 4, 97.125, 168, 144, 144, 0));
      all.put("wide wing" + by, wing(method, 8, 8, 97.125, 60, 360, 144, 0));
      all.put("wing as wide as the house" + by, wing(method, 8, 8, 97.125, 0, 480, 144, 0));
      all.put("wing in line with the end" + by, wing(method, 8, 8, 97.125, 336, 144, 144, 0));
      all.put("stub wing" + by, wing(method, 8, 8, 97.125, 168, 144, 12, 0));
      all.put("one-truss wing" + by, wing(method, 8, 8, 97.125, 168, 144, 2, 0));
      all.put("narrow wing" + by, wing(method, 8, 8, 97.125, 168, 40, 60, 0));
      all.put("high wing" + by, wing(method, 8, 8, 120, 168, 144, 144, 0));
      all.put("low wing" + by, wing(method, 8, 8, 85, 168, 144, 144, 0));
      all.put("wing drawn in" + by, wing(method, 8, 8, 97.125, 168, 144, 144, 60));
      all.put("wing drawn past the ridge" + by, wing(method, 8, 8, 97.125, 168, 144, 144, 200));
      all.put("dormer" + by, wing(method, 10, 10, 150, 200, 80, -24, 140));
      all.put("tall dormer" + by, wing(method, 6, 10, 170, 200, 120, -24, 160));
      all.put("hip front" + by, hipWing(method));
    }
    for (double rise : new double[] {2, 3}) {
      all.put("porch " + rise, lean("eggg".replace("eggg", "egog"), rise, 97.125, 96));
      all.put("shed dormer " + rise, shedDormer(rise));
      all.put("lean-to low " + rise, lean("egag", rise, 85, 96));
    }
    all.put("garage set back", garage());
    all.put("two wings", twoWings());
    all.put("wing on a hip house", wingOnHip(100));
    all.put("wing near the hip", wingOnHip(10));
  }

  private static Plan wing(
      Join.Method method,
      double main,
      double rise,
      double plate,
      double x,
      double width,
      double out,
      double in) {
    return Houses.plan(
            Houses.box("egeg", main, 480, 336),
            Houses.part(
                "wing", plate, "geoe", rise, x, -out, x + width, -out, x + width, in, x, in))
        .withJoins(List.of(new Join("wing", "main", method, Join.MadeFor.FRAME, Extras.NONE)));
  }

  private static Plan hipWing(Join.Method method) {
    return Houses.plan(
            Houses.box("eeee", 6, 600, 336),
            Houses.part("wing", 97.125, "eeoe", 6, 200, -144, 344, -144, 344, 0, 200, 0))
        .withJoins(List.of(new Join("wing", "main", method, Join.MadeFor.DECK, Extras.NONE)));
  }

  private static Plan wingOnHip(double x) {
    return Houses.plan(
            Houses.box("eeee", 6, 600, 336),
            Houses.part("wing", 97.125, "geoe", 8, x, -144, x + 144, -144, x + 144, 0, x, 0))
        .withJoins(List.of(Join.overlay("wing", "main")));
  }

  private static Plan lean(String kinds, double rise, double plate, double out) {
    return Houses.plan(
            Houses.box("egeg", 8, 480, 336),
            Houses.part("porch", plate, kinds, rise, 100, -out, 300, -out, 300, 0, 100, 0))
        .withJoins(List.of(Join.overlay("porch", "main")));
  }

  private static Plan shedDormer(double rise) {
    return Houses.plan(
            Houses.box("egeg", 10, 480, 336),
            Houses.part("d", 160, "egog", rise, 150, 24, 330, 24, 330, 150, 150, 150))
        .withJoins(List.of(Join.overlay("d", "main")));
  }

  private static Plan garage() {
    return Houses.plan(
            Houses.box("eeee", 6, 480, 336),
            Houses.part(
                "garage",
                97.125,
                "egee".replace("egee", "egeo"),
                6,
                480,
                48,
                744,
                48,
                744,
                312,
                480,
                312))
        .withJoins(List.of(Join.overlay("garage", "main")));
  }

  private static Plan twoWings() {
    return Houses.plan(
            Houses.box("egeg", 6, 720, 336),
            Houses.part("a", 97.125, "geoe", 8, 60, -144, 240, -144, 240, 0, 60, 0),
            Houses.part("b", 97.125, "geoe", 8, 260, -100, 460, -100, 460, 0, 260, 0))
        .withJoins(List.of(Join.overlay("a", "main"), Join.overlay("b", "main")));
  }

  private static Part ell(String kinds, double x, double y, double w, double v) {
    return Houses.part("main", 97.125, kinds, 8, 0, 0, x, 0, x, v, w, v, w, y, 0, y);
  }

  private static Part ends(Part box, Slope slope) {
    return box.withEdge(1, box.edges().get(1).withSlope(slope))
        .withEdge(3, box.edges().get(3).withSlope(slope));
  }

  private static Part choosing(Part part, java.util.function.UnaryOperator<FrameChoices> change) {
    return part.withFrame(part.frame().withChoices(change.apply(part.frame().choices())));
  }

  private static Slope rise(double rise) {
    return Slope.inTwelve(rise);
  }

  /** A house of a random shape above in random sizes. */
  public static Plan random(long seed) {
    Random r = new Random(seed);
    double m = 2 + r.nextInt(13);
    double length = 100 + r.nextInt(600);
    double span = 80 + r.nextInt(500);
    String ends = List.of("egeg", "eeee", "eeeg", "egee").get(r.nextInt(4));
    Part main = Houses.box(ends, m, length, span);
    for (int i = 0; i < 4; i++) {
      if (r.nextInt(4) == 0) {
        main = main.withEdge(i, main.edges().get(i).withSlope(rise(2 + r.nextInt(13))));
      }
      if (r.nextInt(8) == 0) {
        main = main.withEdge(i, main.edges().get(i).withHeel(4 + r.nextInt(16)));
      }
    }
    main = choosing(main, c -> some(c, r));
    if (r.nextInt(3) == 0) {
      double w = Math.rint(length * (0.3 + 0.5 * r.nextDouble()));
      double v = Math.rint(span * (0.4 + 0.4 * r.nextDouble()));
      String kinds = List.of("eeeeee", "eeeege", "egeege", "egeeee").get(r.nextInt(4));
      Part l =
          Houses.part(
              "main", 97.125, kinds, m, 0, 0, length, 0, length, v, w, v, w, span + v, 0, span + v);
      return Houses.plan(choosing(l, c -> some(c, r)));
    }
    if (r.nextInt(3) == 0) {
      return Houses.plan(main);
    }
    double width = Math.rint(length * (0.1 + 0.8 * r.nextDouble()));
    double x = Math.rint((length - width) * r.nextDouble());
    double out = 2 + r.nextInt(200);
    double in = r.nextInt(3) == 0 ? r.nextInt(120) : 0;
    double plate = r.nextInt(3) == 0 ? 97.125 + r.nextInt(40) - 15 : 97.125;
    String kinds = r.nextInt(3) == 0 ? "eeoe" : "geoe";
    Part wing =
        Houses.part(
            "wing",
            plate,
            kinds,
            2 + r.nextInt(13),
            x,
            -out,
            x + width,
            -out,
            x + width,
            in,
            x,
            in);
    if (r.nextInt(3) == 0) {
      wing = wing.withEdge(1, wing.edges().get(1).withSlope(rise(2 + r.nextInt(13))));
    }
    Join.Method method = Join.Method.values()[r.nextInt(2)];
    Join.MadeFor madeFor = Join.MadeFor.values()[r.nextInt(2)];
    List<Part> parts = new ArrayList<>(List.of(main, wing));
    return Houses.plan(parts.toArray(Part[]::new))
        .withJoins(List.of(new Join("wing", "main", method, madeFor, Extras.NONE)));
  }

  private static FrameChoices some(FrameChoices c, Random r) {
    FrameChoices changed = r.nextInt(5) == 0 ? c.withGirderPlies(2) : c;
    changed = r.nextInt(6) == 0 ? changed.withFlats(FrameChoices.Flats.LOW) : changed;
    return r.nextInt(8) == 0 ? changed.withCeiling(Optional.of(rise(2))) : changed;
  }
}
