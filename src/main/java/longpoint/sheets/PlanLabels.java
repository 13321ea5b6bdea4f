package longpoint.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.drawing.Anchor;
import longpoint.drawing.DimensionLayout;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;

/**
 * Slope arrows with the letter and slope of each plane, and the names of the parts.
 *
 * <p>The arrow points down the slope, the way water runs (common practice on roof plans; the legend
 * says so). On a plane too small for that the letter alone stands, since the table gives its slope.
 */
final class PlanLabels {
  /** On paper, millimetres. */
  private static final double ARROW = 12;

  private static final double SHORT_ARROW = 6;
  private static final double HEAD = 2.5;
  private static final double TEXT_GAP = 1.8;

  /** From a name to the plate height beneath it, over the height of its capitals. */
  private static final double PLATE_STEP = 1.7;

  /** A longer name is cut short on the drawing; the title block has it whole. */
  private static final double LONGEST_NAME = 80;

  private final Plan plan;
  private final Words words;
  private final RoofSurface surface;
  private final double unitsPerMm;
  private final LabelPlaces places;
  private final Optional<LabelPlaces> farther;
  private int leftOff;

  PlanLabels(Plan plan, RoofSurface surface, double unitsPerMm, LabelPlaces places) {
    this(plan, surface, unitsPerMm, places, Optional.empty());
  }

  /**
   * @param farther places for names that find none among {@code places}
   */
  PlanLabels(
      Plan plan,
      RoofSurface surface,
      double unitsPerMm,
      LabelPlaces places,
      Optional<LabelPlaces> farther) {
    this.plan = plan;
    this.words = Words.of(plan);
    this.surface = surface;
    this.unitsPerMm = unitsPerMm;
    this.places = places;
    this.farther = farther;
  }

  /** How many labels found no place. */
  int leftOff() {
    return leftOff;
  }

  List<Mark> names() {
    List<Mark> marks = new ArrayList<>();
    for (Part part : plan.parts()) {
      String text = words.part(part);
      List<LabelPlaces.Form> forms =
          List.of(
              m -> named(part, text, Lettering.MEDIUM, m),
              m -> named(part, text, Lettering.SMALL, m));
      List<Mark> near = placed(part.region(), forms, Layers.NAMES, part.id());
      marks.addAll(near.isEmpty() ? farther(part.region(), forms, part.id()) : near);
    }
    return marks;
  }

  /** No name is left off for want of room near the house, if it may stand farther off. */
  private List<Mark> farther(Region ground, List<LabelPlaces.Form> forms, String subject) {
    return farther.map(f -> f.place(ground, forms, Layers.NAMES, subject)).orElse(List.of());
  }

  /** The letter of each plane, large where there is room. */
  List<Mark> letters() {
    Map<String, String> letters = PlaneMarks.of(surface);
    List<Mark> marks = new ArrayList<>();
    for (RoofPlane plane : surface.planes()) {
      Optional<Region> ground =
          plane.visible().stream().max(Comparator.comparingDouble(Region::area));
      String letter = letters.get(plane.id());
      ground.ifPresent(
          g ->
              marks.addAll(
                  placed(
                      g,
                      List.of(
                          m -> name(letter, Lettering.LARGE, m, plane.id()),
                          m -> name(letter, Lettering.SMALL, m, plane.id())),
                      Layers.NAMES,
                      plane.id())));
    }
    return marks;
  }

  /** Which labels may stand off their ground, with a leader to it. */
  enum Leaders {
    ALL,
    /** Names of parts alone. */
    NAMES
  }

  /**
   * @param leaders whether a slope that has no room on its plane stands off it or is left off
   */
  List<Mark> slopes(Leaders leaders) {
    Map<String, String> letters = PlaneMarks.of(surface);
    List<Mark> marks = new ArrayList<>();
    for (RoofPlane plane : surface.planes()) {
      Optional<Region> ground =
          plane.visible().stream().max(Comparator.comparingDouble(Region::area));
      if (ground.isPresent()) {
        String letter = letters.get(plane.id());
        String full = letter + "  " + words.slope(RoofTables.slope(plan, plane));
        List<LabelPlaces.Form> forms =
            List.of(
                m -> slope(plane, full, ARROW, m),
                m -> slope(plane, letter, SHORT_ARROW, m),
                m -> alone(plane, letter, m));
        marks.addAll(
            switch (leaders) {
              case ALL -> placed(ground.get(), forms, Layers.SLOPE, plane.id());
              case NAMES -> places.placeOn(ground.get(), forms);
            });
      }
    }
    return marks;
  }

  private List<Mark> placed(
      Region ground, List<LabelPlaces.Form> forms, Layer layer, String subject) {
    List<Mark> marks = places.place(ground, forms, layer, subject);
    leftOff += marks.isEmpty() ? 1 : 0;
    return marks;
  }

  /** The name; where plates stand at different heights, that of the part beneath it. */
  private Mark[] named(Part part, String text, double height, Point at) {
    String shown = Lettering.fitted(text, height, LONGEST_NAME);
    if (plan.parts().stream().allMatch(p -> p.plateHeight() == part.plateHeight())) {
      return new Mark[] {line(part, shown, height, at)};
    }
    Point step = new Point(0, height * PLATE_STEP / 2 * unitsPerMm);
    String plate = words.text("plate", words.length(part.plateHeight()));
    return new Mark[] {
      line(part, shown, height, at.plus(step)), line(part, plate, Lettering.SMALL, at.minus(step))
    };
  }

  private static Mark[] name(String text, double height, Point at, String subject) {
    String shown = Lettering.fitted(text, height, LONGEST_NAME);
    return new Mark[] {new Mark.Text(at, shown, height, 0, Anchor.CENTRE, Layers.NAMES, subject)};
  }

  private static Mark line(Part part, String text, double height, Point at) {
    return new Mark.Text(at, text, height, 0, Anchor.CENTRE, Layers.NAMES, part.id());
  }

  /** Text beside an arrow; a level plane has no arrow. */
  private Mark[] slope(RoofPlane plane, String text, double length, Point middle) {
    Point down = new Point(-plane.plane().a(), -plane.plane().b());
    if (down.length() == 0) {
      return alone(plane, text, middle);
    }
    Point along = down.unit();
    double degrees = DimensionLayout.readable(Math.toDegrees(Math.atan2(along.y(), along.x())));
    double radians = Math.toRadians(degrees);
    Point up = new Point(-Math.sin(radians), Math.cos(radians)).times(unitsPerMm);
    Point shaft = middle.minus(up.times((Lettering.SMALL + TEXT_GAP) / 2));
    Point tail = shaft.minus(along.times(length / 2 * unitsPerMm));
    Point tip = shaft.plus(along.times(length / 2 * unitsPerMm));
    Point back = tip.minus(along.times(HEAD * unitsPerMm));
    Point wide = along.left().times(HEAD / 4 * unitsPerMm);
    Point at = shaft.plus(up.times(TEXT_GAP));
    String id = plane.id();
    return new Mark[] {
      Mark.Path.line(tail, tip, Layers.SLOPE, id),
      new Mark.Path(List.of(back.plus(wide), tip, back.minus(wide)), false, Layers.SLOPE, id),
      new Mark.Text(at, text, Lettering.SMALL, degrees, Anchor.MIDDLE, Layers.SLOPE, id)
    };
  }

  private static Mark[] alone(RoofPlane plane, String text, Point middle) {
    return new Mark[] {
      new Mark.Text(middle, text, Lettering.SMALL, 0, Anchor.CENTRE, Layers.SLOPE, plane.id())
    };
  }
}
