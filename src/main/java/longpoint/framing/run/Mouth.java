package longpoint.framing.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import longpoint.geometry.Overlay;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.EdgeKind;
import longpoint.plan.Join;
import longpoint.plan.Plan;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;

/**
 * The stretch of a new lower roof's eave that lies inside a part laid over it, where tails and deck
 * stop at the wall so that the upper part has the room. Frame and deck both ask here.
 *
 * @param part id of the lower part
 * @param run id of the lower run
 * @param bank its wall there
 * @param wall the stretch, the lower part on its left
 * @param reach overhang and fascia that are left off, level
 */
public record Mouth(String part, String run, Bank bank, Segment wall, double reach) {
  public Mouth {
    Objects.requireNonNull(bank);
    Objects.requireNonNull(wall);
  }

  /** Where tails are left off: parts laid over an eave of a roof that is yet to be built. */
  public static List<Mouth> open(Plan plan, List<Meeting> meetings) {
    List<Mouth> mouths = new ArrayList<>();
    for (Meeting m : meetings) {
      if (takesRoom(m) && tailsOff(plan, m)) {
        mouths.add(
            new Mouth(
                m.lower().part().id(),
                m.lower().id(),
                m.bank(),
                wall(m),
                m.lower().bound(m.bank()).side().orElseThrow().reach()));
      }
    }
    return List.copyOf(mouths);
  }

  private static boolean takesRoom(Meeting m) {
    return switch (m.manner()) {
      case OVERLAY_FRAME, OVERLAY_DECK ->
          m.endsAtWall()
              && !m.lower().part().existing()
              && m.lower().bound(m.bank()).kind() == EdgeKind.EAVE;
      case THROUGH, SKEW, SHED, SHED_THROUGH -> false;
    };
  }

  private static boolean tailsOff(Plan plan, Meeting m) {
    return plan.joins().stream()
        .anyMatch(
            j ->
                isOf(j, m.upper().part().id(), m.lower().part().id())
                    && j.tails() == Join.MouthTails.OFF);
  }

  /** Where the taller of two that cross runs through, their join may be the other way about. */
  private static boolean isOf(Join j, String upper, String lower) {
    return j.upper().equals(upper) && j.lower().equals(lower)
        || j.upper().equals(lower) && j.lower().equals(upper);
  }

  private static Segment wall(Meeting m) {
    Axes axes = m.lower().axes();
    double length = m.lower().length();
    double width = m.lower().width();
    return switch (m.bank()) {
      case LOW -> new Segment(axes.at(m.from(), 0), axes.at(m.to(), 0));
      case HIGH -> new Segment(axes.at(m.to(), width), axes.at(m.from(), width));
      case START -> new Segment(axes.at(0, m.to()), axes.at(0, m.from()));
      case END -> new Segment(axes.at(length, m.from()), axes.at(length, m.to()));
    };
  }

  /**
   * Whether a place on the wall lies in the stretch.
   *
   * @param near how far off the line, and past its ends, still counts
   */
  public boolean holds(Point place, double near) {
    return wall.distance(place) <= near;
  }

  /** The roof with what these mouths leave off taken from what lies beneath another roof. */
  public static RoofSurface cutFrom(RoofSurface surface, List<Mouth> mouths) {
    if (mouths.isEmpty()) {
      return surface;
    }
    return new RoofSurface(
        surface.planes().stream().map(p -> cutFrom(p, mouths)).toList(),
        surface.lines(),
        surface.problems());
  }

  private static RoofPlane cutFrom(RoofPlane plane, List<Mouth> mouths) {
    List<Region> off =
        mouths.stream().filter(m -> m.part.equals(plane.part())).map(Mouth::strip).toList();
    return off.isEmpty() || plane.covered().isEmpty()
        ? plane
        : new RoofPlane(
            plane.id(),
            plane.part(),
            plane.edge(),
            plane.plane(),
            plane.visible(),
            Overlay.minus(plane.covered(), off),
            plane.sheltered().isEmpty() ? List.of() : Overlay.minus(plane.sheltered(), off));
  }

  /** On the plan, from the wall out to past the fascia. */
  private Region strip() {
    Point out = wall.direction().left().times(-2 * reach);
    return new Region(
        new Ring(List.of(wall.to(), wall.from(), wall.from().plus(out), wall.to().plus(out))));
  }
}
