package longpoint.editor.tools;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Overlay;
import longpoint.editor.Picker;
import longpoint.editor.Pointer;
import longpoint.editor.PointerShape;
import longpoint.editor.Ref;
import longpoint.editor.Scene;
import longpoint.editor.SideCommands;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.editor.WallName;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Plan;

/**
 * A click on a side sets what the roof does there: the kind chosen in the settings, or else the
 * next of eave, gable and abutment. A side that is part of the selection takes the other selected
 * sides with it.
 *
 * @param hover the side that a click would set
 */
record SettingEdges(Optional<Ref.OfSide> hover) implements ToolState {
  SettingEdges() {
    this(Optional.empty());
  }

  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Moved moved) {
      return Step.to(new SettingEdges(under(moved.pointer(), scene)));
    }
    if (event instanceof Event.Pressed pressed) {
      Optional<Ref.OfSide> side = under(pressed.pointer(), scene);
      ToolState next = new SettingEdges(side);
      return side.map(s -> set(s, next, scene)).orElse(Step.to(next));
    }
    return Step.to(this);
  }

  private static Optional<Ref.OfSide> under(Pointer pointer, Scene scene) {
    return Picker.side(scene.plan(), pointer.at(), pointer.reach());
  }

  private static Step set(Ref.OfSide side, ToolState next, Scene scene) {
    List<Ref.OfSide> selected = scene.selection().sides(scene.plan());
    List<Ref.OfSide> sides = scene.selection().contains(side) ? selected : List.of(side);
    EdgeKind kind = kind(side, scene);
    return new Step(
        next, SideCommands.kind(scene.plan(), sides, kind).on(scene.plan()), Optional.empty());
  }

  private static EdgeKind kind(Ref.OfSide side, Scene scene) {
    EdgeKind now = part(side, scene.plan()).edges().get(side.side()).kind();
    return scene
        .settings()
        .edgeKind()
        .orElse(
            switch (now) {
              case EAVE -> EdgeKind.GABLE;
              case GABLE -> EdgeKind.ABUTMENT;
              case ABUTMENT, OPEN -> EdgeKind.EAVE;
            });
  }

  private static Part part(Ref.OfSide side, Plan plan) {
    return plan.part(side.part()).orElseThrow();
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.empty();
  }

  @Override
  public Overlay overlay(Scene scene) {
    return Overlay.NONE.withHover(hover.filter(h -> h.in(scene.plan())).map(h -> h));
  }

  @Override
  public PointerShape shape(Scene scene) {
    return hover.filter(h -> h.in(scene.plan())).isPresent()
        ? PointerShape.HAND
        : PointerShape.ARROW;
  }

  @Override
  public String status(Scene scene) {
    return hover
        .filter(h -> h.in(scene.plan()))
        .map(
            h ->
                Messages.text(
                    "edge.set",
                    WallName.of(scene.plan(), part(h, scene.plan()), h.side()),
                    Messages.text("edge." + kind(h, scene).key())))
        .orElseGet(() -> Messages.text("edge.status"));
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of();
  }
}
