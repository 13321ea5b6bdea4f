package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longpoint.drawing.Anchor;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.geometry.Point;
import longpoint.plan.Particulars;
import longpoint.plan.Plan;

/**
 * The title block along the foot of a sheet: job, sheet, scale with its bar, caution, north, and
 * the sheet's number at the right end where a stack of sheets is leafed through. What it holds
 * follows ISO 7200 (from memory) as far as a plan knows it; there is no clock, so a date stands
 * there only if the plan gives one.
 */
final class TitleStrip {
  static final double HEIGHT = 27;

  private static final double PAD = 2.5;
  private static final double NUMBER = 24;
  private static final double NORTH = 20;

  /** Room on both sides of the word under the arrow. */
  private static final double BESIDE_NORTH = 1.5;

  /** Scale and caution cells take these shares of the width, within limits. */
  private static final double SCALE_SHARE = 0.19;

  private static final double CAUTION_SHARE = 0.22;
  private static final double NARROWEST_SCALE = 54;
  private static final double NARROWEST_CAUTION = 58;
  private static final double WIDEST = 78;

  private final Plan plan;
  private final Words words;
  private final Paper paper;
  private final double width;
  private final List<Mark> marks = new ArrayList<>();

  TitleStrip(Plan plan, Paper paper, double width) {
    this.plan = plan;
    this.words = Words.of(plan);
    this.paper = paper;
    this.width = width;
  }

  /**
   * @param number of the sheet as it is shown
   * @param of how many there are
   */
  List<Mark> marks(Point lowerLeft, Sheet sheet, String number, int of) {
    double top = lowerLeft.y() + HEIGHT;
    double end = lowerLeft.x() + width;
    marks.add(Mark.Path.line(new Point(lowerLeft.x(), top), new Point(end, top), Layers.FRAME, ""));
    double x = end - NUMBER;
    number(x, lowerLeft.y(), number, of);
    if (sheet.view() == Sheet.View.PLAN) {
      double cell = north();
      x -= cell;
      rule(x, lowerLeft.y());
      marks.addAll(
          ScaleBar.north(
              new Point(x + cell / 2, lowerLeft.y() + HEIGHT / 2 + 2),
              plan.particulars().north(),
              words));
    }
    double caution = Math.max(NARROWEST_CAUTION, Math.min(WIDEST, width * CAUTION_SHARE));
    x -= caution;
    rule(x, lowerLeft.y());
    column(
        x,
        top,
        caution,
        List.of(new Line(words.text("title.caution"), Lettering.SMALL, Layers.TEXT, 6)));
    double scale = Math.max(NARROWEST_SCALE, Math.min(WIDEST, width * SCALE_SHARE));
    x -= scale;
    rule(x, lowerLeft.y());
    scale(x, lowerLeft.y(), scale, sheet);
    double half = (x - lowerLeft.x()) / 2;
    column(lowerLeft.x(), top, half, job());
    rule(lowerLeft.x() + half, lowerLeft.y());
    column(lowerLeft.x() + half, top, half, sheet(sheet, half - 2 * PAD));
    return marks;
  }

  private double north() {
    double word =
        Lettering.width(ScaleBar.northWord(plan.particulars().north(), words), Lettering.SMALL);
    return Math.max(NORTH, word + 2 * BESIDE_NORTH);
  }

  private record Line(String text, double height, Layer layer, int most) {}

  private List<Line> job() {
    Particulars given = plan.particulars();
    List<Line> lines = new ArrayList<>();
    String title = words.title(plan);
    lines.add(new Line(title, Lettering.MEDIUM, Layers.TEXT, 2));
    String drawn =
        given.drawnBy().isBlank() ? "" : words.text("title.drawnBy", given.drawnBy().strip());
    Stream.of(given.site().strip(), drawn, given.date().strip())
        .filter(s -> !s.isEmpty())
        .forEach(s -> lines.add(new Line(s, Lettering.SMALL, Layers.TEXT, 1)));
    return lines;
  }

  private List<Line> sheet(Sheet sheet, double room) {
    List<Line> lines = new ArrayList<>();
    boolean large = Lettering.width(sheet.title(), Lettering.LARGE) <= room;
    lines.add(
        new Line(
            sheet.title(), large ? Lettering.LARGE : Lettering.MEDIUM, Layers.TEXT, large ? 1 : 2));
    if (sheet.leftOff() > 0) {
      String left = words.counted("title.leftOff", sheet.leftOff());
      lines.add(new Line(left, Lettering.SMALL, Layers.ALERT, 3));
    } else {
      lines.add(new Line(sheet.measures(), Lettering.SMALL, Layers.TEXT, 3));
    }
    return lines;
  }

  /** Wrapped lines from the top of a cell down; what has no room at its foot is left off. */
  private void column(double left, double top, double cell, List<Line> lines) {
    double y = top - PAD / 2;
    for (Line line : lines) {
      List<String> words =
          Lettering.wrapped(line.text(), line.height(), cell - 2 * PAD, line.most());
      for (String shown : words) {
        y -= line.height() * 1.5;
        if (y < top - HEIGHT + 1) {
          return;
        }
        Point at = new Point(left + PAD, y + line.height() * 0.1);
        marks.add(new Mark.Text(at, shown, line.height(), 0, Anchor.START, line.layer(), ""));
      }
      y -= 0.6;
    }
  }

  private void scale(double left, double foot, double cell, Sheet sheet) {
    String unit = words.text("title.unit." + plan.unit().symbol());
    double room = cell - 2 * PAD;
    String shown =
        sheet
            .scale()
            .map(s -> words.text("title.scale", s.title()))
            .orElse(words.text("title.noScale"));
    boolean wide = Lettering.width(shown, Lettering.MEDIUM) <= room;
    String print = sheet.scale().isPresent() ? " " + words.text("title.print") : "";
    List<Line> lines =
        Stream.of(
                new Line(shown, wide ? Lettering.MEDIUM : Lettering.SMALL, Layers.TEXT, 1),
                new Line(unit + " " + paper.title() + "." + print, Lettering.SMALL, Layers.TEXT, 2))
            .collect(Collectors.toList());
    column(left, foot + HEIGHT, cell, lines);
    // Half the last figure stands out past the end of the bar.
    double end = Lettering.width(words.text("scale.feet", "1000"), Lettering.SMALL);
    sheet
        .scale()
        .ifPresent(
            s ->
                marks.addAll(
                    ScaleBar.bar(
                        new Point(left + PAD + 1, foot + 3), words, s, room - 1 - end / 2)));
  }

  private void number(double left, double foot, String number, int of) {
    rule(left, foot);
    Point middle = new Point(left + NUMBER / 2, foot + HEIGHT / 2);
    marks.add(centred(middle.plus(new Point(0, 6)), words.text("title.sheet"), Lettering.SMALL));
    marks.add(centred(middle.minus(new Point(0, 1.5)), number, Lettering.LARGE));
    marks.add(centred(middle.minus(new Point(0, 8)), words.text("title.of", of), Lettering.SMALL));
  }

  private static Mark centred(Point at, String words, double height) {
    return new Mark.Text(at, words, height, 0, Anchor.MIDDLE, Layers.TEXT, "");
  }

  private void rule(double x, double foot) {
    marks.add(Mark.Path.line(new Point(x, foot), new Point(x, foot + HEIGHT), Layers.RULES, ""));
  }
}
