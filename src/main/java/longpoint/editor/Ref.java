package longpoint.editor;

import java.util.Optional;
import longpoint.geometry.Point;
import longpoint.plan.Part;
import longpoint.plan.Plan;

/** Points at something in a plan. It may have gone: ask {@link #in}. */
public sealed interface Ref {
  /** Id of the part that is meant, or that holds what is meant. */
  String part();

  /** Whether the plan still has what is meant. */
  boolean in(Plan plan);

  /** A whole part. */
  static Ref part(String part) {
    return new OfPart(part);
  }

  /** A side, numbered as in {@link Part#side}. */
  static Ref side(String part, int side) {
    return new OfSide(part, side);
  }

  /** The corner at the start of a side. */
  static Ref corner(String part, int corner) {
    return new OfCorner(part, corner);
  }

  /** A whole part. */
  record OfPart(String part) implements Ref {
    @Override
    public boolean in(Plan plan) {
      return plan.part(part).isPresent();
    }
  }

  /**
   * One side.
   *
   * @param side its number in the part, from 0
   */
  record OfSide(String part, int side) implements Ref {
    @Override
    public boolean in(Plan plan) {
      return holds(plan, part, side);
    }
  }

  /**
   * One corner.
   *
   * @param corner the number of the side that starts there
   */
  record OfCorner(String part, int corner) implements Ref {
    @Override
    public boolean in(Plan plan) {
      return holds(plan, part, corner);
    }

    /** Where the corner is; empty when it has gone. */
    public Optional<Point> at(Plan plan) {
      return in(plan) ? plan.part(part).map(p -> p.side(corner).from()) : Optional.empty();
    }
  }

  private static boolean holds(Plan plan, String part, int side) {
    return plan.part(part).filter(p -> side >= 0 && side < p.sideCount()).isPresent();
  }
}
