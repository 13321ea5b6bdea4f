package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Anchor;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.field.built.BuiltCorner;
import longpoint.field.built.BuiltTape;
import longpoint.field.built.BuiltWalls;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.Part;
import longpoint.plan.Plan;

/**
 * The walls as built over the walls as drawn, their offsets drawn larger than they are so that they
 * can be seen.
 */
public final class BuiltMarks {
  /** How far the corner that is most off is drawn from its place, at least where that may be. */
  private static final double SEEN_MM = 6;

  private static final int[] TIMES = {1, 2, 5, 10, 20, 50, 100, 200};

  private BuiltMarks() {}

  /**
   * How many times too large offsets are to be drawn.
   *
   * @param unitsPerMm plan units to a millimetre of paper or screen
   */
  public static int times(BuiltWalls walls, double unitsPerMm) {
    double most = walls.corners().stream().mapToDouble(BuiltCorner::moved).max().orElse(0);
    int times = 1;
    for (int t : TIMES) {
      if (most * t <= SEEN_MM * unitsPerMm) {
        times = t;
      }
    }
    return times;
  }

  /** Outlines of every part that was taped, and the tapes between corners. */
  public static List<Mark> of(Plan plan, BuiltWalls walls, int times) {
    List<Mark> marks = new ArrayList<>(tapes(walls, times));
    for (Part part : plan.parts()) {
      if (walls.isTaped(part.id())) {
        List<Point> corners =
            walls.corners().stream()
                .filter(c -> c.part().equals(part.id()))
                .map(c -> drawn(c, times))
                .toList();
        int first = 0;
        for (Ring ring : part.rings()) {
          List<Point> built = corners.subList(first, first + ring.size());
          marks.add(new Mark.Path(built, true, Layers.BUILT, part.id()));
          first += ring.size();
        }
      }
    }
    return marks;
  }

  /** As on the screen: with the number of every corner of a taped part beside it. */
  public static List<Mark> on(Plan plan, BuiltWalls walls, double unitsPerMm) {
    List<Mark> marks = new ArrayList<>(of(plan, walls, times(walls, unitsPerMm)));
    for (BuiltCorner c : walls.corners()) {
      if (walls.isTaped(c.part())) {
        Point inward = new Point(NUMBER_MM * unitsPerMm, NUMBER_MM * unitsPerMm);
        marks.add(label(c, String.valueOf(c.number()), c.planned().plus(inward)));
      }
    }
    return marks;
  }

  /** From a corner to its number on the screen, across and up. */
  private static final double NUMBER_MM = 3;

  /** Where a corner is drawn. */
  static Point drawn(BuiltCorner corner, int times) {
    return corner.planned().plus(corner.built().minus(corner.planned()).times(times));
  }

  private static List<Mark> tapes(BuiltWalls walls, int times) {
    List<Mark> marks = new ArrayList<>();
    for (BuiltTape t : walls.tapes()) {
      if (t.from() > 0 && t.to() > 0 && t.from() != t.to()) {
        BuiltCorner from = walls.corners().get(t.from() - 1);
        BuiltCorner to = walls.corners().get(t.to() - 1);
        boolean doubted = t.state() == BuiltTape.State.DOUBTED;
        marks.add(
            Mark.Path.line(
                drawn(from, times),
                drawn(to, times),
                doubted ? Layers.DOUBTED : Layers.TAPED,
                from.part()));
      }
    }
    return marks;
  }

  /** What every corner of a taped part is off by, beside it. */
  static Mark label(BuiltCorner corner, String words, Point at) {
    return new Mark.Text(
        at, words, Lettering.SMALL, 0, Anchor.CENTRE, Layers.CORNER, corner.part());
  }
}
