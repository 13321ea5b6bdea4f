package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import longpoint.drawing.Mark;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.units.LengthUnit;

/** Stands figures on pages in rows, left to right and down, in their order. */
final class FigureShelves {
  /** Room between figures, millimetres. */
  private static final double GAP = 9;

  /** At the largest scale the widest figure still leaves room beside it for another … */
  private static final double WIDEST = 0.5;

  /** … and the tallest for another below. */
  private static final double TALLEST = 0.5;

  private FigureShelves() {}

  /** Figures at one scale. */
  record Drawn(PaperScale scale, List<SheetFigure> figures) {
    Drawn {
      figures = List.copyOf(figures);
    }
  }

  /** The largest standard scale at which at least four of the largest fit; a lone one gets all. */
  static Drawn fitted(LengthUnit unit, Bounds field, Function<Double, List<SheetFigure>> draw) {
    Drawn last = null;
    for (PaperScale scale : PaperScale.of(unit)) {
      last = new Drawn(scale, draw.apply(scale.unitsPerMm(unit)));
      double share = last.figures().size() == 1 ? 1 : WIDEST;
      double tall = last.figures().size() == 1 ? 1 : TALLEST;
      if (last.figures().stream()
          .allMatch(
              f ->
                  f.widthMm() <= field.width() * share - GAP
                      && f.heightMm() <= field.height() * tall - GAP)) {
        return last;
      }
    }
    return last;
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
