package longpoint.surface;

import static longpoint.surface.Plans.ABUTMENT;
import static longpoint.surface.Plans.GABLE;
import static longpoint.surface.Plans.OPEN;
import static longpoint.surface.Plans.eave;
import static longpoint.surface.Plans.hip;
import static longpoint.surface.Plans.part;
import static longpoint.surface.Plans.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longpoint.geometry.Ring;
import longpoint.plan.Edge;
import longpoint.plan.Part;
import longpoint.plan.Plan;

/** Houses of every shape the program should frame, by name. In inches; invented. */
final class Houses {
  static final Ring ELL = Ring.of(0, 0, 480, 0, 480, 240, 240, 240, 240, 480, 0, 480);

  private Houses() {}

  static Part gabled(String id) {
    return part(id, 97, Ring.of(0, 0, 480, 0, 480, 336, 0, 336), eave(8), GABLE, eave(8), GABLE);
  }

  /** A wing on the front of {@link #gabled}, open towards it. */
  static Part wing(String id, double plate, double from, double to, double out, Edge side) {
    return part(id, plate, Ring.of(from, -out, to, -out, to, 0, from, 0), GABLE, side, OPEN, side);
  }

  static Part dormer(double plate) {
    Edge side = eave(8).withOverhang(8);
    return part(
        "dormer",
        plate,
        Ring.of(200, 40, 280, 40, 280, 80, 200, 80),
        GABLE.withOverhang(8),
        side,
        OPEN,
        side);
  }

  static Map<String, Plan> all() {
    Map<String, Plan> all = new LinkedHashMap<>();
    oneParts(all);
    unequal(all);
    joined(all);
    return all;
  }

  private static void oneParts(Map<String, Plan> all) {
    all.put("hip", plan(hip("h", 97, 8, Ring.of(0, 0, 480, 0, 480, 336, 0, 336))));
    all.put("gable", plan(gabled("g")));
    all.put("ell", plan(hip("l", 97, 6, ELL)));
    all.put(
        "tee",
        plan(
            part(
                "t",
                97,
                Ring.of(0, 200, 150, 200, 150, 0, 330, 0, 330, 200, 480, 200, 480, 400, 0, 400),
                eave(8),
                eave(8),
                GABLE,
                eave(8),
                eave(8),
                GABLE,
                eave(8),
                GABLE)));
    all.put(
        "u",
        plan(
            hip(
                "u",
                97,
                6,
                Ring.of(0, 0, 600, 0, 600, 400, 420, 400, 420, 180, 200, 180, 200, 400, 0, 400))));
    Edge[] eight = new Edge[8];
    java.util.Arrays.fill(eight, eave(6));
    all.put(
        "courtyard",
        plan(
            part(
                "c",
                97,
                Ring.of(0, 0, 720, 0, 720, 600, 0, 600),
                List.of(Ring.of(240, 200, 240, 400, 480, 400, 480, 200)),
                eight)));
    all.put(
        "bay",
        plan(
            hip(
                "b",
                97,
                8,
                Ring.of(0, 0, 100, 0, 140, -40, 220, -40, 260, 0, 400, 0, 400, 240, 0, 240))));
    all.put(
        "shed",
        plan(part("s", 97, Ring.of(0, 0, 240, 0, 240, 120, 0, 120), eave(3), GABLE, GABLE, GABLE)));
    all.put(
        "re-entrant gable",
        plan(part("r", 97, ELL, eave(6), eave(6), eave(6), GABLE, eave(6), eave(6))));
  }

  private static void unequal(Map<String, Plan> all) {
    all.put(
        "unequal slopes",
        plan(part("q", 97, ELL, eave(8), eave(5), eave(8), eave(12), eave(8), eave(6))));
    all.put(
        "unequal overhangs",
        plan(
            part(
                "q",
                97,
                ELL,
                eave(8),
                eave(8).withOverhang(40),
                eave(8),
                eave(8).withOverhang(36),
                eave(8),
                eave(8))));
    all.put(
        "raised wall",
        plan(
            part(
                "q",
                97,
                ELL,
                eave(6),
                eave(6),
                eave(6),
                eave(6).withHeel(28.5),
                eave(6),
                eave(6))));
    all.put(
        "part of a wall gabled",
        plan(
            part(
                "p",
                97,
                Ring.of(0, 0, 160, 0, 320, 0, 480, 0, 480, 240, 0, 240),
                eave(8),
                GABLE,
                eave(8),
                eave(8),
                eave(8),
                eave(8))));
  }

  private static void joined(Map<String, Plan> all) {
    all.put("garden wing", Plans.gardenWing());
    all.put("lower wing", plan(gabled("main"), wing("wing", 73, 168, 336, 144, eave(10))));
    all.put("higher wing", plan(gabled("main"), wing("wing", 109, 168, 312, 144, eave(8))));
    all.put(
        "two wings that meet",
        plan(
            gabled("main"),
            wing("w1", 97, 60, 200, 144, eave(8)),
            wing("w2", 97, 220, 420, 100, eave(8))));
    all.put("dormer", plan(gabled("main"), dormer(150)));
    all.put(
        "skew wing",
        plan(
            gabled("main"),
            part(
                "w",
                97,
                Ring.of(150, 0, 60, -120, 172, -204, 300, 0),
                eave(8),
                GABLE,
                eave(8),
                OPEN)));
    all.put("lean-to", leanTo());
  }

  /** A porch roof against the wall of a house twice as tall. */
  static Plan leanTo() {
    return plan(
        hip("main", 210, 8, Ring.of(0, 0, 480, 0, 480, 336, 0, 336)),
        part(
            "porch",
            97,
            Ring.of(100, -120, 380, -120, 380, 0, 100, 0),
            eave(4),
            eave(4),
            ABUTMENT,
            eave(4)));
  }
}
