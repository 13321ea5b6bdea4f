package longpoint.surface;

import java.util.List;
import java.util.Optional;
import longpoint.geometry.Segment;
import longpoint.plan.Problem;

/**
 * The whole roof as planes and lines on top of the framing.
 *
 * @param planes in the order of parts and sides
 * @param lines in a fixed order
 * @param problems what could not be worked out and where
 */
public record RoofSurface(List<RoofPlane> planes, List<RoofLine> lines, List<Problem> problems) {
  public RoofSurface {
    planes = List.copyOf(planes);
    lines = List.copyOf(lines);
    problems = List.copyOf(problems);
  }

  public Optional<RoofPlane> plane(String id) {
    return planes.stream().filter(p -> p.id().equals(id)).findFirst();
  }

  /** The lines of one kind, in their order. */
  public List<RoofLine> lines(LineKind kind) {
    return lines.stream().filter(l -> l.kind() == kind).toList();
  }

  /**
   * What shows of a line from above, in plan: all of it but for where it passes beneath another
   * part's overhang.
   */
  public List<Segment> seen(RoofLine line) {
    List<RoofPlane> beside = line.planes().stream().flatMap(id -> plane(id).stream()).toList();
    return SeenLine.of(line, beside);
  }

  /**
   * The figures of one of this surface's lines.
   *
   * @throws IllegalArgumentException if the line's planes are not of this surface
   */
  public LineFigures figures(RoofLine line) {
    List<RoofPlane> beside =
        line.planes().stream()
            .map(
                id ->
                    plane(id)
                        .orElseThrow(
                            () -> new IllegalArgumentException("no plane " + id + " here")))
            .toList();
    return LineFigures.of(line, beside);
  }
}
