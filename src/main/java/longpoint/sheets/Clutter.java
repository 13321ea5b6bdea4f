package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import longpoint.drawing.Box;
import longpoint.drawing.Mark;
import longpoint.drawing.Strokes;
import longpoint.geometry.Bounds;

/**
 * What is taken on a drawing: lettering, which nothing new may cover, and strokes, which new
 * lettering crosses only when there is no better place. All in units of the drawing.
 */
final class Clutter {
  /** Room kept clear around lettering and strokes, millimetres on paper. */
  private static final double MARGIN_MM = 0.5;

  /** A box with the upright box around it, which settles most questions at once. */
  private record Taken(Box box, Bounds bounds) {
    static Taken of(Box box) {
      return new Taken(box, box.bounds());
    }

    boolean overlaps(Taken other) {
      return bounds.minX() < other.bounds.maxX()
          && other.bounds.minX() < bounds.maxX()
          && bounds.minY() < other.bounds.maxY()
          && other.bounds.minY() < bounds.maxY()
          && box.overlaps(other.box);
    }
  }

  private final double unitsPerMm;
  private final List<Taken> lettering = new ArrayList<>();
  private final List<Taken> strokes = new ArrayList<>();

  Clutter(double unitsPerMm) {
    this.unitsPerMm = unitsPerMm;
  }

  /** Takes the room of marks; tints take none. */
  void take(Mark... marks) {
    Strokes all = Strokes.of(List.of(marks), unitsPerMm);
    all.labels().forEach(l -> lettering.add(Taken.of(grown(l.box()))));
    all.strokes().forEach(s -> strokes.add(Taken.of(Box.around(s.segment(), width()))));
  }

  /** Whether lettering of the marks would stand on lettering that is there. */
  boolean covers(Mark... marks) {
    return Strokes.of(List.of(marks), unitsPerMm).labels().stream()
        .anyMatch(l -> count(lettering, l.box()) > 0);
  }

  /** How many strokes would run through lettering: new through old and old through new. */
  int crossings(Mark... marks) {
    Strokes all = Strokes.of(List.of(marks), unitsPerMm);
    int count = 0;
    for (Strokes.Label l : all.labels()) {
      count += count(strokes, grown(l.box()));
    }
    for (Strokes.Stroke s : all.strokes()) {
      count += count(lettering, Box.around(s.segment(), width()));
    }
    return count;
  }

  /** Whether the marks would touch anything at all, stroke or lettering. */
  boolean touches(Mark... marks) {
    Strokes all = Strokes.of(List.of(marks), unitsPerMm);
    return Stream.concat(
            all.labels().stream().map(l -> grown(l.box())),
            all.strokes().stream().map(s -> grown(Box.around(s.segment(), width()))))
        .anyMatch(b -> count(lettering, b) + count(strokes, b) > 0);
  }

  private Box grown(Box box) {
    return box.grown(MARGIN_MM * unitsPerMm);
  }

  /** A pen's width, near enough. */
  private double width() {
    return 0.25 * unitsPerMm;
  }

  private static int count(List<Taken> taken, Box box) {
    Taken mine = Taken.of(box);
    int count = 0;
    for (Taken other : taken) {
      if (mine.overlaps(other)) {
        count++;
      }
    }
    return count;
  }
}
