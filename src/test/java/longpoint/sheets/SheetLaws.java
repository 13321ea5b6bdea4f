package longpoint.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import longpoint.drawing.Box;
import longpoint.drawing.Mark;
import longpoint.drawing.Page;
import longpoint.drawing.Pen;
import longpoint.drawing.Strokes;
import longpoint.geometry.Bounds;

/** What holds for every page of every plan on every paper. */
final class SheetLaws {
  private SheetLaws() {}

  /** Nothing outside the border, no lettering over other lettering, letters of standard heights. */
  static void check(Page page) {
    checkInsideTheBorder(page);
    checkLettering(page);
    TreeSet<Double> heights = new TreeSet<>();
    for (Strokes.Label label : Strokes.of(page.marks(), 1).labels()) {
      if (label.mark() instanceof Mark.Text text) {
        heights.add(text.heightMm());
      }
    }
    // Heights of ISO 3098-1 (from memory); 2.5 mm is its smallest usual height.
    assertThat(heights).as(page.title()).isSubsetOf(2.5, 3.5, 5.0);
  }

  static void checkInsideTheBorder(Page page) {
    Bounds box = Strokes.of(page.marks(), 1).bounds();
    assertThat(box.minX()).as(page.title()).isGreaterThanOrEqualTo(10 - 1e-9);
    assertThat(box.minY()).as(page.title()).isGreaterThanOrEqualTo(10 - 1e-9);
    assertThat(box.maxX()).as(page.title()).isLessThanOrEqualTo(page.widthMm() - 10 + 1e-9);
    assertThat(box.maxY()).as(page.title()).isLessThanOrEqualTo(page.heightMm() - 10 + 1e-9);
  }

  static void checkLettering(Page page) {
    assertThat(overlaps(Strokes.of(page.marks(), 1).labels())).as(page.title()).isEmpty();
  }

  /** Pairs of lines of lettering that share ground, told. */
  static List<String> overlaps(List<Strokes.Label> labels) {
    record Placed(Strokes.Label label, Bounds bounds) {}
    List<Placed> all = new ArrayList<>();
    labels.forEach(l -> all.add(new Placed(l, l.box().bounds())));
    all.sort(Comparator.comparingDouble(p -> p.bounds().minX()));
    List<String> told = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      Placed a = all.get(i);
      for (int j = i + 1; j < all.size(); j++) {
        Placed b = all.get(j);
        if (b.bounds().minX() >= a.bounds().maxX()) {
          break;
        }
        if (a.label().box().overlaps(b.label().box())) {
          told.add(a.label().mark() + " / " + b.label().mark());
        }
      }
    }
    return told;
  }

  /** Lines of lettering that a wide line runs through, told. */
  static List<String> crossed(Page page) {
    Strokes all = Strokes.of(page.marks(), 1);
    List<Strokes.Stroke> wide = all.strokes().stream().filter(SheetLaws::isWide).toList();
    List<String> told = new ArrayList<>();
    for (Strokes.Label label : all.labels()) {
      Bounds near = label.box().bounds();
      for (Strokes.Stroke stroke : wide) {
        Bounds box = Bounds.of(List.of(stroke.segment().from(), stroke.segment().to()));
        boolean apart =
            box.minX() > near.maxX()
                || box.maxX() < near.minX()
                || box.minY() > near.maxY()
                || box.maxY() < near.minY();
        if (!apart && label.box().overlaps(Box.around(stroke.segment(), 0.1))) {
          told.add(page.title() + ": " + label.mark());
          break;
        }
      }
    }
    return told;
  }

  private static boolean isWide(Strokes.Stroke stroke) {
    Pen pen = stroke.mark() instanceof Mark.Path path ? path.layer().pen() : Pen.solid(NARROW);
    return pen.widthMm() > NARROW;
  }

  /** Lines of this width and less may run through lettering where there is no better place. */
  private static final double NARROW = 0.25;

  static String words(Page page) {
    return words(page.marks());
  }

  static String words(List<Mark> marks) {
    StringBuilder all = new StringBuilder();
    for (Strokes.Label label : Strokes.of(marks, 1).labels()) {
      if (label.mark() instanceof Mark.Text text) {
        all.append(text.text()).append(' ');
      }
    }
    return all.toString();
  }
}
