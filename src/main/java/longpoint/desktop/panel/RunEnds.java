package longpoint.desktop.panel;

import java.util.List;
import longpoint.framing.run.Run;
import longpoint.geometry.Point;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;

/** The two ends of a run, called after the way they lie. */
final class RunEnds {
  private final double north;

  RunEnds(Plan plan) {
    north = plan.particulars().north().orElse(0.0);
  }

  /** Both, the same whichever of them the layout starts from. */
  List<String> names(Run run) {
    return List.of(start(run), way(run.axes().along())).stream().sorted().toList();
  }

  /** The end that the layout starts from. */
  String start(Run run) {
    return way(run.axes().along().times(-1));
  }

  /** The middle of the end that lies that way. */
  Point end(Run run, String way) {
    return run.axes().at(start(run).equals(way) ? 0 : run.length(), run.width() / 2);
  }

  /** Whether a place that names an end names one of this run's. */
  static boolean belongs(Point place, Run run) {
    double near = run.part().frame().spacing() / 2;
    double u = run.axes().u(place);
    double v = run.axes().v(place);
    return u > -near && u < run.length() + near && v > -near && v < run.width() + near;
  }

  private String way(Point out) {
    return PlaceName.way(out, north);
  }
}
