package longpoint.field.takeoff;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import longpoint.surface.LineKind;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;

/**
 * True lengths of the roof's lines, summed by kind, plan units.
 *
 * @param steps walls between a higher and a lower plane
 */
public record Lines(
    double eaves,
    double rakes,
    double ridges,
    double hips,
    double valleys,
    double breaks,
    double abutments,
    double steps) {
  /**
   * @param planes lines that touch one of these count
   */
  static Lines of(RoofSurface surface, List<RoofPlane> planes) {
    Set<String> ids = planes.stream().map(RoofPlane::id).collect(Collectors.toSet());
    List<RoofLine> lines =
        surface.lines().stream().filter(l -> l.planes().stream().anyMatch(ids::contains)).toList();
    return new Lines(
        sum(lines, LineKind.EAVE),
        sum(lines, LineKind.RAKE),
        sum(lines, LineKind.RIDGE),
        sum(lines, LineKind.HIP),
        sum(lines, LineKind.VALLEY),
        sum(lines, LineKind.BREAK),
        sum(lines, LineKind.ABUTMENT),
        sum(lines, LineKind.STEP));
  }

  private static double sum(List<RoofLine> lines, LineKind kind) {
    return lines.stream().filter(l -> l.kind() == kind).mapToDouble(RoofLine::length).sum();
  }

  /** Metal edge along eaves and rakes. */
  public double dripEdge() {
    return eaves + rakes;
  }

  /** Caps over ridges and hips. */
  public double caps() {
    return ridges + hips;
  }
}
