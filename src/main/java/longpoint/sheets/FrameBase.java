package longpoint.sheets;

import java.util.List;
import longpoint.drawing.Mark;
import longpoint.drawing.Strokes;
import longpoint.framing.FramingSet;
import longpoint.geometry.Bounds;
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
    return worth ? new FrameBase(Cropped.marks(whole.marks(), window), Extent.AROUND_FRAME) : whole;
  }
}
