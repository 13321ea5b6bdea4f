package longpoint.surface;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.units.LengthFigure;
import longpoint.units.LengthUnit;
import longpoint.wording.Phrase;

/**
 * Fascia heights, and what to change so that they run level round a corner.
 *
 * <p>The top outer edge of a fascia lies on the frame plane at the roof's edge: plate + heel −
 * slope × (overhang + fascia thickness).
 */
public final class FasciaLevels {
  /** Half a sixteenth of an inch: less than the nearest mark on the tape is level. */
  private static final double LEVEL_INCHES = 1.0 / 32;

  private FasciaLevels() {}

  /** Height of an eave's fascia, top outer edge, above the plan's datum. */
  public static double height(Side eave) {
    return eave.plateHeight() + eave.heel() - eave.slope().ratio() * eave.reach();
  }

  /** The overhang that brings an eave's fascia to a height; may come out negative. */
  public static double overhangFor(Side eave, double height) {
    return (eave.plateHeight() + eave.heel() - height) / eave.slope().ratio() - eave.fascia();
  }

  /** The heel that brings an eave's fascia to a height; may come out negative. */
  public static double heelFor(Side eave, double height) {
    return height + eave.slope().ratio() * eave.reach() - eave.plateHeight();
  }

  /** Notes on eaves that meet at a corner and whose fascias do not run level. */
  static List<Problem> check(Plan plan) {
    List<Problem> notes = new ArrayList<>();
    for (Part part : plan.parts()) {
      int first = 0;
      for (Ring ring : part.rings()) {
        for (int i = 0; i < ring.size(); i++) {
          Side one = plan.side(part, first + i);
          Side next = plan.side(part, first + (i + 1) % ring.size());
          if (one.kind() == EdgeKind.EAVE && next.kind() == EdgeKind.EAVE) {
            check(one, next, plan.unit(), notes);
          }
        }
        first += ring.size();
      }
      for (Side side : plan.sides(part)) {
        if (side.kind() == EdgeKind.OPEN) {
          checkAcross(plan, part, side, notes);
        }
      }
    }
    return notes;
  }

  /** Where a wing's eaves run up to an eave of the part it meets, their fascias meet too. */
  private static void checkAcross(Plan plan, Part part, Side open, List<Problem> notes) {
    for (Side mine : plan.sides(part)) {
      for (Part other : plan.parts()) {
        if (mine.kind() == EdgeKind.EAVE && touches(mine, open) && other != part) {
          plan.sides(other).stream()
              .filter(s -> s.kind() == EdgeKind.EAVE && meets(mine, open, s))
              .filter(s -> height(s) < top(mine, open))
              .forEach(s -> check(s, mine, plan.unit(), notes));
        }
      }
    }
  }

  /**
   * About where a wing's roof ends: an eave above that is a storey higher, and nobody wants the two
   * fascias level.
   */
  private static double top(Side eave, Side open) {
    double rise = eave.slope().ratio() * open.wall().length() / 2;
    return eave.plateHeight() + eave.heel() + rise;
  }

  private static boolean touches(Side side, Side open) {
    return side.wall().to().equals(open.wall().from())
        || side.wall().from().equals(open.wall().to());
  }

  /** Whether the corner of a side and its open neighbour stands at another part's wall. */
  private static boolean meets(Side mine, Side open, Side theirs) {
    Point corner =
        mine.wall().to().equals(open.wall().from()) ? mine.wall().to() : mine.wall().from();
    return theirs.wall().distance(corner) <= theirs.reach();
  }

  private static void check(Side one, Side next, LengthUnit unit, List<Problem> notes) {
    double apart = height(next) - height(one);
    double level = unit.fromMillimetres(LengthUnit.INCH.toMillimetres(LEVEL_INCHES));
    if (!(one.slope().ratio() > 0) || !(next.slope().ratio() > 0) || Math.abs(apart) <= level) {
      return;
    }
    Phrase wrong =
        Phrase.of(
            apart > 0 ? "surface.fascia.higher" : "surface.fascia.lower",
            PlaceName.wall(next),
            new LengthFigure(Math.abs(apart), unit),
            PlaceName.wall(one));
    notes.add(new Problem(Problem.Level.NOTE, next.id(), wrong, cure(one, next, unit)));
  }

  private static Phrase cure(Side one, Side next, LengthUnit unit) {
    LengthFigure overhang = new LengthFigure(overhangFor(next, height(one)), unit);
    LengthFigure heel = new LengthFigure(heelFor(next, height(one)), unit);
    if (overhang.length() >= 0 && heel.length() >= 0) {
      return Phrase.of("surface.fascia.both", overhang, heel);
    }
    if (overhang.length() >= 0) {
      return Phrase.of("surface.fascia.overhang", overhang);
    }
    return heel.length() >= 0
        ? Phrase.of("surface.fascia.heel", heel)
        : Phrase.of("surface.fascia.other", PlaceName.wall(one));
  }
}
