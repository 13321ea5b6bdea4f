package longpoint.desktop;

import java.util.List;
import java.util.Optional;
import longpoint.desktop.canvas.PlanCanvas;
import longpoint.editor.Overlay;
import longpoint.editor.Snap;
import longpoint.editor.ToolRunner;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Part;

/**
 * Keeps in sight what is drawn by keys: there is no pointer that would stop at the sheet's edge.
 */
final class Keyed {
  private Keyed() {}

  /** Brings everything into sight where the place that keys have come to is not. */
  static void follow(PlanCanvas canvas, ToolRunner runner) {
    Overlay overlay = runner.overlay();
    Optional<Point> place = overlay.snap().map(Snap::at);
    if (!runner.engaged() || place.filter(p -> !canvas.seen().contains(p)).isEmpty()) {
      return;
    }
    Bounds all = Bounds.of(List.of(place.get()));
    for (Part part : runner.shown().parts()) {
      all = all.with(part.outline().bounds());
    }
    for (Overlay.Line line : overlay.lines()) {
      all = all.with(line.at().from()).with(line.at().to());
    }
    canvas.fit(all);
  }
}
