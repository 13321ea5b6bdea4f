package longpoint.geometry;

import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/**
 * Sums, differences and common ground of regions. What goes in may touch along sides; points and
 * lines left over are dropped. Never fails on valid regions.
 *
 * <p>Works on a grid far finer than any use (snap rounding; Hobby 1999). Without one, JTS has lost
 * a whole sheet from a union of pieces whose shared sides differed in the last bit.
 */
public final class Overlay {
  /**
   * Grid steps from the origin to the farthest coordinate, as a power of two. Of a double's 52 bits
   * eight are left for what sums of a few coordinates round off: on a plan 500 in across a step is
   * 3e-11 in.
   */
  private static final int GRID_BITS = 44;

  private Overlay() {}

  /** The ground in any of the regions, touching ones joined. */
  public static List<Region> union(List<Region> regions) {
    return regions.isEmpty() ? List.of() : Jts.regions(joined(regions, grid(regions, List.of())));
  }

  /** The ground in both. */
  public static List<Region> common(List<Region> a, List<Region> b) {
    return overlay(a, b, OverlayNG.INTERSECTION);
  }

  /** The ground in {@code a} but not in {@code b}. */
  public static List<Region> minus(List<Region> a, List<Region> b) {
    return overlay(a, b, OverlayNG.DIFFERENCE);
  }

  /**
   * Regions with all their sides moved outward, corners kept sharp.
   *
   * @param by outward distance; negative moves inward
   */
  public static List<Region> grown(List<Region> regions, double by) {
    if (regions.isEmpty()) {
      return List.of();
    }
    BufferParameters sharp = new BufferParameters();
    sharp.setJoinStyle(BufferParameters.JOIN_MITRE);
    return Jts.regions(BufferOp.bufferOp(joined(regions, grid(regions, List.of())), by, sharp));
  }

  private static List<Region> overlay(List<Region> a, List<Region> b, int operation) {
    if (a.isEmpty()) {
      return List.of();
    }
    if (b.isEmpty()) {
      return operation == OverlayNG.DIFFERENCE ? List.copyOf(a) : List.of();
    }
    PrecisionModel grid = grid(a, b);
    Geometry first = joined(a, grid);
    Geometry second = joined(b, grid);
    try {
      return Jts.regions(OverlayNG.overlay(first, second, operation, grid));
    } catch (TopologyException e) {
      // Rounding has let sides of a thin region cross by the last bit: put that right first.
      return Jts.regions(
          OverlayNG.overlay(GeometryFixer.fix(first), GeometryFixer.fix(second), operation, grid));
    }
  }

  private static Geometry joined(List<Region> regions, PrecisionModel grid) {
    if (regions.size() == 1) {
      return Jts.polygon(regions.get(0));
    }
    Polygon[] polygons = regions.stream().map(Jts::polygon).toArray(Polygon[]::new);
    return UnaryUnionNG.union(Jts.FACTORY.createMultiPolygon(polygons), grid);
  }

  private static PrecisionModel grid(List<Region> a, List<Region> b) {
    double far = 1;
    for (Region region : Stream.concat(a.stream(), b.stream()).toList()) {
      for (Point p : region.shell().points()) {
        far = Math.max(far, Math.max(Math.abs(p.x()), Math.abs(p.y())));
      }
    }
    return new PrecisionModel(Math.scalb(1.0, GRID_BITS - Math.getExponent(far)));
  }
}
