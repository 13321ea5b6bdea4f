package longpoint.field.restraint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.framing.FramingSet;
import longpoint.framing.truss.TapeMarks;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussKind;
import longpoint.framing.truss.TrussMark;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Handling;
import longpoint.plan.Plan;
import longpoint.units.LengthFigure;
import longpoint.wording.Phrase;

/**
 * Temporary restraint of every run of trusses, as a reminder.
 *
 * @param runs those with two trusses or more
 */
public record Restraint(List<RestraintRun> runs) {
  public static final Restraint NONE = new Restraint(List.of());

  public Restraint {
    runs = List.copyOf(runs);
  }

  public static Restraint of(Plan plan, FramingSet framing) {
    Map<String, TrussMark> marks = new HashMap<>();
    framing.marks().forEach(m -> marks.put(m.mark(), m));
    List<RestraintRun> runs = new ArrayList<>();
    for (TapeMarks tape : framing.tapes()) {
      List<Truss> row =
          framing.trusses().stream()
              .filter(t -> t.run().equals(tape.run()) && t.kind().squareToRidge())
              .filter(t -> t.kind() != TrussKind.CAP)
              .sorted(Comparator.comparingDouble(Truss::station))
              .toList();
      if (row.size() > 1) {
        runs.add(new Laying(plan, row, marks).run());
      }
    }
    return new Restraint(runs);
  }

  /** The run a truss stands in. */
  public Optional<RestraintRun> run(String id) {
    return runs.stream().filter(r -> r.run().equals(id)).findFirst();
  }

  /** The steps for one run, with what they share. */
  private static final class Laying {
    private final Plan plan;
    private final List<Truss> row;
    private final Map<String, TrussMark> marks;
    private final Guidance guidance;
    private final Handling.Restraint given;
    private final double spacing;
    private final double board;

    /** The tallest: the others' top chords lie in its planes or below. */
    private final Truss tallest;

    Laying(Plan plan, List<Truss> row, Map<String, TrussMark> marks) {
      this.plan = plan;
      this.row = row;
      this.marks = marks;
      this.guidance = new Guidance(plan.unit());
      this.given = plan.handling().restraint();
      this.spacing = plan.part(row.get(0).part()).orElseThrow().frame().spacing();
      this.board = sound(given.board()).orElse(guidance.board());
      this.tallest =
          row.stream()
              .max(Comparator.comparingDouble((Truss t) -> t.height()).thenComparing(Truss::span))
              .orElseThrow();
    }

    RestraintRun run() {
      double span = row.stream().mapToDouble(Truss::span).max().orElseThrow();
      Optional<Double> typed = sound(given.rows());
      Optional<Double> apart = typed.isPresent() ? typed : guidance.rows(span);
      List<RestraintRow> rows = new ArrayList<>();
      apart.ifPresent(a -> rows.addAll(top(a)));
      rows.addAll(bottom(sound(given.bottomRows()).orElse(guidance.bottomRows())));
      long above = rows.stream().filter(r -> r.place() != RestraintRow.Place.BOTTOM).count();
      int count = rows.stream().mapToInt(RestraintRow::boards).sum();
      double length = away(row.get(row.size() - 1));
      double every = guidance.diagonals(spacing);
      RestraintRun.Source from =
          typed.isPresent()
              ? RestraintRun.Source.SUPPLIER
              : apart.isPresent() ? RestraintRun.Source.GUIDANCE : RestraintRun.Source.NONE;
      return new RestraintRun(
          row.get(0).run(),
          row.get(0).part(),
          row.size(),
          span,
          length,
          apart.orElse(0.0),
          from,
          rows,
          diagonals(length, every),
          (int) above,
          new RestraintRun.Boards(board, count, count * board),
          guidance.tolerances(tallest.height(), span),
          steps(above, every),
          cautions(span, from));
    }

    private static Optional<Double> sound(Optional<Double> typed) {
      return typed.filter(t -> t > 0 && Double.isFinite(t));
    }

    /** How far a truss stands from the first. */
    private double away(Truss t) {
      return Math.abs(t.station() - row.get(0).station());
    }

    /** At every corner of the top chord between the bearings, and evenly between corners. */
    private List<RestraintRow> top(double apart) {
      List<Point> corners = new ArrayList<>();
      corners.add(new Point(0, topAt(tallest, 0)));
      for (Point p : profileTop(tallest)) {
        if (p.x() > 0 && p.x() < tallest.span()) {
          corners.add(p);
        }
      }
      corners.add(new Point(tallest.span(), topAt(tallest, tallest.span())));
      List<RestraintRow> rows = new ArrayList<>();
      double up = 0;
      for (int i = 0; i + 1 < corners.size(); i++) {
        Point a = corners.get(i);
        Point b = corners.get(i + 1);
        double chord = a.distance(b);
        int bays = (int) Math.max(1, Math.ceil(chord / apart - ROUNDING));
        for (int k = 1; k < bays; k++) {
          Point at = a.toward(b, (double) k / bays);
          rows.add(row(RestraintRow.Place.TOP, at.x(), up + chord * k / bays));
        }
        up += chord;
        if (i + 2 < corners.size()) {
          rows.add(row(RestraintRow.Place.PEAK, b.x(), up));
        }
      }
      return rows;
    }

