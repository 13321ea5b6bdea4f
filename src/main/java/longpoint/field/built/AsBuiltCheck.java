package longpoint.field.built;

import java.util.ArrayList;
import java.util.List;
import longpoint.framing.FramingSet;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.surface.RoofSurface;

/**
 * The walls as built, and what they do to the work planned.
 *
 * @param walls fitted to the readings
 * @param seats how the planned trusses sit on them
 * @param changes figures that are others on the walls as built, squared up; none where nothing was
 *     taped
 */
public record AsBuiltCheck(BuiltWalls walls, List<TrussSeat> seats, List<Change> changes) {
  public static final AsBuiltCheck NONE = new AsBuiltCheck(BuiltWalls.NONE, List.of(), List.of());

  public AsBuiltCheck {
    seats = List.copyOf(seats);
    changes = List.copyOf(changes);
  }

  /** How the planned frame sits on the walls. */
  public static AsBuiltCheck seated(Plan plan, BuiltWalls walls, FramingSet framing) {
    return new AsBuiltCheck(walls, Seating.of(plan, framing, walls), List.of());
  }

  /**
   * With the figures that change.
   *
   * @param built the plan with the walls as built
   * @param builtSurface its roof
   * @param builtFraming its frame
   */
  public AsBuiltCheck against(
      Plan plan,
      RoofSurface surface,
      FramingSet framing,
      Plan built,
      RoofSurface builtSurface,
      FramingSet builtFraming) {
    return new AsBuiltCheck(
        walls,
        seats,
        Changes.of(
            new Changes.Work(plan, surface, framing),
            new Changes.Work(built, builtSurface, builtFraming)));
  }

  /** Of the readings and of trusses on walls that are off. */
  public List<Problem> problems(Plan plan) {
    List<Problem> all = new ArrayList<>(walls.problems());
    all.addAll(Seating.problems(plan, seats));
    return all;
  }
}
