package longpoint.geometry;

import java.util.List;

/**
 * A piece of ground with holes.
 *
 * @param shell outer ring, counter-clockwise
 * @param holes rings inside it, clockwise
 */
public record Region(Ring shell, List<Ring> holes) {
  public Region {
    holes = List.copyOf(holes);
  }

  public Region(Ring shell) {
    this(shell, List.of());
  }

  public double area() {
    double area = shell.area();
    for (Ring hole : holes) {
      area -= hole.area();
    }
    return area;
  }
}
