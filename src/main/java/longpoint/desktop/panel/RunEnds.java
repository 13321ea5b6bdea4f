package longpoint.desktop.panel;

import java.util.List;
import longpoint.framing.run.Run;
import longpoint.geometry.Point;

/** The two ends of a run, called after the way they lie, north being up. */
final class RunEnds {
  private static final String[] WAYS = {
    "east", "northeast", "north", "northwest", "west", "southwest", "south", "southeast"
  };

  private RunEnds() {}

  /** Both, the same whichever of them the layout starts from. */
  static List<String> names(Run run) {
    return List.of(start(run), way(run.axes().along())).stream().sorted().toList();
  }

  /** The end that the layout starts from. */
  static String start(Run run) {
    return way(run.axes().along().times(-1));
  }

  /** The middle of the end that lies that way. */
  static Point end(Run run, String way) {
    return run.axes().at(start(run).equals(way) ? 0 : run.length(), run.width() / 2);
  }

  /** Whether a place that names an end names one of this run's. */
  static boolean belongs(Point place, Run run) {
    double near = run.part().frame().spacing() / 2;
    double u = run.axes().u(place);
    double v = run.axes().v(place);
    return u > -near && u < run.length() + near && v > -near && v < run.width() + near;
  }

  private static String way(Point out) {
    double eighths = StrictMath.atan2(out.y(), out.x()) / (Math.PI / 4);
    return WAYS[(int) Math.floorMod(Math.round(eighths), 8L)];
  }
}
