package longpoint.editor.tools;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import longpoint.editor.Messages;
import longpoint.editor.Outcome;
import longpoint.editor.PartCommands;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Attached;
import longpoint.plan.Markup;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.PlanDimension;
import longpoint.plan.Reshape;

/**
 * Moves everything that is picked by one step: parts whole; corners, and both ends of sides, so
 * that the walls between them and what stays follow; notes, dimension lines and the picture.
 * Additions go along with a wall as far as it goes away from its part.
 */
final class Stretch {
  private final Plan plan;
  private final Selection picked;
  private final Point step;

  private Stretch(Plan plan, Selection picked, Point step) {
    this.plan = plan;
    this.picked = picked;
    this.step = step;
  }

  /** The plan with all of it moved; empty where walls could not close. */
  static Optional<Plan> by(Plan plan, Selection picked, Point step) {
    return new Stretch(plan, picked.within(plan), step).moved();
  }

  /** What moves, and so is nothing to snap to. */
  static Set<Ref> moving(Plan plan, Selection picked) {
    Set<Ref> moving = new HashSet<>();
    Attached.with(plan, picked.parts()).forEach(id -> moving.add(Ref.part(id)));
    for (String id : picked.touchedParts()) {
      Part part = plan.part(id).orElseThrow();
      for (int corner : corners(part, picked)) {
        moving.add(Ref.corner(id, corner));
        moving.add(Ref.side(id, corner));
        moving.add(Ref.side(id, Walls.before(part, corner)));
      }
    }
    return moving;
  }

  /** Numbers of the corners of a part that are picked, by themselves or with a side. */
  static Set<Integer> corners(Part part, Selection picked) {
    Set<Integer> corners = new TreeSet<>();
    for (Ref ref : picked.refs()) {
      if (ref instanceof Ref.OfCorner c && c.part().equals(part.id())) {
        corners.add(c.corner());
      } else if (ref instanceof Ref.OfSide s && s.part().equals(part.id())) {
        corners.add(s.side());
        corners.add(Walls.after(part, s.side()));
      }
    }
    return corners;
  }

  private Optional<Plan> moved() {
    Plan now = plan;
    if (!picked.parts().isEmpty()
        && PartCommands.move(plan, picked.parts(), step).on(plan) instanceof Outcome.Commit whole) {
      now = whole.plan();
    }
    for (String id : picked.touchedParts()) {
      if (!picked.parts().contains(id)) {
        Optional<Plan> next = reshaped(now, id);
        if (next.isEmpty()) {
          return Optional.empty();
        }
        now = next.get();
      }
    }
    Markup markup = now.markup();
    for (Ref ref : picked.besides()) {
      markup = moved(markup, ref);
    }
    return Optional.of(now.withMarkup(markup));
  }

  private Optional<Plan> reshaped(Plan now, String id) {
    Part part = plan.part(id).orElseThrow();
    Optional<Part> shape = Reshape.moveCorners(part, corners(part, picked), step);
    if (shape.isEmpty() || shape.get().sideCount() != part.sideCount()) {
      return Optional.empty();
    }
    Plan with = now.withPart(shape.get());
    for (Ref ref : picked.refs()) {
      if (ref instanceof Ref.OfSide s && s.part().equals(id)) {
        Segment wall = part.side(s.side());
        with = Attached.carry(plan, with, id, wall, -step.dot(wall.direction().left()));
      }
    }
    return Optional.of(with);
  }

  private Markup moved(Markup markup, Ref ref) {
    if (ref instanceof Ref.OfNote n) {
      return markup
          .note(n.note())
          .map(note -> note.withAt(note.at().plus(step)))
          .map(markup::with)
          .orElse(markup);
    }
    if (ref instanceof Ref.OfDimension d) {
      Optional<PlanDimension> dimension = markup.dimension(d.dimension());
      Optional<Segment> ends = dimension.flatMap(m -> m.ends(plan));
      return ends.isEmpty() ? markup : markup.with(shifted(dimension.get(), ends.get()));
    }
    return markup.withBackdrop(markup.backdrop().map(b -> b.moved(step)));
  }

  private PlanDimension shifted(PlanDimension dimension, Segment ends) {
    double off = step.dot(PlanDimension.direction(ends, dimension.along()).left());
    return dimension.withLine(dimension.along(), dimension.offset() + off);
  }

  /** What undo calls it. */
  static String name(Plan plan, Selection picked) {
    List<Ref> refs = new ArrayList<>(picked.within(plan).refs());
    if (refs.stream().allMatch(Ref.OfPart.class::isInstance)) {
      return PartCommands.moveName(plan, picked.parts());
    }
    if (refs.size() > 1) {
      return Messages.text("do.move.several", refs.size());
    }
    Ref ref = refs.get(0);
    if (ref.part().isEmpty()) {
      return DraggingMarkup.name(ref);
    }
    return Messages.text("corner.moved", plan.part(ref.part()).map(Part::name).orElse(""));
  }
}
