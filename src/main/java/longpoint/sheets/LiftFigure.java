package longpoint.sheets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longpoint.drawing.Anchor;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.field.lift.HangPoint;
import longpoint.field.lift.LiftSection;
import longpoint.framing.FramingSet;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussMark;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/**
 * A section from above, its trusses running to the right, and seen square to them with its lines;
 * hang points and centre of gravity with their measures from the marked edges.
 */
final class LiftFigure {
  private static final double ROW_MM = 8;
  private static final double DOT_MM = 1.6;
  private static final double AIR_MM = 1;

  private final LiftSection section;
  private final Words words;
  private final double unitsPerMm;
  private final List<Truss> trusses;
  private final Map<String, TrussMark> marks = new HashMap<>();
  private final List<Mark> drawn = new ArrayList<>();
  private final Clutter clutter;

  private LiftFigure(LiftSection section, FramingSet framing, Words words, double unitsPerMm) {
    this.section = section;
    this.words = words;
    this.unitsPerMm = unitsPerMm;
    this.clutter =
        new Clutter(unitsPerMm, Math.max(section.size().over(), section.size().across()));
    this.trusses =
        framing.trusses().stream().filter(t -> section.trusses().contains(t.id())).toList();
    framing.marks().forEach(m -> marks.put(m.mark(), m));
  }

  static SheetFigure plan(LiftSection section, FramingSet framing, Words words, double unitsPerMm) {
    LiftFigure figure = new LiftFigure(section, framing, words, unitsPerMm);
    figure.fromAbove();
    return figure.captioned("lift-plan", words.text("lift.fromAbove"));
  }

  static SheetFigure elevation(
      LiftSection section, FramingSet framing, Words words, double unitsPerMm) {
    LiftFigure figure = new LiftFigure(section, framing, words, unitsPerMm);
    figure.fromTheSide();
    return figure.captioned("lift-elevation", words.text("lift.fromSide"));
  }

  private SheetFigure captioned(String name, String caption) {
    return new SheetFigure(name, unitsPerMm, drawn)
        .captioned(List.of(SheetFigure.Line.of(caption)));
  }

  private void fromAbove() {
    List<Point> ground = section.ground().points().stream().map(this::local).toList();
    path(ground, true, AidLayers.AROUND);
    for (Truss t : trusses) {
      TrussMark mark = marks.get(t.mark());
      Point from = local(t.from());
      Point to = local(t.to());
      Point way = to.minus(from).unit();
      boolean drawnSo = t.turn() == Truss.Turn.AS_DRAWN;
      Point low = from.minus(way.times(drawnSo ? mark.tailLow() : mark.tailHigh()));
      Point high = to.plus(way.times(drawnSo ? mark.tailHigh() : mark.tailLow()));
      path(List.of(low, high), false, FrameLayers.TRUSS);
      Point end = low.x() > high.x() ? low : high;
      text(
          end.plus(new Point(AIR_MM * 2 * unitsPerMm, -Lettering.SMALL / 2 * unitsPerMm)),
          t.mark(),
          Anchor.START,
          FrameLayers.MARK);
    }
    Point centre = local(section.centre().plan());
    for (HangPoint p : section.points()) {
      Point at = local(p.at().plan());
      path(List.of(at, centre), false, AidLayers.LINE);
      dot(at, Cells.count(p.number()));
    }
    cross(centre);
    double left = ground.stream().mapToDouble(Point::x).min().orElse(0);
    double right = ground.stream().mapToDouble(Point::x).max().orElse(0);
    double low = ground.stream().mapToDouble(Point::y).min().orElse(0);
    double high = ground.stream().mapToDouble(Point::y).max().orElse(0);
    dimension(new Point(0, low), new Point(centre.x(), low), -ROW_MM);
    dimension(new Point(left, low), new Point(right, low), -2 * ROW_MM);
    dimension(new Point(left, 0), new Point(left, centre.y()), ROW_MM);
    dimension(new Point(left, low), new Point(left, high), 2 * ROW_MM);
  }

  /** Over the trusses, and across them with the first at the foot. */
  private Point local(Point p) {
    return new Point(section.axes().over(p), section.axes().across(p));
  }

