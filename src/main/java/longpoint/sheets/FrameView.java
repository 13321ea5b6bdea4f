package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Drawing;
import longpoint.drawing.Mark;
import longpoint.drawing.Strokes;
import longpoint.framing.FramingSet;
import longpoint.framing.stick.Rafter;
import longpoint.framing.truss.Truss;
import longpoint.geometry.Bounds;
import longpoint.geometry.Segment;
import longpoint.plan.Plan;
import longpoint.surface.RoofSurface;

/**
 * The frame seen from above in real size: every truss, rafter and ladder in its place with its
 * mark, hangers on their girders, tape marks along one plate of each run; walls and roof lines
 * quiet beneath. Lettering is right for one scale only.
 *
 * @param title of the plan
 * @param unitsPerMm plan units to a millimetre of paper, &gt; 0
 * @param base walls and roof lines, subject the side or line
 * @param frame a line for every truss tail to tail, subject the truss; hangers, subject the truss
 *     they carry; rafters, subject run and mark; ladders, subject the gable's side
 * @param tapes running marks, subject the run
 * @param labels marks, subject that of what they name
 * @param leftOff marks and tape figures that found no place at this scale
 * @param led marks that stand away from what they name, with a leader
 */
public record FrameView(
    String title,
    double unitsPerMm,
    List<Mark> base,
    List<Mark> frame,
    List<Mark> tapes,
    List<Mark> labels,
    int leftOff,
    int led) {
  /** How far lettering may stand outside the solid lines where nothing limits it. */
  private static final double AROUND_MM = 80;

  public FrameView {
    base = List.copyOf(base);
    frame = List.copyOf(frame);
    tapes = List.copyOf(tapes);
    labels = List.copyOf(labels);
  }

  /** Draws a frame over its plan. */
  public static FrameView of(
      Plan plan, RoofSurface surface, FramingSet framing, double unitsPerMm) {
    FrameBase base = FrameBase.whole(plan, surface);
    Bounds limit = solid(plan, base, framing).grown(AROUND_MM * unitsPerMm);
    return within(plan, surface, framing, base, unitsPerMm, limit);
  }

  /** Draws a frame on limited ground: no lettering stands outside it. */
  static FrameView within(
      Plan plan,
      RoofSurface surface,
      FramingSet framing,
      FrameBase beneath,
      double unitsPerMm,
      Bounds limit) {
    List<Mark> base = beneath.marks();
    FrameMarks marks = new FrameMarks(plan, framing, unitsPerMm);
    List<Mark> frame = marks.all();
    Clutter clutter = taken(unitsPerMm, base, frame);
    TapeFigures tapes =
        new TapeFigures(plan.unit(), unitsPerMm, clutter, limit, PlanView.grounds(plan, surface));
    List<Mark> figures = tapes.place(marks);
    FrameLabels labels = new FrameLabels(unitsPerMm, clutter, limit);
    List<Mark> names = labels.place(named(marks));
    int leftOff = tapes.leftOff() + labels.leftOff();
    return new FrameView(
        plan.title(), unitsPerMm, base, frame, figures, names, leftOff, labels.led());
  }

  /**
   * The frame without marks and tape figures, parts named: where what stands, for a plan whose
   * marks need sheets of their own.
   */
  static FrameView bare(
      Plan plan,
      RoofSurface surface,
      FramingSet framing,
      FrameBase beneath,
      double unitsPerMm,
      Bounds limit) {
    List<Mark> base = beneath.marks();
    List<Mark> frame = new FrameMarks(plan, framing, unitsPerMm).all();
    Clutter clutter = taken(unitsPerMm, base, frame);
    LabelPlaces places =
        new LabelPlaces(unitsPerMm, clutter, limit, PlanView.grounds(plan, surface));
    PlanLabels placer = new PlanLabels(plan, surface, unitsPerMm, places);
    List<Mark> names = placer.names();
    return new FrameView(
        plan.title(), unitsPerMm, base, frame, List.of(), names, placer.leftOff(), 0);
  }

  private static Clutter taken(double unitsPerMm, List<Mark> base, List<Mark> frame) {
    Bounds box = Strokes.of(base, unitsPerMm).bounds().with(Strokes.of(frame, 1).bounds());
    Clutter clutter = new Clutter(unitsPerMm, Math.max(box.width(), box.height()));
    clutter.take(clutter.shape(base.toArray(Mark[]::new)));
    clutter.take(clutter.shape(frame.toArray(Mark[]::new)));
    return clutter;
  }

  private static List<FrameLabels.Named> named(FrameMarks marks) {
    List<FrameLabels.Named> named = new ArrayList<>();
    for (Truss t : marks.trusses()) {
      named.add(new FrameLabels.Named(marks.line(t), marks.half(t.part()), t.mark(), t.id()));
    }
    for (Rafter r : marks.rafters()) {
      for (Segment place : r.places()) {
        named.add(
            new FrameLabels.Named(place, marks.half(r.part()), r.mark(), FrameMarks.subject(r)));
      }
    }
    return named;
  }

  /** The box around walls, roof and frame. */
  static Bounds solid(Plan plan, FrameBase base, FramingSet framing) {
    List<Mark> marks = new ArrayList<>(base.marks());
    marks.addAll(new FrameMarks(plan, framing, 1).all());
    return Strokes.of(marks, 1).bounds();
  }

  /** Everything, in the order it is painted. */
  public Drawing drawing() {
    List<Mark> all = new ArrayList<>(base);
    all.addAll(tapes);
    all.addAll(frame);
    all.addAll(labels);
    return new Drawing(title, all);
  }
}
