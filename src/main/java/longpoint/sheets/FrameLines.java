package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Mark;
import longpoint.framing.FramingSet;
import longpoint.framing.stick.Rafter;
import longpoint.framing.truss.Truss;
import longpoint.geometry.Segment;

/**
 * Where trusses and rafters stand, each as its centre line in plan: quick to make and to paint
 * while a plan is dragged. Sheets draw them with both faces, see {@link FrameView}.
 */
public final class FrameLines {
  private FrameLines() {}

  /** Trusses first, subject the truss; then rafters, subject the rafter's mark. */
  public static List<Mark> of(FramingSet framing) {
    List<Mark> marks = new ArrayList<>();
    for (Truss truss : framing.trusses()) {
      if (!truss.from().equals(truss.to())) {
        marks.add(Mark.Path.line(truss.from(), truss.to(), FrameLayers.TRUSS_LINE, truss.id()));
      }
    }
    for (Rafter rafter : framing.rafters()) {
      for (Segment place : rafter.places()) {
        marks.add(Mark.Path.line(place.from(), place.to(), FrameLayers.RAFTER_LINE, rafter.mark()));
      }
    }
    return marks;
  }
}
