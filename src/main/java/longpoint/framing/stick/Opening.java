package longpoint.framing.stick;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import longpoint.framing.run.Meeting;
import longpoint.framing.run.Run;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Frame;
import longpoint.plan.Side;

/**
 * The opening that a dormer framed through a roof of rafters is built in: a doubled rafter on each
 * side, the inner one under the outside face of the dormer's wall, a doubled header under its front
 * and one under the end of its ridge, and the rafters between cut off at both (US Navy NAVEDTRA
 * 14044 vol. 2, p. 2-30, figs. 2-45 and 2-56). A dormer whose front stands on the wall has no lower
 * header, one that reaches the main ridge no upper one.
 *
 * @param wall of the main roof below it
 * @param from along that wall, the dormer's near outside face
 * @param to the far one
 * @param front level distance in from the wall to the outside of the front; 0 or less on the wall
 * @param top level distance in to the face of the upper header's middle; infinite for none
 */
record Opening(
    String part, String run, Side wall, double from, double to, double front, double top) {
  /** Sine of the angle within which a rafter climbs square to the wall. */
  private static final double SQUARE = 0.01;

  Opening {
    Objects.requireNonNull(wall);
  }

  /** The openings in roofs that have rafters. */
  static List<Opening> all(List<Meeting> meetings) {
    return meetings.stream().flatMap(m -> of(m).stream()).toList();
  }

  /** Empty where nothing is cut: over a deck, at the end of a wing, in a roof of trusses. */
  static Optional<Opening> of(Meeting m) {
    boolean shed = m.manner() == Meeting.Manner.SHED_THROUGH;
    boolean framed =
        (shed || m.manner() == Meeting.Manner.THROUGH && !m.endsAtWall())
            && m.lower().part().frame().method() == Frame.Method.RAFTER
            && m.lower().bound(m.bank()).isEave();
    if (!framed) {
      return Optional.empty();
    }
    Side wall = m.lower().bound(m.bank()).side().orElseThrow();
    double thickness = m.lower().part().frame().thickness();
    Run dormer = m.upper();
    boolean low = dormer.low().isEave();
    double a = wall.wall().along(dormer.axes().at(0, 0));
    double b =
        wall.wall().along(dormer.axes().at(shed ? dormer.length() : 0, shed ? 0 : dormer.width()));
    double front =
        shed
            ? wall.wall().offset(dormer.axes().at(0, low ? 0 : dormer.width()))
            : m.depth() - dormer.length();
    double top =
        shed
            ? wall.wall().offset(dormer.axes().at(0, low ? dormer.width() : 0)) + m.shedRun()
            : top(m, wall);
    if (shed && m.shedRun() == 0) {
      return Optional.empty();
    }
    boolean toRidge = top > m.lower().planeRun(m.bank()) - 3 * thickness;
    // What is new in a roof that exists is listed with the dormer.
    Run owner = m.lower().part().existing() ? dormer : m.lower();
    Opening opening =
        new Opening(
            owner.part().id(),
            owner.id(),
            wall,
            Math.min(a, b),
            Math.max(a, b),
            front > 2 * thickness ? front : 0,
            toRidge ? Double.POSITIVE_INFINITY : top);
    boolean room = top - opening.front > 3 * thickness && opening.to - opening.from > 3 * thickness;
    return room ? Optional.of(opening) : Optional.empty();
  }

  /**
   * Under the end of the dormer's ridge; where valley trusses stand on the bare frame, where the
   * frame comes up to the dormer's plates.
   */
  private static double top(Meeting m, Side wall) {
    Run dormer = m.upper();
    double height =
        dormer.part().frame().method() == Frame.Method.RAFTER
            ? dormer.ridgeHeight()
            : dormer.plate();
    return (height - wall.plateHeight() - wall.heel()) / wall.slope().ratio();
  }

  boolean hasUpperHeader() {
    return Double.isFinite(top);
  }

  /** Whether it is cut in the plane over a wall. */
  boolean isOver(Side side) {
    return side.id().equals(wall.id());
  }

  /** Where the middles of the doubled rafters stand on the wall. */
  List<Point> trimmers(double thickness) {
    return List.of(at(from, 0), at(from - thickness, 0), at(to, 0), at(to + thickness, 0));
  }

  private Point at(double along, double in) {
    Segment face = wall.wall();
    Point dir = face.direction();
    return face.from().plus(dir.times(along)).plus(dir.left().times(in));
  }

  private double in(Point p) {
    return wall.wall().offset(p);
  }

  private boolean climbsHere(Stick s) {
    Point in = wall.wall().direction().left();
    return s.part().equals(part)
        && s.climbs()
        && s.up().unit().dot(in) > 0
        && Math.abs(s.up().unit().cross(in)) < SQUARE
        && isRafter(s.kind());
  }

  private static boolean isRafter(RafterKind kind) {
    return switch (kind) {
      case COMMON, HIP_JACK, VALLEY_JACK, CRIPPLE -> true;
      case HIP, VALLEY, RIDGE, TRIMMER, HEADER -> false;
    };
  }

  private double along(Stick s) {
    return wall.wall().along(s.foot());
  }

  private boolean isBetween(Stick s) {
    return along(s) > from && along(s) < to;
  }

  /** Places on the wall below the rafters that it cuts. */
  List<Point> places(List<Stick> sticks, double thickness) {
    return sticks.stream()
        .filter(s -> climbsHere(s) && isBetween(s) && !isTrimmer(s, thickness))
        .map(s -> at(along(s), 0))
        .distinct()
        .toList();
  }

  private boolean isTrimmer(Stick s, double thickness) {
    return trimmers(thickness).stream()
        .anyMatch(t -> Math.abs(wall.wall().along(t) - along(s)) < thickness / 4);
  }

  /** The rafters of the plane again, those in the way cut, with the headers between. */
  List<Stick> frame(List<Stick> sticks, double thickness) {
    List<Stick> framed = new ArrayList<>();
    for (Stick s : sticks) {
      if (!climbsHere(s) || in(s.head()) < front) {
        framed.add(s);
      } else if (isTrimmer(s, thickness)) {
        framed.add(s.as(RafterKind.TRIMMER).withRow(""));
      } else if (isBetween(s)) {
        framed.addAll(cut(s, thickness));
      } else {
        framed.add(s);
      }
    }
    if (front > 0) {
      headers(framed, front, thickness);
    }
    if (hasUpperHeader()) {
      headers(framed, top, thickness);
    }
    return framed;
  }

  private List<Stick> cut(Stick s, double thickness) {
    List<Stick> pieces = new ArrayList<>();
    double foot = in(s.foot());
    double head = in(s.head());
    Joint onHeader = Joint.square(Bearing.HEADER, thickness / 2);
    if (front - foot > 2 * thickness) {
      Point at = s.foot().plus(s.up().unit().times(front - foot));
      RafterKind kind = s.kind() == RafterKind.HIP_JACK ? RafterKind.COMMON : s.kind();
      pieces.add(s.as(kind).between(s.foot(), at).withOver(0).withHead(onHeader).withRow(""));
    }
    double second = top + thickness;
    if (head - second > 2 * thickness) {
      Point at = s.foot().plus(s.up().unit().times(second - foot));
      pieces.add(
          Stick.of(s.kind(), s.part(), s.run(), at, s.head(), s.slope())
              .withOver(s.over())
              .withFoot(onHeader)
              .withHead(s.atHead())
              .withRow(s.row().isEmpty() ? "" : s.row() + "above"));
    }
    return pieces;
  }

  private void headers(List<Stick> framed, double in, double thickness) {
    Joint end = Joint.square(Bearing.TRIMMER, thickness / 2);
    for (int ply = 0; ply < 2; ply++) {
      double at = in + ply * thickness;
      framed.add(
          Stick.of(RafterKind.HEADER, part, run, at(from, at), at(to, at), 0)
              .withFoot(end)
              .withHead(end));
    }
  }

  /** Marks along a wall with those of doubled rafters; what would stand in their wood goes. */
  static List<Double> withTrimmers(
      List<Double> marks, List<Double> trimmers, double thickness, double length) {
    List<Double> own =
        trimmers.stream().filter(t -> t > thickness && t < length - thickness).toList();
    List<Double> all = new ArrayList<>(own);
    for (double mark : marks) {
      if (own.stream().noneMatch(t -> Math.abs(t - mark) < thickness - 1e-9)) {
        all.add(mark);
      }
    }
    all.sort(null);
    return all;
  }
}
