package longpoint.drawing;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/**
 * Everything on a drawing as straight strokes and boxes of lettering: its extent, what lies under a
 * pointer, and what a new label would cover are all read from here.
 */
public final class Strokes implements MarkVisitor {
  /**
   * Largest turn of one chord of an arc, degrees: at 5° a chord leaves its arc by a thousandth of
   * the radius, less than a pen's width on paper for any arc that fits a sheet.
   */
  private static final double CHORD = 5;

  /** A straight stroke and the mark it belongs to. */
  public record Stroke(Segment segment, Mark mark) {}

  /** A line of lettering and the mark it belongs to. */
  public record Label(Box box, Mark mark) {}

  private final double unitsPerMm;
  private final List<Stroke> strokes = new ArrayList<>();
  private final List<Label> labels = new ArrayList<>();
  private final List<Mark.Fill> fills = new ArrayList<>();

  private Strokes(double unitsPerMm) {
    this.unitsPerMm = unitsPerMm;
  }

  /**
   * Breaks marks down.
   *
   * @param unitsPerMm units of the drawing to a millimetre of paper, &gt; 0
   */
  public static Strokes of(List<Mark> marks, double unitsPerMm) {
    Strokes strokes = new Strokes(unitsPerMm);
    marks.forEach(m -> m.accept(strokes));
    return strokes;
  }

  public List<Stroke> strokes() {
    return List.copyOf(strokes);
  }

  public List<Label> labels() {
    return List.copyOf(labels);
  }

  public List<Mark.Fill> fills() {
    return List.copyOf(fills);
  }

  /** The box around all lines, tints and lettering; the width of pens is not counted. */
  public Bounds bounds() {
    Bounds all = Bounds.EMPTY;
    for (Stroke s : strokes) {
      all = all.with(s.segment().from()).with(s.segment().to());
    }
    for (Label l : labels) {
      all = all.with(l.box().bounds());
    }
    for (Mark.Fill f : fills) {
      all = all.with(f.region().shell().bounds());
    }
    return all;
  }

  @Override
  public void path(Mark.Path path) {
    List<Point> points = path.points();
    int sides = path.closed() ? points.size() : points.size() - 1;
    for (int i = 0; i < sides; i++) {
      add(points.get(i), points.get((i + 1) % points.size()), path);
    }
  }

  @Override
  public void arc(Mark.Arc arc) {
    int chords = Math.max(1, (int) Math.ceil(Math.abs(arc.sweepDegrees()) / CHORD));
    for (int i = 0; i < chords; i++) {
      add(arc.at(i / (double) chords), arc.at((i + 1) / (double) chords), arc);
    }
  }

  @Override
  public void text(Mark.Text text) {
    labels.add(new Label(Lettering.box(text, unitsPerMm), text));
  }

  @Override
  public void dimension(Mark.Dimension dimension) {
    DimensionLayout layout = DimensionLayout.of(dimension, unitsPerMm);
    layout.strokes().forEach(s -> strokes.add(new Stroke(s, dimension)));
    labels.add(new Label(Lettering.box(layout.text(), unitsPerMm), dimension));
  }

  @Override
  public void fill(Mark.Fill fill) {
    fills.add(fill);
  }

  @Override
  public void group(Mark.Group group) {
    Placed.marksOf(group, this);
  }

  private void add(Point from, Point to, Mark mark) {
    strokes.add(new Stroke(new Segment(from, to), mark));
  }
}
