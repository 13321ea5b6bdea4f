package longpoint.deck;

import java.util.Optional;
import longpoint.geometry.Region;

/**
 * Where the courses of a plane begin and end: a first one, whole or ripped, whole sheets from there
 * up, and what is left over at the top.
 *
 * @param foot where the lowest course begins, v: 0, the fascia, but where a plane in line with this
 *     one comes down farther
 * @param first width of the lowest course, &gt; 0, at most a sheet's
 * @param top of the plane, v
 */
record CourseLines(double foot, double first, double top, Panel panel) {
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
    double foot = 0;
    double top = 0;
    for (Region region : ground.regions()) {
      foot = Math.min(foot, region.shell().bounds().minY());
      top = Math.max(top, region.shell().bounds().maxY());
    }
    Panel panel = ground.panel();
    return new CourseLines(foot < -panel.sliver() ? foot : 0, panel.width(), top, panel);
  }

  /** The same plane with a first course of another width. */
  CourseLines with(double width) {
    return new CourseLines(foot, width, top, panel);
  }

  int count() {
    return 1 + (int) Math.max(0, Math.ceil((top - foot - first - panel.sliver()) / panel.width()));
  }

  /** Lower line of a course, numbered from 1. */
  double from(int course) {
    return course == 1 ? foot : foot + first + (course - 2) * panel.width();
  }

  /** Upper line of a course; the plane's top for the last. */
  double to(int course) {
    return course == count() ? top : foot + first + (course - 1) * panel.width();
  }

  double last() {
    return to(count()) - from(count());
  }

  /** Whether the courses end in a strip nobody would nail on, over a course or more of others. */
  boolean endInSliver() {
    return count() > 1 && last() < panel.width() * SLIVER - panel.rounding();
  }

  /**
   * Courses that end well: whole sheets first if that does it, else sheets ripped by a quarter,
   * which leaves a last course of a quarter and more, three of them to a sheet.
   */
  Optional<CourseLines> better() {
    for (double width : new double[] {panel.width(), panel.width() * 3 / 4}) {
      CourseLines other = with(width);
      if (!other.endInSliver()) {
        return Optional.of(other);
      }
    }
    return Optional.empty();
  }
}
