package longpoint.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.framing.stick.Rafter;
import longpoint.framing.stick.Seat;
import longpoint.geometry.Point;
import longpoint.units.Rounding;

/** A birdsmouth with all its measures: on the plate, to scale, a piece of the rafter about it. */
final class SeatFigure {
  /** How much of the rafter is shown to each side, in its depths. */
  private static final double SHOWN = 1.3;

  private static final double ROW_MM = 6;

  private final Rafter rafter;
  private final Seat seat;
  private final Words words;
  private final double mm;
  private final List<Mark> marks = new ArrayList<>();

  private SeatFigure(Rafter rafter, Seat seat, Words words, double unitsPerMm) {
    this.rafter = rafter;
    this.seat = seat;
    this.words = words;
    this.mm = unitsPerMm;
  }

  /** One for each seat that differs from the others. */
  static List<SheetFigure> all(List<Rafter> rafters, Words words, double unitsPerMm) {
    Map<String, List<Rafter>> like = new LinkedHashMap<>();
    for (Rafter r : rafters) {
      r.seat()
          .filter(s -> s.seat() > 0)
          .ifPresent(s -> like.computeIfAbsent(key(r, s), k -> new ArrayList<>()).add(r));
    }
    List<SheetFigure> figures = new ArrayList<>();
    for (List<Rafter> same : like.values()) {
      Rafter r = same.get(0);
      SeatFigure figure = new SeatFigure(r, r.seat().orElseThrow(), words, unitsPerMm);
      figure.draw();
      figures.add(
          new SheetFigure("seat " + r.mark(), unitsPerMm, figure.marks)
              .captioned(figure.caption(same)));
    }
    return figures;
  }

  private static String key(Rafter r, Seat s) {
    return String.format(
        Locale.ROOT,
        "%s %.3f %.3f %.2f %.3f",
        r.part(),
        s.seat(),
        s.height(),
        r.plumbCut(),
        r.depth());
  }

  private double tan() {
    return Math.tan(Math.toRadians(90 - rafter.plumbCut()));
  }

  /** The outer corner of the birdsmouth is where the drawing starts from. */
  private void draw() {
    double wide = SHOWN * rafter.depth() + seat.seat();
    double out = rafter.tail() > 0 ? SHOWN * rafter.depth() : 0;
    double plumbDepth = rafter.depth() * Math.hypot(1, tan());
    Point top = new Point(0, seat.height());
    Point low = new Point(-out, seat.height() - out * tan());
    Point high = new Point(wide, seat.height() + wide * tan());
    Point deep = new Point(0, -plumbDepth);
    marks.add(
        new Mark.Path(
            List.of(
                low,
                high,
                high.plus(deep),
                new Point(seat.seat(), 0),
                new Point(0, 0),
                top.plus(deep),
                low.plus(deep)),
            true,
            FrameLayers.RAFTER,
            rafter.mark()));
    double plate = Math.max(seat.bearing(), rafter.thickness());
    double under = -3 * rafter.thickness();
    marks.add(
        new Mark.Path(
            List.of(
                new Point(0, 0), new Point(plate, 0), new Point(plate, under), new Point(0, under)),
            true,
            FrameLayers.WALL,
            rafter.mark()));
    dimension(new Point(0, 0), top, ROW_MM, seat.height());
    dimension(new Point(0, 0), top.plus(deep), -ROW_MM, seat.plumb());
    dimension(new Point(0, 0), new Point(seat.seat(), 0), under / mm - ROW_MM, seat.seat());
  }

  private void dimension(Point from, Point to, double offset, double length) {
    String shown = words.small(length, Rounding.NEAREST);
    double room = from.distance(to) / mm;
    double width = Lettering.width(shown, Lettering.SMALL) + 3;
    double slide = width <= room ? 0 : (room + width) / 2;
    marks.add(new Mark.Dimension(from, to, offset, slide, shown, FrameLayers.TAPE, rafter.mark()));
  }

  private List<SheetFigure.Line> caption(List<Rafter> same) {
    List<SheetFigure.Line> lines = new ArrayList<>();
    String more = same.size() > 1 ? words.text("seat.more", same.size() - 1) : "";
    String kind = words.choice("rafter", rafter.kind());
    lines.add(SheetFigure.Line.of(words.text("seat.title", rafter.mark() + "   " + kind) + more));
    lines.add(SheetFigure.Line.of(new RafterWords(words).seat(seat)));
    if (rafter.drop() > 0) {
      lines.add(SheetFigure.Line.of(new RafterWords(words).drop(rafter)));
    }
    if (seat.isDeep()) {
      lines.add(new SheetFigure.Line(words.text("seat.deep"), Layers.ALERT));
    }
    return lines;
  }
}
