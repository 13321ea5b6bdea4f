package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import longpoint.drawing.Anchor;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.field.lift.LiftSection;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;

/**
 * A sheet for each section to be hoisted, to go over with the crane operator: plan and elevation,
 * weights and lines, cautions, and boxes that the operator and the rigger fill in.
 */
final class LiftSheets {
  /** Share of the width that tables and words take, and its least in millimetres. */
  private static final double WORDS = 0.4;

  private static final double NARROWEST = 92;
  private static final double GAP = 6;

  /** A box to be filled in by hand. */
  private static final double BOX = 8;

  private static final List<String> BOXES =
      List.of(
          "lift.box.crane",
          "lift.box.radius",
          "lift.box.setRadius",
          "lift.box.capacity",
          "lift.box.rigging",
          "lift.box.wind",
          "lift.box.rigger",
          "lift.box.operator");

  /** Common practice, besides what the section itself calls for. */
  private static final List<String> CAUTIONS =
      List.of(
          "lift.caution.rigger",
          "lift.caution.weigh",
          "lift.caution.braced",
          "lift.caution.trial",
          "lift.caution.wind",
          "lift.caution.tag",
          "lift.caution.clear",
          "lift.caution.slings",
          "lift.caution.set");

  private final Solved solved;
  private final Words words;
  private final SheetBorder border;
  private final LiftRows rows;

  private LiftSheets(Solved solved, SheetBorder border) {
    this.solved = solved;
    this.words = Words.of(solved.plan());
    this.border = border;
    this.rows = new LiftRows(solved.names());
  }

  /** None for a plan without lifts. */
  static List<Sheet> of(Solved solved, SheetBorder border) {
    LiftSheets sheets = new LiftSheets(solved, border);
    List<Sheet> all = new ArrayList<>();
    solved.aids().lifts().sections().forEach(s -> all.addAll(sheets.sheets(s)));
    return all;
  }

  private List<Sheet> sheets(LiftSection section) {
    List<String> reminders =
        Stream.of("reminder.rigger", "reminder.restraint", "reminder.height")
            .map(words::text)
            .toList();
    Bounds field = border.field(reminders);
    double wide = Math.max(NARROWEST, field.width() * WORDS);
    Bounds right = new Bounds(field.maxX() - wide, field.minY(), field.maxX(), field.maxY());
    double boxes = Lettering.MEDIUM * 2 + BOXES.size() / 2 * BOX;
    Bounds left = new Bounds(field.minX(), field.minY(), right.minX() - GAP, field.maxY());
    Bounds above = new Bounds(left.minX(), left.minY() + boxes + GAP, left.maxX(), left.maxY());
    FigureShelves.Drawn figures =
        FigureShelves.fitted(
            solved.plan().unit(),
            above,
            new FigureShelves.Share(1, 0.55),
            scale ->
                List.of(
                    LiftFigure.plan(section, solved.framing(), words, scale),
                    LiftFigure.elevation(section, solved.framing(), words, scale)));
    List<List<Mark>> drawn = FigureShelves.pages(figures.figures(), above);
    List<Mark> marks = new ArrayList<>(drawn.get(0));
    List<Mark> over = new ArrayList<>();
    column(section, right, marks, over);
    boxes(new Point(left.minX(), left.minY() + boxes), left.width(), marks);
    String title = words.text("lift.sheet", rows.name(section));
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(sheet(title, figures.scale(), reminders, marks));
    for (List<Mark> more : drawn.subList(1, drawn.size())) {
      sheets.add(sheet(title, figures.scale(), reminders, more));
    }
    if (!over.isEmpty()) {
      sheets.add(Sheet.tables(title, words.text("lift.measures"), reminders, over));
    }
    return sheets;
  }

  private Sheet sheet(String title, PaperScale scale, List<String> reminders, List<Mark> marks) {
    return Sheet.figures(title, scale, words.text("lift.measures"), reminders, marks);
  }

  /** Tables and cautions down the column; what has no room stands on a further sheet. */
  private void column(LiftSection section, Bounds right, List<Mark> marks, List<Mark> over) {
    double y = right.maxY();
    for (SheetTable table :
        List.of(rows.pieces(section).onSheet(words), rows.lines(section).onSheet(words))) {
      marks.addAll(table.marks(new Point(right.minX(), y), right.width()));
      y -= table.height(right.width());
    }
    List<String> said = new ArrayList<>();
    said.add(rows.balance(section));
    said.addAll(rows.lines(section).notes());
    CAUTIONS.stream().map(words::text).forEach(said::add);
    Paragraphs cautions =
        new Paragraphs(words.text("lift.cautions"), said, right.width(), Layers.TEXT);
    if (y - cautions.height() >= right.minY()) {
      marks.addAll(cautions.marks(new Point(right.minX(), y)));
      return;
    }
    Bounds field = border.field(List.of());
    Paragraphs wide = new Paragraphs(words.text("lift.cautions"), said, field.width(), Layers.TEXT);
    over.addAll(wide.marks(new Point(field.minX(), field.maxY())));
  }

  /** Two columns of words with a box behind each. */
  private void boxes(Point topLeft, double width, List<Mark> marks) {
    double top = topLeft.y() - Lettering.MEDIUM;
    marks.add(text(new Point(topLeft.x(), top), words.text("lift.boxes"), Lettering.MEDIUM));
    double wide = (width - GAP) / 2;
    int rows = BOXES.size() / 2;
    for (int i = 0; i < BOXES.size(); i++) {
      double x = topLeft.x() + i / rows * (wide + GAP);
      double y = top - Lettering.MEDIUM - i % rows * BOX;
      double middle = x + wide * 0.55;
      String said = Lettering.fitted(words.text(BOXES.get(i)), Lettering.SMALL, wide * 0.55 - 2);
      marks.add(text(new Point(x, y - BOX * 0.65), said, Lettering.SMALL));
      marks.add(
          new Mark.Path(
              List.of(
                  new Point(middle, y - BOX + 1),
                  new Point(x + wide, y - BOX + 1),
                  new Point(x + wide, y - 1),
                  new Point(middle, y - 1)),
              true,
              Layers.RULES,
              ""));
    }
  }

  private static Mark text(Point at, String said, double height) {
    return new Mark.Text(at, said, height, 0, Anchor.START, Layers.TEXT, "");
  }
}
