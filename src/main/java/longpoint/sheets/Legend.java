package longpoint.sheets;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import longpoint.drawing.Anchor;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.geometry.Point;

/** What the lines of a view mean: a sample of each that occurs, and the arrow. */
final class Legend {
  private static final double SAMPLE = 14;
  private static final double GAP = 3;
  private static final double ROW = 4.5;
  private static final double HEAD = 7;
  private static final double FOOT = 5;

  /** In the order they are explained. */
  private static final List<Layer> EXPLAINED =
      List.of(
          Layers.WALL,
          Layers.WALL_EXISTING,
          Layers.DIAGONAL,
          Layers.DRAWN,
          Layers.BUILT,
          Layers.TAPED,
          Layers.DOUBTED,
          Layers.EAVE,
          Layers.RAKE,
          Layers.RIDGE,
          Layers.HIP,
          Layers.VALLEY,
          Layers.BREAK,
          Layers.ABUTMENT,
          Layers.STEP,
          Layers.COVERED,
          Layers.SLOPE);

  private final Words words;
  private final List<Layer> used;

  private Legend(Words words, List<Layer> used) {
    this.words = words;
    this.used = List.copyOf(used);
  }

  /** For layers that are known to occur, in the order given. */
  static Legend of(Words words, List<Layer> used) {
    return new Legend(words, used);
  }

  /** For the lines of a view. */
  static Legend ofLines(Words words, List<Mark> marks) {
    Set<Layer> seen = new HashSet<>();
    for (Mark mark : marks) {
      if (mark instanceof Mark.Path path) {
        seen.add(path.layer());
      }
    }
    return new Legend(words, EXPLAINED.stream().filter(seen::contains).toList());
  }

  /** From the samples to the end of the longest text. */
  double width() {
    return used.stream()
        .mapToDouble(l -> SAMPLE + GAP + Lettering.width(words.layer(l), Lettering.SMALL))
        .max()
        .orElse(0);
  }

  double height() {
    return used.isEmpty() ? 0 : HEAD + used.size() * ROW + FOOT;
  }

  List<Mark> marks(Point topLeft) {
    List<Mark> marks = new ArrayList<>();
    if (used.isEmpty()) {
      return marks;
    }
    double y = topLeft.y() - Lettering.MEDIUM;
    marks.add(text(new Point(topLeft.x(), y), words.text("legend"), Lettering.MEDIUM));
    y = topLeft.y() - HEAD;
    for (Layer layer : used) {
      y -= ROW;
      Point from = new Point(topLeft.x(), y + Lettering.SMALL / 2);
      Point to = from.plus(new Point(SAMPLE, 0));
      marks.add(Mark.Path.line(from, to, layer, ""));
      if (layer.equals(Layers.SLOPE)) {
        Point back = to.minus(new Point(2.5, 0));
        Point wide = new Point(0, 0.7);
        marks.add(new Mark.Path(List.of(back.plus(wide), to, back.minus(wide)), false, layer, ""));
      }
      marks.add(text(new Point(to.x() + GAP, y), words.layer(layer), Lettering.SMALL));
    }
    return marks;
  }

  private static Mark text(Point at, String text, double height) {
    return new Mark.Text(at, text, height, 0, Anchor.START, Layers.TEXT, "");
  }
}
