package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.drawing.Mark;
import longpoint.drawing.Strokes;
import longpoint.framing.FramingSet;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
import longpoint.surface.RoofSurface;

/**
 * Walls and roof lines quiet beneath a frame.
 *
 * @param marks subjects as on the roof plan
 * @param extent whether all of the house is there
 */
record FrameBase(List<Mark> marks, Extent extent) {
  /** How much of the house stands beneath. */
  enum Extent {
    WHOLE,
    /** Lines end a little way off from what is framed, so that it can be drawn larger. */
    AROUND_FRAME
  }

  /** Two ordinary bays, so that it is seen what the new frame runs into: 4 ft. */
  private static final double AROUND_MM = 1220;

  /** The house is cut off only if that makes the drawing smaller than this share of it. */
  private static final double WORTH = 0.8;

  FrameBase {
    marks = List.copyOf(marks);
  }

  static FrameBase whole(Plan plan, RoofSurface surface) {
    return new FrameBase(FrameMarks.base(plan, surface), Extent.WHOLE);
  }

  /** Of a house that is framed in part only, what lies around that part. */
  static FrameBase around(Plan plan, RoofSurface surface, FramingSet framing) {
    FrameBase whole = whole(plan, surface);
    List<Mark> frame = new FrameMarks(plan, framing, 1).all();
    if (frame.isEmpty() || whole.marks().isEmpty()) {
      return whole;
    }
    Bounds framed = Strokes.of(frame, 1).bounds();
    Bounds window = framed.grown(plan.unit().fromMillimetres(AROUND_MM));
    Bounds all = Strokes.of(whole.marks(), 1).bounds().with(framed);
    boolean worth = window.width() < WORTH * all.width() || window.height() < WORTH * all.height();
    return worth ? new FrameBase(cut(whole.marks(), window), Extent.AROUND_FRAME) : whole;
  }

  private static List<Mark> cut(List<Mark> marks, Bounds window) {
    List<Mark> kept = new ArrayList<>();
    for (Mark mark : marks) {
      Mark.Path path = (Mark.Path) mark;
      int last = path.closed() ? path.points().size() : path.points().size() - 1;
      boolean inside = path.points().stream().allMatch(window::contains);
      if (inside) {
        kept.add(path);
      }
      for (int i = 0; i < last && !inside; i++) {
        Point from = path.points().get(i);
        Point to = path.points().get((i + 1) % path.points().size());
        inside(from, to, window)
            .ifPresent(ends -> kept.add(new Mark.Path(ends, false, path.layer(), path.subject())));
      }
    }
    return kept;
  }

  /** The piece of a line in a box, by the method of Liang and Barsky (ACM TOG 3, 1984). */
  private static Optional<List<Point>> inside(Point from, Point to, Bounds box) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double[] p = {-dx, dx, -dy, dy};
    double[] q = {
      from.x() - box.minX(), box.maxX() - from.x(), from.y() - box.minY(), box.maxY() - from.y()
    };
    double in = 0;
    double out = 1;
    for (int i = 0; i < 4; i++) {
      if (p[i] == 0 && q[i] < 0) {
        return Optional.empty();
      }
      if (p[i] < 0) {
        in = Math.max(in, q[i] / p[i]);
      } else if (p[i] > 0) {
        out = Math.min(out, q[i] / p[i]);
      }
    }
    return in < out
        ? Optional.of(List.of(from.toward(to, in), from.toward(to, out)))
        : Optional.empty();
  }
}
