package longpoint.field.lift;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.framing.FramingSet;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.geometry.Ring;
import longpoint.plan.Lift;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.stop.CalledOff;
import longpoint.surface.RoofSurface;
import longpoint.wording.Phrase;

/**
 * Every section of a plan that is to be hoisted.
 *
 * @param sections in the order of parts and lifts
 * @param problems what to look at before anything is hoisted
 */
public record Lifts(List<LiftSection> sections, List<Problem> problems) {
  public static final Lifts NONE = new Lifts(List.of(), List.of());

  public Lifts {
    sections = List.copyOf(sections);
    problems = List.copyOf(problems);
  }

  /** Weighs and hangs every lift of a plan. Never fails for what a user can type. */
  public static Lifts of(Plan plan, RoofSurface surface, FramingSet framing) {
    List<LiftSection> sections = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (Part part : plan.parts()) {
      List<Lift> lifts = part.frame().placements().lifts();
      for (int i = 0; i < lifts.size(); i++) {
        CalledOff.check();
        Optional<LiftSection> section = section(plan, part, i, surface, framing);
        if (section.isPresent()) {
          sections.add(section.get());
          problems.addAll(LiftCautions.problems(section.get()));
        } else {
          problems.add(
              Problem.warning(part.id(), Phrase.of("field.lift.empty", name(lifts.get(i), i))));
        }
      }
    }
    return new Lifts(sections, problems);
  }

  static String name(Lift lift, int index) {
    return lift.name().isBlank() ? "#" + (index + 1) : lift.name();
  }

  private static Optional<LiftSection> section(
      Plan plan, Part part, int index, RoofSurface surface, FramingSet framing) {
    Lift lift = part.frame().placements().lifts().get(index);
    Optional<Picked> found = Picked.of(part.id(), lift, framing, part.frame().thickness());
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Picked picked = found.get();
    List<LiftPiece> pieces = Weighing.pieces(plan, part, surface, framing, picked, lift);
    double weight = pieces.stream().mapToDouble(LiftPiece::weight).sum();
    if (!(weight > 0)) {
      return Optional.empty();
    }
    Point3 centre = centre(pieces, weight);
    LiftSection.Axes axes = picked.axes();
    Ring ground = ground(plan, part, framing, picked, lift);
    double top = picked.trusses().stream().mapToDouble(Picked.Stood::peak).max().orElseThrow();
    Hanging hanging = Hanging.of(picked, lift, centre, weight, plan.unit());
    double over = ground.corner(0).distance(ground.corner(1));
    double across = ground.corner(1).distance(ground.corner(2));
    LiftSection bare =
        new LiftSection(
            part.id(),
            index,
            name(lift, index),
            picked.trusses().stream().map(t -> t.truss().id()).toList(),
            pieces,
            weight,
            centre,
            axes,
            new LiftSection.Balance(
                axes.over(centre.plan()), axes.across(centre.plan()), centre.z() - axes.foot()),
            new LiftSection.Size(over, across, top - axes.foot()),
            ground,
            hanging.hook(),
            hanging.points(),
            hanging.lines(),
            List.of());
    return Optional.of(bare.with(LiftCautions.of(bare, picked, plan.unit())));
  }

  /** Moments of the pieces over their weight. */
  static Point3 centre(List<LiftPiece> pieces, double weight) {
    double x = 0;
    double y = 0;
    double z = 0;
    for (LiftPiece p : pieces) {
      x += p.weight() * p.centre().x();
      y += p.weight() * p.centre().y();
      z += p.weight() * p.centre().z();
    }
    return new Point3(x / weight, y / weight, z / weight);
  }

  /** Over tails and ladders; its first side runs along the first truss. */
  private static Ring ground(Plan plan, Part part, FramingSet framing, Picked picked, Lift lift) {
    LiftSection.Axes axes = picked.axes();
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Picked.Stood t : picked.trusses()) {
      for (Point p : t.mark().profile().top()) {
        double over = axes.over(t.at(t.turned(p.x())));
        low = Math.min(low, over);
        high = Math.max(high, over);
      }
    }
    double near = -Weighing.past(plan, part, framing, picked, lift, picked.first());
    double far =
        axes.across(picked.last().truss().from())
            + picked.last().width() / 2
            + (picked.trusses().size() > 1
                ? Weighing.past(plan, part, framing, picked, lift, picked.last())
                : 0);
    return new Ring(
        List.of(
            at(axes, low, near), at(axes, high, near), at(axes, high, far), at(axes, low, far)));
  }

  private static Point at(LiftSection.Axes axes, double over, double across) {
    return axes.origin().plus(axes.along().times(over)).plus(axes.across().times(across));
  }
}
