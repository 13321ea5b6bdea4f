package longpoint.editor;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import longpoint.geometry.Point;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;
import longpoint.units.LengthUnit;

/** Brings the fascia of an eave level with those of the eaves it meets. */
final class LevelCures {
  /** In inches: less than the nearest mark on the tape is level. */
  private static final double LEVEL = 1.0 / 32;

  /** In inches, as the plan's checks have it. */
  private static final double LONGEST = 72;

  private LevelCures() {}

  static List<Cure> of(Plan plan, Part part, int side) {
    List<Cure> cures = new ArrayList<>();
    Side here = plan.side(part, side);
    if (here.kind() != EdgeKind.EAVE) {
      return cures;
    }
    double level = LEVEL * (plan.unit() == LengthUnit.INCH ? 1 : 25.4);
    Ref.OfSide ref = new Ref.OfSide(part.id(), side);
    for (Ref.OfSide like : met(plan, part, here)) {
      Part other = plan.part(like.part()).orElseThrow();
      Side model = plan.side(other, like.side());
      if (Math.abs(height(model) - height(here)) > level) {
        String wall = WallName.of(plan, other, like.side());
        for (SideCommands.LevelBy by : SideCommands.LevelBy.values()) {
          Command command = SideCommands.levelFascia(plan, ref, like, by);
          if (command.on(plan) instanceof Outcome.Commit done && isShort(done, ref)) {
            cures.add(
                switch (by) {
                  case OVERHANG ->
                      Cures.cure(
                          "level.overhang", command, figure(done, ref, Side::overhang), wall);
                  case HEEL ->
                      Cures.cure("level.heel", command, figure(done, ref, Side::heel), wall);
                });
          }
        }
      }
    }
    return cures;
  }

  /** An overhang that would want posts under it is no cure. */
  private static boolean isShort(Outcome.Commit done, Ref.OfSide ref) {
    Part part = done.plan().part(ref.part()).orElseThrow();
    double inch = done.plan().unit() == LengthUnit.INCH ? 1 : 25.4;
    return done.plan().side(part, ref.side()).overhang() <= LONGEST * inch;
  }

  /** The figure as it would be. */
  private static String figure(
      Outcome.Commit done, Ref.OfSide ref, java.util.function.ToDoubleFunction<Side> of) {
    Part part = done.plan().part(ref.part()).orElseThrow();
    return Naming.length(done.plan(), of.applyAsDouble(done.plan().side(part, ref.side())));
  }

  /** Top outer edge of a fascia above the plan's datum. */
  private static double height(Side eave) {
    return eave.plateHeight() + eave.heel() - eave.slope().ratio() * eave.reach();
  }

  /** Eaves of the same part at its corners, and of other parts where it runs up to their walls. */
  private static Set<Ref.OfSide> met(Plan plan, Part part, Side here) {
    Set<Ref.OfSide> met = new LinkedHashSet<>();
    for (Side next : plan.sides(part)) {
      if (next.index() != here.index() && corner(here, next)) {
        if (next.kind() == EdgeKind.EAVE) {
          met.add(new Ref.OfSide(part.id(), next.index()));
        } else if (next.kind() == EdgeKind.OPEN) {
          met.addAll(across(plan, part, end(here, next)));
        }
      }
    }
    return met;
  }

  private static boolean corner(Side a, Side b) {
    return a.wall().to().equals(b.wall().from()) || a.wall().from().equals(b.wall().to());
  }

  private static Point end(Side here, Side next) {
    return here.wall().to().equals(next.wall().from()) ? here.wall().to() : here.wall().from();
  }

  private static List<Ref.OfSide> across(Plan plan, Part part, Point corner) {
    List<Ref.OfSide> met = new ArrayList<>();
    for (Part other : plan.parts()) {
      for (Side side : plan.sides(other)) {
        if (!other.id().equals(part.id())
            && side.kind() == EdgeKind.EAVE
            && side.wall().distance(corner) <= side.reach()) {
          met.add(new Ref.OfSide(other.id(), side.index()));
        }
      }
    }
    return met;
  }
}
