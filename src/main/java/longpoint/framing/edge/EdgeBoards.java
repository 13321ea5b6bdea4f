package longpoint.framing.edge;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import longpoint.framing.Shop;
import longpoint.framing.edge.EdgeBoard.End;
import longpoint.framing.edge.EdgeBoard.Joint;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.surface.LineKind;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;

/** Fascia and rake boards of a roof, one for each of its eave and rake lines. */
public final class EdgeBoards {
  /** Boards turning less than this are in line: half a degree, finer than any saw's stop. */
  private static final double IN_LINE = 0.5;

  private EdgeBoards() {}

  /**
   * @param parts ids of the parts to measure
   */
  public static List<EdgeBoard> of(Set<String> parts, RoofSurface surface, Shop shop) {
    List<RoofLine> edges =
        surface.lines().stream()
            .filter(l -> l.kind() == LineKind.EAVE || l.kind() == LineKind.RAKE || isHighEdge(l))
            // What no tape can read is no board, and has no direction to mitre by.
            .filter(l -> l.length() >= shop.mark())
            .toList();
    List<EdgeBoard> boards = new ArrayList<>();
    for (RoofLine line : edges) {
      String part = part(surface, line);
      if (!parts.contains(part)) {
        continue;
      }
      boards.add(
          new EdgeBoard(
              line.id(),
              part,
              isHighEdge(line) ? LineKind.EAVE : line.kind(),
              line.length(),
              line.from().z(),
              line.rise(),
              end(surface, edges, line, line.from(), line.to(), shop),
              end(surface, edges, line, line.to(), line.from(), shop)));
    }
    return List.copyOf(boards);
  }

  private static String part(RoofSurface surface, RoofLine line) {
    return line.planes().stream()
        .flatMap(id -> surface.plane(id).stream())
        .map(RoofPlane::part)
        .findFirst()
        .orElse("");
  }

  private static End end(
      RoofSurface surface,
      List<RoofLine> edges,
      RoofLine line,
      Point3 here,
      Point3 there,
      Shop shop) {
    for (RoofLine other : edges) {
      boolean atFrom = other.from().distance(here) < shop.mark();
      boolean atTo = other.to().distance(here) < shop.mark();
      if (other != line && (atFrom || atTo)) {
        Point3 far = atFrom ? other.to() : other.from();
        return joint(surface, line, other, here, there, far);
      }
    }
    return line.kind() == LineKind.RAKE && line.rise() != 0
        ? new End(Joint.PLUMB, 90 - slopeDegrees(line))
        : End.SQUARE;
  }

  private static End joint(
      RoofSurface surface, RoofLine line, RoofLine other, Point3 here, Point3 there, Point3 far) {
    Point back = there.plan().minus(here.plan()).unit();
    Point on = far.plan().minus(here.plan()).unit();
    double turn = 180 - Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, back.dot(on)))));
    if (turn < IN_LINE) {
      boolean peak = line.kind() == LineKind.RAKE && other.kind() == LineKind.RAKE;
      return peak ? new End(Joint.PLUMB, 90 - slopeDegrees(line)) : new End(Joint.BUTT, 0);
    }
    RoofLine eave = line.kind() == LineKind.RAKE ? other : line;
    Point away = eave == line ? on : back;
    boolean climbs = inward(surface, eave).dot(away) > 0;
    boolean outside = climbs != isHighEdge(eave);
    return new End(outside ? Joint.OUTSIDE_MITRE : Joint.INSIDE_MITRE, turn / 2);
  }

  /** The upper edge of a shed roof, which nothing leans against from the other side. */
  private static boolean isHighEdge(RoofLine line) {
    return line.kind() == LineKind.RIDGE && line.planes().size() == 1;
  }

  /** Plan direction in which the plane of an eave climbs. */
  private static Point inward(RoofSurface surface, RoofLine eave) {
    Plane plane =
        eave.planes().stream()
            .flatMap(id -> surface.plane(id).stream())
            .map(RoofPlane::plane)
            .findFirst()
            .orElseThrow();
    return new Point(plane.a(), plane.b());
  }

  private static double slopeDegrees(RoofLine line) {
    return Math.toDegrees(Math.atan2(Math.abs(line.rise()), line.run()));
  }
}
