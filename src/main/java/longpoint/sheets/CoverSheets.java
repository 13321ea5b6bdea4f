package longpoint.sheets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import longpoint.drawing.Anchor;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Particulars;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.sheets.SheetTable.Column;
import longpoint.sheets.SheetTable.Kind;

/**
 * What lies on top of the stack: job, key plan with the letters of the planes, legend, sheet list,
 * cautions, and what to check before anything is cut or set.
 */
final class CoverSheets {
  /** Order matters: what can hurt somebody comes first. */
  private static final List<String> CAUTIONS =
      List.of(
          "cover.caution.height", "cover.caution.aid", "cover.caution.rule", "cover.caution.alter");

  /** Common practice. */
  private static final List<String> CHECKS =
      List.of(
          "cover.check.print",
          "cover.check.walls",
          "cover.check.trusses",
          "cover.check.first",
          "cover.check.chalk",
          "cover.check.piece");

  /** Shares of the width for the sheet list, the one best liked first, and its least width. */
  private static final double[] LIST_SHARES = {0.32, 0.38, 0.46};

  private static final double NARROWEST_LIST = 78;
  private static final double LEGEND = 52;
  private static final double GAP = 6;

  private final Solved solved;
  private final Words words;
  private final SheetBorder border;

  /** The key plan in a field of a size; the cover is laid out again when it grows by a sheet. */
  private final Map<Bounds, FittedView<KeyPlan>> keys = new HashMap<>();

  CoverSheets(Solved solved, SheetBorder border) {
    this.solved = solved;
    this.words = Words.of(solved.plan());
    this.border = border;
  }

  /**
   * @param sheets that follow
   * @param before how many sheets the cover takes
   */
  List<Sheet> sheets(List<Sheet> sheets, int before) {
    Bounds field = border.field(List.of());
    Bounds right = null;
    List<List<Mark>> pages = List.of();
    for (double share : LIST_SHARES) {
      double wide = Math.max(NARROWEST_LIST, field.width() * share);
      Bounds tried = new Bounds(field.maxX() - wide, field.minY(), field.maxX(), field.maxY());
      List<SheetTable> tables = List.of(list(sheets, before), problems(wide));
      List<List<Mark>> laid = TableFlow.pages(tables, tried, field);
      if (right == null || laid.size() < pages.size()) {
        right = tried;
        pages = laid;
      }
    }
    Bounds left = new Bounds(field.minX(), field.minY(), right.minX() - GAP, field.maxY());
    List<Mark> marks = new ArrayList<>(pages.get(0));
    PaperScale scale = left(marks, left);
    List<Sheet> cover = new ArrayList<>();
    cover.add(
        Sheet.plan(
            words.text("cover.title"), scale, words.text("cover.start"), 0, List.of(), marks));
    for (List<Mark> more : pages.subList(1, pages.size())) {
      cover.add(Sheet.tables(words.text("cover.continued"), "", List.of(), more));
    }
    return cover;
  }

  /** Title, key plan and legend, and the words beneath. */
  private PaperScale left(List<Mark> marks, Bounds left) {
    double y = heading(marks, left);
    double column = (left.width() - GAP) / 2;
    Paragraphs cautions = paragraphs("cover.cautions", CAUTIONS, column);
    Paragraphs checks = paragraphs("cover.checks", CHECKS, column);
    double high = Math.max(cautions.height(), checks.height());
    double foot = left.minY() + high;
    marks.addAll(cautions.marks(new Point(left.minX(), foot)));
    marks.addAll(checks.marks(new Point(left.minX() + column + GAP, foot)));
    Bounds picture = new Bounds(left.minX(), foot + GAP, left.maxX() - LEGEND - GAP, y - GAP);
    Plan plan = solved.plan();
    FittedView<KeyPlan> key =
        keys.computeIfAbsent(
            picture, p -> KeyPlan.of(plan, solved.surface(), p.width(), p.height()));
    marks.add(key.in(picture, "key-plan"));
    Legend legend = Legend.ofLines(words, key.view().drawing().marks());
    marks.addAll(legend.marks(new Point(left.maxX() - LEGEND, y - GAP)));
    return key.scale();
  }

  private Paragraphs paragraphs(String heading, List<String> items, double width) {
    List<String> said = items.stream().map(words::text).toList();
    return new Paragraphs(words.text(heading), said, width, Layers.TEXT);
  }

  /** Where the heading ends. */
  private double heading(List<Mark> marks, Bounds left) {
    Particulars given = solved.plan().particulars();
    String title = words.title(solved.plan());
    double y = left.maxY();
    for (String line : Lettering.wrapped(title, Lettering.LARGE, left.width(), 2)) {
      y -= Lettering.LARGE * 1.4;
      marks.add(text(left.minX(), y, line, Lettering.LARGE));
    }
    List<String> under =
        Stream.of(given.site().strip(), given.drawnBy().strip(), given.date().strip())
            .filter(s -> !s.isEmpty())
            .toList();
    if (!under.isEmpty()) {
      y -= Lettering.MEDIUM * 1.7;
      String line = Lettering.fitted(String.join(",  ", under), Lettering.MEDIUM, left.width());
      marks.add(text(left.minX(), y, line, Lettering.MEDIUM));
    }
    return y - 1.5;
  }

  private SheetTable list(List<Sheet> sheets, int before) {
    int of = sheets.size() + before;
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of(range(1, before, of), words.text("cover.title")));
    int first = 0;
    while (first < sheets.size()) {
      String title = sheets.get(first).title();
      int last = first;
      while (last + 1 < sheets.size() && sheets.get(last + 1).title().equals(title)) {
        last++;
      }
      rows.add(List.of(range(before + first + 1, before + last + 1, of), title));
      first = last + 1;
    }
    Cells cells = new Cells(words);
    return cells.table(
        words.text("cover.sheets"), List.of(cells.mark("no"), cells.words("title")), rows);
  }

  private String range(int first, int last, int of) {
    String from = SheetBorder.number(first, of);
    return last == first ? from : words.text("fromTo", from, SheetBorder.number(last, of));
  }

  /** What the program found that somebody should look at; errors stand on every sheet. */
  private SheetTable problems(double width) {
    List<List<String>> rows = new ArrayList<>();
    for (Problem p : solved.problems()) {
      if (p.level() != Problem.Level.NOTE) {
        Lettering.wrapped(
                "• " + p.in(solved.plan()).message(words.language()), Lettering.SMALL, width - 2, 6)
            .forEach(line -> rows.add(List.of(line)));
      }
    }
    return new SheetTable(
        words, words.text("cover.first"), List.of(new Column("", Kind.WORDS)), rows);
  }

  private static Mark text(double x, double y, String shown, double height) {
    return new Mark.Text(new Point(x, y), shown, height, 0, Anchor.START, Layers.TEXT, "");
  }
}
