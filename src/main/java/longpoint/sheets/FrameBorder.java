package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Anchor;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.drawing.Page;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
import longpoint.plan.Problem;

/**
 * What every sheet of the frame has: border, title block, general cautions, and the reminders of
 * its own work above the title block.
 */
final class FrameBorder {
  static final double MARGIN = 10;
  static final double PAD = 4;

  /** Strip below the drawing for scale bar, cautions and arrow. */
  private static final double STRIP = 20;

  private static final double BAR = 76;
  private static final double ARROW = 26;

  /** Share of the paper's width the right-hand column takes, and its limits. */
  private static final double COLUMN_SHARE = 0.25;

  private static final double NARROWEST = 74;
  private static final double WIDEST = 100;
  private static final double LEAD = 1.6;

  private static final String MEASURES =
      "Figures are of the frame without deck; an outline to order and to set out by.";

  private final Plan plan;
  private final List<Problem> problems;
  private final Paper paper;
  private final double column;

  /**
   * @param problems of the roof and of the frame
   */
  FrameBorder(Plan plan, List<Problem> problems, Paper paper) {
    this.plan = plan;
    this.problems = List.copyOf(problems);
    this.paper = paper;
    this.column = Math.max(NARROWEST, Math.min(WIDEST, paper.widthMm() * COLUMN_SHARE));
  }

  /** Where the drawing goes. */
  Bounds field() {
    return new Bounds(
        MARGIN + PAD, MARGIN + STRIP, columnLeft() - PAD, paper.heightMm() - MARGIN - PAD);
  }

  double columnLeft() {
    return paper.widthMm() - MARGIN - column;
  }

  /** What a sheet says about itself. */
  record Sheet(String number, String title, TitleBlock.Reading reading, List<String> reminders) {
    Sheet {
      reminders = List.copyOf(reminders);
    }

    static Sheet of(int number, String title, String scale, int leftOff, List<String> reminders) {
      return new Sheet(
          "F-" + number, title, new TitleBlock.Reading(scale, MEASURES, leftOff), reminders);
    }
  }

  /** Where the right-hand column is free: under its top, above the reminders. */
  Bounds column(Sheet sheet) {
    return new Bounds(
        columnLeft() + PAD,
        remindersTop(sheet) + PAD,
        paper.widthMm() - MARGIN - PAD,
        paper.heightMm() - MARGIN - PAD);
  }

  Page page(Sheet sheet, List<Mark> content) {
    List<Mark> marks = new ArrayList<>();
    double right = paper.widthMm() - MARGIN;
    double top = paper.heightMm() - MARGIN;
    Point corner = new Point(columnLeft(), MARGIN);
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
    marks.add(Mark.Path.line(corner, new Point(columnLeft(), top), Layers.FRAME, ""));
    marks.addAll(title(sheet).marks(corner));
    Point cautions = new Point(MARGIN + BAR, MARGIN + STRIP - PAD / 2);
    marks.addAll(TitleBlock.cautions(cautions, columnLeft() - ARROW - cautions.x()));
    marks.addAll(reminders(sheet));
    marks.addAll(content);
    String job = plan.title().isBlank() ? "Untitled" : plan.title();
    return new Page(
        sheet.number(), sheet.title() + ", " + job, paper.widthMm(), paper.heightMm(), marks);
  }

  /** Scale bar and arrow, for sheets that show the plan. */
  List<Mark> compass(PaperScale scale) {
    List<Mark> marks =
        new ArrayList<>(ScaleBar.bar(new Point(MARGIN + 8, MARGIN + 7), plan.unit(), scale));
    marks.addAll(ScaleBar.north(new Point(columnLeft() - ARROW / 2, MARGIN + 11)));
    return marks;
  }

  private TitleBlock title(Sheet sheet) {
    String heading = sheet.number() + "   " + sheet.title();
    return new TitleBlock(plan, problems, heading, sheet.reading(), paper, column);
  }

  private List<String> lines(Sheet sheet) {
    return sheet.reminders().stream()
        .flatMap(r -> Lettering.wrapped(r, Lettering.SMALL, column - 2 * PAD, 12).stream())
        .toList();
  }

  private double remindersTop(Sheet sheet) {
    double title = MARGIN + title(sheet).height();
    int lines = lines(sheet).size();
    return lines == 0 ? title : title + PAD + (lines + 2) * Lettering.SMALL * LEAD;
  }

  private List<Mark> reminders(Sheet sheet) {
    List<Mark> marks = new ArrayList<>();
    if (sheet.reminders().isEmpty()) {
      return marks;
    }
    double left = columnLeft() + PAD;
    double y = remindersTop(sheet) - Lettering.MEDIUM;
    marks.add(text(new Point(left, y), "Before you start", Lettering.MEDIUM));
    y -= Lettering.SMALL * 0.4;
    for (String line : lines(sheet)) {
      y -= Lettering.SMALL * LEAD;
      marks.add(text(new Point(left, y), line, Lettering.SMALL));
    }
    return marks;
  }

  private static Mark text(Point at, String words, double height) {
    return new Mark.Text(at, words, height, 0, Anchor.START, Layers.TEXT, "");
  }
}
