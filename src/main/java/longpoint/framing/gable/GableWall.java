package longpoint.framing.gable;

import java.util.ArrayList;
import java.util.List;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Bound;
import longpoint.framing.run.Run;
import longpoint.plan.EdgeKind;

/**
 * Studs of one gable wall of a roof framed with rafters. Over trusses the gable truss brings its
 * own.
 *
 * @param part id of the part
 * @param run id of the run
 * @param side id of the gable wall
 * @param spacing of the studs, the same as the rafters'
 * @param places centre of each stud, from the low bearing wall's outside face
 * @param heights top of plate to the roof's frame plane at each; take off the plumb depth of the
 *     rafter that passes over
 */
public record GableWall(
    String part,
    String run,
    String side,
    double spacing,
    List<Double> places,
    List<Double> heights) {
  public GableWall {
    places = List.copyOf(places);
    heights = List.copyOf(heights);
  }

  /** The gable walls of a run framed with rafters. */
  public static List<GableWall> of(Run run) {
    List<GableWall> walls = new ArrayList<>();
    for (Bank end : List.of(Bank.START, Bank.END)) {
      Bound wall = run.bound(end);
      if (wall.kind() == EdgeKind.GABLE) {
        double half = run.part().frame().thickness() / 2;
        double u = end == Bank.START ? half : run.length() - half;
        walls.add(wall(run, wall.side().orElseThrow().id(), u));
      }
    }
    return walls;
  }

  private static GableWall wall(Run run, String side, double u) {
    double spacing = run.part().frame().spacing();
    List<Double> places = new ArrayList<>();
    List<Double> heights = new ArrayList<>();
    for (int k = 1; k * spacing < run.width(); k++) {
      places.add(k * spacing);
      heights.add(run.heightAt(u, k * spacing) - run.plate());
    }
    return new GableWall(run.part().id(), run.id(), side, spacing, places, heights);
  }
}
