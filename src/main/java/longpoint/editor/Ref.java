package longpoint.editor;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Backdrop;
import longpoint.plan.Part;
import longpoint.plan.Plan;

/** Points at something in a plan. It may have gone: ask {@link #in}. */
public sealed interface Ref {
  /** Id of the part that is meant, or that holds what is meant; empty for what no part holds. */
  String part();

  /** The box around it; empty when it has gone. */
  Bounds bounds(Plan plan);

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

    @Override
    public Bounds bounds(Plan plan) {
      return plan.part(part).map(p -> p.outline().bounds()).orElse(Bounds.EMPTY);
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

    @Override
    public Bounds bounds(Plan plan) {
      return in(plan)
          ? plan.part(part)
              .map(p -> Bounds.of(List.of(p.side(side).from(), p.side(side).to())))
              .orElse(Bounds.EMPTY)
          : Bounds.EMPTY;
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

    @Override
    public Bounds bounds(Plan plan) {
      return Bounds.of(at(plan).stream().toList());
    }

    /** Where the corner is; empty when it has gone. */
    public Optional<Point> at(Plan plan) {
      return in(plan) ? plan.part(part).map(p -> p.side(corner).from()) : Optional.empty();
    }
  }

  /** The user's own note. */
  record OfNote(String note) implements Ref {
    @Override
    public String part() {
      return "";
    }

    @Override
    public boolean in(Plan plan) {
      return plan.markup().note(note).isPresent();
    }

    @Override
    public Bounds bounds(Plan plan) {
      return plan.markup()
          .note(note)
          .map(n -> Bounds.of(Stream.concat(Stream.of(n.at()), n.pointsAt().stream()).toList()))
          .orElse(Bounds.EMPTY);
    }
  }

  /** The user's own dimension. */
  record OfDimension(String dimension) implements Ref {
    @Override
    public String part() {
      return "";
    }

    @Override
    public boolean in(Plan plan) {
      return plan.markup().dimension(dimension).isPresent();
    }

    @Override
    public Bounds bounds(Plan plan) {
      return plan.markup()
          .dimension(dimension)
          .flatMap(d -> d.line(plan))
          .map(s -> Bounds.of(List.of(s.from(), s.to())))
          .orElse(Bounds.EMPTY);
    }
  }

  /** The picture beneath the plan. */
  record OfBackdrop() implements Ref {
    @Override
    public String part() {
      return "";
    }

    @Override
    public boolean in(Plan plan) {
      return plan.markup().backdrop().isPresent();
    }

    @Override
    public Bounds bounds(Plan plan) {
      return plan.markup().backdrop().map(Backdrop::bounds).orElse(Bounds.EMPTY);
    }
  }

  private static boolean holds(Plan plan, String part, int side) {
    return plan.part(part).filter(p -> side >= 0 && side < p.sideCount()).isPresent();
  }
}
