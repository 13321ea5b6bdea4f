package longpoint.desktop;

import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Ink;
import longpoint.drawing.Layer;
import longpoint.drawing.Mark;
import longpoint.drawing.Pen;
import longpoint.framing.FramingSet;
import longpoint.framing.stick.Rafter;
import longpoint.framing.truss.Truss;
import longpoint.geometry.Segment;

/** Where trusses and rafters stand, each as its centre line in plan. */
final class FrameMarks {
  /** Named as the other layers are: discipline S (structural), framing. */
  static final Layer TRUSSES = new Layer("S-FRAM-TRUS", "Trusses", Pen.solid(0.18), Ink.QUIET);

  static final Layer RAFTERS = new Layer("S-FRAM-RAFT", "Rafters", Pen.solid(0.18), Ink.QUIET);

  private FrameMarks() {}

  /** Trusses first, subject the truss; then rafters, subject the rafter's mark. */
  static List<Mark> of(FramingSet framing) {
    List<Mark> marks = new ArrayList<>();
    for (Truss truss : framing.trusses()) {
      if (!truss.from().equals(truss.to())) {
        marks.add(Mark.Path.line(truss.from(), truss.to(), TRUSSES, truss.id()));
      }
    }
    for (Rafter rafter : framing.rafters()) {
      for (Segment place : rafter.places()) {
        marks.add(Mark.Path.line(place.from(), place.to(), RAFTERS, rafter.mark()));
      }
    }
    return marks;
  }
}