    /** A chord that is a whole number of spacings long but for rounding is that long. */
    private static final double ROUNDING = 1e-9;

    private List<RestraintRow> bottom(double apart) {
      List<RestraintRow> rows = new ArrayList<>();
      int bays = (int) Math.max(1, Math.ceil(tallest.span() / apart - ROUNDING));
      for (int k = 1; k < bays; k++) {
        rows.add(row(RestraintRow.Place.BOTTOM, tallest.span() * k / bays, 0));
      }
      return rows;
    }

    /** Across all trusses whose chord passes there. */
    private RestraintRow row(RestraintRow.Place place, double over, double up) {
      Point foot = at(tallest, over);
      Point along = tallest.to().minus(tallest.from()).unit();
      double height = tallest.plate() + topAt(tallest, over);
      double near = spacing / 8;
      List<Truss> crossed =
          row.stream()
              .filter(
                  t -> {
                    double v = v(t, along.dot(foot));
                    boolean spans = v >= 0 && v <= t.span();
                    boolean bottom = place == RestraintRow.Place.BOTTOM;
                    return spans && (bottom || Math.abs(t.plate() + topAt(t, v) - height) < near);
                  })
              .toList();
      Truss first = crossed.get(0);
      Truss last = crossed.get(crossed.size() - 1);
      Segment line =
          new Segment(at(first, v(first, along.dot(foot))), at(last, v(last, along.dot(foot))));
      return new RestraintRow(place, over, up, line, crossed.size(), boards(line.length()));
    }

    /** Each laps the one before it over two trusses, one spacing. */
    private int boards(double length) {
      if (length <= board) {
        return length > 0 ? 1 : 0;
      }
      double each = Math.max(board - spacing, spacing);
      return 1 + (int) Math.ceil((length - board) / each - ROUNDING);
    }

    private static Point at(Truss t, double v) {
      return t.from().plus(t.to().minus(t.from()).unit().times(v));
    }

    /** Place along a truss's own line, from its first bearing, of a place along the tallest's. */
    private double v(Truss t, double along) {
      Point way = tallest.to().minus(tallest.from()).unit();
      double from = way.dot(t.from());
      double to = way.dot(t.to());
      return from <= to ? along - from : from - along;
    }

    private double topAt(Truss t, double v) {
      TrussMark mark = marks.get(t.mark());
      return mark.profile().topAt(t.turn() == Truss.Turn.AS_DRAWN ? v : mark.span() - v);
    }

    private List<Point> profileTop(Truss t) {
      TrussMark mark = marks.get(t.mark());
      return t.turn() == Truss.Turn.AS_DRAWN ? mark.profile().top() : mark.profile().turned().top();
    }

    /** At both ends and no farther apart. */
    private static List<Double> diagonals(double length, double every) {
      int bays = (int) Math.max(1, Math.ceil(length / every - ROUNDING));
      List<Double> places = new ArrayList<>();
      for (int k = 0; k <= bays; k++) {
        places.add(length * k / bays);
      }
      return places;
    }

    private List<Phrase> steps(long above, double every) {
      List<Phrase> steps = new ArrayList<>();
      steps.add(Phrase.of("field.restraint.step.documents"));
      steps.add(Phrase.of("field.restraint.step.plates"));
      steps.add(
          Phrase.of("field.restraint.step.first", row.get(0).mark(), (int) Math.max(1, above)));
      steps.add(Phrase.of("field.restraint.step.next", Math.min(row.size() - 1, 4)));
      steps.add(Phrase.of("field.restraint.step.diagonals"));
      if (row.size() > 5) {
        steps.add(Phrase.of("field.restraint.step.rest", new LengthFigure(every, plan.unit())));
      }
      steps.add(Phrase.of("field.restraint.step.check"));
      steps.add(Phrase.of("field.restraint.step.load"));
      steps.add(Phrase.of("field.restraint.step.deck"));
      return steps;
    }

    private List<Phrase> cautions(double span, RestraintRun.Source from) {
      List<Phrase> cautions = new ArrayList<>();
      if (guidance.isLong(span)) {
        cautions.add(Phrase.of("field.restraint.long"));
      }
      switch (from) {
        case NONE -> cautions.add(Phrase.of("field.restraint.none"));
        case GUIDANCE -> cautions.add(Phrase.of("field.restraint.guidance"));
        case SUPPLIER -> {}
      }
      if (row.stream()
          .anyMatch(t -> t.kind() == TrussKind.STEP_DOWN || t.kind() == TrussKind.HIP_GIRDER)) {
        cautions.add(Phrase.of("field.restraint.flats"));
      }
      return cautions;
    }
  }
}
