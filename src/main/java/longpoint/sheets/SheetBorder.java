package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longpoint.drawing.Anchor;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.drawing.Page;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
import longpoint.plan.Problem;

/**
 * What every sheet has: border, title block along the foot, above it the reminders of the sheet's
 * own work and, where the plan has errors, that it is not to be built from. The rest is free.
 */
final class SheetBorder {
  static final double MARGIN = 10;
  static final double PAD = 4;

  /** From line to line, over the height of a capital. */
  static final double LEAD = 1.6;

  /** The right-hand column of sheets that have one: share of the paper's width, and limits. */
  private static final double COLUMN_SHARE = 0.2;

  private static final double NARROWEST = 66;
  private static final double WIDEST = 90;

  /** Room after the band's heading. */
  private static final double AFTER_HEADING = 4;

  private static final double GAP = 5;
  private static final int REMINDER_LINES = 8;
  private static final int PROBLEMS = 2;

  private final Plan plan;
  private final Words words;
  private final List<Problem> errors;
  private final Paper paper;

  /**
   * @param problems of the whole design
   */
  SheetBorder(Plan plan, List<Problem> problems, Paper paper) {
    this.plan = plan;
    this.words = Words.of(plan);
    this.errors = problems.stream().filter(p -> p.level() == Problem.Level.ERROR).toList();
    this.paper = paper;
  }

  Plan plan() {
    return plan;
  }

  /** What is free on a sheet with these reminders. */
  Bounds field(List<String> reminders) {
    double foot = MARGIN + TitleStrip.HEIGHT + bandHeight(reminders) + errorHeight();
    return new Bounds(
        MARGIN + PAD, foot + PAD, paper.widthMm() - MARGIN - PAD, paper.heightMm() - MARGIN - PAD);
  }

  /** The free field left of the right-hand column. */
  Bounds drawing(List<String> reminders) {
    Bounds all = field(reminders);
    return new Bounds(all.minX(), all.minY(), all.maxX() - columnWidth() - PAD, all.maxY());
  }

  /** The right-hand column, for a legend and small tables. */
  Bounds column(List<String> reminders) {
    Bounds all = field(reminders);
    return new Bounds(all.maxX() - columnWidth(), all.minY(), all.maxX(), all.maxY());
  }

  private double columnWidth() {
    return Math.max(NARROWEST, Math.min(WIDEST, paper.widthMm() * COLUMN_SHARE));
  }

  /**
   * The finished page.
   *
   * @param number from 1
   * @param of how many sheets there are
   */
  Page page(Sheet sheet, int number, int of) {
    List<Mark> marks = new ArrayList<>();
    double right = paper.widthMm() - MARGIN;
    double top = paper.heightMm() - MARGIN;
    marks.add(
        new Mark.Path(
            List.of(
                new Point(MARGIN, MARGIN),
                new Point(right, MARGIN),
                new Point(right, top),
                new Point(MARGIN, top)),
            true,
            Layers.FRAME,
            ""));
    String shown = number(number, of);
    marks.addAll(
        new TitleStrip(plan, paper, right - MARGIN)
            .marks(new Point(MARGIN, MARGIN), sheet, shown, of));
    errors(marks);
    band(marks, sheet.reminders());
    marks.addAll(sheet.marks());
    return new Page(
        shown, sheet.title() + ", " + words.title(plan), paper.widthMm(), paper.heightMm(), marks);
  }

  /** With as many digits as the last, so that files sort as sheets do. */
  static String number(int number, int of) {
    int digits = Math.max(2, String.valueOf(of).length());
    return String.format(Locale.ROOT, "%0" + digits + "d", number);
  }

  private double width() {
    return paper.widthMm() - 2 * MARGIN - 2 * PAD;
  }

  private List<String> errorLines() {
    List<String> lines = new ArrayList<>();
    if (!errors.isEmpty()) {
      lines.add(words.text("border.incomplete"));
      errors.stream()
          .limit(PROBLEMS)
          .forEach(
              p ->
                  lines.add(
                      Lettering.fitted(p.message(words.language()), Lettering.SMALL, width())));
    }
    return lines;
  }

  private double errorHeight() {
    List<String> lines = errorLines();
    return lines.isEmpty()
        ? 0
        : PAD / 2 + (Lettering.MEDIUM + (lines.size() - 1) * Lettering.SMALL) * LEAD;
  }

  private void errors(List<Mark> marks) {
    double y = MARGIN + TitleStrip.HEIGHT + errorHeight() - PAD / 4;
    double height = Lettering.MEDIUM;
    for (String line : errorLines()) {
      y -= height * LEAD;
      Point at = new Point(MARGIN + PAD, y + height * 0.3);
      marks.add(text(at, line, height, Layers.ALERT));
      height = Lettering.SMALL;
    }
  }

  private List<List<String>> reminderLines(List<String> reminders) {
    double each = reminderWidth(reminders);
    return reminders.stream()
        .map(r -> Lettering.wrapped(r, Lettering.SMALL, each, REMINDER_LINES))
        .toList();
  }

  private double reminderWidth(List<String> reminders) {
    return (width() - headingWidth() - (reminders.size() - 1) * GAP) / reminders.size();
  }

  private List<String> heading() {
    return List.of(words.text("border.before"), words.text("border.before.second"));
  }

  private double headingWidth() {
    double widest =
        heading().stream().mapToDouble(h -> Lettering.width(h, Lettering.MEDIUM)).max().orElse(0);
    return widest + AFTER_HEADING;
  }

  private double bandHeight(List<String> reminders) {
    int lines = reminderLines(reminders).stream().mapToInt(List::size).max().orElse(0);
    return lines == 0 ? 0 : PAD + Math.max(3, lines) * Lettering.SMALL * LEAD;
  }

  /** Side by side, their heading to the left. */
  private void band(List<Mark> marks, List<String> reminders) {
    if (reminders.isEmpty()) {
      return;
    }
    double top = MARGIN + TitleStrip.HEIGHT + errorHeight() + bandHeight(reminders);
    marks.add(
        Mark.Path.line(
            new Point(MARGIN, top), new Point(paper.widthMm() - MARGIN, top), Layers.RULES, ""));
    double left = MARGIN + PAD;
    List<String> heading = heading();
    for (int i = 0; i < heading.size(); i++) {
      double y = top - PAD / 2 - Lettering.MEDIUM - i * Lettering.MEDIUM * LEAD;
      marks.add(text(new Point(left, y), heading.get(i), Lettering.MEDIUM, Layers.TEXT));
    }
    left += headingWidth();
    for (List<String> lines : reminderLines(reminders)) {
      double y = top - PAD / 2;
      for (String line : lines) {
        y -= Lettering.SMALL * LEAD;
        Point at = new Point(left, y + Lettering.SMALL * 0.4);
        marks.add(text(at, line, Lettering.SMALL, Layers.TEXT));
      }
      left += reminderWidth(reminders) + GAP;
    }
  }

  private static Mark text(Point at, String words, double height, Layer layer) {
    return new Mark.Text(at, words, height, 0, Anchor.START, layer, "");
  }
}
