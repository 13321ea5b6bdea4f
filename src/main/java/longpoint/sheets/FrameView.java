package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    return within(plan, surface, framing, base, new Page(unitsPerMm, limit, Optional.empty()));
  }

  /**
   * Where a frame is drawn.
   *
   * @param unitsPerMm plan units to a millimetre of paper, &gt; 0
   * @param limit no lettering stands outside it
   * @param window what is drawn; everything if empty
   */
  record Page(double unitsPerMm, Bounds limit, Optional<Bounds> window) {
    List<Mark> shown(List<Mark> marks) {
      return window.map(w -> Cropped.marks(marks, w)).orElse(marks);
    }
  }

  /** Share of a truss that must be seen on a page for its mark to stand there. */
  private static final double NAMED = 0.3;

  /** Draws a frame on limited ground: no lettering stands outside it. */
  static FrameView within(
      Plan plan, RoofSurface surface, FramingSet framing, FrameBase beneath, Page page) {
    double unitsPerMm = page.unitsPerMm();
    Bounds limit = page.limit();
    List<Mark> base = page.shown(beneath.marks());
    FrameMarks marks = new FrameMarks(plan, framing, unitsPerMm);
    List<Mark> frame = page.shown(marks.all());
    Clutter clutter = taken(unitsPerMm, base, frame);
    TapeFigures tapes =
        new TapeFigures(plan.unit(), unitsPerMm, clutter, limit, PlanView.grounds(plan, surface));
    List<Mark> figures = tapes.place(marks, page.window());
    FrameLabels labels = new FrameLabels(unitsPerMm, clutter, limit);
    List<Mark> names = labels.place(named(marks, page.window()));
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

  private static List<FrameLabels.Named> named(FrameMarks marks, Optional<Bounds> window) {
    List<FrameLabels.Named> named = new ArrayList<>();
    for (Truss t : marks.trusses()) {
      seen(marks.line(t), window)
          .map(l -> new FrameLabels.Named(l, marks.half(t.part()), t.mark(), t.id()))
          .ifPresent(named::add);
    }
    for (Rafter r : marks.rafters()) {
      String subject = FrameMarks.subject(r);
      for (Segment place : r.places()) {
        seen(r.drawn(place), window)
            .map(l -> new FrameLabels.Named(l, marks.half(r.part()), r.mark(), subject))
            .ifPresent(named::add);
      }
    }
    return named;
  }

  private static Optional<Segment> seen(Segment line, Optional<Bounds> window) {
    return window.isEmpty()
        ? Optional.of(line)
        : Cropped.line(line, window.get()).filter(l -> l.length() >= NAMED * line.length());
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
