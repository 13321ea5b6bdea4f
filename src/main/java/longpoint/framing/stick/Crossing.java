package longpoint.framing.stick;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import longpoint.geometry.Point;

/** Rafters that a supporting valley crosses are cut in two at it. */
final class Crossing {
  private final Stick valley;
  private final double thickness;

  private Crossing(Stick valley, double thickness) {
    this.valley = valley;
    this.thickness = thickness;
  }

  /**
   * @param valley that runs on through a plane
   * @param beside the rafters of that plane
   */
  static List<Stick> cut(
      List<Stick> sticks, Stick valley, double thickness, Predicate<Stick> beside) {
    Crossing crossing = new Crossing(valley, thickness);
    List<Stick> cut = new ArrayList<>();
    for (Stick s : sticks) {
      if (beside.test(s) && isCut(s.kind())) {
        cut.addAll(crossing.cut(s));
      } else {
        cut.add(s);
      }
    }
    return cut;
  }

  private static boolean isCut(RafterKind kind) {
    return switch (kind) {
      case COMMON, HIP_JACK, VALLEY_JACK, CRIPPLE -> true;
      case HIP, VALLEY, RIDGE, TRIMMER, HEADER -> false;
    };
  }

  private List<Stick> cut(Stick s) {
    Point along = valley.up();
    double sine = s.up().cross(along);
    double share = valley.foot().minus(s.foot()).cross(along) / sine;
    double place = valley.foot().minus(s.foot()).cross(s.up()) / sine;
    double length = s.up().length();
    double clear = 2 * thickness;
    boolean crosses =
        Double.isFinite(share)
            && share * length > thickness / 2
            && (1 - share) * length > thickness / 2
            && place > 0
            && place < 1;
    if (!crosses) {
      return List.of(s);
    }
    Point at = s.foot().toward(s.head(), share);
    Point up = s.up();
    Joint below = Joint.against(Bearing.VALLEY, thickness, up, up, along);
    Joint above = Joint.against(Bearing.VALLEY, thickness, up.times(-1), up, along);
    Stick lower =
        Stick.of(low(s.kind()), s.part(), s.run(), s.foot(), at, s.slope())
            .withTail(s.tail())
            .withFoot(s.atFoot())
            .withHead(below)
            .withRow(s.row() + "below");
    Stick upper =
        Stick.of(high(s.kind()), s.part(), s.run(), at, s.head(), s.slope())
            .withFoot(above)
            .withHead(s.atHead())
            .withRow(s.row() + "above");
    // What would be too short to be a piece is none.
    List<Stick> pieces = new ArrayList<>();
    if (share * length > clear) {
      pieces.add(s.heel().isPresent() ? lower.withHeel(s.heel().getAsDouble()) : lower);
    }
    if ((1 - share) * length > clear) {
      pieces.add(upper);
    }
    return pieces;
  }

  private static RafterKind low(RafterKind kind) {
    return switch (kind) {
      case COMMON, HIP_JACK -> RafterKind.COMMON;
      case VALLEY_JACK, CRIPPLE, HIP, VALLEY, RIDGE, TRIMMER, HEADER -> RafterKind.CRIPPLE;
    };
  }

  private static RafterKind high(RafterKind kind) {
    return switch (kind) {
      case COMMON, VALLEY_JACK -> RafterKind.VALLEY_JACK;
      case HIP_JACK, CRIPPLE, HIP, VALLEY, RIDGE, TRIMMER, HEADER -> RafterKind.CRIPPLE;
    };
  }
}
