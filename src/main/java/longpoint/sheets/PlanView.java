package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.drawing.Drawing;
import longpoint.drawing.Mark;
import longpoint.drawing.Strokes;
import longpoint.geometry.Bounds;
import longpoint.geometry.Region;
import longpoint.plan.Plan;
import longpoint.surface.RoofSurface;

/**
 * A plan and its roof seen from above, in real size: the canvas paints it, CAD files hold it,
 * sheets stand it on paper. Every mark's subject is the part, side, plane or line it shows.
 *
 * <p>Lettering and the places of dimensions and labels depend on the scale they are read at, walls
 * and roof do not; a view made for one scale is right for that scale only.
 *
 * @param title of the plan
 * @param unitsPerMm plan units to a millimetre of paper (or of screen), &gt; 0
 * @param tints one for each visible piece of a plane, subject the plane
 * @param walls a line for every side, subject the side
 * @param roof lines on the layer of their kind, subject the line; then the edges of what lies
 *     beneath another roof, dashed, subject the hidden plane
 * @param dimensions of the walls, subject the side
 * @param labels slope arrows with the plane's letter and slope, subject the plane; names, subject
 *     the part
 * @param markup the user's own dimensions and notes, subject the id of each
 * @param leftOff how many dimensions and labels found no place at this scale
 * @param crossed how many dimensions stand where a stroke runs through the figure or a roof lies
 *     beneath it, for want of a better place
 */
public record PlanView(
    String title,
    double unitsPerMm,
    List<Mark> tints,
    List<Mark> walls,
    List<Mark> roof,
    List<Mark> dimensions,
    List<Mark> labels,
    List<Mark> markup,
    int leftOff,
    int crossed)
    implements FittedView.View {
  /** How far lettering may stand from walls and roof: this share of their size … */
  private static final double AROUND = 0.5;

  /** … or this much paper, if that is more. Millimetres. */
  private static final double AROUND_MM = 80;

  public PlanView {
    tints = List.copyOf(tints);
    walls = List.copyOf(walls);
    roof = List.copyOf(roof);
    dimensions = List.copyOf(dimensions);
    labels = List.copyOf(labels);
    markup = List.copyOf(markup);
  }

  /**
   * Draws a plan with as much lettering as has a place around it at this scale.
   *
   * @param surface its roof; what could not be solved is simply not there
   * @param unitsPerMm plan units to a millimetre of paper, &gt; 0: 1/25.4 × 48 for inches at 1:48
   */
  public static PlanView of(Plan plan, RoofSurface surface, double unitsPerMm) {
    return within(plan, surface, unitsPerMm, around(solid(plan, surface), unitsPerMm));
  }

  private static Bounds around(Bounds solid, double unitsPerMm) {
    double around = Math.max(solid.width(), solid.height()) * AROUND;
    return solid.grown(Math.max(around, AROUND_MM * unitsPerMm));
  }

  /**
   * Draws a plan for the screen, where what has no place is a zoom away: lettering keeps near the
   * house, and slopes stand on their planes or not at all.
   *
   * @param aroundMm how far lettering may stand from walls and roof, &gt; 0
   */
  public static PlanView onScreen(
      Plan plan, RoofSurface surface, double unitsPerMm, double aroundMm) {
    Bounds limit = solid(plan, surface).grown(aroundMm * unitsPerMm);
    return within(plan, surface, unitsPerMm, limit, PlanLabels.Leaders.NAMES);
  }

  /** The walls alone, bare of lettering: there at once, while the roof is still worked out. */
  public static Drawing walls(Plan plan) {
    return new Drawing(plan.title(), RoofMarks.walls(plan));
  }

  /**
   * Draws a plan on limited ground.
   *
   * @param limit no lettering stands outside it; it holds walls and roof, in plan units
   */
  static PlanView within(Plan plan, RoofSurface surface, double unitsPerMm, Bounds limit) {
    return within(plan, surface, unitsPerMm, limit, PlanLabels.Leaders.ALL);
  }

  private static PlanView within(
      Plan plan, RoofSurface surface, double unitsPerMm, Bounds limit, PlanLabels.Leaders leaders) {
    if (!(unitsPerMm > 0) || Double.isInfinite(unitsPerMm)) {
      throw new IllegalArgumentException("a view needs a scale above 0, not " + unitsPerMm);
    }
    List<Mark> walls = RoofMarks.walls(plan);
    List<Mark> roof = new ArrayList<>(RoofMarks.covered(plan, surface));
    roof.addAll(RoofMarks.lines(surface));
    Bounds solid = solid(plan, surface);
    Clutter clutter = new Clutter(unitsPerMm, Math.max(solid.width(), solid.height()));
    clutter.take(clutter.shape(walls.toArray(Mark[]::new)));
    clutter.take(clutter.shape(roof.toArray(Mark[]::new)));
    List<Mark> markup = MarkupMarks.of(plan, unitsPerMm);
    clutter.take(clutter.shape(markup.toArray(Mark[]::new)));
    List<WallSpans.Span> spans = new WallSpans(plan, surface).all();
    List<Region> grounds = grounds(plan, surface);
    DimensionRows rows = new DimensionRows(plan, unitsPerMm, clutter, limit, grounds);
    List<Mark> dimensions = rows.place(spans);
    LabelPlaces places = new LabelPlaces(unitsPerMm, clutter, limit, grounds);
    Optional<LabelPlaces> farther =
        leaders == PlanLabels.Leaders.NAMES
            ? Optional.of(new LabelPlaces(unitsPerMm, clutter, around(solid, unitsPerMm), grounds))
            : Optional.empty();
    PlanLabels placer = new PlanLabels(plan, surface, unitsPerMm, places, farther);
    List<Mark> labels = new ArrayList<>(placer.names());
    labels.addAll(placer.slopes(leaders));
    int leftOff = spans.size() - dimensions.size() + placer.leftOff();
    List<Mark> tints = RoofMarks.tints(surface);
    return new PlanView(
        plan.title(),
        unitsPerMm,
        tints,
        walls,
        roof,
        dimensions,
        labels,
        markup,
        leftOff,
        rows.crossed());
  }

  static List<Region> grounds(Plan plan, RoofSurface surface) {
    List<Region> grounds = new ArrayList<>();
    plan.parts().forEach(p -> grounds.add(p.region()));
    surface.planes().forEach(p -> grounds.addAll(p.visible()));
    return grounds;
  }

  /** The box around walls, roof and what the user put on the sheet, lettering apart. */
  static Bounds solid(Plan plan, RoofSurface surface) {
    List<Mark> marks = new ArrayList<>(RoofMarks.walls(plan));
    marks.addAll(RoofMarks.lines(surface));
    return Strokes.of(marks, 1).bounds().with(MarkupMarks.bounds(plan));
  }

  @Override
  public int figures() {
    return dimensions.size();
  }

  /** Everything, in the order it is painted: walls over the extension lines that leave them. */
  @Override
  public Drawing drawing() {
    List<Mark> all = new ArrayList<>(tints);
    all.addAll(dimensions);
    all.addAll(walls);
    all.addAll(roof);
    all.addAll(labels);
    all.addAll(markup);
    return new Drawing(title, all);
  }
}
