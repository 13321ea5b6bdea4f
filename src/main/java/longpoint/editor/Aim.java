package longpoint.editor;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import longpoint.geometry.Point;

/**
 * What a gesture asks of the {@link Snapper}.
 *
 * @param pointer where the user points
 * @param origin the point that whole steps are counted from; without one, the plan's own zero
 * @param anchor the point a line is pulled from, to be held square; empty for no such guidance
 * @param drawn corners drawn so far and not yet in the plan, in order
 * @param leaveOut what is being dragged: parts, sides and corners that nothing should snap to
 */
public record Aim(
    Pointer pointer,
    Optional<Point> origin,
    Optional<Point> anchor,
    List<Point> drawn,
    Set<Ref> leaveOut) {
  public Aim {
    Objects.requireNonNull(pointer);
    Objects.requireNonNull(origin);
    Objects.requireNonNull(anchor);
    drawn = List.copyOf(drawn);
    leaveOut = Set.copyOf(leaveOut);
  }

  public static Aim at(Pointer pointer) {
    return new Aim(pointer, Optional.empty(), Optional.empty(), List.of(), Set.of());
  }

  /** Pulling a line from a point: held square, in whole steps. */
  public Aim lineFrom(Point anchor) {
    return new Aim(pointer, Optional.of(anchor), Optional.of(anchor), drawn, leaveOut);
  }

  /** Pulling a box from a point: whole steps both ways. */
  public Aim boxFrom(Point corner) {
    return new Aim(pointer, Optional.of(corner), Optional.empty(), drawn, leaveOut);
  }

  public Aim afterDrawing(List<Point> drawn) {
    return new Aim(pointer, origin, anchor, drawn, leaveOut);
  }

  public Aim leavingOut(Set<Ref> leaveOut) {
    return new Aim(pointer, origin, anchor, drawn, leaveOut);
  }
}
