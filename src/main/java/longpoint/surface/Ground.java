package longpoint.surface;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import longpoint.geometry.Jts;
import longpoint.geometry.Point;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * The ground cut into cells along every line where the roof over it may change.
 *
 * <p>All lines are noded together once, so cells that touch share their corners to the last bit and
 * the cells are a partition by construction: no sliver is left to be argued about between two
 * overlays.
 *
 * @param cells the pieces of ground, none cut by any of the lines
 * @param borders every stretch of line with a cell on at least one side, in a fixed order
 */
record Ground(List<Cell> cells, List<Border> borders) {
  /**
   * A piece of ground.
   *
   * @param inside a point well inside it
   * @param sliver whether it is too thin for that point to be trusted
   */
  record Cell(Polygon shape, Point inside, boolean sliver) {}

  /**
   * A stretch of line between two cells.
   *
   * @param left number of the cell to its left, or {@link #NONE}
   * @param right number of the cell to its right, or {@link #NONE}
   */
  record Border(Point from, Point to, int left, int right) {
    double length() {
      return from.distance(to);
    }
  }

  static final int NONE = -1;

  private record Step(Coordinate from, Coordinate to) {}

  /**
   * Cuts the ground.
   *
   * @param lines open or closed, crossing as they like
   * @param grain places nearer than this are made one
   */
  static Ground of(Collection<LineString> lines, double grain) {
    Map<Step, Integer> sideOf = new HashMap<>();
    List<Cell> cells = cells(Noding.cut(lines, grain), grain);
    for (int i = 0; i < cells.size(); i++) {
      Polygon shape = cells.get(i).shape();
      walk(shape.getExteriorRing(), true, i, sideOf);
      for (int h = 0; h < shape.getNumInteriorRing(); h++) {
        walk(shape.getInteriorRingN(h), false, i, sideOf);
      }
    }
    return new Ground(cells, borders(sideOf));
  }

  private static int order(Step a, Step b) {
    int first = a.from().compareTo(b.from());
    return first != 0 ? first : a.to().compareTo(b.to());
  }

  private static List<Cell> cells(List<LineString> lines, double grain) {
    Polygonizer polygonizer = new Polygonizer();
    polygonizer.add(lines);
    List<Cell> cells = new ArrayList<>();
    for (Object each : polygonizer.getPolygons()) {
      Polygon shape = (Polygon) each;
      boolean sliver = shape.getArea() < 2 * grain * shape.getLength();
      Coordinate inside = sliver ? shape.getCoordinate() : shape.getInteriorPoint().getCoordinate();
      cells.add(new Cell(shape, Jts.point(inside), sliver));
    }
    cells.sort(
        (a, b) ->
            a.shape().getEnvelopeInternal().compareTo(b.shape().getEnvelopeInternal()) != 0
                ? a.shape().getEnvelopeInternal().compareTo(b.shape().getEnvelopeInternal())
                : a.shape().getCoordinate().compareTo(b.shape().getCoordinate()));
    return List.copyOf(cells);
  }

  private static void walk(LinearRing ring, boolean shell, int cell, Map<Step, Integer> sideOf) {
    Coordinate[] c = ring.getCoordinates();
    boolean leftIsInside = Orientation.isCCW(c) == shell;
    for (int i = 0; i + 1 < c.length; i++) {
      sideOf.put(leftIsInside ? new Step(c[i], c[i + 1]) : new Step(c[i + 1], c[i]), cell);
    }
  }

  private static List<Border> borders(Map<Step, Integer> sideOf) {
    Map<Step, Border> borders = new TreeMap<>(Ground::order);
    for (Step step : sideOf.keySet()) {
      boolean forward = step.from().compareTo(step.to()) < 0;
      Step way = forward ? step : new Step(step.to(), step.from());
      Step back = new Step(way.to(), way.from());
      borders.put(
          way,
          new Border(
              Jts.point(way.from()),
              Jts.point(way.to()),
              sideOf.getOrDefault(way, NONE),
              sideOf.getOrDefault(back, NONE)));
    }
    return List.copyOf(borders.values());
  }
}
