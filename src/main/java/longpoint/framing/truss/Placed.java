package longpoint.framing.truss;

import java.util.Objects;
import java.util.Optional;
import longpoint.framing.run.Run;
import longpoint.geometry.Point;

/**
 * A truss in its place, before marks are shared out.
 *
 * @param plies side by side, ≥ 1
 * @param station along its run's ridge from the start; for jacks along the wall they stand on
 * @param from plan point of v = 0 on the centre line of the truss
 * @param to plan point of v = span
 * @param plate height of v, z = 0, 0 of the profile above the plan's datum
 * @param carriedFrom name of what carries its first end, if not a wall
 * @param carriedTo name of what carries its other end
 */
public record Placed(
    TrussKind kind,
    int plies,
    Run run,
    double station,
    Point from,
    Point to,
    double plate,
    Profile profile,
    Optional<Carrier> carriedFrom,
    Optional<Carrier> carriedTo) {
  public Placed {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(run);
    Objects.requireNonNull(profile);
    Objects.requireNonNull(carriedFrom);
    Objects.requireNonNull(carriedTo);
  }

  /**
   * Something that carries the end of a truss.
   *
   * @param run id of the run the carrying truss belongs to
   * @param place plan point on the centre line of the carrying truss
   */
  public record Carrier(String run, Point place) {}

  static Placed onWalls(TrussKind kind, int plies, Section cut, Profile profile) {
    return new Placed(
        kind,
        plies,
        cut.run(),
        cut.station(),
        cut.foot(),
        cut.head(),
        cut.run().plate(),
        profile,
        Optional.empty(),
        Optional.empty());
  }

  /** Room that it takes along the plate. */
  double width() {
    return plies * run.part().frame().thickness();
  }

  double span() {
    return profile.span();
  }

  /** The same truss with its first end hung, cut plumb there. */
  Placed hungFrom(Carrier carrier) {
    return with(profile.withoutTailLow(), Optional.of(carrier), carriedTo);
  }

  /** The same truss with its last end hung, cut plumb there. */
  Placed hungTo(Carrier carrier) {
    return with(profile.withoutTailHigh(), carriedFrom, Optional.of(carrier));
  }

  /** The same truss cut plumb at the outside of its first bearing, which still carries it. */
  Placed withoutTailFrom() {
    return with(profile.withoutTailLow(), carriedFrom, carriedTo);
  }

  /** The same truss cut plumb at the outside of its last bearing, which still carries it. */
  Placed withoutTailTo() {
    return with(profile.withoutTailHigh(), carriedFrom, carriedTo);
  }

  private Placed with(Profile shape, Optional<Carrier> first, Optional<Carrier> last) {
    return new Placed(kind, plies, run, station, from, to, plate, shape, first, last);
  }

  Placed as(TrussKind other) {
    return new Placed(other, plies, run, station, from, to, plate, profile, carriedFrom, carriedTo);
  }

  /**
   * The piece of this truss from one place along it to another, cut plumb; a tail stays with the
   * end it is on.
   *
   * @param a from the first bearing, ≥ 0
   * @param b &gt; a, at most the span
   * @param first what carries the first end
   * @param last what carries the last end
   */
  Placed piece(double a, double b, Optional<Carrier> first, Optional<Carrier> last) {
    return new Placed(
        kind,
        plies,
        run,
        station,
        from.toward(to, a / span()),
        from.toward(to, b / span()),
        plate,
        profile.piece(a, b),
        first,
        last);
  }
}
