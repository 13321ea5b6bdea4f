package longpoint.deck;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import longpoint.geometry.Bounds;
import longpoint.geometry.Region;
import longpoint.stop.CalledOff;

/**
 * One way to lay the sheets of a plane: its courses with their joints, and the pieces they make.
 *
 * @param courses from the fascia up
 * @param pieces course by course, left to right
 * @param kept the least that could be kept of the rules for joints
 */
record Laying(List<Course> courses, List<Cell> pieces, JointChoice.Kept kept) {

  /** A piece before it has a name: its course and outline. */
  record Cell(int course, Region outline) {}

  /**
   * Lays a plane.
   *
   * @param held for each strip, where joints find support
   * @param rhythm of end joints, or none to take the fewest pieces course by course
   */
  static Laying of(Ground ground, List<Strip> strips, List<double[]> held, JointChain rhythm) {
    Laying careful = of(ground, strips, held, rhythm, JointChoice.Care.PIECES);
    if (careful.kept == JointChoice.Kept.ALL) {
      return careful;
    }
    // Stepping aside for a tip in one course can leave the next no clear support.
    Laying plain = of(ground, strips, held, rhythm, JointChoice.Care.RHYTHM);
    return plain.kept.compareTo(careful.kept) < 0 ? plain : careful;
  }

  private static Laying of(
      Ground ground,
      List<Strip> strips,
      List<double[]> held,
      JointChain rhythm,
      JointChoice.Care care) {
    Panel panel = ground.panel();
    List<Course> courses = new ArrayList<>();
    List<Cell> cells = new ArrayList<>();
    JointChoice.Kept kept = JointChoice.Kept.ALL;
    double[] below = new double[0];
    for (int i = 0; i < strips.size(); ) {
      CalledOff.check();
      int course = strips.get(i).course();
      Strip first = strips.get(i);
      List<Double> joints = new ArrayList<>();
      for (; i < strips.size() && strips.get(i).course() == course; i++) {
        Strip strip = strips.get(i);
        JointChoice choice =
            JointChoice.of(strip, held.get(i), rhythm.of(course), below, care, panel);
        kept = kept.compareTo(choice.kept()) >= 0 ? kept : choice.kept();
        Arrays.stream(choice.joints()).forEach(joints::add);
        cells.addAll(new Cuts(strip, panel).at(choice.joints()));
      }
      below = joints.stream().mapToDouble(Double::doubleValue).sorted().distinct().toArray();
      courses.add(
          new Course(course, first.from(), first.to(), Arrays.stream(below).boxed().toList()));
    }
    return new Laying(courses, Scraps.joined(cells, panel), kept);
  }

  /** The unbroken runs of every course, course by course, left to right. */
  static List<Strip> strips(Ground ground, CourseLines lines) {
    Panel panel = ground.panel();
    int count = lines.count();
    List<Strip> strips = new ArrayList<>();
    for (int course = 1; course <= count; course++) {
      double from = lines.from(course);
      double to = lines.to(course);
      // The lowest and highest courses take whatever rounding leaves outside the course lines.
      double bottom = course == 1 ? Double.NEGATIVE_INFINITY : from;
      List<Strip> row = new ArrayList<>();
      for (Region region : ground.regions()) {
        Bounds own = region.shell().bounds();
        double low = Math.max(bottom, own.minY() - 1);
        double high = course == count ? own.maxY() + 1 : to;
        if (low < high) {
          for (Region part : Clip.course(region, low, high, panel)) {
            row.add(new Strip(course, from, to, part));
          }
        }
      }
      row.sort(Comparator.comparingDouble(s -> s.bounds().minX()));
      strips.addAll(row);
    }
    return strips;
  }
}
