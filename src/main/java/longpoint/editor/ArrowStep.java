package longpoint.editor;

import longpoint.geometry.Point;
import longpoint.units.LengthUnit;

/**
 * How far an arrow key goes: a step of the grid, with Shift ten of them, with Alt, which lets go of
 * the grid, one inch or ten millimetres.
 */
public final class ArrowStep {
  private static final double MANY = 10;

  private ArrowStep() {}

  /** The step of an arrow key in plan units; none for any other key. */
  public static Point of(Event.Pressing pressing, Scene scene) {
    return direction(pressing.key()).times(length(pressing, scene));
  }

  private static double length(Event.Pressing pressing, Scene scene) {
    double fine = scene.plan().unit() == LengthUnit.INCH ? 1 : 10;
    double grid = scene.settings().grid() > 0 ? scene.settings().grid() : fine;
    if (pressing.holds(Modifier.ALT)) {
      return fine;
    }
    return pressing.holds(Modifier.SHIFT) ? MANY * grid : grid;
  }

  private static Point direction(Event.Key key) {
    return switch (key) {
      case RIGHT -> new Point(1, 0);
      case UP -> new Point(0, 1);
      case LEFT -> new Point(-1, 0);
      case DOWN -> new Point(0, -1);
      case ENTER, ESCAPE, BACKSPACE, DELETE, TAB, NEXT, PREVIOUS -> new Point(0, 0);
    };
  }
}
