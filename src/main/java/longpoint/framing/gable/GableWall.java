package longpoint.framing.gable;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import longpoint.framing.Shop;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Bound;
import longpoint.framing.run.Meeting;
import longpoint.framing.run.Run;
import longpoint.geometry.Point;
import longpoint.plan.EdgeKind;
import longpoint.plan.Plan;

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
 * @param low under the slope that rises from the low bearing wall
 * @param high under the slope that rises from the high bearing wall
 */
public record GableWall(
    String part,
    String run,
    String side,
    double spacing,
    List<Double> places,
    List<Double> heights,
    Flank low,
    Flank high) {
  /**
   * Studs under one slope of a gable.
   *
   * @param difference of each stud from its neighbour, the common difference; 0 where there is no
   *     such slope
   * @param bevel at their tops, degrees from square
   */
  public record Flank(double difference, double bevel) {
    private static Flank under(Bound bearing, double spacing) {
      return bearing.isEave()
          ? new Flank(
              spacing * bearing.side().orElseThrow().slope().ratio(),
              bearing.side().orElseThrow().slope().degrees())
          : new Flank(0, 0);
    }
  }

  public GableWall {
    places = List.copyOf(places);
    heights = List.copyOf(heights);
    Objects.requireNonNull(low);
    Objects.requireNonNull(high);
  }

  /**
   * The gable walls of a run framed with rafters. Of a dormer's the studs stand on the roof below.
   * Studs that would be shorter than they are wide are left out.
   *
   * @param meetings of the whole plan
   */
  public static List<GableWall> of(Run run, List<Meeting> meetings, Plan plan) {
    List<GableWall> walls = new ArrayList<>();
    for (Bank end : List.of(Bank.START, Bank.END)) {
      Bound wall = run.bound(end);
      if (wall.kind() == EdgeKind.GABLE) {
        double half = run.part().frame().thickness() / 2;
        double u = end == Bank.START ? half : run.length() - half;
        walls.add(wall(run, wall.side().orElseThrow().id(), u, meetings, plan));
      }
    }
    return walls;
  }

  private static GableWall wall(Run run, String side, double u, List<Meeting> meetings, Plan plan) {
    double spacing = run.part().frame().spacing();
    List<Double> places = new ArrayList<>();
    List<Double> heights = new ArrayList<>();
    for (int k = 1; k * spacing < run.width(); k++) {
      double roof = run.heightAt(u, k * spacing);
      double height = roof - foot(run, run.axes().at(u, k * spacing), meetings);
      if (height - passing(run, plan) > Shop.of(plan.unit()).edge()) {
        places.add(k * spacing);
        heights.add(height);
      }
    }
    return new GableWall(
        run.part().id(),
        run.id(),
        side,
        spacing,
        places,
        heights,
        Flank.under(run.low(), spacing),
        Flank.under(run.high(), spacing));
  }

  /** The plate, or the roof below where that is higher. */
  private static double foot(Run run, Point at, List<Meeting> meetings) {
    double foot = run.plate();
    for (Meeting m : meetings) {
      if (m.upper().id().equals(run.id()) && m.lower().bound(m.bank()).isEave()) {
        foot = Math.max(foot, m.beneath().heightAt(at));
      }
    }
    return foot;
  }

  /** Plumb depth of the rafter that passes over, on the steeper side. */
  private static double passing(Run run, Plan plan) {
    double slope = run.eaves().stream().mapToDouble(e -> e.slope().ratio()).max().orElse(0);
    double depth = plan.buying().boards().rafter();
    return Double.isFinite(depth) && depth > 0 ? depth * Math.hypot(1, slope) : 0;
  }
}
