package longpoint.editor.tools;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.editor.Aim;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Overlay;
import longpoint.editor.Pointer;
import longpoint.editor.Scene;
import longpoint.editor.Snap;
import longpoint.editor.Snapper;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.geometry.Point;

/**
 * A gesture on the picture waits for its second point.
 *
 * @param first a point of the picture
 */
record PictureLine(PictureTools tool, Point first, Snap pointed) implements ToolState {
  @Override
  public Step on(Event event, Scene scene) {
    if (!(event instanceof Event.Pointing pointing) || event instanceof Event.DoubleClicked) {
      return Step.to(this);
    }
    Pointer pointer = pointing.pointer();
    // Only where a point of the picture comes to lie is the plan's business.
    Snap snap =
        tool == PictureTools.PLACE
            ? Snapper.snap(scene.plan(), scene.settings(), Aim.at(pointer))
            : Snap.free(pointer.at());
    boolean ends =
        event instanceof Event.Pressed
            || event instanceof Event.Released && Holding.pulled(first, pointer);
    if (!ends || snap.at().equals(first)) {
      return Step.to(new PictureLine(tool, first, snap));
    }
    return scene.plan().markup().backdrop().isEmpty()
        ? Step.refuse(new FirstPoint(tool), Messages.text("picture.none"))
        : tool.end(first, snap, scene);
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.of(new FirstPoint(tool, Optional.of(pointed)));
  }

  @Override
  public Optional<Point> keyed(Scene scene) {
    return Optional.of(pointed.at());
  }

  @Override
  public Overlay overlay(Scene scene) {
    return Overlay.NONE
        .withLines(Rubber.lines(List.of(first, pointed.at())))
        .withDimensions(
            tool == PictureTools.SCALE
                ? Rubber.length(first, pointed.at(), scene.plan().unit())
                : List.of())
        .withSnap(Optional.of(pointed));
  }

  @Override
  public String status(Scene scene) {
    return tool.asks();
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of();
  }
}
