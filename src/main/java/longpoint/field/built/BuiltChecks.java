package longpoint.field.built;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.units.LengthFigure;
import longpoint.units.LengthUnit;
import longpoint.wording.Phrase;
import longpoint.wording.Worded;

/** What somebody should hear about readings before anything is built from them. */
final class BuiltChecks {
  /** A reading that nothing checks is told when it is off the plan by more than this. */
  private static final double UNCHECKED_MM = 25.4;

  private final Plan plan;
  private final BuiltWalls walls;
  private final List<Problem> problems = new ArrayList<>();

  private BuiltChecks(Plan plan, BuiltWalls walls) {
    this.plan = plan;
    this.walls = walls;
  }

  static List<Problem> of(Plan plan, BuiltWalls walls, boolean settled) {
    BuiltChecks checks = new BuiltChecks(plan, walls);
    checks.nowhere();
    if (!settled) {
      checks.warn("plan", Phrase.of("field.built.unsettled"));
    } else {
      walls.doubts().forEach(checks::doubt);
      checks.open();
      checks.unchecked();
      checks.drawn();
      checks.square();
    }
    walls.plates().forEach(checks::plate);
    return List.copyOf(checks.problems);
  }

  private void warn(String where, Phrase words) {
    problems.add(Problem.warning(where, words));
  }

  private void nowhere() {
    for (BuiltTape t : walls.tapes()) {
      if (t.state() == BuiltTape.State.NOWHERE) {
        warn("plan", Phrase.of("field.built.nowhere", t.place() + 1, length(t.reads())));
      }
    }
    long plates =
        plan.onSite().walls().plates().stream().filter(p -> p.at().at(plan).isEmpty()).count();
    if (plates > 0) {
      warn("plan", Phrase.of("field.built.plateNowhere", plates));
    }
  }

  private void doubt(DoubtedTape d) {
    BuiltTape t = walls.tapes().get(d.place());
    String key =
        switch (d.witness()) {
          case TAPES -> "field.built.doubt";
          case PLAN -> "field.built.doubtByPlan";
          case NONE -> "field.built.disagree";
        };
    Phrase way = Phrase.of(d.by() > 0 ? "field.built.long" : "field.built.short");
    Worded others =
        Worded.plain(
            d.others().stream()
                .map(i -> between(walls.tapes().get(i)))
                .collect(Collectors.joining(", ")));
    LengthFigure by = length(Math.abs(d.by()));
    long tenths = Math.round(10 * Math.abs(d.test()));
    Phrase test = Phrase.of("field.built.tenths", tenths / 10, tenths % 10);
    warn(
        part(t.from()), Phrase.of(key, t.from(), t.to(), length(t.reads()), by, way, test, others));
  }

  private static String between(BuiltTape t) {
    return t.from() + "–" + t.to();
  }

  private void open() {
    List<NextTape> shape =
        walls.next().stream().filter(n -> n.purpose() == NextTape.Purpose.SHAPE).toList();
    String open =
        walls.corners().stream()
            .filter(c -> c.hold() == BuiltCorner.Hold.OPEN)
            .map(c -> String.valueOf(c.number()))
            .collect(Collectors.joining(", "));
    if (open.isEmpty()) {
      return;
    }
    if (shape.isEmpty()) {
      warn("plan", Phrase.of("field.built.openFar", open));
    } else {
      String next =
          shape.stream().map(n -> n.from() + "–" + n.to()).collect(Collectors.joining(", "));
      warn(part(shape.get(0).from()), Phrase.of("field.built.open", open, next));
    }
  }

  /** A foot misread looks like a wall that is a foot off, unless something checks it. */
  private void unchecked() {
    double most = plan.unit().fromMillimetres(UNCHECKED_MM);
    for (BuiltTape t : walls.tapes()) {
      boolean bare = t.check().filter(c -> c.redundancy() < Freedom.UNCHECKED).isPresent();
      double off = t.reads() - t.planned();
      if (bare && Math.abs(off) > most) {
        Phrase way = Phrase.of(off > 0 ? "field.built.longer" : "field.built.shorter");
        warn(
            part(t.from()),
            Phrase.of(
                "field.built.unchecked",
                t.from(),
                t.to(),
                length(t.reads()),
                length(Math.abs(off)),
                way));
      }
    }
  }

  /** Corners of taped parts to which no tape goes. */
  private void drawn() {
    for (Part part : plan.parts()) {
      String left =
          walls.corners().stream()
              .filter(c -> c.part().equals(part.id()) && c.hold() == BuiltCorner.Hold.DRAWN)
              .map(c -> String.valueOf(c.number()))
              .collect(Collectors.joining(", "));
      if (walls.isTaped(part.id()) && !left.isEmpty()) {
        warn(part.id(), Phrase.of("field.built.drawn", left, PlaceName.of(part)));
      }
    }
  }

  private void square() {
    for (Diagonals d : walls.diagonals()) {
      boolean known = d.corners().stream().allMatch(n -> held(n));
      if (known && !d.passes()) {
        int a = d.corners().get(2);
        int b = d.corners().get(3);
        warn(
            d.part(),
            Phrase.of(
                "field.built.diagonals",
                name(d.part()),
                length(Math.abs(d.difference())),
                length(d.allowed()),
                d.rack() > 0 ? a : b,
                d.rack() > 0 ? b : a,
                length(Math.abs(d.rack()))));
      }
    }
    for (OutOfSquare s : walls.square()) {
      boolean told = walls.diagonals().stream().anyMatch(d -> d.part().equals(s.part()));
      if (held(s.number()) && !told && !s.passes()) {
        warn(
            s.part(),
            Phrase.of(
                "field.built.corner",
                s.number(),
                name(s.part()),
                length(Math.abs(s.out())),
                length(s.over()),
                length(s.allowed())));
      }
    }
  }

  private boolean held(int number) {
    return walls.corners().get(number - 1).hold() == BuiltCorner.Hold.HELD;
  }

  private void plate(PlateLevel p) {
    if (!p.passes()) {
      int low =
          p.corners().stream()
              .filter(c -> c.reads() == p.low())
              .map(PlateLevel.At::number)
              .findFirst()
              .orElseThrow();
      warn(
          p.part(),
          Phrase.of(
              "field.built.plate",
              name(p.part()),
              length(p.range()),
              length(p.allowed()),
              low,
              length(p.range())));
    }
  }

  private Worded name(String part) {
    Optional<Part> found = plan.part(part);
    return found.isPresent() ? PlaceName.of(found.get()) : PlaceName.part(part);
  }

  private String part(int number) {
    return Stream.of(number)
        .filter(n -> n > 0 && n <= walls.corners().size())
        .map(n -> walls.corners().get(n - 1).part())
        .findFirst()
        .orElse("plan");
  }

  private LengthFigure length(double length) {
    LengthUnit unit = plan.unit();
    return new LengthFigure(length, unit);
  }
}
