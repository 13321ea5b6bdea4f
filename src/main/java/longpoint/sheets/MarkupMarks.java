package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.drawing.Anchor;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Note;
import longpoint.plan.Plan;
import longpoint.plan.PlanDimension;
import longpoint.units.LengthText;

/**
 * The user's own notes and dimensions as marks, the subject of each its id. A dimension says what
 * it measures now. The dimension line lies where it was put in the plan, whatever the scale;
 * lettering keeps its size on paper.
 */
final class MarkupMarks {
  /** On paper, millimetres. */
  private static final double LINE_STEP = Lettering.SMALL * 1.6;

  private static final double LEADER_GAP = 1;
  private static final double HEAD = 2.5;

  private final Plan plan;
  private final double unitsPerMm;
  private final List<Mark> marks = new ArrayList<>();

  private MarkupMarks(Plan plan, double unitsPerMm) {
    this.plan = plan;
    this.unitsPerMm = unitsPerMm;
  }

  /**
   * @param unitsPerMm plan units to a millimetre of paper, &gt; 0
   */
  static List<Mark> of(Plan plan, double unitsPerMm) {
    MarkupMarks all = new MarkupMarks(plan, unitsPerMm);
    plan.markup().dimensions().forEach(all::dimension);
    plan.markup().notes().forEach(all::note);
    return all.marks;
  }

  /** The box around places and dimension lines, lettering apart. */
  static Bounds bounds(Plan plan) {
    List<Point> points = new ArrayList<>();
    for (Note note : plan.markup().notes()) {
      points.add(note.at());
      note.pointsAt().ifPresent(points::add);
    }
    for (PlanDimension d : plan.markup().dimensions()) {
      d.line(plan).ifPresent(s -> points.addAll(List.of(s.from(), s.to())));
      d.ends(plan).ifPresent(s -> points.addAll(List.of(s.from(), s.to())));
    }
    return Bounds.of(points);
  }

  private void dimension(PlanDimension d) {
    Optional<Segment> measured = d.ends(plan);
    if (measured.isEmpty()) {
      return;
    }
    Segment ends = measured.get();
    Segment line = PlanDimension.line(ends, d.along(), d.offset());
    // Extension lines start level with the end nearer to the line; the other's is carried back.
    boolean firstNearer = gap(ends.from(), line) <= gap(ends.to(), line);
    Point near = firstNearer ? ends.from() : ends.to();
    double off = line.offset(near);
    Point back = line.direction().left().times(off);
    Point from = line.from().plus(back);
    Point to = line.to().plus(back);
    String text = LengthText.of(line.length(), plan.unit());
    double offset = -off / unitsPerMm;
    marks.add(new Mark.Dimension(from, to, offset, text, Layers.DIMENSIONS, d.id()));
    Point far = firstNearer ? ends.to() : ends.from();
    Point level = firstNearer ? to : from;
    if (far.distance(level) > LEADER_GAP * unitsPerMm) {
      marks.add(Mark.Path.line(far, level, Layers.DIMENSIONS, d.id()));
    }
  }

  private static double gap(Point end, Segment line) {
    return Math.abs(line.offset(end));
  }

  private void note(Note note) {
    boolean ends = note.endsAtLeader();
    Anchor anchor = ends ? Anchor.END : Anchor.START;
    double side = ends ? -LEADER_GAP : LEADER_GAP;
    Point first = note.at().plus(new Point(side, -Lettering.SMALL / 2).times(unitsPerMm));
    Point step = new Point(0, -LINE_STEP * unitsPerMm);
    Point at = first;
    for (String line : note.lines()) {
      if (!line.isBlank()) {
        marks.add(
            new Mark.Text(at, line, Lettering.SMALL, 0, anchor, Layers.PLAN_NOTES, note.id()));
      }
      at = at.plus(step);
    }
    note.pointsAt().filter(p -> !p.equals(note.at())).ifPresent(p -> leader(note, p));
  }

  private void leader(Note note, Point tip) {
    marks.add(Mark.Path.line(note.at(), tip, Layers.PLAN_NOTES, note.id()));
    Point along = tip.minus(note.at()).unit();
    double head = Math.min(HEAD * unitsPerMm, tip.distance(note.at()));
    Point back = tip.minus(along.times(head));
    Point wide = along.left().times(head / 4);
    marks.add(
        new Mark.Path(
            List.of(back.plus(wide), tip, back.minus(wide)), false, Layers.PLAN_NOTES, note.id()));
  }
}
