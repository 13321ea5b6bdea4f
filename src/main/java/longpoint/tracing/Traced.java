package longpoint.tracing;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.plan.Problem;

/**
 * What was found on the layers traced.
 *
 * @param outlines the largest first
 * @param notes what could not be used, and what was done about it
 */
public record Traced(List<Outline> outlines, List<Problem> notes) {
  /** What becomes of outlines inside others: often the inside face of the wall. */
  public enum Inner {
    LEFT_OUT,
    COURTYARDS
  }

  public Traced {
    outlines = List.copyOf(outlines);
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
