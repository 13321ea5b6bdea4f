package longpoint.editor.tools;

import java.util.Optional;
import longpoint.editor.ArrowStep;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Outcome;
import longpoint.editor.Ref;
import longpoint.editor.Scene;
import longpoint.editor.Selection;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Attached;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Reshape;

/**
 * An arrow key pressed with something picked. A side by itself goes parallel to itself, as when it
 * is dragged, and so by keys square to it; everything else goes where the arrow points.
 */
final class Nudge {
  private Nudge() {}

  /** The answer; nothing when nothing is picked. */
  static Step by(Event.Pressing pressing, ToolState state, Scene scene) {
    Selection picked = scene.selection();
    Point step = ArrowStep.of(pressing, scene);
    if (picked.isEmpty()) {
      return Step.to(state);
    }
    if (picked.refs().size() == 1 && picked.refs().get(0) instanceof Ref.OfSide side) {
      return side(side, step, state, scene);
    }
    return Stretch.by(scene.plan(), picked, step)
        .map(plan -> amend(state, Stretch.name(scene.plan(), picked), plan))
        .orElseGet(() -> Step.refuse(state, Messages.text("refuse.shape")));
  }

  private static Step side(Ref.OfSide side, Point step, ToolState state, Scene scene) {
    Plan plan = scene.plan();
    Part part = plan.part(side.part()).orElseThrow();
    Segment wall = part.side(side.side());
    double outward = wall.length() > 0 ? -step.dot(wall.direction().left()) : 0;
    // An arrow along the wall slides nothing; one at a slant moves it by its whole step.
    if (Math.abs(outward) < step.length() / 2) {
      return Step.refuse(state, Messages.text("side.square"));
    }
    double whole = Math.copySign(step.length(), outward);
    Optional<Part> moved =
        Reshape.moveSide(part, side.side(), whole, scene.settings().neighbours());
    if (moved.isEmpty()) {
      return Step.refuse(state, Messages.text("refuse.shape"));
    }
    Plan carried = Attached.carry(plan, plan.withPart(moved.get()), part.id(), wall, whole);
    Selection there = DraggingSide.again(carried, part.id(), wall, whole);
    return amend(state, DraggingSide.name(plan, side), carried).selecting(there);
  }

  private static Step amend(ToolState state, String name, Plan plan) {
    return new Step(state, new Outcome.Amend(name, plan), Optional.empty());
  }
}
