package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Anchor;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.framing.gable.GableWall;
import longpoint.geometry.Point;
import longpoint.plan.Plan;

/**
 * The studs of a gable wall seen square to it from the top of its plate: running marks along the
 * plate, the height of the roof's frame plane at each stud, and how much each is longer than the
 * one before it.
 */
final class GableFigure {
  private static final double LEAD_MM = 3;
  private static final double AIR_MM = 0.8;

  private final GableWall wall;
  private final double thickness;
  private final Words words;
  private final double mm;
  private final Clutter clutter;
  private final List<Mark> marks = new ArrayList<>();

  private GableFigure(Plan plan, GableWall wall, double unitsPerMm) {
    this.wall = wall;
    this.thickness = plan.part(wall.part()).map(p -> p.frame().thickness()).orElse(0.0);
    this.words = Words.of(plan);
    this.mm = unitsPerMm;
    this.clutter = new Clutter(unitsPerMm, wall.spacing() * (wall.places().size() + 1));
  }

  /** One figure for each wall that has studs. */
  static List<SheetFigure> all(
      Plan plan, List<GableWall> walls, RoofNames names, double unitsPerMm) {
    List<SheetFigure> figures = new ArrayList<>();
    for (GableWall wall : walls) {
      if (!wall.places().isEmpty()) {
        GableFigure figure = new GableFigure(plan, wall, unitsPerMm);
        figure.draw();
        figures.add(
            new SheetFigure("gable " + wall.side(), unitsPerMm, figure.marks)
                .captioned(figure.caption(names)));
      }
    }
    return figures;
  }

  private void draw() {
    int last = wall.places().size() - 1;
    double end = wall.places().get(last) + wall.spacing();
    add(Mark.Path.line(new Point(0, 0), new Point(end, 0), FrameLayers.WALL, wall.side()));
    List<Point> tops = new ArrayList<>();
    for (int i = 0; i <= last; i++) {
      double at = wall.places().get(i);
      double height = wall.heights().get(i);
      tops.add(new Point(at, height));
      stud(at, height);
    }
    if (tops.size() > 1) {
      add(new Mark.Path(tops, false, FrameLayers.ROOF, wall.side()));
    }
    for (int i = 0; i <= last; i++) {
      double at = wall.places().get(i);
      double height = wall.heights().get(i);
      tell(at, -LEAD_MM * mm, at, Anchor.END);
      tell(at, height + LEAD_MM * mm, height, Anchor.START);
    }
  }

  private void stud(double at, double height) {
    if (height > 0) {
      add(
          new Mark.Path(
              List.of(
                  new Point(at - thickness / 2, 0),
                  new Point(at + thickness / 2, 0),
                  new Point(at + thickness / 2, height),
                  new Point(at - thickness / 2, height)),
              true,
              FrameLayers.RAFTER,
              wall.side()));
    }
  }

  /** Reads upward beside a stud; what has no room stands in the table. */
  private void tell(double x, double y, double length, Anchor anchor) {
    Point at = new Point(x + Lettering.SMALL / 2 * mm, y + (y < 0 ? -AIR_MM : AIR_MM) * mm);
    Mark text =
        new Mark.Text(
            at, words.length(length), Lettering.SMALL, 90, anchor, FrameLayers.TAPE, wall.side());
    Clutter.Shape shape = clutter.shape(text);
    if (!clutter.covers(shape)) {
      clutter.take(shape);
      marks.add(text);
    }
  }

  private void add(Mark mark) {
    marks.add(mark);
    clutter.take(clutter.shape(mark));
  }

  private List<SheetFigure.Line> caption(RoofNames names) {
    List<SheetFigure.Line> lines = new ArrayList<>();
    String name = names.wall(wall.side());
    lines.add(SheetFigure.Line.of(words.text("studs.of", name)));
    if (wall.heights().size() > 1) {
      double step = Math.abs(wall.heights().get(1) - wall.heights().get(0));
      lines.add(SheetFigure.Line.of(words.text("studs.difference", words.length(step))));
    }
    lines.add(SheetFigure.Line.of(words.text("studs.heights")));
    return lines;
  }
}
