package longpoint.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import longpoint.drawing.Anchor;
import longpoint.drawing.DimensionLayout;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.framing.stick.RafterTape;
import longpoint.framing.truss.TapeMarks;
import longpoint.framing.truss.Truss;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Segment;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;

/**
 * Running tape marks along one plate of each run: a line out from the tails in line with the near
 * face of each truss, with its figure at the end. Of the two plates that one is taken whose figures
 * stand more on free ground. A figure with no room is left off; the table has it.
 */
final class TapeFigures {
  /** Past the tails, and from row to row, millimetres on paper. */
  private static final double CLEAR_MM = 4;

  private static final double ROW_MM = 13;
  private static final int ROWS = 3;
  private static final double AIR_MM = 0.8;

  /** Marks that differ by less than this share of a thickness are one. */
  private static final double SAME = 1e-3;

  /** How far a figure may step aside for its neighbour, on paper. */
  private static final double[] ASIDE_MM = {0, 3.6, -3.6};

  private final LengthUnit unit;
  private final double unitsPerMm;
  private final Clutter clutter;
  private final Bounds limit;
  private final List<Region> grounds;
  private int leftOff;

  TapeFigures(
      LengthUnit unit, double unitsPerMm, Clutter clutter, Bounds limit, List<Region> grounds) {
    this.unit = unit;
    this.unitsPerMm = unitsPerMm;
    this.clutter = clutter;
    this.limit = limit;
    this.grounds = List.copyOf(grounds);
  }

  int leftOff() {
    return leftOff;
  }

  /**
   * One plate of a run.
   *
   * @param start where the tape is hooked
   * @param along the way it runs
   * @param out square to the plate, away from the run
   * @param reach of the longest tail past the plate
   */
  private record Plate(Point start, Point along, Point out, double reach) {}

  /**
   * @param window where plates are to have figures; everywhere if empty
   */
  List<Mark> place(FrameMarks marks, Optional<Bounds> window) {
    List<Mark> all = new ArrayList<>();
    for (Tape tape : shortestFirst(marks)) {
      List<Plate> plates = new ArrayList<>(tape.plates());
      plates.sort(Comparator.comparingInt(p -> onRoofs(tape, p)));
      for (double mark : plates.isEmpty() ? List.<Double>of() : tape.marks()) {
        List<Plate> here =
            plates.stream().filter(p -> window.isEmpty() || isIn(window.get(), p, mark)).toList();
        if (here.isEmpty()) {
          continue; // on another page
        }
        List<Mark> placed = figure(tape, here, mark);
        // The page with the better plate answers for the figure.
        boolean answers = here.get(0).equals(plates.get(0));
        leftOff += placed.isEmpty() && answers ? tape.missed() : 0;
        all.addAll(placed);
      }
    }
    return all;
  }

  private static boolean isIn(Bounds window, Plate plate, double mark) {
    return window.contains(plate.start().plus(plate.along().times(mark)));
  }

  /**
   * Marks that one or several plates share.
   *
   * @param run what they pick
   * @param missed what a figure without room counts for: of rafters the table has every mark, and a
   *     plan is not torn over match lines for one
   */
  private record Tape(
      String run, double length, List<Double> marks, List<Plate> plates, int missed) {}

  /** A long run has more places to dodge to than a short one. */
  private static List<Tape> shortestFirst(FrameMarks marks) {
    List<Tape> tapes = new ArrayList<>();
    for (TapeMarks t : marks.tapes()) {
      tapes.add(new Tape(t.run(), t.length(), t.marks(), plates(t, marks), 1));
    }
    List<RafterTape> left = new ArrayList<>(marks.rafterTapes());
    while (!left.isEmpty()) {
      RafterTape first = left.get(0);
      List<RafterTape> alike = left.stream().filter(t -> isAlike(first, t)).toList();
      left.removeAll(alike);
      List<Plate> plates = alike.stream().map(TapeFigures::plate).toList();
      tapes.add(new Tape(first.side(), first.length(), first.marks(), plates, 0));
    }
    tapes.sort(Comparator.comparingDouble(Tape::length));
    return tapes;
  }

  /** Whether two walls opposite each other have the same marks. */
  private static boolean isAlike(RafterTape a, RafterTape b) {
    boolean same = a.marks().size() == b.marks().size() && a.part().equals(b.part());
    for (int i = 0; same && i < a.marks().size(); i++) {
      same = Math.abs(a.marks().get(i) - b.marks().get(i)) < a.thickness() * SAME;
    }
    double off = Math.abs(b.hook().minus(a.hook()).dot(a.along()));
    return same && off < a.thickness() * SAME && a.along().dot(b.along()) > 1 - SAME;
  }

  private static Plate plate(RafterTape tape) {
    return new Plate(tape.hook(), tape.along(), tape.out(), tape.reach());
  }

