package longpoint.plan;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import longpoint.geometry.Meeting;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;

/**
 * Takes along what lies on the sheet when parts are moved, turned or mirrored: words and places
 * that stand on them, and dimensions that hold on to their corners, line and all.
 */
public final class Carried {
  private final Plan plan;
  private final List<Part> moving;
  private final Motion motion;

  private Carried(Plan plan, Collection<String> parts, Motion motion) {
    this.plan = plan;
    this.moving = plan.parts().stream().filter(p -> parts.contains(p.id())).toList();
    this.motion = motion;
  }

  /** The plan with parts moved and all that belongs to them. */
  public static Plan by(Motion motion, Plan plan, Collection<String> parts) {
    Carried carried = new Carried(plan, parts, motion);
    List<Part> moved =
        plan.parts().stream().map(p -> parts.contains(p.id()) ? motion.on(p) : p).toList();
    return plan.withParts(moved).withMarkup(carried.markup());
  }

  /**
   * The plan with a part's outline counter-clockwise and its holes clockwise, dimensions keeping to
   * their corners.
   */
  public static Plan rightWayRound(Plan plan, String id) {
    Part part = plan.part(id).orElseThrow();
    Part right = part.rightWayRound();
    Markup markup =
        plan.markup()
            .withCorners(c -> Optional.of(c.part().equals(id) ? turned(c, part, right) : c));
    return plan.withPart(right).withMarkup(markup);
  }

  /** A ring that was turned still starts at the same corner. */
  private static PlanDimension.End turned(PlanDimension.Corner end, Part part, Part right) {
    int first = 0;
    for (int r = 0; r < part.rings().size(); r++) {
      Ring ring = part.rings().get(r);
      int place = end.corner() - first;
      if (place >= 0 && place < ring.size() && !ring.equals(right.rings().get(r))) {
        return new PlanDimension.Corner(end.part(), first + (ring.size() - place) % ring.size());
      }
      first += ring.size();
    }
    return end;
  }

  private Markup markup() {
    Markup now = plan.markup();
    return now.withNotes(now.notes().stream().map(this::note).toList())
        .withDimensions(now.dimensions().stream().map(this::dimension).toList());
  }

  private Note note(Note note) {
    return note.withAt(place(note.at())).withPointsAt(note.pointsAt().map(this::place));
  }

  private Point place(Point p) {
    return stands(p) ? motion.on(p) : p;
  }

  private boolean stands(Point p) {
    return moving.stream().anyMatch(m -> Meeting.holds(m.outline(), p));
  }

  private PlanDimension dimension(PlanDimension d) {
    PlanDimension held = d.withEnds(end(d.from()), end(d.to()));
    Optional<Segment> ends = d.ends(plan);
    if (ends.isEmpty() || !moves(d.from()) || !moves(d.to())) {
      return held;
    }
    PlanDimension.Along along = turned(d.along());
    Segment now = new Segment(motion.on(ends.get().from()), motion.on(ends.get().to()));
    Point start = motion.on(PlanDimension.line(ends.get(), d.along(), d.offset()).from());
    Point left = PlanDimension.direction(now, along).left();
    return held.withLine(along, start.minus(now.from()).dot(left));
  }

  /** Across and up change places in a quarter turn. */
  private PlanDimension.Along turned(PlanDimension.Along along) {
    Point across = motion.on(new Point(1, 0)).minus(motion.on(new Point(0, 0)));
    boolean swapped = Math.abs(across.y()) > Math.abs(across.x());
    return switch (along) {
      case STRAIGHT -> PlanDimension.Along.STRAIGHT;
      case ACROSS -> swapped ? PlanDimension.Along.UP : PlanDimension.Along.ACROSS;
      case UP -> swapped ? PlanDimension.Along.ACROSS : PlanDimension.Along.UP;
    };
  }

  private boolean moves(PlanDimension.End end) {
    return end instanceof PlanDimension.Corner corner
        ? moving.stream().anyMatch(p -> p.id().equals(corner.part()))
        : stands(((PlanDimension.Place) end).at());
  }

  private PlanDimension.End end(PlanDimension.End end) {
    if (end instanceof PlanDimension.Place place) {
      return new PlanDimension.Place(place(place.at()));
    }
    PlanDimension.Corner corner = (PlanDimension.Corner) end;
    return motion.mirrors() && moves(end)
        ? new PlanDimension.Corner(corner.part(), mirrored(corner))
        : end;
  }

  /** In a mirror image the corners of each ring run the other way round. */
  private int mirrored(PlanDimension.Corner end) {
    Part part = plan.part(end.part()).orElseThrow();
    int first = 0;
    for (Ring ring : part.rings()) {
      int place = end.corner() - first;
      if (place >= 0 && place < ring.size()) {
        return first + ring.size() - 1 - place;
      }
      first += ring.size();
    }
    return end.corner();
  }
}
