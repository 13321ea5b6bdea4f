package longpoint.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longpoint.drawing.Anchor;
import longpoint.drawing.DimensionLayout;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/**
 * Writes the mark of every truss and rafter along its line, reading the way the line runs. Short
 * ones choose first, since they have the least room. Each tries places along its line on both
 * sides, then past its ends, then off to the side with a leader.
 */
final class FrameLabels {
  /** Shares of the length at which a mark may stand, best first. */
  private static final double[] SHARES = {
    0.5, 0.35, 0.65, 0.25, 0.75, 0.15, 0.85, 0.42, 0.58, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9
  };

  /** Room between line and lettering on paper, above the line with what hangs below a letter. */
  private static final double OFF_MM = 0.8;

  private static final double ABOVE_MM = 1.5;

  /** Past the end of a line, and the longest leader, on paper. */
  private static final double PAST_MM = 1.2;

  private static final double LEADER_STEP_MM = 4;
  private static final double LONGEST_LEADER_MM = 20;
  private static final int DIRECTIONS = 8;

  /**
   * What is to be named.
   *
   * @param half of its width, for one that is drawn with both faces; else 0
   * @param subject the id of what it is
   */
  record Named(Segment line, double half, String mark, String subject) {}

  private final double unitsPerMm;
  private final Clutter clutter;
  private final Bounds limit;
  private int leftOff;
  private int led;

  FrameLabels(double unitsPerMm, Clutter clutter, Bounds limit) {
    this.unitsPerMm = unitsPerMm;
    this.clutter = clutter;
    this.limit = limit;
  }

  /** How many found no place. */
  int leftOff() {
    return leftOff;
  }

  /** How many stand at the end of a leader. */
  int led() {
    return led;
  }

  /** Marks in the order given, but for the leaders, which stand with their lettering. */
  List<Mark> place(List<Named> all) {
    Map<Named, List<Mark>> placed = new LinkedHashMap<>();
    all.forEach(n -> placed.put(n, List.of()));
    all.stream()
        .sorted(Comparator.comparingDouble(n -> n.line().length()))
        .forEach(n -> placed.put(n, place(n)));
    List<Mark> marks = new ArrayList<>();
    placed.values().forEach(marks::addAll);
    return marks;
  }

  private List<Mark> place(Named named) {
    for (Mark.Text text : beside(named)) {
      Clutter.Shape shape = clutter.shape(text);
      if (shape.allCorners(limit::contains) && !clutter.touches(shape)) {
        clutter.take(shape);
        return List.of(text);
      }
    }
    return withLeader(named);
  }

  private List<Mark.Text> beside(Named named) {
    Segment line = named.line();
    double degrees = degrees(line);
    Point reading = direction(degrees);
    Point up = reading.left();
    double above = ABOVE_MM * unitsPerMm + named.half();
    double below = (OFF_MM + Lettering.SMALL) * unitsPerMm + named.half();
    double half = Lettering.width(named.mark(), Lettering.SMALL) / 2 * unitsPerMm;
    List<Mark.Text> texts = new ArrayList<>();
    if (2 * half < line.length()) {
      for (double share : SHARES) {
        Point at = line.from().toward(line.to(), share);
        texts.add(text(named, at.plus(up.times(above)), degrees));
        texts.add(text(named, at.minus(up.times(below)), degrees));
      }
    }
    double past = line.length() / 2 + half + PAST_MM * unitsPerMm;
    Point onLine = line.middle().minus(up.times(Lettering.SMALL / 2 * unitsPerMm));
    Point along = line.direction();
    texts.add(text(named, onLine.minus(along.times(past)), degrees));
    texts.add(text(named, onLine.plus(along.times(past)), degrees));
    return texts;
  }

  private List<Mark> withLeader(Named named) {
    double degrees = degrees(named.line());
    for (double mm = LEADER_STEP_MM; mm <= LONGEST_LEADER_MM; mm += LEADER_STEP_MM) {
      for (int i = 0; i < DIRECTIONS; i++) {
        Point way = direction(360.0 * i / DIRECTIONS);
        for (double share : new double[] {0.5, 0.2, 0.8}) {
          Point anchor = named.line().from().toward(named.line().to(), share);
          Point near = anchor.plus(way.times(mm * unitsPerMm));
          Mark.Text text = centred(named, near, degrees, way);
          Clutter.Shape shape = clutter.shape(text);
          Mark leader = Mark.Path.line(anchor, near, FrameLayers.MARK, named.subject());
          Clutter.Shape stroke = clutter.shape(leader);
          if (shape.allCorners(limit::contains)
              && !clutter.touches(shape)
              && !clutter.crosses(stroke)) {
            clutter.take(shape);
            clutter.take(stroke);
            led++;
            return List.of(leader, text);
          }
        }
      }
    }
    leftOff++;
    return List.of();
  }

  /** Lettering whose near edge stands at the end of a leader. */
  private Mark.Text centred(Named named, Point near, double degrees, Point way) {
    Point reading = direction(degrees);
    double half = Lettering.width(named.mark(), Lettering.SMALL) / 2 + OFF_MM;
    double tall = Lettering.SMALL / 2 + OFF_MM;
    double reach = Math.abs(reading.dot(way)) * half + Math.abs(reading.left().dot(way)) * tall;
    Point middle = near.plus(way.times(reach * unitsPerMm));
    return text(
        named, middle.minus(reading.left().times(Lettering.SMALL / 2 * unitsPerMm)), degrees);
  }

  private static Mark.Text text(Named named, Point at, double degrees) {
    return new Mark.Text(
        at,
        named.mark(),
        Lettering.SMALL,
        degrees,
        Anchor.MIDDLE,
        FrameLayers.MARK,
        named.subject());
  }

  private static double degrees(Segment line) {
    Point along = line.direction();
    return DimensionLayout.readable(Math.toDegrees(Math.atan2(along.y(), along.x())));
  }

  private static Point direction(double degrees) {
    return new Point(Math.cos(Math.toRadians(degrees)), Math.sin(Math.toRadians(degrees)));
  }
}