  private void fromTheSide() {
    double foot = section.axes().foot();
    for (Truss t : trusses) {
      TrussMark mark = marks.get(t.mark());
      mark.shape().webs().forEach(w -> stick(t, mark, w, FrameLayers.WEB));
      mark.shape().chords().forEach(c -> stick(t, mark, c, FrameLayers.TRUSS));
    }
    double top = section.hook().z() - foot;
    Point hook = new Point(section.axes().over(section.hook().plan()), top);
    Point centre = new Point(hook.x(), section.centre().z() - foot);
    double highest = 0;
    for (HangPoint p : section.points()) {
      Point at = new Point(p.over(), p.at().z() - foot);
      highest = Math.max(highest, at.y());
      path(List.of(at, hook), false, AidLayers.LINE);
    }
    Map<Point, String> places = new LinkedHashMap<>();
    for (HangPoint p : section.points()) {
      Point at = new Point(p.over(), p.at().z() - foot);
      Point known =
          places.keySet().stream()
              .filter(k -> k.distance(at) < DOT_MM * unitsPerMm)
              .findFirst()
              .orElse(at);
      places.merge(known, Cells.count(p.number()), (a, b) -> a + ", " + b);
    }
    places.forEach(this::dot);
    cross(centre);
    path(List.of(centre, hook), false, AidLayers.AROUND);
    double left = section.points().stream().mapToDouble(HangPoint::over).min().orElse(0);
    double right = Math.max(section.size().over(), left);
    dimension(new Point(right, 0), new Point(right, centre.y()), -ROW_MM);
    if (highest > 0 && top > highest) {
      dimension(new Point(right, highest), new Point(right, top), -2.5 * ROW_MM);
    }
    text(
        hook.plus(new Point(AIR_MM * 2 * unitsPerMm, 0)),
        words.text("lift.hookHere"),
        Anchor.START,
        FrameLayers.MARK);
  }

  private void stick(Truss t, TrussMark mark, Segment s, Layer layer) {
    if (s.length() > 0) {
      path(List.of(side(t, mark, s.from()), side(t, mark, s.to())), false, layer);
    }
  }

  /** A place of a mark's outline, over and above the section's corner. */
  private Point side(Truss t, TrussMark mark, Point p) {
    double v = t.turn() == Truss.Turn.AS_DRAWN ? p.x() : mark.span() - p.x();
    Point at = t.from().plus(t.to().minus(t.from()).unit().times(v));
    return new Point(section.axes().over(at), t.plate() + p.y() - section.axes().foot());
  }

  private void path(List<Point> points, boolean closed, Layer layer) {
    if (points.get(0).distance(points.get(1)) > 0) {
      drawn.add(new Mark.Path(points, closed, layer, section.part()));
    }
  }

  private void dot(Point at, String numbers) {
    drawn.add(new Mark.Arc(at, DOT_MM / 2 * unitsPerMm, 0, 360, AidLayers.HANG, section.part()));
    boolean left = at.x() < section.axes().over(section.centre().plan());
    double aside = DOT_MM * unitsPerMm;
    text(
        at.plus(new Point(left ? -aside : aside, AIR_MM * unitsPerMm)),
        numbers,
        left ? Anchor.END : Anchor.START,
        AidLayers.HANG);
  }

  /** The sign for a centre of gravity: a circle with a cross through it. */
  private void cross(Point at) {
    double arm = 2.2 * unitsPerMm;
    drawn.add(new Mark.Arc(at, arm * 0.6, 0, 360, AidLayers.CENTRE, section.part()));
    path(List.of(at.minus(new Point(arm, 0)), at.plus(new Point(arm, 0))), false, AidLayers.CENTRE);
    path(List.of(at.minus(new Point(0, arm)), at.plus(new Point(0, arm))), false, AidLayers.CENTRE);
  }

  /** Lettering that would cover other lettering is left out: the tables have it. */
  private void text(Point at, String said, Anchor anchor, Layer layer) {
    Mark text = new Mark.Text(at, said, Lettering.SMALL, 0, anchor, layer, section.part());
    Clutter.Shape shape = clutter.shape(text);
    if (!clutter.covers(shape)) {
      clutter.take(shape);
      drawn.add(text);
    }
  }

  private void dimension(Point from, Point to, double offset) {
    double length = from.distance(to);
    if (length <= 0) {
      return;
    }
    String said = words.length(length);
    double wide = Lettering.width(said, Lettering.SMALL) + 2;
    double slide = wide * unitsPerMm <= length ? 0 : length / unitsPerMm / 2 + wide / 2;
    Mark mark = new Mark.Dimension(from, to, offset, slide, said, FrameLayers.TAPE, section.part());
    clutter.take(clutter.shape(mark));
    drawn.add(mark);
  }
}