  private static List<Plate> plates(TapeMarks tape, FrameMarks marks) {
    List<Truss> row =
        marks.trusses().stream()
            .filter(t -> t.run().equals(tape.run()))
            .filter(t -> t.kind().squareToRidge() && !t.kind().isCap())
            .toList();
    Optional<Truss> first = row.stream().findFirst();
    return first
        .map(f -> List.of(plate(row, f, 1, marks), plate(row, f, -1, marks)))
        .orElse(List.of());
  }

  /** The plate at the trusses' first ends (1) or their last (-1). */
  private static Plate plate(List<Truss> row, Truss any, int end, FrameMarks marks) {
    Point across = any.to().minus(any.from()).unit();
    Point along = across.left().times(-1);
    Point out = across.times(-end);
    Point zero = any.from().minus(along.times(any.station()));
    // The wall is where most trusses bear: the nearest of all, since extensions only stand further
    // out.
    double wall =
        row.stream().mapToDouble(t -> out.dot(foot(t, end).minus(zero))).min().orElseThrow();
    double tail =
        row.stream()
            .map(marks::line)
            .mapToDouble(l -> out.dot((end > 0 ? l.from() : l.to()).minus(zero)))
            .max()
            .orElseThrow();
    return new Plate(zero.plus(out.times(wall)), along, out, tail - wall);
  }

  private static Point foot(Truss truss, int end) {
    return end > 0 ? truss.from() : truss.to();
  }

  /** How many of a plate's figures would stand on walls or roofs. */
  private int onRoofs(Tape tape, Plate plate) {
    int count = 0;
    for (double mark : tape.marks()) {
      Segment line = line(plate, mark, 0);
      Point end = line.to().plus(plate.out().times(ROW_MM * unitsPerMm));
      count += grounds.stream().anyMatch(g -> g.contains(line.to()) || g.contains(end)) ? 1 : 0;
    }
    return count;
  }

  /** On the better plate, else on the other. */
  private List<Mark> figure(Tape tape, List<Plate> plates, double mark) {
    for (Plate plate : plates) {
      List<Mark> placed = figure(tape, plate, mark);
      if (!placed.isEmpty()) {
        return placed;
      }
    }
    return List.of();
  }

  private List<Mark> figure(Tape tape, Plate plate, double mark) {
    List<Mark> crossed = List.of();
    for (int row = 0; row < ROWS; row++) {
      for (double aside : ASIDE_MM) {
        Mark.Path lead = lead(tape, plate, mark, row, aside);
        Mark.Text text = text(tape, plate, mark, lead.points().get(lead.points().size() - 1));
        Clutter.Shape shape = clutter.shape(text);
        Clutter.Shape stroke = clutter.shape(lead);
        boolean stands = shape.allCorners(limit::contains) && !clutter.covers(shape);
        if (stands && !clutter.crosses(stroke)) {
          if (!clutter.touches(shape)) {
            return taken(lead, text);
          }
          crossed = crossed.isEmpty() ? List.of(lead, text) : crossed;
        }
      }
    }
    return crossed.isEmpty() ? crossed : taken(crossed.get(0), crossed.get(1));
  }

  private List<Mark> taken(Mark lead, Mark text) {
    clutter.take(clutter.shape(lead, text));
    return List.of(lead, text);
  }

  /** From just outside the tails straight out, with a kink for a figure that steps aside. */
  private Mark.Path lead(Tape tape, Plate plate, double mark, int row, double aside) {
    Segment line = line(plate, mark, row);
    if (aside == 0) {
      return Mark.Path.line(line.from(), line.to(), FrameLayers.TAPE, tape.run());
    }
    Point kink = line.to().minus(plate.out().times(CLEAR_MM / 2 * unitsPerMm));
    Point end = line.to().plus(plate.along().times(aside * unitsPerMm));
    return new Mark.Path(List.of(line.from(), kink, end), false, FrameLayers.TAPE, tape.run());
  }

  private Segment line(Plate plate, double mark, int row) {
    Point at = plate.start().plus(plate.along().times(mark));
    double near = plate.reach() + AIR_MM * unitsPerMm;
    double far = plate.reach() + (CLEAR_MM + row * ROW_MM) * unitsPerMm;
    return new Segment(at.plus(plate.out().times(near)), at.plus(plate.out().times(far)));
  }

  /** Reads along its line, beginning or ending just past it. */
  private Mark.Text text(Tape tape, Plate plate, double mark, Point end) {
    Point out = plate.out();
    double degrees = DimensionLayout.readable(Math.toDegrees(Math.atan2(out.y(), out.x())));
    Point reading = new Point(Math.cos(Math.toRadians(degrees)), Math.sin(Math.toRadians(degrees)));
    Anchor anchor = reading.dot(out) > 0 ? Anchor.START : Anchor.END;
    Point at =
        end.plus(out.times(AIR_MM * unitsPerMm))
            .minus(reading.left().times(Lettering.SMALL / 2 * unitsPerMm));
    return new Mark.Text(
        at,
        LengthText.of(mark, unit),
        Lettering.SMALL,
        degrees,
        anchor,
        FrameLayers.TAPE,
        tape.run());
  }
}
