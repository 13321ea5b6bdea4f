package longpoint.surface.sweep;

import java.util.List;
import longpoint.geometry.Ring;

/**
 * Front door of the sweep. Sides are numbered through all rings in order: outer first.
 *
 * @see SweepResult
 */
public final class Sweep {
  private Sweep() {}

  /**
   * Shares out the ground inside an outline.
   *
   * @param rings outer ring counter-clockwise, then holes clockwise; none crosses itself or another
   * @param speeds inward speed of each side in plan, 1/slope; 0 stands still (a gable)
   * @return faces that tile the ground, or the side where it could not be done; never an exception
   */
  public static SweepResult solve(List<Ring> rings, double[] speeds) {
    return new SweepResult.Failed(0, "the sweep is not built yet");
  }
}
