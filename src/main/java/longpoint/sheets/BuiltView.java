package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Drawing;
import longpoint.drawing.Mark;
import longpoint.drawing.Strokes;
import longpoint.field.built.BuiltCorner;
import longpoint.field.built.BuiltWalls;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
import longpoint.units.Rounding;

/**
 * The walls as drawn and as built from above, corners numbered and told how far they are off.
 *
 * @param times how many times too large offsets are drawn
 */
record BuiltView(Drawing drawing, double unitsPerMm, int times, int leftOff)
    implements FittedView.View {
  /** From a corner to the middle of its figure. */
  private static final double[] OFF_MM = {6, 9, 12};

  private static final int DIRECTIONS = 12;

  @Override
  public int crossed() {
    return 0;
  }

  @Override
  public int figures() {
    return 0;
  }

  static Bounds solid(Plan plan) {
    return Strokes.of(RoofMarks.walls(plan), 1).bounds();
  }

  static BuiltView within(Plan plan, BuiltWalls walls, double unitsPerMm, Bounds limit) {
    Words words = Words.of(plan);
    Bounds solid = solid(plan);
    Clutter clutter = new Clutter(unitsPerMm, Math.max(solid.width(), solid.height()));
    int times = BuiltMarks.times(walls, unitsPerMm);
    List<Mark> all = new ArrayList<>();
    RoofMarks.walls(plan)
        .forEach(
            m -> {
              Mark.Path wall = (Mark.Path) m;
              all.add(new Mark.Path(wall.points(), wall.closed(), Layers.DRAWN, wall.subject()));
            });
    all.addAll(BuiltMarks.of(plan, walls, times));
    clutter.take(clutter.shape(all.toArray(Mark[]::new)));
    int leftOff = 0;
    for (BuiltCorner corner : walls.corners()) {
      if (walls.isTaped(corner.part())
          && !label(corner, words, times, unitsPerMm, clutter, limit, all)) {
        leftOff++;
      }
    }
    return new BuiltView(new Drawing(plan.title(), all), unitsPerMm, times, leftOff);
  }

  private static boolean label(
      BuiltCorner corner,
      Words words,
      int times,
      double unitsPerMm,
      Clutter clutter,
      Bounds limit,
      List<Mark> all) {
    String off = words.small(corner.moved(), Rounding.NEAREST);
    String said = words.text("built.cornerOff", corner.number(), off);
    Point at = BuiltMarks.drawn(corner, times);
    for (double far : OFF_MM) {
      for (int i = 0; i < DIRECTIONS; i++) {
        double radians = Math.PI / DIRECTIONS + 2 * Math.PI * i / DIRECTIONS;
        Point way = new Point(StrictMath.cos(radians), StrictMath.sin(radians));
        Mark text = BuiltMarks.label(corner, said, at.plus(way.times(far * unitsPerMm)));
        Clutter.Shape shape = clutter.shape(text);
        if (shape.allCorners(limit::contains) && !clutter.touches(shape)) {
          clutter.take(shape);
          all.add(text);
          return true;
        }
      }
    }
    return false;
  }
}
