package longpoint.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import longpoint.deck.CutSheet;
import longpoint.deck.DeckPlan;
import longpoint.deck.Stock;
import longpoint.drawing.Anchor;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.drawing.Placement;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
import longpoint.units.LengthText;

/**
 * Cutting diagrams: every sheet that is cut, with the pieces that come out of it by plane letter
 * and number, the same as on the chalk sheets. Sheets that stay whole are counted, not drawn. A
 * piece marked * lies end for end from how it goes on the roof; no piece is flipped over.
 */
final class CuttingSheets {
  private static final double HEAD = 12;
  private static final double GUTTER = 8;

  /** A sheet is drawn at least this long, to be read; on small paper it must do with less. */
  private static final double LEAST = 72;

  private static final double LEAST_ON_SMALL = 58;
  private static final double SMALL_FIELD = 300;

  /** Between names beneath a sheet, and between them and the sheet, millimetres. */
  private static final double APART = 1.2;

  /** Room for the caption over a diagram. */
  private static final double CAPTION = 5;

  private final Plan plan;
  private final RoofNames names;
  private final Words words;
  private final SheetBorder border;
  private final List<Sheet> sheets = new ArrayList<>();
  private List<Mark> marks = new ArrayList<>();

  private CuttingSheets(Plan plan, RoofNames names, SheetBorder border) {
    this.plan = plan;
    this.names = names;
    this.words = names.words();
    this.border = border;
  }

  /** Kind by kind, sheets in their order. */
  static List<Sheet> of(Plan plan, DeckPlan deck, RoofNames names, SheetBorder border) {
    CuttingSheets sheets = new CuttingSheets(plan, names, border);
    deck.stock().forEach(sheets::stock);
    return List.copyOf(sheets.sheets);
  }

  private void stock(Stock stock) {
    List<CutSheet> cut = stock.sheets().stream().filter(s -> !whole(s, stock)).toList();
    Bounds field = border.field(List.of());
    double least = field.width() < SMALL_FIELD ? LEAST_ON_SMALL : LEAST;
    int across = Math.max(1, (int) ((field.width() + GUTTER) / (least + GUTTER)));
    double scale = (field.width() - (across - 1) * GUTTER) / across / stock.panel().length();
    double step = CAPTION + stock.panel().width() * scale + GUTTER;
    int down = Math.max(1, (int) ((field.height() - HEAD + GUTTER) / step));
    int each = across * down;
    for (int first = 0; first == 0 || first < cut.size(); first += each) {
      marks = new ArrayList<>();
      head(stock, stock.bought() - cut.size(), field);
      for (int i = first; i < Math.min(cut.size(), first + each); i++) {
        int place = i - first;
        double x = field.minX() + place % across * (stock.panel().length() * scale + GUTTER);
        double top = field.maxY() - HEAD - place / across * step;
        diagram(cut.get(i), stock, new Point(x, top), scale);
      }
      sheets.add(
          Sheet.tables(
              words.text("cutting.sheet"), words.text("cutting.measures"), List.of(), marks));
    }
  }

  private static boolean whole(CutSheet sheet, Stock stock) {
    double spare = stock.panel().area() - sheet.used();
    return sheet.pieces().size() == 1 && spare <= stock.panel().sliver() * stock.panel().width();
  }

  private void head(Stock stock, int whole, Bounds field) {
    // Thickness to the exact figure: 15/32 in is not a half.
    String kind =
        words.text(
            "cutting.kind",
            LengthText.exact(stock.panel().thickness(), plan.unit()),
            length(stock.panel().width()),
            length(stock.panel().length()));
    Point at = new Point(field.minX(), field.maxY() - Lettering.MEDIUM);
    text(at, kind, Lettering.MEDIUM);
    text(
        at.minus(new Point(0, 5)),
        words.text("cutting.count", stock.bought(), whole, stock.lowerBound()),
        Lettering.SMALL);
  }

  private String length(double length) {
    return words.length(length);
  }

  private void diagram(CutSheet sheet, Stock stock, Point topLeft, double scale) {
    double height = stock.panel().width() * scale;
    text(
        topLeft.minus(new Point(0, Lettering.SMALL)),
        words.text("cutting.no", sheet.number()),
        Lettering.SMALL);
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
      if (holdsName(piece, 1 / scale)) {
        inside.add(label(piece, middle(piece)));
      }
    }
    inside.addAll(named(sheet, stock, 1 / scale));
    marks.add(new Mark.Group("sheet-" + sheet.number(), new Placement(origin, scale, 0), inside));
  }

  /** Names of pieces too small to hold them, beneath the sheet, each with a line to its piece. */
  private List<Mark> named(CutSheet sheet, Stock stock, double unitsPerMm) {
    List<CutSheet.Placed> small =
        sheet.pieces().stream()
            .filter(p -> !holdsName(p, unitsPerMm))
            .sorted(Comparator.comparingDouble(p -> middle(p).x()))
            .toList();
    double[] at = new double[small.size()];
    double from = 0;
    for (int i = 0; i < at.length; i++) {
      double half = width(small.get(i), unitsPerMm) / 2;
      at[i] = Math.max(middle(small.get(i)).x(), from + half);
      from = at[i] + half + APART * unitsPerMm;
    }
    double to = stock.panel().length();
    for (int i = at.length - 1; i >= 0; i--) {
      double half = width(small.get(i), unitsPerMm) / 2;
      at[i] = Math.min(at[i], to - half);
      to = at[i] - half - APART * unitsPerMm;
    }
    List<Mark> named = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      CutSheet.Placed piece = small.get(i);
      Point foot = new Point(at[i], -APART * unitsPerMm);
      named.add(
          new Mark.Path(List.of(foot, middle(piece)), false, Layers.DIMENSIONS, piece.piece()));
      named.add(label(piece, foot.minus(new Point(0, Lettering.SMALL * unitsPerMm / 2))));
    }
    return named;
  }

  private boolean holdsName(CutSheet.Placed piece, double unitsPerMm) {
    Bounds box = piece.outline().shell().bounds();
    return width(piece, unitsPerMm) <= box.width() / 2
        && Lettering.SMALL * unitsPerMm <= box.height() / 2;
  }

  private double width(CutSheet.Placed piece, double unitsPerMm) {
    return Lettering.width(name(piece), Lettering.SMALL) * unitsPerMm;
  }

  private Mark label(CutSheet.Placed piece, Point at) {
    return new Mark.Text(
        at, name(piece), Lettering.SMALL, 0, Anchor.CENTRE, Layers.DECK, piece.piece());
  }

  private String name(CutSheet.Placed piece) {
    int colon = piece.piece().lastIndexOf(':');
    String plane = piece.piece().substring(0, colon);
    return names.plane(plane) + piece.piece().substring(colon + 1) + (piece.turned() ? "*" : "");
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
}
