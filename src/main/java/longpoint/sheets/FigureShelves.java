package longpoint.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import longpoint.drawing.Mark;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.stop.CalledOff;
import longpoint.units.LengthUnit;

/** Stands figures on pages in rows, left to right and down, in their order. */
final class FigureShelves {
  /** Room between figures, millimetres. */
  private static final double GAP = 9;

  /**
   * How much of a page the largest drawing may take.
   *
   * @param wide share of its width, above 0 to 1
   * @param tall share of its height
   */
  record Share(double wide, double tall) {
    /** With room beside it for another and below for another. */
    static final Share QUARTER = new Share(0.5, 0.5);

    /** With long captions below, and another beside it. */
    static final Share TALL_CAPTIONS = new Share(0.5, 0.62);
  }

  private FigureShelves() {}

  /** Figures at one scale. */
  record Drawn(PaperScale scale, List<SheetFigure> figures) {
    Drawn {
      figures = List.copyOf(figures);
    }
  }

  /** Figures are drawn at most this much smaller than they could be, to spare a page. */
  private static final double SMALLER = 1.5;

  /**
   * The largest standard scale at which at least four of the largest drawings fit, captions not
   * counted; a lone one gets all. A somewhat smaller one is taken where it spares a page. Where
   * nothing fits so, the largest at which each fits a page.
   */
  static Drawn fitted(LengthUnit unit, Bounds field, Function<Double, List<SheetFigure>> draw) {
    return fitted(unit, field, Share.QUARTER, draw);
  }

  /** The same where the largest drawing may take another share of its page. */
  static Drawn fitted(
      LengthUnit unit, Bounds field, Share share, Function<Double, List<SheetFigure>> draw) {
    CalledOff.check();
    List<Drawn> fitting = new ArrayList<>();
    Drawn whole = null;
    Drawn last = null;
    for (PaperScale scale : PaperScale.of(unit)) {
      last = new Drawn(scale, draw.apply(scale.unitsPerMm(unit)));
      boolean fits = fits(last, field);
      whole = whole == null && fits ? last : whole;
      if (fits && (leavesRoom(last, field, share) || !fitting.isEmpty())) {
        fitting.add(last);
      }
      boolean small =
          !fitting.isEmpty() && scale.ratio() > fitting.get(0).scale().ratio() * SMALLER;
      if (small || fitting.size() == 1 && onePage(last, field)) {
        break;
      }
    }
    double least = fitting.isEmpty() ? 0 : fitting.get(0).scale().ratio() * SMALLER;
    return fitting.stream()
        .filter(d -> d.scale().ratio() <= least)
        .min(Comparator.comparingInt(d -> pages(d.figures(), field).size()))
        .orElse(whole == null ? last : whole);
  }

  private static boolean onePage(Drawn drawn, Bounds field) {
    return pages(drawn.figures(), field).size() == 1;
  }

  private static boolean fits(Drawn drawn, Bounds field) {
    return drawn.figures().stream()
        .allMatch(f -> f.widthMm() <= field.width() && f.heightMm() <= field.height());
  }

  private static boolean leavesRoom(Drawn drawn, Bounds field, Share share) {
    boolean alone = drawn.figures().size() == 1;
    double wide = alone ? field.width() : field.width() * share.wide() - GAP;
    double tall = alone ? field.height() : field.height() * share.tall() - GAP;
    return drawn.figures().stream()
        .allMatch(f -> f.widthMm() <= wide && f.heightMm() - f.captionMm() <= tall);
  }

  /** The marks of each page. */
  static List<List<Mark>> pages(List<SheetFigure> figures, Bounds field) {
    List<List<Mark>> pages = new ArrayList<>();
    List<Mark> page = new ArrayList<>();
    double x = field.minX();
    double y = field.maxY();
    double row = 0;
    for (SheetFigure figure : figures) {
      if (x > field.minX() && x + figure.widthMm() > field.maxX()) {
        x = field.minX();
        y -= row + GAP;
        row = 0;
      }
      if (y < field.maxY() && y - figure.heightMm() < field.minY()) {
        pages.add(page);
        page = new ArrayList<>();
        x = field.minX();
        y = field.maxY();
        row = 0;
      }
      page.add(figure.at(new Point(x, y)));
      x += figure.widthMm() + GAP;
      row = Math.max(row, figure.heightMm());
    }
    if (!page.isEmpty()) {
      pages.add(page);
    }
    return pages;
  }
}
