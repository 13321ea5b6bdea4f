package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Drawing;
import longpoint.drawing.Mark;
import longpoint.geometry.Point;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.surface.RoofLine;
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
 */
public record PlanView(
    String title,
    double unitsPerMm,
    List<Mark> tints,
    List<Mark> walls,
    List<Mark> roof,
    List<Mark> dimensions,
    List<Mark> labels) {
  public PlanView {
    tints = List.copyOf(tints);
    walls = List.copyOf(walls);
    roof = List.copyOf(roof);
    dimensions = List.copyOf(dimensions);
    labels = List.copyOf(labels);
  }

  /**
   * Draws a plan.
   *
   * @param surface its roof; what could not be solved is simply not there
   * @param unitsPerMm plan units to a millimetre of paper, &gt; 0: 1/25.4 × 48 for inches at 1:48
   */
  public static PlanView of(Plan plan, RoofSurface surface, double unitsPerMm) {
    if (!(unitsPerMm > 0) || Double.isInfinite(unitsPerMm)) {
      throw new IllegalArgumentException("a view needs a scale above 0, not " + unitsPerMm);
    }
    List<Mark> walls = RoofMarks.walls(plan);
    List<Mark> roof = new ArrayList<>(RoofMarks.covered(plan, surface));
    roof.addAll(RoofMarks.lines(surface));
    Clutter clutter = new Clutter(unitsPerMm);
    clutter.take(walls.toArray(Mark[]::new));
    clutter.take(roof.toArray(Mark[]::new));
    List<Mark> dimensions =
        new DimensionRows(plan, unitsPerMm, outermost(plan, surface), clutter).place();
    PlanLabels placer = new PlanLabels(plan, unitsPerMm, clutter);
    List<Mark> labels = new ArrayList<>(placer.slopes(surface));
    labels.addAll(placer.names(plan.parts()));
    return new PlanView(
        plan.title(), unitsPerMm, RoofMarks.tints(surface), walls, roof, dimensions, labels);
  }

  /** Everything, in the order it is painted. */
  public Drawing drawing() {
    List<Mark> all = new ArrayList<>(tints);
    all.addAll(walls);
    all.addAll(roof);
    all.addAll(dimensions);
    all.addAll(labels);
    return new Drawing(title, all);
  }

  private static List<Point> outermost(Plan plan, RoofSurface surface) {
    List<Point> points = new ArrayList<>();
    for (Part part : plan.parts()) {
      points.addAll(part.outline().points());
    }
    for (RoofLine line : surface.lines()) {
      points.add(line.from().plan());
      points.add(line.to().plan());
    }
    return points;
  }
}
