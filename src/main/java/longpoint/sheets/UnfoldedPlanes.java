package longpoint.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.deck.DeckPlan;
import longpoint.deck.PlaneDeck;
import longpoint.drawing.Anchor;
import longpoint.drawing.Drawing;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.drawing.Placement;
import longpoint.field.chalk.ChalkSheet;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.plan.Plan;
import longpoint.surface.RoofSurface;

/**
 * Every plane of the deck laid flat in real size for a CAD program, one beside the other with the
 * eaves at the foot: closed outlines, sheets, supports and chalk lines, each plane under its
 * letter.
 */
public final class UnfoldedPlanes {
  /** Clear ground between planes, and between a plane and its name, millimetres of paper. */
  private static final double APART_MM = 20;

  private UnfoldedPlanes() {}

  /**
   * @param sheet scale the lettering is made for, or a larger one where numbers need it
   */
  public static ModelDrawing of(
      Plan plan, RoofSurface surface, DeckPlan deck, List<ChalkSheet> chalk, PaperScale sheet) {
    ModelDrawing best = null;
    for (PaperScale scale : ModelDrawing.upFrom(sheet, plan)) {
      ModelDrawing at = at(scale, plan, surface, deck, chalk);
      if (best == null || at.leftOff() < best.leftOff()) {
        best = at;
      }
      if (best.leftOff() == 0) {
        break;
      }
    }
    return best;
  }

  private static ModelDrawing at(
      PaperScale scale, Plan plan, RoofSurface surface, DeckPlan deck, List<ChalkSheet> chalk) {
    Words words = Words.of(plan);
    double mm = scale.unitsPerMm(plan.unit());
    Map<String, String> letters = PlaneMarks.of(surface);
    List<Mark> marks = new ArrayList<>();
    double x = 0;
    int leftOff = 0;
    List<PlaneDeck> planes =
        deck.planes().stream()
            .sorted(
                Comparator.comparing(
                    (PlaneDeck p) -> letters.getOrDefault(p.plane(), p.plane()),
                    Comparator.comparingInt(String::length).thenComparing(String::compareTo)))
            .toList();
    for (PlaneDeck plane : planes) {
      Optional<ChalkSheet> own =
          chalk.stream().filter(c -> c.plane().equals(plane.plane())).findFirst();
      ChalkView view = ChalkView.of(plane, own, words, mm);
      leftOff += view.leftOff();
      Bounds ground = ChalkView.ground(plane);
      List<Mark> all = new ArrayList<>(outlines(plane));
      all.addAll(view.marks());
      String name = letters.getOrDefault(plane.plane(), plane.plane());
      Point under = new Point(ground.middle().x(), ground.minY() - APART_MM / 2 * mm);
      all.add(
          new Mark.Text(
              under,
              words.text("chalk.plane", name),
              Lettering.SMALL * 2,
              0,
              Anchor.MIDDLE,
              Layers.NAMES,
              plane.plane()));
      Point to = new Point(x - ground.minX(), -ground.minY());
      marks.add(new Mark.Group("plane-" + name, new Placement(to, 1, 0), all));
      x += ground.width() + 2 * APART_MM * mm;
    }
    return new ModelDrawing(new Drawing(words.text("planes.flat"), marks), scale, leftOff);
  }

  private static List<Mark> outlines(PlaneDeck plane) {
    List<Mark> marks = new ArrayList<>();
    for (Region region : plane.ground()) {
      marks.add(outline(region.shell(), plane));
      region.holes().forEach(h -> marks.add(outline(h, plane)));
    }
    return marks;
  }

  private static Mark outline(Ring ring, PlaneDeck plane) {
    return new Mark.Path(ring.points(), true, Layers.OUTLINE, plane.plane());
  }
}
