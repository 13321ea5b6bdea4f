package longpoint.deck;

import java.util.Optional;
import longpoint.geometry.Region;

/**
 * Where the courses of a plane begin and end: a first one, whole or ripped, whole sheets from there
 * up, and what is left over at the top.
 *
 * @param first width of the lowest course, &gt; 0, at most a sheet's
 * @param top of the plane, v
 */
record CourseLines(double first, double top, Panel panel) {
  /**
   * A last course narrower than this share of a sheet's width, 6 in of 48, is a sliver: it splits
   * at the nails and is not worth walking up for (common practice).
   */
  private static final double SLIVER = 1.0 / 8;

  CourseLines {
    first = first > panel.sliver() ? Math.min(first, panel.width()) : panel.width();
  }

  /** A first course of whole sheets. */
  static CourseLines whole(Ground ground) {
    double top = 0;
    for (Region region : ground.regions()) {
      top = Math.max(top, region.shell().bounds().maxY());
    }
    return new CourseLines(ground.panel().width(), top, ground.panel());
  }

  /** The same plane with a first course of another width. */
  CourseLines with(double width) {
    return new CourseLines(width, top, panel);
  }

  int count() {
    return 1 + (int) Math.max(0, Math.ceil((top - first - panel.sliver()) / panel.width()));
  }

  /** Lower line of a course, numbered from 1; 0 for the lowest. */
  double from(int course) {
    return course == 1 ? 0 : first + (course - 2) * panel.width();
  }

  /** Upper line of a course; the plane's top for the last. */
  double to(int course) {
    return course == count() ? top : first + (course - 1) * panel.width();
  }

  double last() {
    return to(count()) - from(count());
  }

  /** Whether the courses end in a strip nobody would nail on, over a course or more of others. */
  boolean endInSliver() {
    return count() > 1 && last() < panel.width() * SLIVER - panel.rounding();
  }

  /** Courses that end well: whole sheets first if that does it, else sheets ripped in half. */
  Optional<CourseLines> better() {
    for (double width : new double[] {panel.width(), panel.width() / 2}) {
      CourseLines other = with(width);
      if (!other.endInSliver()) {
        return Optional.of(other);
      }
    }
    return Optional.empty();
  }
}
