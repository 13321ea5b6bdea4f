package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import longpoint.deck.CutSheet;
import longpoint.deck.DeckPlan;
import longpoint.deck.Stock;
import longpoint.drawing.Anchor;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.drawing.Page;
import longpoint.drawing.Placement;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
import longpoint.surface.RoofSurface;
import longpoint.units.LengthText;

/**
 * Cutting diagrams: every sheet that is cut, with the pieces that come out of it by plane letter
 * and number, the same as on the chalk sheets. Sheets that stay whole are counted, not drawn. A
 * piece marked ↻ lies end for end from how it goes on the roof; no piece is flipped over.
 */
public final class CuttingPages {
  private static final double MARGIN = 12;
  private static final double HEAD = 22;
  private static final double GUTTER = 8;
  private static final int ACROSS = 3;

  /** Room for the caption over a diagram. */
  private static final double CAPTION = 5;

  private final Plan plan;
  private final Paper paper;
  private final Map<String, String> letters;
  private final List<Page> pages = new ArrayList<>();
  private List<Mark> marks = new ArrayList<>();

  private CuttingPages(Plan plan, RoofSurface surface, Paper paper) {
    this.plan = plan;
    this.paper = paper;
    this.letters = PlaneMarks.of(surface);
  }

  /** Pages kind by kind, sheets in their order. */
  public static List<Page> of(Plan plan, RoofSurface surface, DeckPlan deck, Paper paper) {
    CuttingPages pages = new CuttingPages(plan, surface, paper);
    deck.stock().forEach(pages::stock);
    return List.copyOf(pages.pages);
  }

  private void stock(Stock stock) {
    List<CutSheet> cut = stock.sheets().stream().filter(s -> !whole(s, stock)).toList();
    double scale =
        (paper.widthMm() - 2 * MARGIN - (ACROSS - 1) * GUTTER) / ACROSS / stock.panel().length();
    double step = CAPTION + stock.panel().width() * scale + GUTTER;
    int down = Math.max(1, (int) ((paper.heightMm() - 2 * MARGIN - HEAD) / step));
    int each = ACROSS * down;
    for (int first = 0; first == 0 || first < cut.size(); first += each) {
      marks = new ArrayList<>();
      head(stock, stock.bought() - cut.size());
      for (int i = first; i < Math.min(cut.size(), first + each); i++) {
        int place = i - first;
        double x = MARGIN + place % ACROSS * (stock.panel().length() * scale + GUTTER);
        double top = paper.heightMm() - MARGIN - HEAD - place / ACROSS * step;
        diagram(cut.get(i), stock, new Point(x, top), scale);
      }
      page();
    }
  }

  private static boolean whole(CutSheet sheet, Stock stock) {
    double spare = stock.panel().area() - sheet.used();
    return sheet.pieces().size() == 1 && spare <= stock.panel().sliver() * stock.panel().width();
  }

  private void head(Stock stock, int whole) {
    double top = paper.heightMm() - MARGIN;
    String job = plan.title().isBlank() ? "Untitled" : plan.title();
    text(new Point(MARGIN, top - Lettering.LARGE), job, Lettering.LARGE);
    // Thickness to the exact figure: 15/32 in is not a half.
    String kind =
        LengthText.exact(stock.panel().thickness(), plan.unit())
            + " thick, "
            + length(stock.panel().width())
            + " × "
            + length(stock.panel().length());
    text(new Point(MARGIN, top - 11), "Sheets to cut, " + kind, Lettering.MEDIUM);
    text(
        new Point(MARGIN, top - 16),
        stock.bought()
            + " sheets to buy, "
            + whole
            + " of them stay whole; no cutting of these"
            + " courses takes fewer than "
            + stock.lowerBound()
            + ". ↻ turned end for end.",
        Lettering.SMALL);
  }

  private String length(double length) {
    return LengthText.of(length, plan.unit());
  }

  private void diagram(CutSheet sheet, Stock stock, Point topLeft, double scale) {
    double height = stock.panel().width() * scale;
    text(topLeft.minus(new Point(0, Lettering.SMALL)), "No. " + sheet.number(), Lettering.SMALL);
    Point origin = topLeft.minus(new Point(0, CAPTION + height));
    List<Mark> inside = new ArrayList<>();
    inside.add(
        new Mark.Path(
            List.of(
                new Point(0, 0),
                new Point(stock.panel().length(), 0),
                new Point(stock.panel().length(), stock.panel().width()),
                new Point(0, stock.panel().width())),
            true,
            Layers.OFFCUT,
            ""));
    for (CutSheet.Placed piece : sheet.pieces()) {
      inside.add(new Mark.Path(piece.outline().shell().points(), true, Layers.DECK, piece.piece()));
      label(piece, 1 / scale).ifPresent(inside::add);
    }
    marks.add(new Mark.Group("sheet-" + sheet.number(), new Placement(origin, scale, 0), inside));
  }

  /** Left off where the piece is too small to hold it; the table of pieces has it. */
  private Optional<Mark> label(CutSheet.Placed piece, double unitsPerMm) {
    int colon = piece.piece().lastIndexOf(':');
    String plane = piece.piece().substring(0, colon);
    String name =
        letters.getOrDefault(plane, plane)
            + piece.piece().substring(colon + 1)
            + (piece.turned() ? " ↻" : "");
    Bounds box = piece.outline().shell().bounds();
    boolean fits =
        Lettering.width(name, Lettering.SMALL) * unitsPerMm <= box.width() / 2
            && Lettering.SMALL * unitsPerMm <= box.height() / 2;
    Point at = middle(piece);
    return fits
        ? Optional.of(
            new Mark.Text(at, name, Lettering.SMALL, 0, Anchor.CENTRE, Layers.DECK, piece.piece()))
        : Optional.empty();
  }

  /** Mean of the corners: inside any convex piece. */
  private static Point middle(CutSheet.Placed piece) {
    List<Point> corners = piece.outline().shell().points();
    Point sum = corners.stream().collect(Collectors.reducing(new Point(0, 0), Point::plus));
    return sum.times(1.0 / corners.size());
  }

  private void text(Point at, String text, double height) {
    marks.add(new Mark.Text(at, text, height, 0, Anchor.START, Layers.TEXT, ""));
  }

  private void page() {
    String number = "D-" + (pages.size() + 1);
    marks.add(
        new Mark.Text(
            new Point(paper.widthMm() - MARGIN, paper.heightMm() - MARGIN - Lettering.LARGE),
            number,
            Lettering.LARGE,
            0,
            Anchor.END,
            Layers.TEXT,
            ""));
    pages.add(new Page(number, "Sheets to cut", paper.widthMm(), paper.heightMm(), marks));
  }
}
