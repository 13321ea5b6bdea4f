package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Anchor;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.geometry.Point;

/**
 * A heading and numbered sentences below it, wrapped to a width.
 *
 * @param width in millimetres
 */
record Paragraphs(String heading, List<String> items, double width, Layer layer) {
  private static final double LEAD = 1.6;
  private static final double INDENT = 5;
  private static final int LINES = 12;

  /** Room after an item. */
  private static final double APART = 1;

  Paragraphs {
    items = List.copyOf(items);
  }

  private List<String> lines(String item) {
    return Lettering.wrapped(item, Lettering.SMALL, width - INDENT, LINES);
  }

  double height() {
    double height = Lettering.MEDIUM * LEAD;
    for (String item : items) {
      height += lines(item).size() * Lettering.SMALL * LEAD + APART;
    }
    return height;
  }

  List<Mark> marks(Point topLeft) {
    List<Mark> marks = new ArrayList<>();
    double x = topLeft.x();
    double y = topLeft.y() - Lettering.MEDIUM;
    marks.add(text(x, y, heading, Lettering.MEDIUM));
    y -= Lettering.MEDIUM * (LEAD - 1);
    int number = 0;
    for (String item : items) {
      List<String> lines = lines(item);
      for (int i = 0; i < lines.size(); i++) {
        y -= Lettering.SMALL * LEAD;
        if (i == 0) {
          number++;
          marks.add(number(x, y, number + "."));
        }
        marks.add(text(x + INDENT, y, lines.get(i), Lettering.SMALL));
      }
      y -= APART;
    }
    return marks;
  }

  /** Numbers of two figures stand clear of the words, over one another. */
  private Mark number(double x, double y, String said) {
    if (items.size() < 10) {
      return text(x, y, said, Lettering.SMALL);
    }
    Point end = new Point(x + INDENT - 1, y);
    return new Mark.Text(end, said, Lettering.SMALL, 0, Anchor.END, layer, "");
  }

  private Mark text(double x, double y, String words, double height) {
    return new Mark.Text(new Point(x, y), words, height, 0, Anchor.START, layer, "");
  }
}
