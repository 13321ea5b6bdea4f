package longpoint.sheets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import longpoint.drawing.Box;
import longpoint.drawing.Mark;
import longpoint.drawing.Strokes;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.stop.CalledOff;

/**
 * What is taken on a drawing: lettering, which nothing new may cover, and strokes, which new
 * lettering crosses only when there is no better place. All in units of the drawing. What is taken
 * is filed by squares of the ground, so that a question looks only at its neighbours.
 */
final class Clutter {
  /** Room kept clear around lettering, millimetres on paper. */
  private static final double MARGIN_MM = 0.5;

  /** A pen's width, near enough. */
  private static final double PEN_MM = 0.25;

  /** Side of a square: about the length of a label, so that most boxes lie in a few squares … */
  private static final double SQUARE_MM = 12;

  /** … but no more squares than this across the drawing, however closely it is looked at. */
  private static final double MOST_ACROSS = 200;

  /** Marks measured once, to be asked about and taken. */
  record Shape(List<Box> lettering, List<Box> strokes) {
    /** The same marks somewhere else. */
    Shape moved(Point by) {
      return new Shape(moved(lettering, by), moved(strokes, by));
    }

    /** Whether every corner of every box passes. */
    boolean allCorners(Predicate<Point> within) {
      return allCorners(lettering, within) && allCorners(strokes, within);
    }

    private static boolean allCorners(List<Box> boxes, Predicate<Point> within) {
      for (Box box : boxes) {
        for (Point corner : box.corners()) {
          if (!within.test(corner)) {
            return false;
          }
        }
      }
      return true;
    }

    private static List<Box> moved(List<Box> boxes, Point by) {
      return boxes.stream()
          .map(b -> new Box(b.centre().plus(by), b.along(), b.halfLength(), b.halfHeight()))
          .toList();
    }
  }

  private enum Kind {
    LETTERING,
    STROKE,
    LEADER
  }

  private record Taken(Box box, Bounds bounds, Kind kind) {}

  @FunctionalInterface
  private interface Visit {
    boolean test(long column, long row);
  }

  private record Square(long column, long row) {}

  private final double unitsPerMm;
  private final double square;
  private final Map<Square, List<Taken>> squares = new HashMap<>();

  /**
   * @param unitsPerMm units of the drawing to a millimetre of paper, &gt; 0
   * @param across larger side of the drawing, in its units
   */
  Clutter(double unitsPerMm, double across) {
    this.unitsPerMm = unitsPerMm;
    this.square = Math.max(SQUARE_MM * unitsPerMm, across / MOST_ACROSS);
  }

  /** The room that marks need; tints need none. */
  Shape shape(Mark... marks) {
    CalledOff.check();
    Strokes all = Strokes.of(List.of(marks), unitsPerMm);
    List<Box> lettering =
        all.labels().stream().map(l -> l.box().grown(MARGIN_MM * unitsPerMm)).toList();
    List<Box> strokes = new ArrayList<>();
    all.strokes().forEach(s -> pieces(s.segment(), strokes));
    return new Shape(lettering, strokes);
  }

  /** Piece by piece, since the upright box around a long slanted stroke fills many squares. */
  private void pieces(Segment stroke, List<Box> pieces) {
    int count = Math.max(1, (int) Math.ceil(stroke.length() / (2 * square)));
    for (int i = 0; i < count; i++) {
      Segment piece =
          new Segment(
              stroke.from().toward(stroke.to(), i / (double) count),
              stroke.from().toward(stroke.to(), (i + 1) / (double) count));
      pieces.add(Box.around(piece, PEN_MM * unitsPerMm));
    }
  }

  void take(Shape shape) {
    shape.lettering().forEach(b -> file(b, Kind.LETTERING));
    shape.strokes().forEach(b -> file(b, Kind.STROKE));
  }

  /** Takes the room of a leader, which no other leader may cross. */
  void takeLeader(Shape leader) {
    take(leader);
    leader.strokes().forEach(b -> file(b, Kind.LEADER));
  }

  /** Whether a leader would run through lettering or over another leader. */
  boolean tangles(Shape leader) {
    return crosses(leader) || leader.strokes().stream().anyMatch(b -> hits(b, Kind.LEADER));
  }

  /** Whether new lettering would stand on lettering that is there. */
  boolean covers(Shape shape) {
    return shape.lettering().stream().anyMatch(b -> hits(b, Kind.LETTERING));
  }

  /** Whether a stroke would run through lettering, new through old or old through new. */
  boolean crosses(Shape shape) {
    return shape.lettering().stream().anyMatch(b -> hits(b, Kind.STROKE))
        || shape.strokes().stream().anyMatch(b -> hits(b, Kind.LETTERING));
  }

  /** Whether it would touch anything at all, stroke or lettering. */
  boolean touches(Shape shape) {
    return covers(shape)
        || crosses(shape)
        || shape.strokes().stream().anyMatch(b -> hits(b, Kind.STROKE));
  }

  private void file(Box box, Kind kind) {
    Bounds bounds = box.bounds();
    Taken taken = new Taken(box, bounds, kind);
    any(
        bounds,
        (column, row) -> {
          squares.computeIfAbsent(new Square(column, row), s -> new ArrayList<>()).add(taken);
          return false;
        });
  }

  private boolean hits(Box box, Kind kind) {
    Bounds bounds = box.bounds();
    return any(
        bounds,
        (column, row) -> {
          for (Taken t : squares.getOrDefault(new Square(column, row), List.of())) {
            if (t.kind() == kind && near(t.bounds(), bounds) && t.box().overlaps(box)) {
              return true;
            }
          }
          return false;
        });
  }

  private static boolean near(Bounds a, Bounds b) {
    return a.minX() < b.maxX() && b.minX() < a.maxX() && a.minY() < b.maxY() && b.minY() < a.maxY();
  }

  /** Goes through the squares of a box until one answers yes. */
  private boolean any(Bounds box, Visit visit) {
    double side = square;
    long right = (long) Math.floor(box.maxX() / side);
    long top = (long) Math.floor(box.maxY() / side);
    for (long column = (long) Math.floor(box.minX() / side); column <= right; column++) {
      for (long row = (long) Math.floor(box.minY() / side); row <= top; row++) {
        if (visit.test(column, row)) {
          return true;
        }
      }
    }
    return false;
  }
}
