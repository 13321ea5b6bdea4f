package longpoint.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import longpoint.geometry.Jts;
import longpoint.geometry.Point;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;

/**
 * Which part's plane lies over which cell of ground, before anything is decided about it. Cells and
 * parts go by their numbers in the ground and in the list of roofs.
 */
final class Presence {
  /** As many grains as {@link Assembly} allows a level line. */
  private static final double LEVEL = 64;

  private final Ground ground;
  private final List<PartRoof> roofs;
  private final Grain grain;
  private final Piece[][] pieces;
  private final boolean[][] own;
  private final List<List<Ground.Border>> borders = new ArrayList<>();

  Presence(Ground ground, List<PartRoof> roofs, Grain grain) {
    this.ground = ground;
    this.roofs = roofs;
    this.grain = grain;
    pieces = new Piece[roofs.size()][cells()];
    own = new boolean[roofs.size()][cells()];
    findPieces();
    findBorders();
  }

  private void findPieces() {
    for (int part = 0; part < parts(); part++) {
      for (int cell = 0; cell < cells(); cell++) {
        if (!sliver(cell)) {
          pieces[part][cell] = highest(roofs.get(part), inside(cell)).orElse(null);
          own[part][cell] =
              pieces[part][cell] != null && within(inside(cell), roofs.get(part).own());
        }
      }
    }
  }

  /** Where overhangs of one part reach over one another the higher one shows, as between parts. */
  private static Optional<Piece> highest(PartRoof roof, Point at) {
    Piece best = null;
    for (Piece piece : roof.pieces()) {
      if (within(at, piece.ground())
          && (best == null || piece.plane().heightAt(at) > best.plane().heightAt(at))) {
        best = piece;
      }
    }
    return Optional.ofNullable(best);
  }

  private void findBorders() {
    ground.cells().forEach(c -> borders.add(new ArrayList<>()));
    for (Ground.Border border : ground.borders()) {
      if (border.left() != Ground.NONE) {
        borders.get(border.left()).add(border);
      }
      if (border.right() != Ground.NONE) {
        borders.get(border.right()).add(border);
      }
    }
  }

  int parts() {
    return roofs.size();
  }

  int cells() {
    return ground.cells().size();
  }

  Ground ground() {
    return ground;
  }

  PartRoof roof(int part) {
    return roofs.get(part);
  }

  boolean sliver(int cell) {
    return ground.cells().get(cell).sliver();
  }

  Point inside(int cell) {
    return ground.cells().get(cell).inside();
  }

  /** The part's plane over a cell, on its own ground or beyond an open side; null if none. */
  Piece piece(int part, int cell) {
    return pieces[part][cell];
  }

  /** Whether the cell is the part's own ground. */
  boolean own(int part, int cell) {
    return own[part][cell];
  }

  /** Whether any other part has the cell for its own ground. */
  boolean ownedByOther(int part, int cell) {
    for (int other = 0; other < parts(); other++) {
      if (other != part && own[other][cell]) {
        return true;
      }
    }
    return false;
  }

  boolean insideWalls(int part, int cell) {
    return within(inside(cell), roofs.get(part).walls());
  }

  List<Ground.Border> borders(int cell) {
    return borders.get(cell);
  }

  /** The cell beyond a border, or {@link Ground#NONE}. */
  static int across(Ground.Border border, int from) {
    return border.left() == from ? border.right() : border.left();
  }

  /** How far one part's plane stands above another's, well inside a cell. */
  double gap(int above, int below, int cell) {
    Point p = inside(cell);
    return pieces[above][cell].plane().heightAt(p) - pieces[below][cell].plane().heightAt(p);
  }

  /** Whether one part's plane stands above another's by more than rounding. */
  boolean higher(int above, int below, int cell) {
    return gap(above, below, cell)
        > grain.height(pieces[above][cell].plane(), pieces[below][cell].plane());
  }

  /** The highest the part's plane comes over a cell. */
  double top(int part, int cell) {
    return Arrays.stream(ground.cells().get(cell).shape().getCoordinates())
        .mapToDouble(c -> pieces[part][cell].plane().heightAt(Jts.point(c)))
        .max()
        .orElseThrow();
  }

  /** Heights no further apart than this are level. */
  double levelWithin() {
    return LEVEL * grain.place();
  }

  /** The highest point of a part's roof on its own ground. */
  double summit(int part) {
    double summit = Double.NEGATIVE_INFINITY;
    for (int cell = 0; cell < cells(); cell++) {
      if (own[part][cell]) {
        summit = Math.max(summit, top(part, cell));
      }
    }
    return summit;
  }

  private static boolean within(Point p, Geometry ground) {
    Coordinate c = Jts.coordinate(p);
    return ground.getEnvelopeInternal().contains(c)
        && SimplePointInAreaLocator.locate(c, ground) != Location.EXTERIOR;
  }
}
