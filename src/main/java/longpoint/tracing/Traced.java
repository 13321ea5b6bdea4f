package longpoint.tracing;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.plan.Problem;

/**
 * What was found on the layers traced.
 *
 * @param outlines the largest first
 * @param gaps where lines would close if they met, whether they have been closed or not
 * @param lines every line traced, each as a chain of points, in the plan's unit
 * @param notes what could not be used, and what was done about it
 */
public record Traced(
    List<Outline> outlines, List<Gap> gaps, List<List<Point>> lines, List<Problem> notes) {
  /** What becomes of lines that would close if their ends met. */
  public enum Gaps {
    LEFT_OPEN,
    /** Closed straight across. */
    CLOSED
  }

  /** What becomes of outlines inside others: often the inside face of the wall. */
  public enum Inner {
    LEFT_OUT,
    COURTYARDS
  }

  public Traced {
    outlines = List.copyOf(outlines);
    gaps = List.copyOf(gaps);
    lines = lines.stream().map(List::copyOf).toList();
    notes = List.copyOf(notes);
  }

  /**
   * A piece of ground for each outer outline.
   *
   * @param inner what to do with the outlines directly inside an outer one
   */
  public List<Region> regions(Inner inner) {
    List<Region> regions = new ArrayList<>();
    for (Outline outline : outlines) {
      if (outline.isOuter()) {
        regions.add(new Region(outline.ring(), holes(outline.ring(), inner)));
      }
    }
    return regions;
  }

  private List<Ring> holes(Ring shell, Inner inner) {
    return switch (inner) {
      case LEFT_OUT -> List.of();
      case COURTYARDS ->
          outlines.stream()
              .filter(o -> o.depth() == 1 && shell.contains(o.ring().corner(0)))
              .map(o -> o.ring().reversed())
              .toList();
    };
  }
}
