package longpoint.field.lift;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.framing.FramingSet;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussMark;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Lift;

/**
 * The trusses that a lift takes, in the order they stand.
 *
 * @param trusses parallel to the first, at least one
 * @param axes along them and across
 */
record Picked(List<Stood> trusses, LiftSection.Axes axes) {
  /**
   * A truss with what it was made of.
   *
   * @param width of all its plies
   */
  record Stood(Truss truss, TrussMark mark, double width) {
    Point along() {
      return truss.to().minus(truss.from()).unit();
    }

    /** Plan point over a place v of its own profile as it stands. */
    Point at(double v) {
      return truss.from().plus(along().times(v));
    }

    /** A place of the mark's outline, as the truss stands. */
    double turned(double v) {
      return switch (truss.turn()) {
        case AS_DRAWN -> v;
        case END_FOR_END -> mark.span() - v;
      };
    }

    double topAt(double v) {
      return truss.plate() + mark.profile().topAt(turned(v));
    }

    double foot() {
      return truss.plate()
          + mark.profile().bottom().stream().mapToDouble(Point::y).min().orElseThrow();
    }

    double peak() {
      return truss.plate()
          + mark.profile().top().stream().mapToDouble(Point::y).max().orElseThrow();
    }

    double tailFrom() {
      return truss.turn() == Truss.Turn.AS_DRAWN ? mark.tailLow() : mark.tailHigh();
    }

    double tailTo() {
      return truss.turn() == Truss.Turn.AS_DRAWN ? mark.tailHigh() : mark.tailLow();
    }
  }

  /** How far two directions may differ and still be parallel: sine of the angle. */
  private static final double PARALLEL = 1e-6;

  Picked {
    trusses = List.copyOf(trusses);
  }

  Stood first() {
    return trusses.get(0);
  }

  Stood last() {
    return trusses.get(trusses.size() - 1);
  }

  /**
   * @param part id of the lift's part
   * @param thickness of one ply
   * @return empty where the part has no truss there; those askew to the first are left out
   */
  static Optional<Picked> of(String part, Lift lift, FramingSet framing, double thickness) {
    List<Truss> own = framing.trusses().stream().filter(t -> t.part().equals(part)).toList();
    List<Truss> taken =
        Stream.concat(
                lift.stretch().stream().flatMap(s -> stretch(s, own).stream()),
                lift.trusses().stream().flatMap(p -> nearest(p, own).stream()))
            .distinct()
            .toList();
    if (taken.isEmpty()) {
      return Optional.empty();
    }
    Point along = direction(taken.get(0));
    Point across = along.left();
    Truss anchor = taken.get(0);
    List<Truss> row =
        taken.stream()
            .filter(t -> Math.abs(direction(t).cross(along)) < PARALLEL)
            .sorted(
                Comparator.comparingDouble((Truss t) -> across.dot(t.from().minus(anchor.from()))))
            .toList();
    List<Stood> stood = new ArrayList<>();
    for (Truss t : row) {
      TrussMark mark =
          framing.marks().stream().filter(m -> m.mark().equals(t.mark())).findFirst().orElseThrow();
      stood.add(new Stood(t, mark, t.plies() * thickness));
    }
    Stood first = stood.get(0);
    Point origin = first.truss().from();
    if (direction(first.truss()).dot(along) < 0) {
      origin = first.truss().to();
    }
    Point corner = origin.minus(across.times(first.width() / 2));
    double foot = stood.stream().mapToDouble(Stood::foot).min().orElseThrow();
    return Optional.of(new Picked(stood, new LiftSection.Axes(corner, along, across, foot)));
  }

  private static Point direction(Truss t) {
    return t.to().minus(t.from()).unit();
  }

  /** The truss whose line is nearest. */
  private static Optional<Truss> nearest(Point place, List<Truss> trusses) {
    return trusses.stream()
        .min(
            Comparator.comparingDouble((Truss t) -> new Segment(t.from(), t.to()).distance(place)));
  }

  private static List<Truss> stretch(Lift.Stretch stretch, List<Truss> trusses) {
    Optional<Truss> from = nearest(stretch.from(), trusses);
    if (from.isEmpty()) {
      return List.of();
    }
    Truss a = from.get();
    Point across = direction(a).left();
    List<Truss> row =
        trusses.stream()
            .filter(t -> t.run().equals(a.run()))
            .filter(t -> Math.abs(direction(t).cross(direction(a))) < PARALLEL)
            .toList();
    Truss b = nearest(stretch.to(), row).orElse(a);
    double one = across.dot(a.from());
    double other = across.dot(b.from());
    double room = PARALLEL * (1 + Math.abs(one) + Math.abs(other));
    return row.stream()
        .filter(t -> across.dot(t.from()) >= Math.min(one, other) - room)
        .filter(t -> across.dot(t.from()) <= Math.max(one, other) + room)
        .toList();
  }
}
